/** Things as a statement names them: "the old gearbox oil", and where a thing went: "into the pan". */
import { notWorkedOn } from './not-worked-on.ts';
import { PLACES } from './vocabulary/places.ts';
import type { TaggedWord } from './words.ts';

const list = (words: string): Set<string> => new Set(words.split(' '));
export const PARTICLES = list(
  'off out up down back in on apart together over away through under onto into round home',
);
const WITHOUT_ARTICLE = list(
  'the a an it them this that these those everything all both one some any each every another half no more two three four five six seven eight nine ten twelve my his her our their its',
);
/** Every word that a part of the machine is named by: a tagger takes "springs" and "lead" for verbs. */
const THING_WORDS = new Set(Object.values(PLACES).flatMap((names) => names.split(/[,\s]+/)));
for (const word of 'face faces surface lead leads block lug lens core feed eye eyes mating clutch retainer'.split(
  ' ',
))
  THING_WORDS.add(word);
export const isThingWord = (word: string): boolean => THING_WORDS.has(word);
/** Stand before "of" and are no thing by themselves: "a bit of tape". */
const AMOUNT =
  /^(?:bit|drop|dab|lick|smear|squirt|handful|couple|pair|set|piece|length|strip|tin|can|litre|cup|turn|load|lot)s?$/;
const UNIT =
  /^(?:mm|cm|m|l|ml|litres?|millilitres?|millimetres?|inch|inches|metres?|thou|pints?|gallons?|mil|kg|g|grams?|volts?|amps?|%|percent|per)$/;
const NUMBER = /^(?:two|three|four|five|six|seven|eight|nine|ten|twelve)$/;
const FILLER = /^(?:um+|uh+|er+m?|hmm+)$/;
/** Tells how a thing was left, and is no part of its name. */
const STATE_ADJECTIVE =
  /^(?:next|first|last|again|now|overnight|wet|dry|warm|hot|cold|tight|loose|clean|straight|square|open|shut|flush|level|today|tonight|tomorrow)$/;

export const withArticle = (thing: string): string =>
  WITHOUT_ARTICLE.has(thing.split(' ')[0] ?? '') || /^\d/.test(thing) ? thing : `the ${thing}`;

export interface Phrase {
  text: string;
  /** As it was said: "a new gasket", "its straps", and "the" where nothing stood. */
  full: string;
  end: number;
  /** Whether an article or the like stood before it. */
  led: boolean;
}

const NONE = (end: number): Phrase => ({ text: '', full: '', end, led: false });

