/** Every figure of a text: digits and words, with the unit that it was said in. Nothing is converted and no unit is guessed between two that differ. */
import { saidAt, type Word } from './number-words.ts';
import { MONEY, SIGNS, UNIT_WORDS } from './unit-words.ts';

export interface Figure {
  /** Offsets in the text. */
  start: number;
  end: number;
  value: number;
  /** "mm", "EUR", "ratio", "turn" … ; empty where none was said. */
  unit: string;
  /** "min", "max" or "limit" where a limit is meant. */
  limit?: 'min' | 'max' | 'limit';
  about?: boolean;
  /** The unit stands on another figure of the row. */
  shared?: boolean;
  /** Decimals as written, so that print keeps them. */
  digits: string;
}

export interface Habits {
  /** Which gallon the series means, where series.yaml says so. */
  gallon?: 'imperial' | 'US';
  /** Unit of a plain speed: "fifty-five on the level". */
  speed?: 'km/h' | 'mph';
}

interface Raw extends Figure {
  word: boolean;
  part?: number;
  decimal: boolean;
  bare: boolean;
}

const TOKEN = /[a-z]+(?:['’][a-z]+)?|\d+(?:[.,]\d+)*|[½¼¾⅓⅔⅛⅜⅝⅞]/g;
const VULGAR: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};
const NUMBERISH =
  /\d|[½¼¾⅓⅔⅛⅜⅝⅞]|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|half|quarter|point|tenth|inch|gallon|pint|nought|eighths?)\b/i;
