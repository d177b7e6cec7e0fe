/** A figure beside the one that it should be: "opens at 24, the book says 26". */
import type { Figure } from '../figures/figure.ts';
import { MONEY } from '../figures/unit-words.ts';

/** `apart`: it is not what it should be. `put right`: it was not, and was changed to what it is now. */
export type Beside = 'apart' | 'as it should be' | 'put right';

const SHOULD =
  /\b(?:book|handbook|manual|paper|sheet|should(?:n't)?|shd|shld|meant|supposed|spec|limit|allow(?:s|ed)?|at (?:most|least)|no (?:more|less) than|nominal|asks? for|wants?|instead of|ought|min|max)\b[^.;]*$/i;
const SHOULD_BEHIND =
  /^\s*(?:is|was|are|being)?\s*(?:the |at the )?(?:limit|minimum|maximum|min\b|max\b|in the book|by the book|allowed|at most|at least|when new|as new|nominal|says the|asks the|wanted|called for)/i;
const WAS = /\b(?:was|were|been|had|from|old)\b[^,.;]*$/i;
const NOW =
  /\b(?:now|set|reset|set to|back to|made it|moved to|closed to|opened to|brought to|up to|down to)\b[^,.;]*$/i;
/** Joins the ends of a range, or says the same in another unit. */
const RANGE = /^\s*(?:-|–|to|and|or)\s*$/;
const SAME = /^[\s,(]*(?:that'?s|thats|which is|that is|or|=|about|i\.e\.)?[\s,(=]*$/i;

const LENGTHS: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000, in: 25.4, thou: 0.0254 };

type Role = 'found' | 'should' | 'was' | 'now';
interface Sized {
  role: Role;
  limit?: Figure['limit'];
  /** In the unit's base. */
  value: number;
  of: string;
  /** Other end of a range. */
  until?: number;
}

/** `start` is where the text stands in the figures' source. */
export function besideSpec(text: string, figures: readonly Figure[], start: number): Beside | undefined {
  if (figures.length < 2) return undefined;
  const sized: Sized[] = [];
  let end = 0;
  for (const [at, one] of figures.entries()) {
    if (MONEY.has(one.unit)) continue;
    const before = text.slice(Math.max(end, one.start - start - 48), Math.max(0, one.start - start));
    const next = figures[at + 1];
    const behind = text.slice(one.end - start, next ? next.start - start : one.end - start + 32);
    end = one.end - start;
    const scale = LENGTHS[one.unit];
    const value = one.value * (scale ?? 1);
    const of = scale === undefined ? one.unit : 'length';
    const last = sized.at(-1);
    if (last && last.of === of && RANGE.test(before)) {
      last.until = value;
      continue;
    }
    if (last && last.of === of && scale !== undefined && SAME.test(before) && close(last.value, value))
      continue;
    const role: Role =
      one.limit !== undefined ||
      (sized.length > 0 && /[[(]\s*$/.test(before) && /^\s*(?:to|-|–|\]|\)|max|min)/.test(behind)) ||
      SHOULD.test(before) ||
      SHOULD_BEHIND.test(behind)
        ? 'should'
        : NOW.test(before)
          ? 'now'
          : WAS.test(before)
            ? 'was'
            : 'found';
    sized.push({ role, value, of, ...(one.limit ? { limit: one.limit } : {}) });
  }
  const should = sized.filter(({ role }) => role === 'should');
  let told: Beside | undefined;
  for (const spec of should)
    for (const one of sized) {
      if (one.role === 'should' || one.role === 'now' || one.of !== spec.of) continue;
      if (fits(one, spec)) told ??= 'as it should be';
      else return 'apart';
    }
  if (told) return told;
  const was = sized.find(({ role }) => role === 'was');
  const now = sized.find(({ role, of }) => role === 'now' && of === was?.of);
  return was && now && !close(was.value, now.value) ? 'put right' : undefined;
}

const close = (a: number, b: number): boolean => Math.abs(a - b) <= 0.03 * Math.max(Math.abs(a), Math.abs(b));

function fits(one: Sized, spec: Sized): boolean {
  const low = Math.min(spec.value, spec.until ?? spec.value);
  const high = Math.max(spec.value, spec.until ?? spec.value);
  const [least, most] = [
    Math.min(one.value, one.until ?? one.value),
    Math.max(one.value, one.until ?? one.value),
  ];
  if (spec.limit === 'min') return least >= low;
  if (spec.limit === 'max') return most <= high;
  // A figure that is meant to be met is met within a hand's breadth of a gauge.
  return least >= low * 0.96 && most <= high * 1.04;
}
