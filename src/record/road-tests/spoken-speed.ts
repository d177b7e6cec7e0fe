/**
 * Speeds in the words of somebody who reads a speedometer aloud: "at the bottom of the hill it shows forty-five … fifty-five
 * on the level". Figures that are something else, or that are not read off (what the book says, a limit), are left alone.
 */
import type { Slope, SpeedUnit } from './points.ts';

export interface SpokenSpeed {
  /** Offsets of the figure in the text. */
  start: number;
  end: number;
  value: number;
  unit?: SpeedUnit;
  slope?: Slope;
}

const ONES = 'one two three four five six seven eight nine'.split(' ');
const TEENS = 'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' ');
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

const [ones, teens, tens] = [ONES, TEENS, TENS].map((words) => words.join('|'));
const BELOW_100 = `(?:(?:${tens})(?:[- ](?:${ones}))?|${teens}|${ones})`;
const HALF = String.raw`(?:\s+and\s+a\s+half)?`;
const FIGURE = new RegExp(
  `(?<![\\p{L}\\d.,:/+-])(?:(\\d{1,3}(?:[.,]\\d)?)(?![\\d:/]|[.,]\\d)|((?:(?:a|one) hundred(?: and ${BELOW_100})?|${BELOW_100})${HALF})(?![\\p{L}\\d]))`,
  'giu',
);
const UNIT =
  /^[\s-]*(?:(km\s?\/\s?h|kmh|kph|k\.p\.h\.?|kilomet(?:re|er)s?\s+(?:an|per)\s+hour)|(mph|m\.p\.h\.?|miles?\s+(?:an|per)\s+hour))(?![\p{L}\d])/iu;

/** Read off the needle: these words stand right before the figure, with no more than a small word between. */
const READ_OFF =
  /(?:\b(?:shows?|showing|showed|reads?|reading|says|saying|indicat(?:es?|ed|ing)|needle|speedo|speedometer|clock|doing|up to|down to|now|holding|past|touching|held|(?:dropp(?:ed|ing)|falling|fell|sinking|sank|rising|rose|climbing|climbed) to|makes?|still|(?:steady|settled|settles|sitting|first|second|third|fourth|top|gear) at)|^|[,;])\s*(?:(?:it|is|it's|at|on|the|just|about|nearly|almost|and|we're|we are|now|still|only)\s+)*$/i;
/** Right behind the figure: what makes it a speed without a unit. */
const SPEED_FOLLOWS =
  /^\s*(?:(?:now|here|still|and)\s+)?(?:on (?:the|a) (?:level|flat)|level\b|uphill\b|downhill\b|up (?:the|this|a) |down (?:the|this|a) |flat out|in (?:first|second|third|fourth|top)\b|by the (?:needle|clock|speedometer)|on the (?:clock|dial|speedometer|climb)|indicated|and (?:holding|rising|falling|climbing|steady))/i;
