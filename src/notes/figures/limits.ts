/** "about", and what is a limit: told by the few words before and behind a figure. */
import type { Candidate } from './figure.ts';
import { at, joins, type Token } from './tokens.ts';

const ABOUT =
  /^(?:about|around|roughly|abt|approx|approximately|nearly|almost|near|ca|circa|say|some|~|≈|maybe|perhaps|probably)$/;
const ABOUT_AFTER = /^(?:ish|odd|thereabouts|approx|approximately|roughly|about)$/;

export function roughly(tokens: readonly Token[], one: Candidate): boolean {
  const before = at(tokens, one.from - 1) === '.' ? at(tokens, one.from - 2) : at(tokens, one.from - 1);
  if (joins(tokens, one.from, 2) && ABOUT.test(before)) return true;
  const [next, beyond] = [at(tokens, one.to), at(tokens, one.to + 1)];
  if (/^(?:ish|odd)$/.test(at(tokens, one.to - 1)) || /^(?:ish|odd)$/.test(at(tokens, one.to - 2)))
    return true;
  if (next === '-' && beyond === 'ish') return true;
  if (next === 'or' && beyond === 'so') return true;
  return joins(tokens, one.to, 1) && ABOUT_AFTER.test(next) && next !== 'about';
}

const LEAST = /^(?:min|minimum|least|less)$/;
const MOST = /^(?:max|maximum|most|more|over)$/;

/** Walks back over what may stand between: "min", "limit is", "not more than", "max. of". */
export function limitOf(tokens: readonly Token[], one: Candidate): Candidate['limit'] | undefined {
  for (let k = one.from - 1, steps = 0; k >= 0 && steps < 4; k--, steps++) {
    if (!joins(tokens, k + 1, 1)) break;
    const word = at(tokens, k);
    const before = at(tokens, k - 1);
    if (word === 'than' && LEAST.test(before) && /^(?:no|not|never)$/.test(at(tokens, k - 2))) return 'min';
    if (word === 'than' && MOST.test(before) && /^(?:no|not|never)$/.test(at(tokens, k - 2))) return 'max';
    if (word === 'least' && before === 'at') return 'min';
    if (word === 'most' && before === 'at') return 'max';
    if (word === 'over' && /^(?:not|never)$/.test(before)) return 'max';
    if (word === 'to' && before === 'up')
      return /^(?:|is|be|allows|allowed|allow|limit|anything|wear|can|[,:(])$/.test(at(tokens, k - 2))
        ? 'max'
        : undefined;
    if (/^(?:min|minimum)$/.test(word)) return 'min';
    if (/^(?:max|maximum)$/.test(word)) return 'max';
    if (/^(?:limit|limits)$/.test(word)) return 'limit';
    if (!/^(?:is|of|at|about|says|said|was|:|=|\.|a|the|be|it|wear)$/.test(word)) break;
  }
  const after = joins(tokens, one.to, 1) ? at(tokens, one.to) : '';
  const then = at(tokens, one.to + 1);
  if (/^(?:min|minimum)$/.test(after) && tokens[one.to + 1]?.kind !== 'number') return 'min';
  if (/^(?:max|maximum|tops)$/.test(after) && tokens[one.to + 1]?.kind !== 'number') return 'max';
  if (after === 'limit') return 'limit';
  if (after === 'or' && then === 'more') return 'min';
  if (after === 'or' && then === 'less') return 'max';
  if (after === 'at' && /^(?:most|least)$/.test(at(tokens, one.to + 2)) && then === 'the')
    return at(tokens, one.to + 2) === 'most' ? 'max' : 'min';
  return undefined;
}
