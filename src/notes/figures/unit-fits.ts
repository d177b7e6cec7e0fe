/** What else a unit's word could be behind a number: "four in the boot", "on my own two feet", "a hundred per cent sure". */
import type { Reading } from './figure.ts';
import { isNumberName } from './number-names.ts';
import { around, at, joins, type Token } from './tokens.ts';
import type { Form } from './unit-forms.ts';

const NOT_IN =
  /^(?:the|a|an|my|his|her|our|your|their|its|it|one|all|there|here|this|that|these|those|each|every|both|total|top|second|third|first|gear|stock|case|place|position|front|and|turn|order|my|town|japan|half|reverse|neutral|series|parallel|with|good|so|by|between|all|time|april|may|june|july|summer|winter|spring|autumn)$/;

/** What else a short word could be behind a number. */
export function fits(tokens: readonly Token[], i: number, to: number, form: Form, read: Reading): boolean {
  const word = at(tokens, i);
  const after = joins(tokens, to, 1) ? at(tokens, to) : '';
  // A coin, or something of its size
  if (
    /^(?:p|pence|penny|cents?|euros?|pounds?|crowns?|dollars?|yen)$/.test(word) &&
    isCoin(tokens, read.from, to)
  )
    return false;
  if (word === 'in' && form.words.length === 1) {
    if (after === '') return !read.word;
    if (after === 'by' && tokens[to + 1]?.kind === 'number') return true;
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
      !/ (?:tyre|tyres|tire|tires) /.test(around(tokens, i - 5, i)) &&
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
  // Drink, not oil
  if (/^pints?$/.test(word))
    return !/ (?:owe|owes|owed|settle|settled|beer|pub|stand|stood) /.test(
      around(tokens, read.from - 5, to + 3),
    );
  if (/^(?:turns|teeth)$/.test(word) && /^(?:first|last)$/.test(at(tokens, read.from - 1))) return false;
  if (word === 'turns' && read.value === 1) return false;
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
  / (?:cable|cables|wire|wires|lead|leads|loom|strap|earth|feed|core|copper|soldered|solder|crimped|flex|strands|lamp|lamps|bulb|lights|headlamps|millimetres) /;

const isCoin = (tokens: readonly Token[], from: number, to: number): boolean =>
  (/^(?:coins?|pieces?|bit)$/.test(at(tokens, to)) && joins(tokens, to, 1)) ||
  / (?:size of|big as|like|as big as|thick as|wide as) an? $/.test(around(tokens, from - 4, from));

/** Nouns that an inch is said of. */
const IN_WHAT =
  /^(?:thick|long|wide|deep|bore|dia|diameter|drive|bolts?|bsf|bsw|unf|unc|whit|thread|spanner|socket|drill|of|gap|plugs?|x|play|clearance|hose|pipe|tube|bars?|dowel|pin|studs?|plate|ball|balls|chain|af|od|id|max|min|wheel|wheels|rim|rims|pitch|square|round|high|from|to|or|off|below|above|apart|proud|away|clear|past|longer|shorter|wider|disc|nail|nails|screws?|washers?|rod|sheet|strip|angle|copper|brass|steel|oak|ash|pine|timber|planks?|boards?|beam|ply|plywood)$/;
