/** Numbers that name, date or count: they measure nothing, whatever stands behind them. */
import type { Reading } from './figure.ts';
import { isHour, isYear } from './hours.ts';
import { isNumberName } from './number-names.ts';
import { around, at, joins, type Token } from './tokens.ts';

const MONTH =
  /^(?:jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec)(?:uary|ruary|ch|il|e|y|ust|tember|ober|ember)?$/;
const NAMING =
  /^(?:order|orders|chapter|step|part|no|nr|number|numbers|type|size|jet|jets|page|pages|figure|photo|fig|table|series|mark|mk|grade|circuit|line|sae|class|dot|take|episode|item|model|wk|week|version|v|section|cyl|cylinder|invoice|grit|ref|p|pp|chassis|phone|tel|reg)$/;
/** These name with small numbers only: "hole 3", but "a plate 100 x 150". */
const SMALL_NAMING =
  /^(?:plate|room|needle|main|pilot|tag|pin|terminal|notch|hole|position|pos|stud|pot|frame|engine|key|box|shelf|drawer|lane|bay|lot|gear|wheel|door)$/;
/** Naming words that a measure may follow as well: they name only where no unit stands behind. */
const ORDINAL = /^(?:st|nd|rd|th|ths|nds|rds)$/;

/** A date, a time of day, a tyre, a telephone number: the token after the whole of it, or 0. */
export function shapeEnd(tokens: readonly Token[], i: number): number {
  return tokens[i]?.kind === 'number' ? shapeFrom(tokens, i) : 0;
}

