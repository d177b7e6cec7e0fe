declare module 'virtual:oilway/solves' {
  /** The `solve` of a sheet's calculator, loaded when asked for. */
  export function solveOf(sheet: HTMLElement): Promise<import('../../calc/contract.ts').Solve>;
}