/** A thing named from a word on: "the old gearbox oil", up to five words. */
export function phraseAt(words: readonly TaggedWord[], from: number): Phrase {
  let k = from;
  let article = '';
  const out: string[] = [];
  for (; k < words.length; k++) {
    const text = words[k]?.text ?? '';
    if (FILLER.test(text)) continue;
    if (text === 'no' || text === 'any') return NONE(from);
    if (/^(?:both|every|each|another)$/.test(text) || (text === 'all' && words[k + 1]?.pos !== 'DET')) {
      out.push(text);
      article = 'none';
    } else if (/^(?:a|an)$/.test(text)) article = text;
    else if (text === 'its') article = 'its';
    else if (text === 'the') article = words[k + 1]?.pos === 'NUM' ? 'the' : article || 'the';
    else if (
      /^(?:this|that|these|those)$/.test(text) &&
      (/^(?:NOUN|PROPN|ADJ)$/.test(words[k + 1]?.pos ?? '') || isThingWord(words[k + 1]?.text ?? ''))
    )
      article ||= 'the';
    else if (words[k]?.pos === 'DET' || /^(?:my|his|her|our|your|their|all|of)$/.test(text))
      article = /^(?:some|any|no)$/.test(text) ? 'mass' : article || 'the';
    else break;
  }
  const begins = k;
  // "A bit of tape", "two litres of mix": the thing stands behind.
  for (let q = k; q < k + 3 && q < words.length; q++) {
    if (q > k && !/^(?:ADJ|NUM|DET)$/.test(words[q - 1]?.pos ?? '') && words[q - 1]?.text !== 'half') break;
    if (
      words[q + 1]?.text === 'of' &&
      (AMOUNT.test(words[q]?.text ?? '') || UNIT.test(words[q]?.text ?? ''))
    ) {
      k = q + 2;
      article = 'mass';
      if (/^(?:the|my|his|her|our)$/.test(words[k]?.text ?? '')) {
        article = 'the';
        k += 1;
      }
      break;
    }
  }
  // "3.3 l water": the amount stands in the prose.
  if (
    words[k]?.pos === 'NUM' &&
    UNIT.test(words[k + 1]?.text ?? '') &&
    /^(?:NOUN|ADJ)$/.test(words[k + 2]?.pos ?? '') &&
    !/hole|bolt|nut|bore|drill|tap|stud|pipe|hose|cable|wire/.test(
      `${words[k + 2]?.text} ${words[k + 3]?.text}`,
    )
  ) {
    k += 2;
    article = 'mass';
  }
  // "14 mm nuts": the size was said before.
  if (UNIT.test(words[k]?.text ?? '') && /^(?:NOUN|ADJ)$/.test(words[k + 1]?.pos ?? '')) k += 1;
  let noun = false;
  for (; k < words.length && out.length < 6; k++) {
    const word = words[k];
    if (!word) break;
    if (FILLER.test(word.text) && out.length > 0 && !noun) continue;
    const next = words[k + 1];
    // "Washing-up bowl": what hyphens join is one word.
    if (
      word.text === '-' &&
      out.length > 0 &&
      next &&
      word.end === next.start &&
      words[k - 1]?.end === word.start
    ) {
      out.push(`${out.pop() ?? ''}-${next.text}`);
      k += 1;
      noun = false;
      continue;
    }
    // "Weld up the flat on the pin": what looks like an adjective ends the name of a thing.
    const alone =
      word.pos === 'ADJ' &&
      !noun &&
      k > from &&
      !STATE_ADJECTIVE.test(word.text) &&
      /^(?:ADP|PUNCT|CCONJ)$/.test(next?.pos ?? 'PUNCT');
    // Behind an article or another word of the name, "lead" and "springs" are things.
    const thing =
      word.pos === 'VERB' &&
      ((isThingWord(word.text) && !/ed$/.test(word.text) && (k > begins || article !== '')) ||
        (word.text === word.lemma && k === begins && /^(?:the|a|an)$/.test(article)));
    const side =
      /^(?:back|near|off)$/.test(word.text) &&
      !noun &&
      /^(?:end|axle|wheel|wheels|plate|brake|brakes|door|side|panel|seat)$/.test(next?.text ?? '');
    const isNoun = (word.pos === 'NOUN' || word.pos === 'PROPN' || alone || thing) && !side;
    if (isNoun) noun = true;
    else if (
      noun ||
      !(side || /^(?:ADJ|NUM|VERB)$/.test(word.pos)) ||
      (word.pos === 'VERB' && !/(?:ed|en|ing)$/.test(word.text))
    )
      break;
    // "My thumb round the handle": where it went is no part of its name.
    if (noun && /^(?:round|across|over|down|up)$/.test(word.text) && next?.pos === 'DET') break;
    if (!/^[a-z0-9][a-z0-9./-]*$/.test(word.text) || word.text === 'w' || word.text === 'abt') break;
    if (noun && STATE_ADJECTIVE.test(word.text) && out.length > 0 && k > begins) break;
    out.push(word.text);
  }
  if (!noun || (out.length === 1 && STATE_ADJECTIVE.test(out[0] ?? ''))) return NONE(from);
  const text = out.join(' ');
  return {
    text,
    full:
      article === 'mass' || article === 'none'
        ? text
        : article === '' ||
            (article === 'the' && WITHOUT_ARTICLE.has(out[0] ?? '') && !NUMBER.test(out[0] ?? ''))
          ? withArticle(text)
          : `${article} ${text}`,
    end: k,
    led: article !== '',
  };
}