const NOTHING_FOLLOWS = /^\s*(?:now|here|again)?\s*[.,;!?…]?\s*$/i;
/** Behind a figure that is something else. */
const OTHER_THING =
  /^[\s-]*(?:degrees?|minutes?|min\b|seconds?|secs?\b|hours?|met(?:re|er)s?|yards?|feet|foot|miles?\b|kilomet|km\b|m\b|lit(?:re|er)s?|per ?cent|%|rev|rpm|volts?|amps?|bar\b|°|o'?clock|times\b|rounds?\b|turns?\b|laps?\b|pounds?|euros?|quid|kilos?|kg\b|years?|days?|hundred|thousand|in (?:a|one|\d|ten|eight|six|twelve)\b|to (?:one|\d))/i;
const NAMED =
  /\b(?:number|no|chapter|step|round|lap|stop|post|gate|field|order|road|farm|lane|house|bend|bridge|marker|gears?|(?:half|quarter) past|(?:quarter|ten|twenty|five) to|between(?: [\w-]+){0,3} and|between)\s+$/i;
/** A figure that stands with these was not read off the needle. */
const NOT_READ =
  /\b(?:book|maker|brochure|ought|should|limit|sign|supposed|used to|would|could|might|wanted?|hop(?:e|ed|ing)|promised|expected|last (?:time|week|month|year)|yesterday|receiver|satellites?|sat ?nav|gps|(?:tele)?phone|not|never|before the|under|below|at most|more than|keep (?:it|her|him|to))\b|n['’]t\b/i;

const OTHER_DIALS =
  /\b(?:temperatures?|degrees|water|oil|pressure|volts?|amps?|ammeter|voltmeter|bar|revs?|rpm|lit(?:re|er)s?|seconds|thermometer)\b/i;

const SLOPE_WORDS: Record<Slope, RegExp> = {
  level:
    /\b(?:(?:on|along) the (?:level|flat)\b|on level|(?:level|flat) (?:road|stretch|ground|bit|again|here)|it'?s (?:level|flat)\b(?! out))|^\s*(?:and |now |still |dead |quite )*level\s*$/gi,
  uphill:
    /\b(?:uphill|up (?:the|this|a|that) (?:hill|slope|rise|bank|climb|gradient|steep\w*)|on the (?:climb|way up)|climbing (?:the|this|a) (?:hill|slope|bank))\b/gi,
  downhill:
    /\b(?:downhill|down (?:the|this|a|that) (?:hill|slope|other side|bank|gradient|steep\w*)|on the way down|on the descent)\b/gi,
};
/** The least that a bare figure may be: below it people count. */
const LEAST_BARE = 8;

/** Every speed of a stretch of speech that is read off an instrument, in order. Sentences end at . ! ? … and at line breaks twice. */
export function spokenSpeeds(text: string): SpokenSpeed[] {
  const out: SpokenSpeed[] = [];
  for (const sentence of pieces(text, /[.!?…]+(?=\s|$)|;|\n\n/g))
    for (const part of inReach(text, sentence)) out.push(...ofSentence(text, part));
  return out.flatMap((one, i): SpokenSpeed[] => {
    const [before, next] = [out[i - 1], out[i + 1]];
    if (next && takenBack(text.slice(one.end, next.start))) return [];
    return before?.slope && !one.slope && takenBack(text.slice(before.end, one.start))
      ? [{ ...one, slope: before.slope }]
      : [one];
  });
}

/** "Forty-four, no, forty-five": the words between two figures that take the first one back. */
const takenBack = (between: string) =>
  between.length <= NEAR &&
  /(?:^|[,.;…])\s*(?:uphill|downhill|on the level|level)?[\s,.]*\b(?:no|sorry|i mean|correction|make that)\b[\s,.:]*(?:it (?:shows|says|reads)\s*)?$/i.test(
    between,
  );

/** Speech without a full stop is taken in parts of a length that a breath may have. */
const LONGEST = 1200;
/** Characters before and behind a figure that say what it is. */
const NEAR = 80;

function inReach(text: string, { start, end }: Piece): Piece[] {
  const out: Piece[] = [];
  for (let at = start; at < end; ) {
    const blank = text.lastIndexOf(' ', at + LONGEST);
    const stop = at + LONGEST >= end ? end : blank > at ? blank : at + LONGEST;
    out.push({ start: at, end: stop });
    at = stop;
  }
  return out;
}

interface Piece {
  start: number;
  end: number;
}

function pieces(text: string, parting: RegExp, within: Piece = { start: 0, end: text.length }): Piece[] {
  const out: Piece[] = [];
  let { start } = within;
  for (const found of text.slice(within.start, within.end).matchAll(parting)) {
    const at = within.start + found.index;
    out.push({ start, end: at });
    start = at + found[0].length;
  }
  return [...out, { start, end: within.end }].filter((one) => text.slice(one.start, one.end).trim() !== '');
}

/** Between two statements; speech that a machine wrote down has no commas. */
const CLAUSES = /,(?!\d)|\s[-–—]\s|\s(?:but|(?:and|so) (?=(?:the|it|we|she|call|now) ))/g;

/**
 * A slope belongs to the nearest figure of its own clause, and not to others that run into it. A clause of slope alone lends it
 * to the figures of the next, else to the last one.
 */
function ofSentence(text: string, sentence: Piece): SpokenSpeed[] {
  const out: SpokenSpeed[] = [];
  const others = OTHER_DIALS.test(text.slice(sentence.start, sentence.end));
  let lent: Slope | undefined;
  for (const clause of pieces(text, CLAUSES, sentence)) {
    const speeds = figuresOf(text, clause, others);
    const slopes = slopesOf(text.slice(clause.start, clause.end), clause.start);
    if (speeds.length === 0) {
      lent = slopes.at(-1)?.slope ?? lent;
      continue;
    }
    const lending = slopes.length === 0 ? lent : undefined;
    const own = new Map(slopes.map((one) => [nearestTo(one, speeds), one.slope]));
    for (const speed of speeds) {
      const slope = own.get(speed) ?? lending;
      out.push(slope === undefined ? speed : { ...speed, slope });
    }
    lent = undefined;
  }
  const last = out.at(-1);
  if (last && lent && last.slope === undefined) last.slope = lent;
  return out;
}

const nearestTo = (slope: Piece, speeds: readonly SpokenSpeed[]) =>
  speeds.toSorted((a, b) => gap(slope, a) - gap(slope, b))[0];
const gap = (a: Piece, b: Piece) => (a.start >= b.end ? a.start - b.end : b.start - a.end);

function slopesOf(clause: string, offset: number): (Piece & { slope: Slope })[] {
  return (Object.keys(SLOPE_WORDS) as Slope[]).flatMap((slope) =>
    [...clause.matchAll(SLOPE_WORDS[slope])].map((found) => ({
      slope,
      start: offset + found.index,
      end: offset + found.index + found[0].length,
    })),
  );
}

/** Where other dials are read in the same sentence, a figure without a unit must name the speedometer or what the road does. */
function figuresOf(text: string, clause: Piece, others: boolean): SpokenSpeed[] {
  const words = text.slice(clause.start, clause.end);
  if (NOT_READ.test(words)) return [];
  return [...words.matchAll(FIGURE)].flatMap((found): SpokenSpeed[] => {
    const [whole, digits, said] = found;
    const end = found.index + whole.length;
    const [before, after] = [
      words.slice(Math.max(0, found.index - NEAR), found.index),
      words.slice(end, end + NEAR),
    ];
    const value = digits === undefined ? spokenValue(said ?? '') : Number(digits.replace(',', '.'));
    const unit = UNIT.exec(after);
    const start = clause.start + found.index;
    const one = { start, end: start + whole.length, value };
    if (unit) return [{ ...one, unit: unit[1] === undefined ? 'mph' : 'km/h' }];
    if (value < LEAST_BARE || OTHER_THING.test(after) || NAMED.test(before)) return [];
    if (others && !SPEED_FOLLOWS.test(after) && !/\b(?:needle|speedo\w*)\b/i.test(before)) return [];
    const alone = before.trim() === '' || READ_OFF.test(before);
    return SPEED_FOLLOWS.test(after) || (alone && (NOTHING_FOLLOWS.test(after) || READ_VERB.test(before)))
      ? [one]
      : [];
  });
}

/** Of these a figure is a speed whatever comes behind it. */
const READ_VERB =
  /\b(?:shows?|showing|showed|reads?|reading|says|indicat\w+|needle|speedo\w*|clock|doing|touching|held|holding|(?:dropp(?:ed|ing)|falling|fell|sinking|sank|rising|rose|climbing|climbed) to)\b/i;

function spokenValue(said: string): number {
  const words = said.toLowerCase().split(/[\s-]+/);
  let value = words.includes('half') ? 0.5 : 0;
  const hundred = words.indexOf('hundred');
  if (hundred >= 0) value += 100;
  for (const word of words.slice(hundred + 1)) {
    if (ONES.includes(word)) value += ONES.indexOf(word) + 1;
    else if (TEENS.includes(word)) value += TEENS.indexOf(word) + 10;
    else if (TENS.includes(word)) value += (TENS.indexOf(word) + 2) * 10;
  }
  return value;
}