/** Before a number that counts or names, and measures nothing. */
const NAMING =
  /(?:\b(?:order|chapter|step|part|no|nr|number|type|size|jet|week|wk|page|figure|photo|fig|table|series|mark|grade|circuit|line|sae|class|gear|cylinder)\.?\s*(?:is |of )?#?|[#&]|\bm|\bv)$/i;
const MONTH = /^\s*(?:st|nd|rd|th)?\s*(?:of\s+)?(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\b/i;

export function findFigures(text: string, habits: Habits = {}): Figure[] {
  if (!NUMBERISH.test(text)) return [];
  const lower = text.toLowerCase().replace(/[\u2044]/g, '/');
  const words: Word[] = [];
  TOKEN.lastIndex = 0;
  for (let found = TOKEN.exec(lower); found; found = TOKEN.exec(lower))
    words.push({ text: found[0], start: found.index, end: found.index + found[0].length });
  const raws: Raw[] = [];
  for (let i = 0; i < words.length; ) {
    const raw = rawAt(text, lower, words, i);
    if (!raw) {
      i += 1;
      continue;
    }
    raws.push(raw);
    while (i < words.length && (words[i]?.start ?? 0) < raw.end) i += 1;
  }
  ratios(lower, raws);
  shareUnits(lower, raws);
  settle(text, lower, raws, habits);
  return raws
    .filter(({ unit }) => unit !== '' && unit !== 'none')
    .map(({ word: _w, part: _p, decimal: _d, bare: _b, ...figure }) => figure);
}

function rawAt(text: string, lower: string, words: readonly Word[], i: number): Raw | undefined {
  const word = words[i];
  if (!word) return undefined;
  const before = lower.slice(Math.max(0, word.start - 24), word.start);
  let end = word.end;
  let value: number;
  let digits = '';
  let said = false;
  let part: number | undefined;
  if (/^\d/.test(word.text)) {
    if (/[a-z]$/.test(before) && !/\b(?:eur|gbp|usd|czk|jpy|x)$/.test(before)) return undefined;
    const read = digitsAt(lower, word);
    if (!read) return undefined;
    ({ value, end, digits } = read);
  } else if (word.text in VULGAR) {
    value = VULGAR[word.text] ?? 0;
    digits = String(value);
  } else {
    const phrase = contiguous(lower, words, i);
    const found = saidAt(phrase, 0);
    if (!found) {
      const one = /^an?$/.test(word.text)
        ? /^an? (inch(?: and (?:an? (half|quarter)|three quarters))?|gallon(?: and an? (half|quarter))?|pint(?: and an? (half|quarter))?|lit(?:re|er)(?: and an? (half|quarter))?|turn(?: and an? (half|quarter))?|millimet(?:re|er)(?: and an? (half|quarter))?|degree|thou|quid|fiver|tenner|tenth|hundredth|met(?:re|er)|ton|kilo)(?![a-z])/.exec(
            lower.slice(word.start, word.start + 50),
          )
        : null;
      if (!one) return undefined;
      const said1 = one[1] ?? '';
      const add = /three quarters/.test(said1)
        ? 0.75
        : /half/.test(said1)
          ? 0.5
          : /quarter/.test(said1)
            ? 0.25
            : 0;
      if (/^(?:litre|liter|met)/.test(said1) && /(?:€|eur|gbp|czk|\d|euros?|pounds?|cents?)\s*$/.test(before))
        return undefined;
      const noun = said1.split(' ')[0] ?? '';
      const unit = /^in/.test(noun)
        ? 'in'
        : /^ga/.test(noun)
          ? 'gal'
          : /^pi/.test(noun)
            ? 'pt'
            : /^li/.test(noun)
              ? 'L'
              : /^tu/.test(noun)
                ? 'turn'
                : /^mi/.test(noun)
                  ? 'mm'
                  : /^de/.test(noun)
                    ? 'deg'
                    : /^th/.test(noun)
                      ? 'thou'
                      : /^(?:quid|fiver|tenner)/.test(noun)
                        ? 'GBP'
                        : /^(?:tenth|hundredth)/.test(noun)
                          ? 'mm'
                          : /^met/.test(noun)
                            ? 'm'
                            : /^kilo/.test(noun)
                              ? 'kg'
                              : 'ton';
      const size =
        noun === 'fiver'
          ? 5
          : noun === 'tenner'
            ? 10
            : noun === 'tenth'
              ? 0.1
              : noun === 'hundredth'
                ? 0.01
                : 1 + add;
      const stop = word.start + one[0].length;
      if (/^(?:turn|degree|ton|met|kilo)/.test(noun) && add === 0 && !/^(?:kilo|ton)/.test(noun))
        return undefined;
      if (/(?:per|miles|km|to|euros?|pounds?|crowns) $/.test(before) && add === 0) return undefined;
      return {
        start: word.start,
        end: stop,
        value: size,
        unit,
        digits: String(size),
        word: true,
        decimal: false,
        bare: false,
      };
    }
    value = found.value;
    end = phrase[found.used - 1]?.end ?? word.end;
    said = true;
    part = found.part;
    digits = String(Math.round(value * 1e6) / 1e6);
  }
  const vulgar = VULGAR[lower[end] ?? ''];
  if (vulgar !== undefined && !said) {
    value += vulgar;
    end += 1;
    digits = String(value);
  }
  const sign = /([£€$¥])\s*$/.exec(before)?.[1];
  const code = /\b(eur|gbp|usd|czk|jpy)\s*$/.exec(before)?.[1]?.toUpperCase();
  const minus = /(?:^|[\s(])[-−]$/.test(before) || /\bminus $/.test(before);
  const raw: Raw = {
    start: word.start,
    end,
    value: minus ? -value : value,
    unit: '',
    digits,
    word: said,
    decimal: /[.,]/.test(digits) && !/,\d{3}$/.test(digits),
    bare: false,
  };
  if (part !== undefined) raw.part = part;
  if (sign) {
    raw.unit = SIGNS[sign] ?? '';
    raw.start = word.start - (before.length - before.lastIndexOf(sign));
  } else if (code) {
    raw.unit = code;
    raw.start = word.start - (before.length - before.lastIndexOf(code.toLowerCase()));
  } else {
    const unit = unitAt(text, lower, end, said);
    if (unit) {
      raw.unit = unit.unit;
      raw.end = unit.end;
      raw.bare = false;
      money(lower, words, raw);
      tailHalf(lower, raw);
    } else if (
      (!said && NAMING.test(before)) ||
      (said && /\b(?:m|number|order|step|gear|cylinder|chapter|size|jet) $/.test(before)) ||
      MONTH.test(lower.slice(end, end + 16)) ||
      /^\s*(?:x\s*(?:M|\d+\s*mm\s*(?:hd|head|bolt|nut))|x[a-z])/.test(lower.slice(end, end + 14)) ||
      /^(?:th|st|nd|rd|x|k|a-z)(?![a-z])/.test(lower.slice(end, end + 3)) ||
      /^:\d\d/.test(lower.slice(end, end + 3))
    )
      raw.unit = 'none';
  }
  if (MONTH.test(lower.slice(raw.end, raw.end + 14)) && raw.unit === '') raw.unit = 'none';
  if (
    /\b(?:about|around|roughly|abt|approx\.?|approximately|nearly|almost|near|ca\.?|circa|say|some|~)\s*$|~$/.test(
      before,
    )
  )
    raw.about = true;
  const limit =
    /\b(min(?:imum)?|at least|least|not less than|max(?:imum)?|at most|no more than|up to|not over|limit)\b[^.;\d]{0,18}$/.exec(
      before,
    )?.[1];
  if (limit)
    raw.limit = /^(?:min|at least|least|not less)/.test(limit) ? 'min' : limit === 'limit' ? 'limit' : 'max';
  return raw;
}

/** Words that follow each other with no more than a blank or a hyphen between. */
function contiguous(lower: string, words: readonly Word[], i: number): Word[] {
  const out: Word[] = [];
  for (let k = i; k < words.length && out.length < 14; k++) {
    const word = words[k];
    if (!word) break;
    const before = out.at(-1);
    if (before && !/^(?:\s+|-|\s*-\s*)$/.test(lower.slice(before.end, word.start))) break;
    out.push(word);
  }
  return out;
}

function digitsAt(lower: string, word: Word): { value: number; end: number; digits: string } | undefined {
  const rest = lower.slice(word.start, word.start + 28);
  const mixed = /^(\d+)[ -](\d+)\s?\/\s?(\d+)(?![\d.,/])/.exec(rest);
  if (mixed && Number(mixed[3]) > Number(mixed[2]) && Number(mixed[2]) < 64) {
    const value = Number(mixed[1]) + Number(mixed[2]) / Number(mixed[3]);
    return { value, end: word.start + mixed[0].length, digits: String(value) };
  }
  const over = /^(\d+)\/(\d+)(?![\d.,/])/.exec(rest);
  if (over && [2, 3, 4, 8, 16, 32, 64].includes(Number(over[2])) && Number(over[1]) < Number(over[2])) {
    const value = Number(over[1]) / Number(over[2]);
    return { value, end: word.start + over[0].length, digits: String(value) };
  }
  const grouped = /^\d{1,3}(?: \d{3})+(?!\d)/.exec(rest);
  if (grouped)
    return {
      value: Number(grouped[0].replaceAll(' ', '')),
      end: word.start + grouped[0].length,
      digits: grouped[0].replaceAll(' ', ''),
    };
  const one = /^\d+(?:[.,]\d+)*/.exec(rest)?.[0] ?? '';
  if (/[.,].*[.,]/.test(one) && !/^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(one)) return undefined;
  const plain = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(one)
    ? one.replaceAll(',', '')
    : one.replace(',', '.');
  if (
    /^\.\d/.test(lower.slice(word.start - 1, word.start + 1)) &&
    /(?:^|[\s(/-])\.$/.test(lower.slice(Math.max(0, word.start - 2), word.start))
  )
    return { value: Number(`0.${plain}`), end: word.start + one.length, digits: `0.${plain}` };
  return { value: Number(plain), end: word.start + one.length, digits: plain };
}

function unitAt(
  text: string,
  lower: string,
  end: number,
  said: boolean,
): { unit: string; end: number } | undefined {
  const gap =
    /^(?:[ \t]*\n?[ \t]*|-)?(?:of (?:an?|one) |of the )?/.exec(lower.slice(end, end + 14))?.[0] ?? '';
  for (const skip of new Set([gap.length, /^\s*-?/.exec(gap)?.[0].length ?? 0])) {
    const at = end + skip;
    for (const { unit, words, digits, exact } of UNIT_WORDS) {
      if (digits && said) continue;
      words.lastIndex = at;
      const found = words.exec(exact ? text : lower);
      if (!found) continue;
      const stop = at + found[0].length;
      if (
        unit === 'A' &&
        /^\s+[a-z]/.test(text.slice(stop, stop + 2)) &&
        exact &&
        / A$/.test(text.slice(at - 1, stop)) &&
        /[.!?]\s*$/.test(text.slice(0, at))
      )
        continue;
      return { unit: unit, end: stop };
    }
  }
  return undefined;
}

/** "nineteen pounds ninety", "pounds" of money or of mass, pence and cents. */
function money(lower: string, words: readonly Word[], raw: Raw): void {
  if (raw.unit === 'pounds')
    raw.unit = /weigh|heavy|lift|\bmass|hammer|lump/.test(
      lower.slice(Math.max(0, raw.start - 40), raw.end + 24),
    )
      ? 'lb'
      : 'GBP';
  if (raw.unit === 'pence' || raw.unit === 'cents') {
    raw.value /= 100;
    raw.digits = String(raw.value);
    raw.unit = raw.unit === 'pence' ? 'GBP' : 'EUR';
    return;
  }
  if (!MONEY.has(raw.unit) || raw.decimal) return;
  const next = words.findIndex(({ start }) => start >= raw.end);
  const gap = lower.slice(raw.end, words[next]?.start ?? raw.end);
  if (next < 0 || !/^ $/.test(gap)) return;
  let from = next;
  if (words[from]?.text === 'and' && /pence|cents/.test(lower.slice(raw.end, raw.end + 40))) from += 1;
  const phrase = contiguous(lower, words, from);
  const small = /^\d{2}$/.test(phrase[0]?.text ?? '')
    ? { value: Number(phrase[0]?.text), used: 1 }
    : saidAt(phrase, 0);
  if (!small || small.value < 1 || small.value > 99 || !Number.isInteger(small.value)) return;
  const end = phrase[small.used - 1]?.end ?? raw.end;
  const coin = /^ (?:pence|cents|p)\b/.exec(lower.slice(end));
  if (!coin && unitAt(lower, lower, end, true)) return;
  if (!coin && small.value < 10 && small.value !== 5) return;
  raw.value += small.value / 100;
  raw.digits = raw.value.toFixed(2);
  raw.end = end + (coin?.[0].length ?? 0);
}

/** "three inches and a half". */
function tailHalf(lower: string, raw: Raw): void {
  const found = /^ and (an? (half|quarter)|three quarters)\b/.exec(lower.slice(raw.end, raw.end + 24));
  if (!found) return;
  raw.value += found[2] === 'half' ? 0.5 : found[2] === 'quarter' ? 0.25 : 0.75;
  raw.digits = String(raw.value);
  raw.end += found[0].length;
}

/** "25:1", "twenty-five to one", "one in ten". */
function ratios(lower: string, raws: Raw[]): void {
  for (let i = 0; i + 1 < raws.length; i++) {
    const [a, b] = [raws[i], raws[i + 1]];
    if (!a || !b || (a.unit === 'none' && !/^:/.test(lower.slice(a.end, a.end + 1)))) continue;
    const between = lower.slice(a.end, b.start);
    const ratio = /^\s*:\s*$/.test(between) || /^[ -]to[ -]$/.test(between);
    if (ratio && b.value === 1 && b.unit === '' && a.value > 1 && (a.unit === '' || a.unit === 'none')) {
      a.unit = 'ratio';
      a.end = b.end;
      raws.splice(i + 1, 1);
    } else if (/^\s*:\s*$/.test(between) && a.value === 1 && a.unit === '' && b.unit === '' && b.value > 4) {
      a.unit = 'ratio';
      a.value = b.value;
      a.digits = b.digits;
      a.end = b.end;
      raws.splice(i + 1, 1);
    } else if (
      /^ in $/.test(between) &&
      a.value === 1 &&
      b.unit === '' &&
      b.value >= 3 &&
      b.value <= 60 &&
      /hill|slope|climb|grad|steep|gear|lane/.test(lower.slice(Math.max(0, a.start - 60), b.end + 40))
    ) {
      a.unit = 'ratio';
      a.value = b.value;
      a.digits = b.digits;
      a.end = b.end;
      raws.splice(i + 1, 1);
    }
  }
}

const JOINED =
  /^\s*(?:±|\/|-|–|—|,|\+|&|x|×|,? ?and|,? ?or|to|,? ?then|\.\.)\s*(?:about |roughly |maybe |around )?$/;

/** "7.9 / 7.9 / 7.7 mm", "five to ten hundredths", "between fifty and sixty km/h": a unit said once for all of a row. */
function shareUnits(lower: string, raws: Raw[]): void {
  for (let i = raws.length - 2; i >= 0; i--) {
    const [a, b] = [raws[i], raws[i + 1]];
    if (
      !a ||
      !b ||
      a.unit !== '' ||
      (b.unit === '' && b.part === undefined) ||
      b.unit === 'none' ||
      b.unit === 'ratio' ||
      (b.unit === 'turn' && /,/.test(lower.slice(a.end, b.start)))
    )
      continue;
    const between = lower.slice(a.end, b.start);
    if (!JOINED.test(between)) continue;
    if (
      /^\s*(?:x|×)\s*$/.test(between) &&
      a.value < 20 &&
      Number.isInteger(a.value) &&
      /hd|head|bolt|nut|screw|plug|fuse/.test(lower.slice(b.end, b.end + 14))
    ) {
      a.unit = 'none';
      continue;
    }
    if (MONEY.has(b.unit) && !/^\s*(?:to|-|–|or)\s*$/.test(between)) continue;
    if (b.part !== undefined && b.part >= 10 && a.part === undefined && a.word && a.value >= 1) {
      a.value /= b.part;
      a.digits = String(a.value);
      a.part = b.part;
    } else if (b.part !== undefined && b.part >= 10 && a.value >= 1 && !a.decimal && !a.word) {
      a.value /= b.part;
      a.part = b.part;
      a.digits = String(a.value);
    }
    a.unit = b.unit;
    a.shared = true;
  }
}

const LENGTHS = new Set(['mm', 'in', 'thou', 'cm', 'm']);
const AFTER_WORD =
  /(?:\b(?:min|max|limit|wants?|want(?:ed)?|should be|supposed to be|ought to be|book says|says|book|was|were|is|read(?:s|ing)?|i get|get|got|i have|have|had|at|now|then|to|allows?|allowed|new|old|lead|trail|side|other|found|left|right|top|bottom|middle|shows?|only|just|down|up|than|between|and|or|,|\/|:)[ \n:]*(?:about |only |just |to be |of |at |be )?)$/;
const MEASURING =
  /\b(?:gauge|micrometer|bore|drum|diameter|across|calliper|caliper|vernier|widest|journal|pin|bush|shaft|play|clearance|float|wear|thick|spigot|ring gap|end float|run-?out|limit|found|measur)/;

/** Figures without a unit of their own take that of the figures beside them, where the words say that one thing is meant. */
function settle(text: string, lower: string, raws: Raw[], habits: Habits): void {
  const lengths = raws.filter(({ unit }) => LENGTHS.has(unit)).length;
  for (const [i, raw] of raws.entries()) {
    const before = lower.slice(Math.max(0, raw.start - 40), raw.start);
    const after = lower.slice(raw.end, raw.end + 60);
    if (raw.unit === 'deg?') {
      const near = lower.slice(Math.max(0, raw.start - 60), raw.end + 40);
      raw.unit =
        /advance|timing|crank|tdc|dead cent|dwell|turn|angle|spark|protractor|disc|castor|camber|toe|steer|lock/.test(
          near,
        ) && !/cold|warm|hot|temperature|thermometer|boil|oven|heat/.test(near)
          ? 'deg'
          : 'degC';
    }
    if (raw.unit === '' && raw.part !== undefined) {
      if (raw.part === 10 || raw.part === 100) raw.unit = raw.value < 1 && raw.part >= 10 ? 'mm' : '';
      else if (raw.part === 1000) raw.unit = 'in';
      else if (
        (raw.part === 8 || raw.part === 16) &&
        /^\s*(?:pitch|bolt|bsf|whit|unf|thread|hose|pipe|spanner|drill|socket|drive|plate|chain|rod|bar)/.test(
          after,
        )
      )
        raw.unit = 'in';
    }
    if (
      raw.unit === '' &&
      !raw.word &&
      /^\d+\/\d+/.test(lower.slice(raw.start, raw.end)) &&
      /^\s*(?:pitch|bolt|bsf|bsw|whit|unf|unc|thread|hose|pipe|spanner|drill|socket|drive|plate|chain|rod|bar|af|a\/f|stud|ball)/.test(
        after,
      )
    )
      raw.unit = 'in';
    if (
      raw.unit === '' &&
      !raw.word &&
      /^0\.0\d\d$/.test(raw.digits) &&
      !raws.some(({ unit }) => unit === 'mm')
    )
      raw.unit = 'in';
    if (raw.unit !== '') continue;
    const row = text.slice(raw.start, raw.end);
    const strange =
      /^\s*(?:of (?:the|them|these|those)|off\b|times\b|teeth|bolts?|screws?|nuts?|strands?|studs?|plates?|pairs?|clicks?|days?|weeks?|months?|years?|people|miles|seats?|wires?|pulls?|kicks?|goes|coats?|drops?|people|links?|seals?|springs?|gears?|readers|things?|holes?|more\b|o'clock|am\b|pm\b|ways?|sides?|ends?|corners?|lots?|bits?|pieces?|hundred|thousand)/.test(
        after,
      );
    if (strange || (raw.value === 1 && raw.word)) continue;
    const near = [
      raws
        .slice(0, i)
        .reverse()
        .find((one) => one.unit !== '' && one.unit !== 'none'),
      raws.slice(i + 1).find((one) => one.unit !== '' && one.unit !== 'none'),
    ];
    for (const other of near) {
      if (
        !other ||
        MONEY.has(other.unit) ||
        other.unit === 'ratio' ||
        (other.unit === 'teeth' && raw.decimal)
      )
        continue;
      const between =
        other.start < raw.start ? lower.slice(other.end, raw.start) : lower.slice(raw.end, other.start);
      if (
        between.length > (raw.decimal ? 90 : 45) ||
        /\n\s*\n|;/.test(between) ||
        (/[.!?]\s/.test(between) && between.length > 30)
      )
        continue;
      const scale = Math.abs(raw.value / other.value);
      const alike = scale > 0.2 && scale < 5;
      if (
        !alike ||
        (/^(?:m|s|ft|L|kg|h|A|in|turn)$/.test(other.unit) &&
          !raw.decimal &&
          !/\b(?:min|max|limit|to|and|or|says|than|between|should be|ought to (?:be|have)|other)[ ]*(?:at )?$/.test(
            before,
          ))
      )
        continue;
      if (/^\s*m ?(?:five|six|eight|ten|\d)/.test(after)) continue;
      if (raw.decimal || AFTER_WORD.test(before)) {
        if (
          !raw.decimal &&
          /^\s+[a-z]/.test(after) &&
          !/^\s+(?:inside|outside|and|or|at|on|in|so|but|to|when|with|is|was|the|cold|hot|front|rear|left|right|too|all|indicated|now|then|before|after|by|which|it|if|i)\b/.test(
            after,
          ) &&
          raw.word
        )
          continue;
        raw.unit = other.unit;
        raw.shared = true;
        break;
      }
    }
    if (raw.unit !== '') continue;
    if (
      raw.decimal &&
      !/^m\b|^\s*m (?:five|six|eight|ten)/.test(after) &&
      lengths === 0 &&
      (raw.word || /^\d/.test(row)) &&
      MEASURING.test(lower) &&
      raw.value > 1 &&
      !/^\s*m[ \d]|bolt|grade|class/.test(lower.slice(raw.start - 20, raw.end + 14))
    ) {
      raw.unit = 'mm';
      continue;
    }
    const driving = lower.slice(Math.max(0, raw.start - 60), raw.end + 60);
    const goes =
      /^\s*(?:on the (?:level|flat|clock|speedo|straight|dial)|indicated|flat out|downhill|uphill|at the (?:bottom|top)|in (?:top|third|second|first))/.test(
        after,
      ) ||
      /\b(?:doing|reads|showing|shows|indicated|clock(?:ed)?|pulls it at|needle (?:at|on)|speed of|flat out (?:at|it's|its)) (?:about )?$/.test(
        before,
      );
    if (
      goes &&
      raw.value >= 10 &&
      raw.value <= 90 &&
      /speed|gear|hill|road|lane|level|drive|flat out|needle|clock|climb/.test(driving)
    ) {
      const known = raws.find(({ unit }) => unit === 'km/h' || unit === 'mph')?.unit ?? habits.speed;
      if (known) raw.unit = known;
    }
  }
  const speeds = raws.find(({ unit }) => unit === 'km/h' || unit === 'mph');
  if (speeds)
    for (const raw of raws)
      if (
        raw.unit === '' &&
        raw.value >= 10 &&
        raw.value <= 90 &&
        !raw.decimal &&
        /\b(?:at|between|and|shows?|it|call it|average of|of) $/.test(
          lower.slice(Math.max(0, raw.start - 14), raw.start),
        ) &&
        /^\s*(?:at the|and|on|so|$|\n|indicated|kilom|which|,|\.)/.test(lower.slice(raw.end, raw.end + 14)) &&
        Math.abs(raw.start - speeds.start) < 160
      )
        raw.unit = speeds.unit;
  if (habits.gallon)
    for (const raw of raws)
      if (/^(?:gal|pt|qt|fl oz|mpg)$/.test(raw.unit))
        raw.unit = `${habits.gallon === 'US' ? 'US' : 'imp'} ${raw.unit}`;
}
