/** "seal was four ninety", "5,90 post", "eighteen for freight": a sum without its currency, where the words pay for something. */
import { type Candidate, known } from './figure.ts';
import type { Leaning } from './leaning.ts';
import { around, at, joins, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

const BEFORE =
  /^(?:cost|costs|costing|paid|pay|charged|price|priced|post|postage|freight|carriage|@|each|for|spent|total|totals|totalled|sold|asked|asking|wanted|delivery|duty|customs|fee|plus|\+|bill|bought|another|to|is|was|were|at|only|about|be|came|just|nearly|and|,|:|got|shipping|of|with|that's|thats|it's|its|comes|makes|x|×|\()$/;
const AFTER =
  /^(?:each|ea|apiece|post|posted|postage|freight|carriage|delivery|delivered|duty|the|for|from|a|all|incl|inclusive|plus|\+|and|per|pair|lot|shipping|odd|[.,;)]|so|to|customs|fee|p|on|at|in|altogether|together|exactly|all|that|i|which|he|she|they|but)?$/;
const PAYING =
  / (?:paid|pay|cost|costs|costing|price|priced|bought|buy|buying|post|postage|posted|charged|charge|bill|spent|spend|sold|selling|freight|carriage|delivered|delivery|total|shipping|cheap|ordered|order|ea|apiece|customs|duty|fee|refund|receipt|invoice|budget|money|worth|owe|owes|change|@) /;
const MEASURE =
  / (?:mm|gauge|micrometer|mike|caliper|calliper|vernier|bore|clearance|play|gap|volts|thread|measures|measured|reads|torque|limit|diameter|pressure|bar|o'clock|half past|clock|evening|morning|wide|long|thick) /;

/** A sum takes the currency of the sum beside it, else that of the text. */
export function settleSums(tokens: readonly Token[], all: readonly Candidate[], leaning: Leaning): void {
  for (const [i, one] of all.entries()) {
    if (one.unit !== '' || one.fraction || one.value <= 0 || one.part !== undefined) continue;
    const beside = neighbour(tokens, all, i);
    const currency = namedBehind(tokens, one) || (beside?.unit ?? leaning.money);
    if (!currency || !isSum(tokens, one, beside)) continue;
    one.unit = currency;
    one.shared = true;
    one.carried = true;
    if (one.pair && currency !== 'JPY') {
      one.value = one.pair.high + one.pair.low / 100;
      one.digits = one.value.toFixed(2);
      one.decimal = true;
    }
  }
}

/** "31.20 to the mount people in pounds". */
function namedBehind(tokens: readonly Token[], one: Candidate): string {
  const found =
    / in (pounds|sterling|euros|dollars|crowns|yen|czech crowns)\b/.exec(
      around(tokens, one.to, one.to + 8),
    )?.[1] ?? '';
  return found === '' ? '' : (IN_WORDS[found] ?? '');
}

const IN_WORDS: Readonly<Record<string, string>> = {
  pounds: 'GBP',
  sterling: 'GBP',
  euros: 'EUR',
  dollars: 'USD',
  crowns: 'CZK',
  'czech crowns': 'CZK',
  yen: 'JPY',
};

function neighbour(tokens: readonly Token[], all: readonly Candidate[], i: number): Candidate | undefined {
  const one = all[i];
  let best: { far: number; one: Candidate } | undefined;
  for (const way of [-1, 1])
    for (let k = i + way, seen = 0; one && seen < 4; k += way, seen++) {
      const other = all[k];
      if (!other) break;
      const far = way < 0 ? one.from - other.to : other.from - one.to + 4;
      if (far > 24) break;
      if (!known(other) || !MONEY.has(other.unit)) continue;
      if (!best || far < best.far) best = { far, one: other };
      break;
    }
  void tokens;
  return best?.one;
}

function isSum(tokens: readonly Token[], one: Candidate, beside: Candidate | undefined): boolean {
  const cents =
    /\.\d\d$/.test(one.digits) ||
    (one.pair !== undefined && one.pair.low >= 5 && Number.isInteger(one.pair.low) && !one.pair.oh);
  const before = at(tokens, one.from - 1);
  const after = joins(tokens, one.to, 1) ? at(tokens, one.to) : '';
  const near = around(tokens, one.from - 10, one.to + 9);
  if (MEASURE.test(around(tokens, one.from - 6, one.to + 5))) return false;
  const freight = /^(?:post|postage|freight|carriage|delivery|shipping|duty|customs)$/;
  const posted =
    freight.test(after) || (after === 'for' && [1, 2].some((k) => freight.test(at(tokens, one.to + k))));
  if (posted) return one.decimal || cents || beside !== undefined || PAYING.test(near);
  if (cents && !one.pair)
    return (
      PAYING.test(near) ||
      (beside !== undefined && BEFORE.test(before)) ||
      /^(?:@|each|for|paid)$/.test(before) ||
      /^(?:each|ea|apiece)$/.test(after)
    );
  if (cents) {
    const costed = PAYING.test(near);
    if (costed && /^(?:was|cost|paid|for|at|@)$/.test(before)) return true;
    const close =
      beside !== undefined && Math.min(Math.abs(one.from - beside.to), Math.abs(beside.from - one.to)) < 9;
    return (close || ((costed || beside !== undefined) && BEFORE.test(before))) && AFTER.test(after);
  }
  if (one.decimal) return false;
  if (/^(?:@|cost|costs|paid)$/.test(before) && !/s$/.test(after)) return true;
  if (/^(?:each|ea|apiece)$/.test(after)) return PAYING.test(near) && one.value > 1;
  const odd = at(tokens, one.to) === 'odd';
  return (
    (odd ||
      (/^(?:for|plus|about|be|was|another|of|only)$/.test(before) &&
        /^(?:[.,;)]|the|so|plus|and|for)?$/.test(after) &&
        one.value >= 5)) &&
    / (?:paid|cost|costs|price|bill|spent|sold|budget|total) /.test(near) &&
    (odd || !/^(?:and|the)$/.test(after) || beside !== undefined)
  );
}
