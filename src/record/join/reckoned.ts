import type { Reckoned } from '../chapter/chapter-text.ts';
import { readQuantity } from '../files/machine.ts';
import type { Place, Problem } from '../problem.ts';
import { type Printable, printQuantity } from '../quantity/print-quantity.ts';
import { unitNamed } from '../quantity/unit-named.ts';
import { readFigure } from '../read/kinds.ts';
import { Report } from '../report-to.ts';
import { solveSum } from '../sum/solve-sum.ts';
import { SumProblem } from '../sum/sum-node.ts';
import { meant, shown } from '../text/words.ts';
import type { Chapter, MachineValue } from '../types.ts';
import type { Surroundings } from './chapter.ts';

type Figures = Pick<Chapter, 'sums' | 'quantities'>;

/** What was worked out for a chapter's list, and from what; kept as long as none of it changes. */
const known = new WeakMap<
  readonly Reckoned[],
  { of: readonly unknown[]; figures: Figures; problems: Problem[] }
>();

/** Prints every <Qty> and works out every <Sum> of a chapter, once for one text and one machine's sheet. */
export function reckon(list: readonly Reckoned[], around: Surroundings, report: Report): Figures {
  const of = [around.machine, around.settings?.language, around.mark];
  let made = known.get(list);
  if (!made || made.of.some((one, at) => one !== of[at])) {
    const own = new Report();
    made = { of, figures: reckonAll(list, around, own), problems: own.problems };
    known.set(list, made);
  }
  report.problems.push(...made.problems);
  return made.figures;
}

function reckonAll(list: readonly Reckoned[], around: Surroundings, report: Report): Figures {
  const language = around.settings?.language ?? 'en-GB';
  const reckoned: Figures = { sums: new Map(), quantities: new Map() };
  const machine = around.machine?.values ?? new Map<string, MachineValue>();
  const missing = (path: string) =>
    `There is no machine value "machine.${path}". ${meant(
      `machine.${path}`,
      [...machine.keys()].map((key) => `machine.${key}`),
    )}`;
  for (const { kind, of, to, place } of list) {
    if (kind === 'quantity') {
      const printable = of.startsWith('machine.')
        ? machinePrintable(of.slice('machine.'.length), machine, missing, place, report)
        : writtenPrintable(of, around, place, report);
      if (printable)
        reckoned.quantities.set(
          of,
          typeof printable === 'string' ? { text: printable } : printQuantity(printable, language),
        );
      continue;
    }
    try {
      reckoned.sums.set(`${of}|${to}`, solveSum(of, to, { machine, language, missing }));
    } catch (error) {
      if (!(error instanceof SumProblem)) throw error;
      const at = { ...place, column: place.column + Math.max(0, error.at) };
      report.add('chapters/sum', at, `${error.message} The sum is ${shown(of)} to ${shown(to)}.`);
    }
  }
  return reckoned;
}

function machinePrintable(
  path: string,
  machine: ReadonlyMap<string, MachineValue>,
  missing: (path: string) => string,
  place: Place,
  report: Report,
): Printable | string | undefined {
  const value = machine.get(path);
  if (!value) return report.add('chapters/machine', place, missing(path));
  if (value.now) return { kind: 'figure', quantity: value.now };
  return value.text ?? value.asBuiltText;
}

/** "3.4 mm", "3.4 ± 0.1 mm", "at most 150.8 mm", "0.35 to 0.45 mm". */
function writtenPrintable(
  of: string,
  { mark }: Surroundings,
  place: Place,
  report: Report,
): Printable | undefined {
  const no = (message: string) => report.add('chapters/quantity', place, message);
  const range = /^([-−]?[\d.,]+)\s*(?:to|–|-)\s*([-−]?[\d.,]+)\s*(\D.*)$/.exec(of);
  const limit = /^(at least|at most|min\.?|max\.?)\s+(.*)$/i.exec(of);
  const unknown = (unit: string) =>
    no(`${shown(unit)} is not a unit that is known here. Write one such as mm, L, Nm, deg or km/h.`);
  if (range) {
    const [, low = '', high = '', unit = ''] = range;
    const [from, until] = [readFigure(low, mark), readFigure(high, mark)];
    if (!from.ok) return no(from.message);
    if (!until.ok) return no(until.message);
    if (!unitNamed(unit)) return unknown(unit);
    if (Number(from.value) > Number(until.value))
      return no(`${shown(of)} runs backwards. Write the lower figure first.`);
    return { kind: 'range', low: from.value, high: until.value, unit };
  }
  const read = readQuantity(limit?.[2] ?? of, mark);
  if (!read)
    return no(
      `${shown(of)} is no quantity. Write a figure and its unit, such as 3.4 mm, or machine.section.key.`,
    );
  if ('wrong' in read) return no(read.wrong);
  const { quantity } = read;
  if (quantity.unit !== '' && !unitNamed(quantity.unit)) return unknown(quantity.unit);
  if (!limit) return { kind: 'figure', quantity };
  return { kind: /^(at least|min)/i.test(limit[1] ?? '') ? 'at least' : 'at most', quantity };
}
