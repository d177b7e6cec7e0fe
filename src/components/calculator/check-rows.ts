import type { Calculator, Mark } from '../../calc/contract.ts';
import { digits, printFigure } from '../../calc/print-figure.ts';
import { readValues } from '../../calc/read-values.ts';
import { fromSi, toSi, unitSymbol } from '../../calc/units.ts';

export interface CheckRow {
  says: string;
  published: string;
  allowed: string;
  /** What this calculator gives for the same figures. */
  here: string;
  source: string;
  mark: Mark;
}

const places = (x: number) => (String(x).split('.')[1] ?? '').length;

/** The rows of "checked against", worked out while the page is built, so that the page cannot say what the code does not. */
export function checkRows({ id, fields, outputs, checks, solve }: Calculator): CheckRow[] {
  return checks.map((check) => {
    const output = outputs.find((one) => one.name === check.output);
    if (!output) throw new RangeError(`${id}: the check "${check.id}" names no output "${check.output}"`);
    const { quantity } = output;
    // What a source does not give stays empty, whether or not a reader's form would ask for it.
    const answer = solve(readValues({ fields }, check.given, {}, false).values);
    const found = answer.ok ? answer.outputs[check.output] : undefined;
    const decimals = Math.max(places(check.expected), places(check.tolerance));
    const print = (x: number) =>
      printFigure({ si: toSi(x, quantity, check.unit) }, quantity, check.unit, 6, decimals);
    return {
      says: check.says,
      published: print(check.expected),
      allowed: `${digits(check.tolerance, places(check.tolerance))} ${unitSymbol(check.unit)}`.trim(),
      here: found ? print(fromSi(found.si, quantity, check.unit)) : '—',
      source: check.source,
      mark: check.mark,
    };
  });
}