function shapeFrom(tokens: readonly Token[], i: number): number {
  const t = (k: number): string => at(tokens, i + k);
  const glued = (k: number): boolean => joins(tokens, i + k);
  const number = (k: number): boolean => tokens[i + k]?.kind === 'number';
  if (/^[/.\-–]$/.test(t(1)) && t(1) === t(3) && number(2) && number(4) && [1, 2, 3, 4].every(glued)) {
    let k = 4;
    while (/^[/.\-–]$/.test(t(k + 1)) && glued(k + 1) && number(k + 2) && glued(k + 2)) k += 2;
    // "2.8/2.8/2.7" is a row of readings, "3/4/26" a day
    if (
      /^\d{1,4}$/.test(t(0)) &&
      /^\d{1,2}$/.test(t(2)) &&
      /^\d{1,4}$/.test(t(4)) &&
      (t(1) !== '/' || /^\d{4}$/.test(t(0)) || /^(?:\d\d|\d{4})$/.test(t(4)))
    ) {
      const day =
        t(1) !== '/' ||
        (Number(t(0)) <= 31 && Number(t(2)) <= 12 && /^(?:2\d|19\d\d|20\d\d)$/.test(t(4))) ||
        /^\d{4}$/.test(t(0));
      if (k === 4 && day) return i + 5;
    }
    if (k > 4 && t(1) === '-') return i + k + 1;
  }
  if (/\d[.,]\d+[.,]\d/.test(t(0)) && !/,\d{3}(?:\.\d+)?$|\.\d{3}(?:,\d+)?$/.test(t(0))) return i + 1;
  // "14:05", "7:30"; a ratio is told elsewhere
  if (
    t(1) === ':' &&
    glued(1) &&
    glued(2) &&
    /^[0-5]\d$/.test(t(2)) &&
    /^(?:[01]?\d|2[0-3])$/.test(t(0)) &&
    t(0) !== '1'
  ) {
    return t(3) === ':' && number(4) ? i + 5 : i + 3;
  }
  if (
    /^\d{1,2}(?:[.,]\d\d)?$/.test(t(0)) &&
    /^(?:am|pm|o'clock|o’clock|oclock)$/.test(t(1)) &&
    joins(tokens, i + 1, 1)
  )
    return i + 2;
  // "4.00-8", "145/80 R10"
  if (
    /^\d\.\d\d?$/.test(t(0)) &&
    /^[-–x×]$/.test(t(1)) &&
    joins(tokens, i + 1, 1) &&
    /^(?:[4-9]|1\d|2[01])$/.test(t(2)) &&
    joins(tokens, i + 2, 1) &&
    /00$|[2-9][05]$/.test(t(0)) &&
    !/^(?:mm|in|inch|inches|cm|"|m|bar|v|kg)$/.test(t(3))
  )
    return i + 3;
  if (/^1\d5$/.test(t(0)) && t(1) === '/' && number(2) && /^r?\d*$/.test(t(3))) return i + 3;
  if (/^\d{7,}$/.test(t(0)) || (/^0\d{2,}$/.test(t(0)) && number(1))) {
    let k = 1;
    while (number(k) && joins(tokens, i + k, 1)) k += 1;
    return i + k;
  }
  return 0;
}

/** Whether letters touch the number: "M8", "A14-22", "w/2"; currency codes and signs do not count, nor does "10x20". */
export function isPartOfName(tokens: readonly Token[], i: number): boolean {
  for (let k = i; k > 0 && joins(tokens, k); k--) {
    const before = tokens[k - 1];
    if (!before) return false;
    if (before.kind === 'word') {
      if (before.text === 'x' && k === i)
        return (
          !(k > 1 && tokens[k - 2]?.kind === 'number' && joins(tokens, k - 1)) || isPartOfName(tokens, k - 2)
        );
      return !/^(?:eur|gbp|usd|czk|jpy|chf|ca|abt|approx|about|to|at|and|is|of|was|from|or)$/.test(
        before.text,
      );
    }
    // "12V/30A"
    if (
      before.text === '/' &&
      k === i &&
      tokens[k - 2]?.kind === 'word' &&
      tokens[k - 3]?.kind === 'number' &&
      joins(tokens, k - 2)
    )
      return false;
    if (before.kind === 'number') return false;
    if (
      !/^[-/_.#\\]$/.test(before.text) ||
      (k === i && before.text !== '-' && before.text !== '/' && before.text !== '#' && before.text !== '_')
    )
      return false;
    if (before.text === '#') return true;
  }
  return false;
}

/** Whether a number without a unit is a name, a day or a count, so that no unit is lent to it. */
export function countsOrNames(tokens: readonly Token[], read: Reading): boolean {
  const after = joins(tokens, read.to, 1) ? at(tokens, read.to) : '';
  const before = joins(tokens, read.from, 1) ? at(tokens, read.from - 1) : '';
  if (ORDINAL.test(after) && joins(tokens, read.to)) return true;
  if (MONTH.test(after) || (after === 'of' && MONTH.test(at(tokens, read.to + 1)))) return true;
  if (MONTH.test(before) && !/^(?:may|mar)$/.test(before) && read.value <= 31) return true;
  if (
    /^(?:x|×)$/.test(after) &&
    (!/^\d|^\p{L}/u.test(at(tokens, read.to + 1)) || /^(?:m|\p{L}{2,})$/u.test(at(tokens, read.to + 1)))
  )
    return true;
  if (/^(?:x|×)$/.test(before) && joins(tokens, read.from) && tokens[read.from - 2]?.kind !== 'number')
    return true;
  if (
    /^(?:4\.6|4\.8|5\.6|5\.8|6\.8|8\.8|9\.8|10\.9|12\.9)$/.test(read.digits) &&
    (/^(?:m|bolt|bolts|grade|class|high|set|hex)$/.test(after) ||
      /^(?:bolt|bolts|grade|class|screws?|studs?)$/.test(before) ||
      (/^(?:marked|stamped)$/.test(before) && /^(?:8.8|10.9|12.9)$/.test(read.digits)))
  )
    return true;
  if (before === 'm' || before === '#' || before === '№') return true;
  if (Number.isInteger(read.value) && isNaming(tokens, read.from, read.value)) return true;
  if (after === "o'clock" || /^(?:am|pm)$/.test(after)) return true;
  if (read.pair?.oh && / (?:bearing|bearings|bearing's) /.test(around(tokens, read.from - 6, read.to + 3)))
    return true;
  // "2 at 10 thou and one of 5"
  if (
    after === 'at' &&
    Number.isInteger(read.value) &&
    read.value <= 12 &&
    !read.fraction &&
    startsNumber(tokens, read.to + 1)
  )
    return true;
  // "Home 15.25."
  if (
    /^(?:home|arrived|started|finished|left|set off|away)$/.test(before) &&
    /^(?:[01]?\d|2[0-3])\.[0-5]\d$/.test(read.digits) &&
    /^(?:|[.,;)])$/.test(after)
  )
    return true;
  // "hinge screws, three and three"
  if (
    before === ',' &&
    Number.isInteger(read.value) &&
    read.value <= 12 &&
    /^(?:screws|bolts|nuts|studs|washers|clips|gaskets|rivets|bulbs|fuses|bushes|seals|plugs|pins|springs|holes|bearings)$/.test(
      at(tokens, read.from - 2),
    )
  )
    return true;
  // "bolts are m six by sixteen"
  if (/^(?:by|x|×)$/.test(before) && at(tokens, read.from - 3) === 'm') return true;
  // A specific gravity has no unit
  if (
    read.decimal &&
    read.value > 1 &&
    read.value < 1.4 &&
    / (?:acid|gravity|hydrometer|sg|electrolyte) /.test(around(tokens, read.from - 6, read.from))
  )
    return true;
  // "phoned at 10.15"
  if (
    before === 'at' &&
    /^(?:[01]?\d|2[0-3])\.[0-5]\d$/.test(read.digits) &&
    / (?:phoned|rang|called|came|began|started|left|arrived|stopped|finished|knocked|off|home|club|him|her|them) at $/.test(
      around(tokens, read.from - 4, read.from),
    )
  )
    return true;
  if (isHour(tokens, read) || isHeadingNumber(tokens, read.from)) return true;
  // "6x 8.5 mm"
  if (/^(?:x|×)$/.test(after) && joins(tokens, read.to) && !joins(tokens, read.to + 1)) return true;
  // "a thirteen", "M10 x 70 set 8"
  if (!read.decimal && !read.fraction && !read.about) {
    if (
      /^an?$/.test(before) &&
      !/ (?:fuse|amp|amps) /.test(around(tokens, read.from - 7, read.from)) &&
      /^(?:|[.,;)!?]|and|or|it|it's|so|on|for|to|i|that|which|but|in|not)$/.test(after) &&
      read.value < 100
    )
      return true;
    if (
      /^(?:set|pack|qty|lot)$/.test(before) &&
      tokens[read.from - 2]?.kind === 'number' &&
      /^(?:|[.,;)])$/.test(after)
    )
      return true;
  }
  return isYear(tokens, read);
}

/** "### 1.2 Bearer". */
function isHeadingNumber(tokens: readonly Token[], from: number): boolean {
  if (tokens[from]?.gap === 3 && /^\d\.\d\d?$/.test(at(tokens, from)) && tokens[from + 1]?.kind === 'word')
    return true;
  let k = from - 1;
  while (at(tokens, k) === '#' && joins(tokens, k)) k -= 1;
  return at(tokens, k) === '#' && (tokens[k]?.gap ?? 3) >= 2;
}

export function isNaming(tokens: readonly Token[], from: number, value: number): boolean {
  let k = from - 1;
  // "fuse box: 8 A" names nothing, "box 8" does
  const listed = at(tokens, k) === ':';
  if (/^[.#:]$/.test(at(tokens, k))) k -= 1;
  // "12 V 5 W" has no version
  if (at(tokens, k) === 'v' && tokens[k - 1]?.kind === 'number') return false;
  if (
    /^(?:is|of)$/.test(at(tokens, k)) &&
    /^(?:number|size|type|grade|class|figure)$/.test(at(tokens, k - 1))
  )
    return true;
  return (
    (NAMING.test(at(tokens, k)) ||
      (!listed &&
        SMALL_NAMING.test(at(tokens, k)) &&
        value < 30 &&
        !/^(?:x|×|by)$/.test(at(tokens, from + 1)))) &&
    joins(tokens, from, 1)
  );
}

const startsNumber = (tokens: readonly Token[], i: number): boolean =>
  tokens[i]?.kind === 'number' || isNumberName(at(tokens, i));
