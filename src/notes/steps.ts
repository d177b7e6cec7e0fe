/** Where a new piece of work begins: every statement is weighed as the beginning of a step, by what it tells and by what went before. */
import type { DraftStep, Statement } from './draft.ts';
import { titles } from './say/title.ts';
import { type Weights, weigh } from './say/weigh.ts';
import { STEP_WEIGHTS } from './say/weights.ts';

/** What is known of the running step when the next statement comes. */
export interface Running {
  /** Words since the step began; none before the first. */
  words: number;
  /** Seconds into the recording when it began. */
  since?: number;
  place?: string;
  verb?: string;
  /** Statements since it began. */
  statements: number;
  /** A heading stands between. */
  heading: boolean;
  first: boolean;
  /** The statement before tells of work. */
  worked: boolean;
}

export const START: Running = {
  words: 0,
  statements: 0,
  heading: false,
  first: true,
  worked: false,
};

const bucket = (value: number, ...at: readonly number[]): string =>
  String(at.filter((one) => value >= one).length);

export function stepFeatures(one: Statement, now: Running, next?: Statement): string[] {
  const out: string[] = [`[kind ${one.kind}]`, `[${one.opens ? 'opens' : 'goes on'} ${one.kind}]`];
  const deed = one.work;
  if (deed)
    out.push(
      '[deed]',
      `[deed ${deed.told}]`,
      `[deed, ${one.opens ? 'opens' : 'goes on'}]`,
      `verb ${deed.verb}`,
      deed.at < 4 ? '[deed early]' : '[deed late]',
    );
  if (deed && now.verb === deed.verb) out.push('[same verb]');
  if (next?.work) out.push('[deed follows]', deed ? '[deed, deed follows]' : '[no deed, deed follows]');
  if (next?.opens) out.push(`[last of its entry, ${one.opens ? 'opens' : 'goes on'}]`);
  out.push(now.worked ? '[deed before]' : '[no deed before]');
  if (one.figures.length > 0) out.push('[figure]', ...(deed ? ['[figure, deed]'] : []));
  for (const name of one.marks) out.push(`[${name}]`, ...(deed ? [`[${name}, deed]`] : []));
  if (one.opens) for (const name of one.marks) if (name === 'begins') out.push('[begins, opens]');
  if (one.area) out.push('[place]');
  if (one.area && now.place && one.area !== now.place)
    out.push(
      '[other place]',
      ...(deed ? ['[other place, deed]'] : []),
      ...(one.opens ? ['[other place, opens]'] : []),
    );
  if (one.area && one.area === now.place) out.push('[same place]');
  if (now.heading) out.push('[heading before]', ...(deed ? ['[heading before, deed]'] : []));
  if (now.first) out.push('[no step yet]', ...(deed ? ['[no step yet, deed]'] : []));
  else {
    out.push(
      `[words ${bucket(now.words, 8, 16, 30, 50, 80, 120, 180)}]`,
      `[statements ${bucket(now.statements, 1, 2, 3, 5, 8)}]`,
    );
    if (deed) out.push(`[deed, words ${bucket(now.words, 12, 30, 60, 110)}]`);
    if (one.opens) out.push(`[opens, words ${bucket(now.words, 12, 30, 60, 110)}]`);
    if (one.at !== undefined && now.since !== undefined)
      out.push(`[seconds ${bucket(one.at - now.since, 1, 8, 15, 25, 40, 60)}]`);
  }
  out.push(`[long ${bucket(one.text.split(' ').length, 4, 8, 16)}]`);
  const words = one.text.toLowerCase().match(/[a-z']+/g) ?? [];
  for (const [at, word] of words.slice(0, 3).entries()) out.push(`${at === 0 ? 'first' : 'early'} ${word}`);
  if (words[0] && words[1]) out.push(`first ${words[0]} ${words[1]}`);
  return out;
}

/** The running step after a statement, which may have begun it. */
export function after(one: Statement, now: Running, begins: boolean): Running {
  if (one.kind === 'heading') return { ...now, heading: true };
  const length = one.text.split(' ').length;
  const place = one.area ?? now.place;
  const verb = one.work?.verb ?? now.verb;
  const said = {
    worked: one.work !== undefined,
    ...(place ? { place } : {}),
    ...(verb ? { verb } : {}),
    heading: false,
  };
  if (begins)
    return {
      ...said,
      words: length,
      statements: 1,
      first: false,
      ...(one.at === undefined ? {} : { since: one.at }),
    };
  return {
    ...now,
    ...said,
    words: now.words + length,
    statements: now.statements + 1,
    heading: begins ? false : now.heading,
  };
}

const CANNOT = new Set(['heading', 'row', 'other', 'task']);

export function beginsStep(
  one: Statement,
  now: Running,
  next?: Statement,
  weights: Weights = STEP_WEIGHTS,
): boolean {
  if (CANNOT.has(one.kind) || !/[a-z]{2}/i.test(one.text)) return false;
  return (
    weigh(
      stepFeatures(one, now, next).map((name) => ({ name })),
      weights,
    ) >= weights.from
  );
}

export function stepsOf(statements: readonly Statement[]): DraftStep[] {
  const steps: DraftStep[] = [];
  let step: DraftStep | undefined;
  let now = START;
  for (const [at, one] of statements.entries()) {
    if (step && one.source !== step.source) {
      step = undefined;
      now = START;
    }
    if (one.kind === 'heading' || isLabel(one)) {
      one.home = { kind: 'heading' };
      step = undefined;
      now = { ...now, heading: true };
      continue;
    }
    if (LATER.test(one.text)) {
      // What is left for the next time ends the chapter and belongs to no step.
      step = undefined;
      one.home = { kind: 'prose' };
      continue;
    }
    const begins = beginsStep(one, now, statements[at + 1]);
    now = after(one, now, begins);
    if (begins) {
      step = {
        title: '',
        line: one.line,
        source: one.source,
        statements: [],
        ...(one.at === undefined ? {} : { at: one.at }),
      };
      steps.push(step);
    }
    place(one, step, steps.length);
  }
  titles(steps, statements);
  return steps;
}

const LATER =
  /^\W*(?:so |and |right |okay |well )*(?:next (?:time|week|episode|up will|session)|tomorrow|to ?do\b|still to do|left to do)/i;

/** A day or a place on a line of its own parts the notes as a heading does. */
export const isLabel = (one: Statement): boolean =>
  one.kind === 'prose' &&
  one.opens &&
  one.figures.length === 0 &&
  one.said.size === 0 &&
  !one.work &&
  !/[.!?,]/.test(one.text) &&
  one.text.split(' ').length <= 3;

/** Sums, orders and thanks stand in the proposals; what tells of the work stands in its step. */
function place(one: Statement, step: DraftStep | undefined, number: number): void {
  const { said, kind } = one;
  if (kind === 'other' || !/[\p{L}\p{N}]/u.test(one.text)) one.home = { kind: 'not placed' };
  else if (kind === 'row') one.home = { kind: 'prose' };
  else if (one.chatter) one.home = { kind: 'not placed' };
  else if (said.has('thanks') || (said.has('cost') && !one.work && !said.has('fault')))
    one.home = { kind: 'proposal' };
  else if (step) {
    one.home = { kind: 'step', step: number };
    step.statements.push(one);
  } else if (said.has('part') && kind !== 'prose' && kind !== 'speech') one.home = { kind: 'proposal' };
  else if (kind === 'task' || (kind === 'item' && said.size === 0 && one.figures.length > 0))
    one.home = { kind: 'not placed' };
  else one.home = { kind: 'prose' };
}
