/** Short ways to declare what a calculator asks, answers and is checked against; for declarations only, never in a browser. */
import { answering } from './answer.ts';
import type { Calculator, FigureField, Mark, OutputField, PublishedCheck, Solve } from './contract.ts';
import { pageSays } from './page-says.ts';
import type { Quantity, UnitId } from './units.ts';

/** A field of one figure; the range is in SI. */
export const figureField = (
  name: string,
  label: string,
  quantity: Quantity,
  units: readonly UnitId[],
  [min, max]: readonly [number, number],
  more: Partial<FigureField> = {},
): FigureField => ({ kind: 'figure', name, label, quantity, units, min, max, ...more });

export const outputField = (
  name: string,
  label: string,
  quantity: Quantity,
  units: readonly UnitId[],
  figures = 3,
  more: Partial<OutputField> = {},
): OutputField => ({ name, label, quantity, units, figures, ...more });

/** A row of "checked against": id, what it says, fields as typed, output, expected with unit and tolerance, source. */
export const published = (
  id: string,
  says: string,
  given: Readonly<Record<string, string>>,
  output: string,
  [expected, unit, tolerance]: readonly [number, UnitId, number],
  source: string,
  mark: Mark = 'derived',
): PublishedCheck => ({ id, says, given, output, expected, unit, tolerance, source, mark });

/** A whole declaration: what it declares and says, and its `solve`, told with that. */
export const told = (declared: Omit<Calculator, 'finds' | 'solve'>, solve: Solve): Calculator => ({
  ...declared,
  finds: solve,
  solve: answering(pageSays(declared, declared.says), solve, declared.title),
});
