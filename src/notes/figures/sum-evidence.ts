/** What speaks for a bare number being a sum, and what against it. */
import { isBargained } from './bargains.ts';
import { type Candidate, known } from './figure.ts';
import type { Leaning } from './leaning.ts';
import { counts } from './standing.ts';
import { around, at, joins, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

const BEFORE =
  /^(?:cost|costs|costing|paid|pay|charged|price|priced|post|postage|freight|carriage|@|each|for|spent|total|totals|totalled|sold|asked|asking|wanted|delivery|duty|customs|fee|plus|\+|bill|bought|another|to|is|was|were|at|only|about|be|came|just|nearly|and|,|:|got|shipping|of|with|that's|thats|it's|its|comes|makes|x|×|\()?$/;
const AFTER =
  /^(?:each|ea|apiece|post|posted|postage|freight|carriage|delivery|delivered|duty|the|for|from|a|all|incl|inclusive|plus|\+|and|per|pair|lot|shipping|odd|[.,;)=|]|so|to|customs|fee|p|on|at|in|altogether|together|exactly|all|that|i|which|he|she|they|but)?$/;
const PAYING =
  / (?:paid|pay|cost|costs|costing|price|priced|bought|buy|buying|post|postage|posted|charged|charge|bill|spent|spend|sold|selling|freight|carriage|delivered|delivery|total|shipping|cheap|ordered|order|ea|apiece|customs|duty|fee|refund|receipt|invoice|budget|money|worth|owe|owes|change|shop|stall|ironmonger|counter|@) /;
const MEASURE =
  / (?:mm|gauge|micrometer|mike|caliper|calliper|vernier|bore|clearance|play|gap|volts|thread|measures|measured|reads|torque|limit|diameter|pressure|bar|o'clock|half past|clock|evening|morning|wide|long|thick|gravity|hydrometer|oversize|bored|barrel|points|gaps|shim|piston|should) /;
/** Where a reading is taken: an item told by one of these is no thing bought, unless it is paid for. */
const TAKEN_AT = / (?:left|right|top|bottom|idle|says|wants|middle|centre) /;
const FREIGHT =
  /^(?:post|postage|freight|carriage|carr|delivery|shipping|duty|customs|airmail|courier|handling|crate|crating|packing)$/;
const EACH = /^(?:each|ea|apiece|pc|pcs)$/;
const PER_LOT =
  /^ (?:a|the|per|for a|for the|\/) (?:metre|meter|litre|liter|foot|pair|set|tin|box|bag|lot|kilo|yard|piece|bottle|can|roll|pack|m) /;
const CLOCK =
  /^(?:at|till|until|from|by|shut|shuts|open|opens|close|closes|since|work|works|worked|before|after)$/;

interface Evidence {
  beside: Candidate | undefined;
  /** Its currency is named behind it. */
  named: boolean;
  leaning: Leaning;
}

export function isSum(
  tokens: readonly Token[],
  all: readonly Candidate[],
  i: number,
  { beside, named, leaning }: Evidence,
): boolean {
  const one = all[i];
  if (!one) return false;
  const written = /\.\d\d$/.test(one.digits) && !one.word && one.value >= 0.2;
  const cents =
    written ||
    (one.pair !== undefined && one.pair.low >= 5 && Number.isInteger(one.pair.low) && !one.pair.oh);
  const before = joins(tokens, one.from, 2) ? at(tokens, one.from - 1) : '';
  const after = joins(tokens, one.to, 1) ? at(tokens, one.to) : '';
  const near = around(tokens, one.from - 10, one.to + 9);
  const paying = PAYING.test(near);
  const each =
    EACH.test(after) ||
    (/^(?:a|the|per|for|\/)$/.test(after) && PER_LOT.test(around(tokens, one.to, one.to + 3)));
  if (!written && !beside && !named && !paying && !each) return false;
  // "2 at 4.10"
  if (
    before === 'at' &&
    written &&
    tokens[one.from - 2]?.kind === 'number' &&
    leaning.money !== '' &&
    endsItem(after)
  )
    return !MEASURE.test(near);
  const priced = before === 'at' && beside !== undefined && beside.from - one.to < 5 && beside.from > one.to;
  if (written && !priced && CLOCK.test(before) && !each && !FREIGHT.test(after) && isTime(one)) return false;
  // "6.-"
  if (after === '.' && at(tokens, one.to + 1) === '-' && joins(tokens, one.to) && joins(tokens, one.to + 1))
    return true;
  if (before === '@' && (written || beside !== undefined || paying)) return true;
  if (each && written && (beside !== undefined || leaning.money !== '')) return true;
  if (isBargained(tokens, all, i)) return true;
  // "the post was seven"
  if (
    (beside !== undefined || leaning.money !== '') &&
    / (?:post|postage|carriage|freight|delivery|shipping|duty) (?:was|is|at|another|came to) $/.test(
      around(tokens, one.from - 3, one.from),
    )
  )
    return true;
  const measured = MEASURE.test(around(tokens, one.from - 6, one.to + 5));
  // "the paper says 0.05 to 0.10"
  const ranged = /^(?:to|or|-|–)$/.test(before) && tokens[one.from - 2]?.kind === 'number';
  if (
    written &&
    !ranged &&
    (beside !== undefined || named || (leaning.prices && one.value >= 1)) &&
    endsItem(after)
  )
    if (
      !MEASURE.test(item(tokens, one)) &&
      (paying || !TAKEN_AT.test(item(tokens, one))) &&
      !likeMeasure(all, i)
    )
      return true;
  if (measured || (written && likeMeasure(all, i))) return false;
  const posted =
    FREIGHT.test(after) ||
    / (?:with|including|incl|plus) (?:the )?(?:post|postage|carriage|freight|delivery) /.test(
      around(tokens, one.to, one.to + 3),
    ) ||
    (beside !== undefined &&
      /^ (?:for (?:them|him|her) )?to (?:send|fly|post|ship|deliver|freight|buy|hire|rent) /.test(
        around(tokens, one.to, one.to + 4),
      )) ||
    (after === 'for' && [1, 2].some((k) => FREIGHT.test(at(tokens, one.to + k))));
  if (posted) return one.decimal || cents || beside !== undefined || paying;
  if (written)
    return (
      paying ||
      (beside !== undefined && BEFORE.test(before)) ||
      /^(?:@|each|for|paid)$/.test(before) ||
      EACH.test(after)
    );
  if (cents) {
    // "it's meant to be nine hundred and this one is eight fifty"
    if (!paying && [all[i - 1], all[i + 1]].some((other) => other !== undefined && plainLike(other, one)))
      return false;
    if ((paying || each) && /^(?:was|is|cost|paid|for|at|@)$/.test(before)) return true;
    const close =
      beside !== undefined && Math.min(Math.abs(one.from - beside.to), Math.abs(beside.from - one.to)) < 9;
    return (close || ((paying || beside !== undefined) && BEFORE.test(before))) && AFTER.test(after);
  }
  if (one.decimal) return false;
  if (/^(?:@|cost|costs|paid)$/.test(before) && !/s$/.test(after)) return true;
  if (each) return paying && one.value > 1;
  return isRound(tokens, one, near, beside);
}

/** "it will be forty odd", "another fourteen and the post": a sum without cents. */
function isRound(
  tokens: readonly Token[],
  one: Candidate,
  near: string,
  beside: Candidate | undefined,
): boolean {
  // "a bag of fifty"
  if (
    / (?:bag|box|pack|packet|tin|can|roll|set|card|strip|lot)s? of $/.test(
      around(tokens, one.from - 2, one.from),
    )
  )
    return false;
  // "0.80 EUR for ten"
  if (at(tokens, one.from - 1) === 'for' && beside && one.from - beside.to === 1) return false;
  const odd = at(tokens, one.to) === 'odd';
  const [before, after] = [at(tokens, one.from - 1), at(tokens, one.to)];
  if (odd && beside && one.from - beside.to < 12) return true;
  return (
    (odd ||
      (/^(?:for|plus|about|be|was|another|of|only)$/.test(before) &&
        /^(?:[.,;)]|the|so|plus|and|for)?$/.test(joins(tokens, one.to, 1) ? after : '') &&
        one.value >= 5)) &&
    / (?:paid|cost|costs|price|bill|spent|sold|budget|total) /.test(near) &&
    (odd || !/^(?:and|the)$/.test(after) || beside !== undefined) &&
    !counts(tokens, one)
  );
}

const plainLike = (other: Candidate, one: Candidate): boolean =>
  other.unit === '' &&
  !other.pair &&
  Math.abs(other.value / one.value - 1) < 0.3 &&
  Math.abs(other.from - one.from) < 12;

/** "18.00" may be an hour, "7.80" none. */
const isTime = (one: Candidate): boolean => one.value < 24 && Number(one.digits.split('.')[1] ?? '99') < 60;

const endsItem = (after: string): boolean => /^(?:[.,;)=|+&]|each|ea|plus|and|of|so|total|all)?$/.test(after);

