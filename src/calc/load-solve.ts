import type { Solve } from './contract.ts';

/**
 * What a browser loads of one calculator: its `solve`, from `solve-<id>.ts`. The path is spelt so that a bundler finds
 * every such file and makes a part of each, loaded when a page asks for it.
 */
export const loadSolve = (id: string): Promise<Solve> =>
  import(`./solve-${id}.ts`).then((file: { solve: Solve }) => file.solve);
