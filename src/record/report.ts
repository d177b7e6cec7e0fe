import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { openFaults } from './fault-life.ts';
import { printMoney } from './money/money.ts';
import { inOrder, type Problem } from './problem.ts';
import { count } from './text/words.ts';
import type { Series } from './types.ts';

/** "content/ledger.csv:14:6", or the file alone where no line is known. */
function where({ file, line, column }: Problem): string {
  return [file, line, line === undefined ? undefined : column].filter((one) => one !== undefined).join(':');
}

/** One problem on one line, as editors and terminals jump to it. */
export function oneLine(problem: Problem): string {
  return `${where(problem)} ${problem.severity} ${problem.rule} ${problem.message}`;
}

/** What was written in the line of a problem; undefined where the file has no such line. */
export type LineOf = (file: string, line: number) => string | undefined;

/** Every problem by file, each with the line that it is about, then the count. */
export function grouped(problems: readonly Problem[], from: { root: string } | { lineOf: LineOf }): string {
  const lineOf = 'lineOf' in from ? from.lineOf : linesOnDisk(from.root);
  const files = Map.groupBy(inOrder(problems), (problem) => problem.file);
  const blocks = [...files.values()].map((list) =>
    list.map((problem) => oneLine(problem) + frame(problem, lineOf)).join('\n'),
  );
  const nothing = problems.some((one) => one.severity === 'error') ? ' Nothing was published.' : '';
  return `${[...blocks, counted.problems(problems) + nothing].join('\n\n')}\n`;
}

/** The line that a problem is about; of a long line the part around the place. */
function frame({ file, line, column = 1 }: Problem, lineOf: LineOf): string {
  const text = line === undefined ? undefined : lineOf(file, line);
  if (text === undefined || text.trim() === '') return '';
  const letters = [...text.replaceAll('\t', ' ').replace(/\p{Cc}/gu, '\uFFFD')];
  const start =
    letters.length <= WIDTH || column <= WIDTH - 20 ? 0 : Math.min(column - 30, letters.length - WIDTH);
  const end = Math.min(letters.length, start + WIDTH);
  const part = letters.slice(start, end).join('');
  return `\n  ${line} | ${start > 0 ? '…' : ''}${part}${end < letters.length ? '…' : ''}`;
}

const WIDTH = 100;

function linesOnDisk(root: string): LineOf {
  const known = new Map<string, string[]>();
  return (file, line) => {
    let lines = known.get(file);
    if (!lines) {
      lines = linesOf(join(root, file));
      known.set(file, lines);
    }
    return lines[line - 1];
  };
}

function linesOf(path: string): string[] {
  try {
    return readFileSync(path, 'utf8')
      .replace(/^\uFEFF/, '')
      .split(/\r\n?|\n/);
  } catch {
    return [];
  }
}

/** The same for editors and scripts. */
export function asJson(problems: readonly Problem[]): string {
  return `${JSON.stringify(inOrder(problems), null, 2)}\n`;
}

/** Counts in words, for the ends of commands. */
export const counted = {
  /** "2 errors, 0 warnings in 4 files." */
  problems(problems: readonly Problem[]): string {
    const errors = problems.filter((one) => one.severity === 'error').length;
    const files = new Set(problems.map((one) => one.file)).size;
    const found = `${count(errors, 'error')}, ${count(problems.length - errors, 'warning')}`;
    return problems.length === 0 ? `${found}.` : `${found} in ${count(files, 'file')}.`;
  },
  /** "64 rows, €1,234.50 in all". */
  ledger(series: Series): string {
    const minor = series.ledger.reduce((sum, line) => sum + line.home.minor, 0n);
    return `${count(series.ledger.length, 'row')}, ${printMoney({ minor, currency: series.homeCurrency }, series.language)} in all`;
  },
  /** "3, of which 1 forbids driving". */
  openFaults(series: Series): string {
    const open = openFaults(series);
    const worst = open.filter((state) => state.severity === 'do not drive').length;
    return worst === 0
      ? String(open.length)
      : `${open.length}, of which ${worst} ${worst === 1 ? 'forbids' : 'forbid'} driving`;
  },
};