/** "old petrol drained": the thing may stand before the word for the work, with "was" between. */
export function phraseBefore(words: readonly TaggedWord[], at: number): string {
  let end = at;
  while (
    end > 0 &&
    /^(?:was|were|is|are|got|been|be|'s|has|have|had|all|then|now|also|just)$/.test(
      words[end - 1]?.text ?? '',
    )
  )
    end -= 1;
  let from = end;
  while (from > 0 && end - from < 4) {
    const word = words[from - 1];
    if (!word) break;
    const named =
      /^(?:NOUN|PROPN|ADJ)$/.test(word.pos) ||
      (word.pos === 'VERB' && isThingWord(word.text) && word.text === word.lemma);
    if (!named || !/^[a-z][a-z-]*$/.test(word.text) || /^(?:um|uh|er)$/.test(word.text)) break;
    from -= 1;
  }
  const things = words.slice(from, end);
  const last = things.at(-1);
  if (!last || !(/^(?:NOUN|PROPN)$/.test(last.pos) || isThingWord(last.text))) return '';
  // "In the end four litres came out": what a preposition leads is not what was worked on.
  let lead = from;
  while (lead > 0 && words[lead - 1]?.pos === 'DET') lead -= 1;
  const way = words[lead - 1]?.text ?? '';
  const amount = words[lead - 2]?.text ?? '';
  if (/^(?:in|at|on|by|with|from|under|for|w)$/.test(way)) return '';
  if (way === 'of' && !UNIT.test(amount) && !AMOUNT.test(amount)) return '';
  if (/\d/.test(last.text)) return '';
  return things.map(({ text }) => text).join(' ');
}

const ANY_WAY = /^(?:to|from|into|onto|through)$/;
const LAID_WAY = /^(?:on|in|over|under|round|across|against|behind|between|beneath|beside|inside)$/;
/** Verbs that lay something somewhere: where is half of what they say. */
const LAYS = list(
  'put hang set lay stick mount rest drop lower clamp bolt screw weld solder glue place fit tape slip slide wrap tie press smear rub',
);
const IN_SOMETHING = list('wash soak clean rinse boil dip heat warm clamp hold spin press put freeze');

/** Behind what was worked on: "back on", "off", or a short "into the pan". */
export function whereTo(
  words: readonly TaggedWord[],
  from: number,
  verb = '',
): { particles: string[]; to: string } {
  const particles: string[] = [];
  let k = from;
  for (; k < from + 2 && PARTICLES.has(words[k]?.text ?? ''); k++) {
    const way = words[k]?.text ?? '';
    const leads = /^(?:in|on|over|through|under|onto|into|round|to|from)$/.test(way);
    // "On to the bench": two words for one way.
    if (way === 'on' && words[k + 1]?.text === 'to') break;
    const ahead = words[k + 1];
    if (
      leads &&
      !(verb === 'kick' && way === 'over') &&
      !(/^(?:put|screw)$/.test(verb) && ahead?.pos === 'NUM') &&
      (/^(?:DET|NOUN|PROPN|NUM|ADJ)$/.test(ahead?.pos ?? '') ||
        /^(?:its|my|his|her|our|their)$/.test(ahead?.text ?? ''))
    )
      break;
    particles.push(way);
  }
  let way = words[k]?.text ?? '';
  if (/^(?:on|in)$/.test(way) && words[k + 1]?.text === 'to') {
    way = `${way} to`;
    k += 1;
  }
  const fits =
    ANY_WAY.test(way) ||
    way.endsWith(' to') ||
    (LAID_WAY.test(way) && (LAYS.has(verb) || (way === 'in' && IN_SOMETHING.has(verb)))) ||
    (way === 'with' && particles.length === 0) ||
    (way === 'for' && /^(?:swap|change|exchange)$/.test(verb));
  const place = fits ? phraseAt(words, k + 1) : NONE(k);
  const short =
    place.text !== '' &&
    place.text.split(' ').length <= 4 &&
    !/\d/.test(place.text) &&
    (!notWorkedOn(place.text) || /^(?:bottom|top|side|end|back|front|middle|other end)$/.test(place.text));
  const numbered = /^(?:two|three|four|five|six|seven|eight|nine|ten|\d)/.test(place.text);
  // "With the plug out" tells how it was then, not what it was done with.
  const state = way === 'with' && PARTICLES.has(words[place.end]?.text ?? '');
  const placed =
    way !== 'on' && way !== 'in' ? true : place.led || isThingWord(place.text.split(' ').at(-1) ?? '');
  if (!short || numbered || state || !placed) return { particles, to: '' };
  const bare = !place.led && /^(?:with|from|for)$/.test(way) ? place.text : place.full;
  return { particles, to: `${way} ${bare}` };
}
