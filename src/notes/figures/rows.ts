/** "7.9 / 7.9 / 7.7 mm", "five to ten hundredths", "between fifty and sixty km/h": a unit said once, at the end of a row. */
import { type Candidate, known, NONE } from './figure.ts';
import { inFull } from './said.ts';
import { counts, isAlone } from './standing.ts';
import { at, joins, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

const SEPARATOR =
  /^(?:[-–—/,+&x×;|±()]|by|and|or|to|then|plus|minus|about|roughly|maybe|nearly|perhaps|around|till|until|up|even|sometimes|possibly|through|vs|versus|against|not|rather|than|instead|of)$/;
const LENGTHS = /^(?:mm|mil\?|cm|m|in|ft|thou|yd)$/;
const COUNTED =
  /^(?:hd|head|heads|headed|bolt|bolts|nut|nuts|screw|screws|stud|studs|plug|plugs|fuse|fuses|washer|washers|pin|pins|socket|spanner|setscrew|setscrews|bulb|bulbs|bits|holes|ring|rings|o-rings|hex|clip|clips|lengths|shim|shims)$/;

/** A thing that comes in numbers, as "bolts" in "six 10 mm bolts". */
export const isCounted = (word: string): boolean => COUNTED.test(word);

export function shareUnits(tokens: readonly Token[], all: readonly Candidate[]): void {
  for (let i = all.length - 2; i >= 0; i--) {
    const [a, b] = [all[i], all[i + 1]];
    if (!a || !b || a.unit !== '' || b.unit === 'ratio' || b.from - a.to > 4) continue;
    if (!known(b) && !(b.part !== undefined && b.part >= 8 && b.unit === '')) continue;
    const between = tokens.slice(a.to, b.from);
    // "20..25 mm"
    if (
      between.length > 0 &&
      between.every(({ text, gap }) => /^[.…]$/.test(text) && gap === 0) &&
      joins(tokens, b.from)
    ) {
      if (between.length > 1 || between[0]?.text === '…') share(a, b);
      continue;
    }
    if (
      between.some(
        ({ text, gap }, k) =>
          !SEPARATOR.test(text) || (gap >= 2 && k === 0 && !/^(?:and|or|to)$/.test(text)) || gap === 3,
      )
    )
      continue;
    if ((tokens[b.from]?.gap ?? 0) >= 2 && !/^(?:and|or|to)$/.test(between.at(-1)?.text ?? '')) continue;
    const words = between.map(({ text }) => text).join(' ');
    if (/^(?:x|×|by)$/.test(words)) {
      if (
        !(LENGTHS.test(b.unit) || (b.unit === 'W' && a.value > 2)) ||
        (Number.isInteger(a.value) && a.value <= 24 && COUNTED.test(at(tokens, b.to)))
      ) {
        a.unit = NONE;
        continue;
      }
    }
    if (
      /\b(?:against|not|rather|instead|of|even)\b/.test(words) &&
      !/\bnot\b|\brather than\b|\binstead of\b/.test(words)
    )
      continue;
    if (!isRow(tokens, a, b, words)) continue;
    share(a, b);
  }
}

/** "31 cm x 11", "60 euros, or 50 if I clean it": a unit said on the first of a row. */
export function shareForward(tokens: readonly Token[], all: readonly Candidate[]): void {
  for (let i = 1; i < all.length; i++) {
    const [a, b] = [all[i - 1], all[i]];
    if (
      !a ||
      !b ||
      b.unit !== '' ||
      !known(a) ||
      b.from - a.to > 3 ||
      (b.from === a.to && a.unit !== 'h' && a.unit !== 'ft') ||
      (tokens[b.from]?.gap ?? 3) > 1
    )
      continue;
    const words = tokens
      .slice(a.to, b.from)
      .map(({ text }) => text)
      .join(' ');
    const size =
      LENGTHS.test(a.unit) &&
      /^(?:x|×|by)$/.test(words) &&
      alike(a, b, 100) &&
      !COUNTED.test(at(tokens, b.to));
    const sum =
      MONEY.has(a.unit) &&
      /^(?:, or|or|, then|, not|not|, down to|down to|, up to)$/.test(words) &&
      alike(a, b, 4) &&
      b.value > 4 &&
      !counts(tokens, b);
    // "an hour and twenty", "5 h 40"
    const minutes =
      a.unit === 'h' &&
      Number.isInteger(a.value) &&
      Number.isInteger(b.value) &&
      b.value >= 5 &&
      b.value < 60 &&
      (words === 'and' || words === '') &&
      b.value % 5 === 0 &&
      !counts(tokens, b);
    // "three foot six"
    const inches =
      a.unit === 'ft' && Number.isInteger(a.value) && words === '' && b.value < 12 && !counts(tokens, b);
    const tolerance = /^(?:±|\+ \/ -|\+ -|plus (?:or )?minus)$/.test(words) && b.value < a.value;
    const outOf = /(?:^| )out of$/.test(words) && a.unit === 'teeth';
    const perhaps =
      /^(?:,? ?(?:or )?(?:maybe|perhaps|nearly|possibly)|or)$/.test(words) &&
      alike(a, b, 3) &&
      !counts(tokens, b) &&
      a.unit !== 'ratio' &&
      !MONEY.has(a.unit);
    const instead =
      /^(?:now )?(?:instead of|rather than|down from|up from|and not)$/.test(words) &&
      alike(a, b, 10) &&
      !counts(tokens, b);
    if (!size && !sum && !tolerance && !minutes && !inches && !perhaps && !instead && !outOf) continue;
    b.unit = minutes ? 'min' : inches ? 'in' : a.unit;
    b.shared = true;
    b.carried = true;
  }
}

/** "between one and three", once one of the two has its unit from the words around. */
export function shareAlong(tokens: readonly Token[], all: readonly Candidate[]): void {
  for (let i = 1; i < all.length; i++) {
    const [a, b] = [all[i - 1], all[i]];
    if (!a || !b || b.from - a.to !== 1 || (tokens[b.from]?.gap ?? 3) > 1) continue;
    const between = at(tokens, a.to);
    const pair =
      /^(?:to|or|-|–|\/|vs|v)$/.test(between) ||
      (between === 'and' && (at(tokens, a.from - 1) === 'between' || isAlone(tokens, a))) ||
      (between === ',' && !a.word && !b.word);
    if (!pair || counts(tokens, b)) continue;
    const [from, to] =
      a.carried && known(a) && b.unit === '' ? [a, b] : b.carried && known(b) && a.unit === '' ? [b, a] : [];
    if (!from || !to || to.fraction || MONEY.has(from.unit)) continue;
    // "two to five", where five are hundredths
    const part =
      from.part !== undefined && from.part >= 10 && from.value < 1 && to.value >= 1 ? from.part : 1;
    if (!alike({ ...to, value: to.value / part }, { ...from, part: 1 }, 8)) continue;
    if (part > 1) {
      to.value /= part;
      to.digits = inFull(to.value);
      to.part = part;
    }
    to.unit = from.unit;
    to.shared = to.carried = true;
  }
}

function isRow(tokens: readonly Token[], a: Candidate, b: Candidate, words: string): boolean {
  const before = at(tokens, a.from - 1);
  if (/^(?:±|plus (?:or )?minus|\+ \/ -|\+ -)$/.test(words)) return true;
  const strict =
    /^(?:to|or|-|–|—|\/|till|until|through|about to|up to|or (?:maybe|perhaps|even|about|possibly|sometimes)|to (?:about|maybe|nearly|perhaps))$/.test(
      words,
    );
  // "two three mil", but not "four ten mil nuts"
  if (words === '')
    return (
      a.word &&
      b.word &&
      Number.isInteger(a.value) &&
      a.value > 1 &&
      b.value > a.value &&
      b.value <= a.value * 2 &&
      !/^(?:the|of|all)$/.test(before) &&
      !isCounted(at(tokens, b.to))
    );
  if (words === '/' && a.fraction) return false;
  if (MONEY.has(b.unit) || b.unit === 'pounds?')
    return strict && alike(a, b, 6) && !(a.word && a.value === 1 && words !== 'or');
  if (words === '+' || words === 'plus') return false;
  if (strict)
    return alike(a, b, b.value === 0 ? Number.POSITIVE_INFINITY : 40) || b.value < 0 || a.value === 0;
  const counts = Number.isInteger(a.value) && a.value <= 12 && !a.decimal && !a.fraction;
  if (/^and (?:about|roughly|maybe|nearly)$/.test(words) && a.word && a.value <= 4) return false;
  if (/^(?:,|and|, and|and then|then|&)$/.test(words) && counts) {
    if (before === 'between' || (/^(?:x|×|by|,|\/)$/.test(before) && !(a.word && a.value <= 4)))
      return alike(a, b, 5);
    if (
      /^(?:turn|click|teeth|pounds\?|week|d|h|min)$/.test(b.unit) &&
      !/^(?:between|front|rear|left|right)$/.test(before)
    )
      return false;
    if (
      /^(?:need|have|had|has|of|the|these|those|all|both|are|want|wanted|bought|got|fit|fitted|only|other|are|with|for|last|first|ordered|one)$/.test(
        before,
      )
    )
      return false;
    if (a.value === 1 && a.word) return false;
    return Number.isInteger(b.value) && !b.fraction
      ? alike(a, b, 3) && (!a.word || a.value > 4)
      : !a.word && a.value > 4 && alike(a, b, 1.5);
  }
  if (/and/.test(words) && /^(?:all|both|these|those|of)$/.test(before)) return false;
  // "ordered for 12.50, and 60 km"
  if (/,/.test(words) && /\.\d\d$/.test(a.digits) && !b.decimal) return false;
  return alike(a, b, 8);
}

/** Values of one row are of one size. A part lends itself: in "five to ten hundredths" both are hundredths. */
function alike(a: Candidate, b: Candidate, times: number): boolean {
  const own =
    b.part !== undefined && b.part >= 8 && Number.isInteger(a.value) && !a.fraction
      ? b.value * b.part
      : b.value;
  const scale = Math.abs(a.value / own);
  return times === Number.POSITIVE_INFINITY || (scale <= times && scale >= 1 / times);
}

function share(a: Candidate, b: Candidate): void {
  if (
    b.part !== undefined &&
    a.part === undefined &&
    !a.decimal &&
    a.value >= 1 &&
    (b.part >= 10 || (b.part >= 8 && a.value < b.part && b.value < 1)) &&
    b.value < 1
  ) {
    a.value /= b.part;
    a.digits = inFull(a.value);
    a.part = b.part;
  }
  a.unit = b.unit;
  a.shared = true;
}
