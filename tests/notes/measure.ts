/** How well the rules find what a careful editor marked in a text: recall and precision by kind. */

import { draftOf, type Statement } from '../../src/notes/draft.ts';
import { readSource } from '../../src/notes/read/read-source.ts';
import { lineFinder } from '../../src/notes/read/source.ts';
import type { Saying } from '../../src/notes/say/tell.ts';
import { hazardsOf, toldWith } from '../../src/notes/write/called.ts';
import { settleHomes } from '../../src/notes/write/homes.ts';
import { type Kind, type Proposal, proposalsOf } from '../../src/notes/write/proposals.ts';

export interface Labels {
  quantities: { line: number; value: number; unit: string }[];
  steps: number[];
  faults: number[];
  parts: number[];
  costs: number[];
  thanks: number[];
  hazards: { line: number; id: string }[];
}

export interface Score {
  right: number;
  wanted: number;
  told: number;
}
export type Scores = Record<keyof Labels, Score>;

const FACTORS: Readonly<Record<string, readonly [base: string, size: number]>> = {
  thou: ['m', 25.4e-6],
  in: ['m', 0.0254],
  mm: ['m', 1e-3],
  cm: ['m', 1e-2],
  m: ['m', 1],
  km: ['m', 1e3],
  ft: ['m', 0.3048],
  mi: ['m', 1609.344],
  L: ['l', 1],
  mL: ['l', 1e-3],
  cm3: ['l', 1e-3],
  min: ['s', 60],
  h: ['s', 3600],
  s: ['s', 1],
  kg: ['kg', 1],
  g: ['kg', 1e-3],
};
const ALIAS: Readonly<Record<string, string>> = {
  Nm: 'N m',
  N·m: 'N m',
  '°C': 'degC',
  '°': 'deg',
  l: 'L',
  ml: 'mL',
  litre: 'L',
  hours: 'h',
  turns: 'turn',
  percent: '%',
  'ft lbf': 'lbf ft',
  'lb ft': 'lbf ft',
  gallon: 'gal',
  pint: 'pt',
  ':1': 'ratio',
  tooth: 'teeth',
  fl_oz: 'fl oz',
  mile: 'mi',
  inch: 'in',
};

export function same(a: { value: number; unit: string }, b: { value: number; unit: string }): boolean {
  const [ua, ub] = [ALIAS[a.unit] ?? a.unit, ALIAS[b.unit] ?? b.unit];
  const fa: readonly [string, number] = FACTORS[ua] ?? [ua, 1];
  const fb: readonly [string, number] = FACTORS[ub] ?? [ub, 1];
  return (
    fa[0] === fb[0] &&
    Math.abs(a.value * fa[1] - b.value * fb[1]) <= 2e-3 * Math.max(Math.abs(a.value * fa[1]), 1e-9)
  );
}

const KINDS = ['quantities', 'hazards', 'steps', 'faults', 'parts', 'costs', 'thanks'] as const;

/** Labels as a file has them: a label is a line, or an entry with a line; a kind may be named in the singular or plural. */
export function labelsOf(raw: Readonly<Record<string, unknown>>): Labels {
  const list = (kind: (typeof KINDS)[number]): Record<string, unknown>[] => {
    const found = raw[kind] ?? raw[kind.replace(/ies$/, 'y').replace(/s$/, '')] ?? [];
    return (found as unknown[]).map((one) =>
      typeof one === 'number' ? { line: one } : (one as Record<string, unknown>),
    );
  };
  const line = (one: Record<string, unknown>): number => Number(one['line'] ?? one['at']);
  return {
    quantities: list('quantities').map((one) => ({
      line: line(one),
      value: Number(one['value']),
      unit: String(one['unit']),
    })),
    hazards: list('hazards').map((one) => ({ line: line(one), id: String(one['id'] ?? one['hazard']) })),
    steps: list('steps').map(line),
    faults: list('faults').map(line),
    parts: list('parts').map(line),
    costs: list('costs').map(line),
    thanks: list('thanks').map(line),
  };
}

export interface Found extends Labels {
  /** A figure that crosses a line's end is on both lines: `line` is its last, `first` the one that it begins on. */
  quantities: (Labels['quantities'][number] & { first: number })[];
  /** `at` is the line that a finding is told with; the rest of its statement counts as near enough. */
  spans: { kind: keyof Labels; from: number; at?: number; to: number; words: string }[];
}

export const KNOWN = { chapter: 'measured', date: '2026-01-01', currency: 'EUR' };
const NAMES: Partial<Record<Kind, 'faults' | 'parts' | 'costs' | 'thanks'>> = {
  fault: 'faults',
  part: 'parts',
  cost: 'costs',
  thanks: 'thanks',
};

