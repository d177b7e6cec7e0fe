/** Notes as they are now beside what is remembered of them: what is new, what was changed, what is gone. */
import type { Statement } from '../draft.ts';
import type { Memory, Remembered } from './memory.ts';

export interface Compared {
  /** Statements that stand as they stood, each with what is remembered of it. */
  known: Map<Statement, Remembered>;
  fresh: Set<Statement>;
  /** A statement that says in other words what was remembered. */
  changed: Map<Statement, Remembered>;
  gone: { source: string; words: string; as?: string }[];
  /** Sources whose known statements stand in another order than before. */
  reordered: string[];
}

export function compared(statements: readonly Statement[], memory: Memory): Compared {
  const out: Compared = { known: new Map(), fresh: new Set(), changed: new Map(), gone: [], reordered: [] };
  const bySource = Map.groupBy(statements, ({ source }) => source);
  for (const [source, now] of bySource) {
    const before = memory.sources.find(({ name }) => name === source)?.statements ?? [];
    const one = inSource(now, before);
    for (const [each, was] of one.known) out.known.set(each, was);
    for (const each of one.fresh) out.fresh.add(each);
    for (const [each, was] of one.changed) out.changed.set(each, was);
    out.gone.push(...one.gone.map(({ words, as }) => ({ source, words, ...(as ? { as } : {}) })));
    if (one.reordered) out.reordered.push(source);
  }
  return out;
}

function inSource(now: readonly Statement[], before: readonly Remembered[]) {
  /** Where each wording stood, in order; taken from the front. */
  const places = new Map<string, number[]>();
  for (const [at, { words }] of before.entries()) {
    const list = places.get(words);
    if (list) list.push(at);
    else places.set(words, [at]);
  }
  const used = new Set<number>();
  /** Remembered statements of which a part was met again. */
  const touched = new Set<number>();
  const left: { one: Statement; after: number }[] = [];
  let last = -1;
  let reordered = false;
  const known = new Map<Statement, Remembered>();
  const taken = new Map<string, number>();
  for (const one of now) {
    const list = places.get(one.text) ?? [];
    const nth = taken.get(one.text) ?? 0;
    const at = list[nth];
    if (at === undefined) {
      left.push({ one, after: last });
      continue;
    }
    taken.set(one.text, nth + 1);
    used.add(at);
    const was = before[at];
    if (was) known.set(one, was);
    if (at < last) reordered = true;
    last = at;
  }
  const fresh: Statement[] = [];
  const changed = new Map<Statement, Remembered>();
  for (const { one, after } of left) {
    const was = gap(before, used, after);
    if (cutAnew(one, was, before, touched)) continue;
    const alike = was.find((at) => likeness(one.text, before[at]?.words ?? '') >= ALIKE);
    const old = alike === undefined ? undefined : before[alike];
    if (alike === undefined || !old) fresh.push(one);
    else {
      used.add(alike);
      changed.set(one, old);
    }
  }
  return {
    known,
    fresh,
    changed,
    gone: before.filter((_, at) => !used.has(at) && !touched.has(at)),
    reordered,
  };
}

/** Share of words in common from which two wordings are one statement. */
const ALIKE = 0.6;
/** So many remembered statements are looked at behind the last that is known. */
const REACH = 12;

/** Remembered statements that nothing accounts for yet, from a place on. */
function gap(before: readonly Remembered[], used: ReadonlySet<number>, after: number): number[] {
  const out: number[] = [];
  for (let at = after + 1; at < before.length && at <= after + REACH; at++) if (!used.has(at)) out.push(at);
  return out;
}

/** The same words cut into statements in another way, as a newer release may cut them, are not new. */
function cutAnew(
  one: Statement,
  was: readonly number[],
  before: readonly Remembered[],
  touched: Set<number>,
): boolean {
  const wanted = ` ${bare(one.text)} `;
  if (wanted.trim() === '') return false;
  const all = ` ${was.map((at) => bare(before[at]?.words ?? '')).join(' ')} `;
  if (!all.includes(wanted)) return false;
  for (const at of was) {
    const words = ` ${bare(before[at]?.words ?? '')} `;
    if (words.includes(wanted) || wanted.includes(words)) touched.add(at);
  }
  return true;
}

const bare = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** Words in common over words in all, from 0 to 1 (Dice's measure). */
export function likeness(a: string, b: string): number {
  const [first, second] = [bare(a).split(' '), bare(b).split(' ')];
  const counts = new Map<string, number>();
  for (const word of first) counts.set(word, (counts.get(word) ?? 0) + 1);
  let common = 0;
  for (const word of second) {
    const count = counts.get(word) ?? 0;
    if (count === 0) continue;
    common += 1;
    counts.set(word, count - 1);
  }
  return (2 * common) / (first.length + second.length);
}
