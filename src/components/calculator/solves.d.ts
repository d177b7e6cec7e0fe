declare module 'virtual:oilway/solves' {
  /** Each calculator's `solve`, by its id, loaded when asked for. */
  export const solves: Readonly<Record<string, () => Promise<import('../../calc/contract.ts').Solve>>>;
}
