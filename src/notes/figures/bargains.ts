/** "he asked 45 EUR, took 30", "eighty quid and another nine to have it cut": a bare sum that is told against the sum before it. */
import { type Candidate, known } from './figure.ts';
import { counts } from './standing.ts';
import { around, at, joins, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

const DEALS =
  / (?:(?:gave|paid|offered|gives|pay) (?:him|her|them|you|me)|took|takes|take|said|says|say|offered|asked|shook on|shook hands on|settled on|settled for|agreed on|agreed|let it go for|went for|go for|got it for|got them for|had it for|have it for|made it|call it|down to|came to|came down to|fee to|rest to|another for|a pair for|one for|them for|it for|the lot for|both for|mine for|sent|not|instead of|of the|out of the) $/;
const REACH = 18;

export function isBargained(tokens: readonly Token[], all: readonly Candidate[], i: number): boolean {
  const one = all[i];
  if (!one || one.fraction || counts(tokens, one)) return false;
  const haggled = / \p{L}+ (?:said|offered|asked|wanted|gave) (?:him |her |them |me )?$/u;
  const sum =
    sumBefore(all, i) ??
    (haggled.test(around(tokens, one.from - 3, one.from)) ? sumBehind(all, i) : undefined);
  if (!sum) return false;
  const lead = around(tokens, one.from - 3, one.from);
  const after = joins(tokens, one.to, 1) ? at(tokens, one.to) : '';
  const ends =
    /^(?:[.,;)!?]|and|to|for|in|on|so|but|with|w|cash|because|since|then|which|i|he|she|they|we)?$/.test(
      after,
    );
  if (!ends) return false;
  const size = one.value / sum.value;
  if (/ (?:and|was|be|is|for|plus|then|\+|,) (?:yet )?another $/.test(lead)) return size < 3;
  if (/^(?:plus|\+)$/.test(at(tokens, one.from - 1)) && one.from - sum.to < 3) return size < 3;
  // "forty four pounds and the tube six"
  if (/ and the \S+ $/.test(lead) && one.from - sum.to < 5) return size < 2;
  // "a set at eleven euros and plates are thirty eight"
  if (
    / and (?:the )?\S+ (?:are|is|was|were|cost) $/.test(around(tokens, one.from - 4, one.from)) &&
    one.from - sum.to < 7
  )
    return size > 0.1 && size < 6 && (!one.word || one.value >= 5);
  if (/^ (?:all in|altogether|in total|the lot|all told) /.test(around(tokens, one.to, one.to + 2)))
    return size < 40;
  if (size < 0.3 || size > 3 || (one.word && one.value < 5)) return false;
  // "sold it for 35 euros and got 15 for the brass"
  if (/^(?:got|gave|fetched|made)$/.test(at(tokens, one.from - 1)) && after === 'for') return true;
  if (/^(?:wanted|asked|wants|asks)$/.test(at(tokens, one.from - 1)) && after === 'for') return true;
  // "knocked down from 40 EUR to 32"
  if (at(tokens, one.from - 1) === 'to' && one.from - sum.to < 3 && at(tokens, sum.from - 1) === 'from')
    return true;
  return DEALS.test(around(tokens, one.from - 4, one.from));
}

/** "He said 90, I said 55, and we met at 65 EUR." */
function sumBehind(all: readonly Candidate[], i: number): Candidate | undefined {
  const one = all[i];
  for (let k = i + 1; one && k < all.length; k++) {
    const other = all[k];
    if (!other || other.from - one.to > 2 * REACH) return undefined;
    if (known(other)) return MONEY.has(other.unit) ? other : undefined;
  }
  return undefined;
}

/** The sum before, with nothing else measured between. */
function sumBefore(all: readonly Candidate[], i: number): Candidate | undefined {
  const one = all[i];
  for (let k = i - 1; one && k >= 0; k--) {
    const other = all[k];
    if (!other || one.from - other.to > REACH) return undefined;
    if (known(other)) return MONEY.has(other.unit) ? other : undefined;
  }
  return undefined;
}
