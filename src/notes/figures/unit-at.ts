/** The unit that is written or said behind a number. */
import type { Reading } from './figure.ts';
import { isNumberName } from './number-names.ts';
import { around, at, joins, type Token } from './tokens.ts';
import { type Form, formsOf } from './unit-forms.ts';
import { MONEY } from './unit-words.ts';

export interface UnitFound {
  unit: string;
  to: number;
}

/** May stand between a number said in words and its unit: "two full turns", "sixty odd quid". */
const FILLER =
  /^(?:full|complete|whole|good|more|clear|solid|odd|or|so|ish|further|extra|bare|short|generous|cold|metric)$/;
const JOINER = /^[-‐‑–.·⋅*•∙]$/;

/** The unit behind the token at `i`, which is the first after the number; `text` is the source, for capitals. */
export function unitAfter(
  tokens: readonly Token[],
  read: Reading,
  text: (token: Token) => string,
): UnitFound | undefined {
  const i = read.to;
  const direct = formAt(tokens, i, read, text);
  if (direct) return direct;
  // "thirty-odd millimetres"
  const hedged = at(tokens, i) === '-' && joins(tokens, i) && /^(?:odd|ish)$/.test(at(tokens, i + 1));
  if (/^[-‐‑]$/.test(at(tokens, i)) && joins(tokens, i) && joins(tokens, i + 1) && !hedged)
    return formAt(tokens, i + 1, read, text);
  // "4.50/m eur"
  if (
    at(tokens, i) === '/' &&
    /^(?:m|kg|l|ea|pc|pr|pair|ft)$/.test(at(tokens, i + 1)) &&
    joins(tokens, i + 2, 1)
  ) {
    const money = formAt(tokens, i + 2, read, text);
    if (money && MONEY.has(money.unit)) return money;
  }
  // "eighty, that's newton metres"
  const said = at(tokens, i) === ',' ? i + 1 : i;
  if (/^(?:that's|thats)$/.test(at(tokens, said)) && joins(tokens, said + 1, 1)) {
    const named = formAt(tokens, said + 1, { ...read, word: true }, text);
    if (named && at(tokens, named.to - 1).length > 3) return named;
  }
  // "Two thousand one hundred and four. Millimetres."
  const apart =
    /^[.,]$/.test(at(tokens, i)) && tokens[i + 1]?.kind === 'word' && at(tokens, i + 1).length > 4;
  if (apart && (!joins(tokens, i + 2, 1) || /^[.,!?]$/.test(at(tokens, i + 2)))) {
    const named = formAt(tokens, i + 1, { ...read, word: true }, text);
    if (named && named.to === i + 2) return named;
  }
  if (read.fraction || read.about) {
    const of = partOf(tokens, i);
    if (of > i) return formAt(tokens, of, { ...read, word: true }, text);
  }
  if (at(tokens, i) === 'of' && /^(?:an?|our|your|their)$/.test(at(tokens, i + 1)))
    return formAt(tokens, i + 2, { ...read, word: true }, text);
  let k = hedged ? i + 2 : i;
  while (k < i + (hedged ? 3 : 2) && FILLER.test(at(tokens, k)) && joins(tokens, k, 1)) k += 1;
  const found = k > i ? formAt(tokens, k, { ...read, word: true }, text) : undefined;
  return found && at(tokens, found.to - 1).length > 1 ? found : undefined;
}

/** "half of a", "quarter of an", "half the": where the unit's own words begin. */
function partOf(tokens: readonly Token[], i: number): number {
  let k = i;
  if (at(tokens, k) === 'of') k += 1;
  if (/^(?:an?|one|the)$/.test(at(tokens, k)) && (at(tokens, k) !== 'the' || k > i)) k += 1;
  if (k > i && FILLER.test(at(tokens, k))) k += 1;
  return joins(tokens, i, 2) ? k : i;
}

export function formAt(
  tokens: readonly Token[],
  i: number,
  read: Reading,
  text: (token: Token) => string,
): UnitFound | undefined {
  const first = tokens[i];
  if (!first || !reaches(tokens, i, text)) return undefined;
  for (const form of formsOf(first.text)) {
    if (form.digits && read.word && !(form.unit === 'in' && read.fraction)) continue;
    if (form.touching && first.gap !== 0) continue;
    const to = matched(tokens, i, form);
    if (to < 0 || (form.exact !== undefined && text(first) !== form.exact)) continue;
    if (!endsWell(tokens, i, to, form) || !fits(tokens, i, to, form, read)) continue;
    return { unit: form.unit, to };
  }
  return undefined;
}

/** Short units that are no other word, so that they may begin a line. */
const SURE = /^(?:mm|cm|km|kg|ml|cc|nm|psi|rpm|mph|kph|kpa|ohm|eur|gbp|usd|czk|jpy|amp|hrs|lbs)$/;

/** A unit stands on the number's line; a long word, or a short one that is nothing else, may begin the next one. */
function reaches(tokens: readonly Token[], i: number, text: (token: Token) => string): boolean {
  const token = tokens[i];
  if (!token || token.gap < 2) return token !== undefined;
  if (token.gap === 2 && SURE.test(token.text)) return true;
  return (
    token.kind === 'word' &&
    token.text.length > 3 &&
    text(token) === token.text &&
    !/^(?:inch|feet|foot|bars?|turns?|hours?|days?|weeks?|tons?|mill?s?|mins?)$/.test(
      token.gap === 3 ? token.text : '',
    )
  );
}

function matched(tokens: readonly Token[], i: number, form: Form): number {
  let k = i;
  for (const [place, word] of form.words.entries()) {
    if (place > 0) {
      if (
        at(tokens, k) !== word &&
        JOINER.test(at(tokens, k)) &&
        joins(tokens, k, 1) &&
        joins(tokens, k + 1, 1)
      )
        k += 1;
      if (!joins(tokens, k, 2)) return -1;
    }
    if (at(tokens, k) !== word) return -1;
    k += 1;
  }
  return k;
}

/** "5 l" but not "5 l/h", "17 A" but not "17 A/F" or "3 A-frames"; "10 m" but not "10 m8". */
function endsWell(tokens: readonly Token[], i: number, to: number, form: Form): boolean {
  const after = tokens[to];
  if (!after || after.gap > 0) return true;
  if (after.kind !== 'sign') return form.words.at(-1)?.length === 1 && !/\p{L}/u.test(form.words[0] ?? '');
  const beyond = tokens[to + 1];
  // "80W-90"
  if (after.text === '-' && beyond?.gap === 0 && beyond.kind === 'number' && at(tokens, i).length === 1)
    return false;
  // "2 g-clamps"
  if (
    after.text === '-' &&
    beyond?.gap === 0 &&
    beyond.kind === 'word' &&
    to - i === 1 &&
    at(tokens, i).length === 1 &&
    !joins(tokens, i)
  )
    return false;
  return !(
    to - i === 1 &&
    at(tokens, i).length < 3 &&
    /^[/'’&]$/.test(after.text) &&
    beyond?.gap === 0 &&
    beyond.kind === 'word'
  );
}

const NOT_IN =
  /^(?:the|a|an|my|his|her|our|your|their|its|it|one|all|there|here|this|that|these|those|each|every|both|total|top|second|third|first|gear|stock|case|place|position|front|and|turn|order|my|town|japan|half|reverse|neutral|series|parallel|with|good|so|by|between|all|time|april|may|june|july|summer|winter|spring|autumn)$/;

/** What else a short word could be behind a number. */
function fits(tokens: readonly Token[], i: number, to: number, form: Form, read: Reading): boolean {
  const word = at(tokens, i);
  const after = joins(tokens, to, 1) ? at(tokens, to) : '';
  if (word === 'in' && form.words.length === 1) {
    if (after === '') return !read.word;
    if (read.word && /^(?:from|to|or|off|of|out|past|away|and)$/.test(after)) return false;
    if (read.fraction || read.digits.startsWith('0.'))
      return (
        !/^(?:the|my|his|her|our|your|it|this|that|each|both|all|total|places|here|there)$/.test(after) &&
        !isNumberName(after)
      );
    return (
      !NOT_IN.test(after) &&
      after !== '#' &&
      !isNumberName(after) &&
      !(tokens[to]?.kind === 'number' && !read.decimal) &&
      (read.decimal || !/^(?:\p{L}{2,})$/u.test(after) || IN_WHAT.test(after))
    );
  }
  if (/^[€£$¥]$/.test(word)) return joins(tokens, i) || !(tokens[to]?.kind === 'number' && joins(tokens, to));
  if (word === 'k')
    return / (?:ohm|ohms|coil|resistor|resistance|sec|secondary|primary|prim|cap|ω) /.test(
      around(tokens, i - 9, i + 5),
    );
  if (/^["″”]$/.test(word)) return tokens[i]?.gap === 0 && (read.value < 100 || read.fraction === true);
  if (word === 'min') return !(tokens[to]?.kind === 'number' && (read.decimal || /[.,]/.test(after)));
  if (word === 'c' && !joins(tokens, i))
    return !/^(?:clip|clips|clamp|clamps|spanner|spanners|washer|washers|section)$/.test(after);
  if (word === 's' && joins(tokens, i))
    return (
      !(read.value < 40 && /^(?:the|both|all|two|of)$/.test(at(tokens, read.from - 1))) &&
      !(
        read.value >= 10 &&
        read.value % 10 === 0 &&
        /^(?:the|early|late|mid)$/.test(at(tokens, read.from - 1))
      ) &&
      !(read.value >= 1900 && read.value < 2100)
    );
  if (form.unit === 'teeth') return read.about !== true;
  if (/^crowns?$/.test(word)) return !/^(?:wheel|gear|nut|cap|and)$/.test(after) || word === 'crowns';
  if (word === 'stone') return !/^(?:cold|guard|hone|dead|wheel|chip|chips|grit|and)$/.test(after);
  if (word === 'horse' || word === 'horses') return !/^(?:drawn|box|hair)$/.test(after);
  if (word === 'mill') return !/^(?:bit|file|cutter)$/.test(after);
  if (/^(?:before|after)$/.test(form.words.at(-1) ?? '') && form.unit === 'deg')
    return /^(?:|top|bottom|tdc|bdc|dead|the|it|that|b|t|a)$/.test(after);
  if (/^(?:feet|foot)$/.test(word))
    return (
      !/^(?:pump|brake|pedal|operated|rest|well|board)/.test(after) &&
      !/^(?:own|my|his|her|your|left)$/.test(at(tokens, read.from - 1)) &&
      !(read.value === 1 && read.word && /^(?:on|in|off|out|under)$/.test(after))
    );
  if (/^bars?$/.test(word))
    return (
      !/^(?:heater|end|ends|stool|code)$/.test(after) &&
      !(after === 'of' && /^(?:soap|chocolate|steel|iron|stock)$/.test(at(tokens, to + 1)))
    );
  if (/^(?:percent|per)$/.test(word))
    return !/^(?:sure|certain|right|happy|convinced|confident|positive)$/.test(at(tokens, to));
  if (word === 'day' && read.word && read.value === 1)
    return (
      /^(?:for|in|about|only|just|than|takes?|took|under|over)$/.test(at(tokens, read.from - 1)) ||
      !/^(?:i|i'll|i'd|we|we'll|he|she|they|it|it'll|the|this|soon|when|maybe|,)$/.test(at(tokens, to))
    );
  // A coin, or something of its size
  if (
    /^(?:p|pence|penny|cents?|euros?|pounds?|crowns?|dollars?|yen)$/.test(word) &&
    isCoin(tokens, read.from, to)
  )
    return false;
  // Drink, not oil
  if (/^pints?$/.test(word))
    return !/ (?:owe|owes|owed|settle|settled|beer|pub|stand|stood) /.test(
      around(tokens, read.from - 5, to + 3),
    );
  if (/^(?:turns|teeth)$/.test(word) && /^(?:first|last)$/.test(at(tokens, read.from - 1))) return false;
  if (/^turns?$/.test(word))
    return !/^(?:up|round|ups|signal|signals)$/.test(after) || read.fraction === true || word === 'turns';
  if (word === 'square' && form.words.length === 1)
    return (
      WIRED.test(around(tokens, i - 14, i + 9)) &&
      !/^(?:nut|nuts|hole|holes|edge|drive|end|ends|shank|head|bar|tube|tubes|section|bit|key|inch|inches|plate)$/.test(
        after,
      )
    );
  if (word === 'volt' && /^age$/.test(after)) return false;
  return true;
}

const WIRED =
  / (?:cable|cables|wire|wires|lead|leads|loom|strap|earth|feed|core|copper|soldered|solder|crimped|flex|strands) /;

const isCoin = (tokens: readonly Token[], from: number, to: number): boolean =>
  (/^(?:coins?|pieces?|bit)$/.test(at(tokens, to)) && joins(tokens, to, 1)) ||
  / (?:size of|big as|like|as big as|thick as|wide as) an? $/.test(around(tokens, from - 4, from));

/** Nouns that an inch is said of. */
const IN_WHAT =
  /^(?:thick|long|wide|deep|bore|dia|diameter|drive|bolts?|bsf|bsw|unf|unc|whit|thread|spanner|socket|drill|of|gap|plugs?|x|play|clearance|hose|pipe|tube|bars?|dowel|pin|studs?|plate|ball|balls|chain|af|od|id|max|min|wheel|wheels|rim|rims|pitch|square|round|high|from|to|or|off|below|above|apart|proud|away|clear|past|longer|shorter|wider|disc|nail|nails|screws?|washers?|rod|sheet|strip|angle|copper|brass|steel)$/;