/** The words of the item that a sum ends: "tin of grease 6.50". */
function item(tokens: readonly Token[], one: Candidate): string {
  let k = one.from - 1;
  for (let steps = 0; steps < 9 && k >= 0 && joins(tokens, k + 1, 1); steps++, k--)
    if (/^[.,;:|(+]$/.test(at(tokens, k))) break;
  return around(tokens, k + 1, one.to + 2);
}

/** Whether the next figure before it is a like measure of something else: "9.20 mm left, 8.80 right". */
function likeMeasure(all: readonly Candidate[], i: number): boolean {
  const one = all[i];
  const places = (of: Candidate): number => of.digits.split('.')[1]?.length ?? 0;
  const like = all.slice(Math.max(0, i - 40), i + 40).filter((other) => {
    if (!one || other === one || !known(other) || other.fraction) return false;
    return places(other) === 2 && Math.abs(Math.log(one.value / Math.abs(other.value))) < 0.03;
  });
  if (like.length > 0 && like.every(({ unit }) => !MONEY.has(unit))) return true;
  const next = all[i + 1];
  // "0.35, should be 0.4"
  if (one && next?.unit === '' && next.decimal && places(next) !== 2 && next.from - one.to < 6) return true;
  const before = all.slice(Math.max(0, i - 3), i).findLast(known);
  const behind = all.slice(i + 1, i + 4).find(known);
  return [before, behind].some((other) => {
    if (!one || !other?.decimal || MONEY.has(other.unit)) return false;
    const far = Math.min(Math.abs(one.from - other.to), Math.abs(other.from - one.to));
    return (
      far < (places(other) === 2 ? 12 : 6) && Math.abs(Math.log(one.value / Math.abs(other.value))) < 0.5
    );
  });
}