/** What is proposed, by its line; several proposals of a kind on one line count once. */
export function findings(
  proposals: readonly Proposal[],
  statements: readonly Statement[],
  found: Found,
): void {
  /** Line that a fault was first told on, by the name of its file. */
  const told = new Map<string, number>();
  for (const { kind, place, also, row } of proposals) {
    const line = Number(place.slice(place.lastIndexOf(':') + 1));
    const here = statements.filter((one) => one.line <= line && line <= one.lastLine);
    if (kind === 'finding') {
      // Said again of a fault: that line is as right as the first one.
      const at = told.get(row['fault'] ?? '');
      if (at !== undefined && here.some(({ said }) => said.has('fault')))
        found.spans.push({ kind: 'faults', from: line, at, to: line, words: '' });
      continue;
    }
    const name = NAMES[kind];
    if (!name) continue;
    if (kind === 'fault') told.set(row['file'] ?? '', line);
    if (!found[name].includes(line)) found[name].push(line);
    for (const place of also ?? []) {
      const more = Number(place.slice(place.lastIndexOf(':') + 1));
      // What is told with another line of the same thanks is a line of its own.
      if (!found[name].includes(more)) found[name].push(more);
      found.spans.push({ kind: name, from: more, at: more, to: more, words: '' });
    }
    // A statement over several lines is right on each of them.
    const of = here.filter(({ said }) => said.has(kind as Saying));
    found.spans.push({
      kind: name,
      from: Math.min(line, ...of.map((one) => one.line)),
      at: line,
      to: Math.max(line, ...of.map((one) => one.lastLine)),
      words: of.map(({ text }) => text).join(' '),
    });
  }
}

export function foundIn(name: string, text: string): Found {
  const read = readSource({ name, text });
  const lineOf = lineFinder(text);
  const draft = draftOf([read], {});
  const { statements, steps } = draft;
  const spans: Found['spans'] = [];
  const found: Found = {
    quantities: [],
    steps: steps.map(({ line }) => line),
    faults: [],
    parts: [],
    costs: [],
    thanks: [],
    hazards: [],
    spans,
  };
  for (const one of statements)
    for (const { line, start, value, unit } of one.figures)
      found.quantities.push({ line, first: lineOf(start), value, unit });
  const { proposals, told } = proposalsOf(draft, KNOWN, { reads: [read] });
  findings(proposals, statements, found);
  settleHomes(draft, [read], told, undefined);
  // Words outside steps get a note of their own in the chapter.
  const outside: Statement[][] = [];
  for (const one of statements) {
    if (one.home.kind !== 'prose' || one.kind === 'row') continue;
    const run = outside.at(-1);
    const before = run?.at(-1);
    if (run && before && !one.opens && before.block === one.block) run.push(one);
    else outside.push([one]);
  }
  for (const run of outside)
    for (const id of hazardsOf('', [run.map(({ text }) => text).join('\n')]).keys()) {
      const [from, to] = [run[0]?.line ?? 0, run.at(-1)?.lastLine ?? 0];
      found.hazards.push({ line: from, id });
      spans.push({ kind: 'hazards', from, to, words: id });
    }
  const toldHere = toldWith(draft);
  for (const [at, step] of steps.entries()) {
    const all = toldHere.get(step) ?? [];
    const last = Math.max(steps[at + 1]?.line ?? 0, step.line, ...all.map((one) => one.lastLine));
    for (const id of hazardsOf(step.title, [step.statements.map((one) => one.text).join('\n')], all).keys()) {
      found.hazards.push({ line: step.line, id });
      spans.push({ kind: 'hazards', from: step.line, to: last, words: id });
    }
    // Told before the first step, and noted there.
    for (const one of all.filter(({ lastLine }) => lastLine < step.line))
      for (const id of hazardsOf('', [one.text]).keys()) {
        found.hazards.push({ line: one.line, id });
        spans.push({ kind: 'hazards', from: one.line, to: one.lastLine, words: id });
      }
  }
  return found;
}

const near = (a: number, b: number, by: number): boolean => Math.abs(a - b) <= by;

/** Greedy one-to-one match. A finding's place is right on its line, or on any line of its statement; a step's within one line. */
export function score(found: Found, labels: Labels): Scores {
  const pair = <A, B>(wanted: readonly A[], told: readonly B[], fits: (a: A, b: B) => boolean): Score => {
    const free = new Set(told.keys());
    const open = new Set(wanted.keys());
    // What is the same line is paired first, so that a statement over two lines does not take its neighbour's label.
    for (const best of [(a: A, b: B) => (a as unknown) === b, fits])
      for (const want of [...open]) {
        const hit = [...free].find((at) => best(wanted[want] as A, told[at] as B));
        if (hit === undefined) continue;
        free.delete(hit);
        open.delete(want);
      }
    return { right: wanted.length - open.size, wanted: wanted.length, told: told.length };
  };
  const lines = (kind: 'faults' | 'parts' | 'costs' | 'thanks'): Score =>
    pair(
      labels[kind],
      found[kind],
      (a, b) =>
        a === b ||
        found.spans.some((span) => span.kind === kind && span.at === b && a >= span.from && a <= span.to),
    );
  const hazards: Score = {
    right: labels.hazards.filter((one) =>
      found.spans.some(
        (span) =>
          span.kind === 'hazards' &&
          span.words === one.id &&
          one.line >= span.from - 1 &&
          one.line <= span.to + 1,
      ),
    ).length,
    wanted: labels.hazards.length,
    told: found.hazards.length,
  };
  return {
    quantities: pair(
      labels.quantities,
      found.quantities,
      (a, b) => a.line >= b.first && a.line <= b.line && same(a, b),
    ),
    steps: pair(labels.steps, found.steps, (a, b) => near(a, b, 1)),
    faults: lines('faults'),
    parts: lines('parts'),
    costs: lines('costs'),
    thanks: lines('thanks'),
    hazards,
  };
}
