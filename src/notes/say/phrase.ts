/** Things as a statement names them: "the old gearbox oil", and where a thing went: "into the pan". */
import type { TaggedWord } from './words.ts';

const list = (words: string): Set<string> => new Set(words.split(' '));
export const PARTICLES = list(
  'off out up down back in on apart together over away through under onto into round',
);
const WITHOUT_ARTICLE = list(
  'the it them this that these those everything all both one some any each more two three four five six seven eight nine ten my his her our their',
);

export const withArticle = (thing: string): string =>
  WITHOUT_ARTICLE.has(thing.split(' ')[0] ?? '') || /^\d/.test(thing) ? thing : `the ${thing}`;

/** A thing named from a word on: "the old gearbox oil", up to five words. */
export function phraseAt(words: readonly TaggedWord[], from: number): { text: string; end: number } {
  const out: string[] = [];
  let noun = false;
  let k = from;
  for (; k < words.length && out.length < 6; k++) {
    const word = words[k];
    if (!word) break;
    if (
      out.length === 0 &&
      (word.pos === 'DET' || /^(?:my|his|her|our|your|its|their|both|all|of)$/.test(word.text))
    ) {
      if (/^(?:both|all|every|each)$/.test(word.text) || (word.text === 'the' && words[k + 1]?.pos === 'NUM'))
        out.push(word.text);
      continue;
    }
    // "Weld up the flat on the pin": what looks like an adjective ends the name of a thing.
    const alone =
      word.pos === 'ADJ' &&
      k > from &&
      !/^(?:next|first|last|again|now)$/.test(word.text) &&
      /^(?:ADP|PUNCT|CCONJ)$/.test(words[k + 1]?.pos ?? 'PUNCT');
    if (word.pos === 'NOUN' || word.pos === 'PROPN' || alone) noun = true;
    else if (noun || !/^(?:ADJ|NUM|VERB)$/.test(word.pos) || (word.pos === 'VERB' && !/ed$/.test(word.text)))
      break;
    if (!/^[a-z0-9][a-z0-9'./-]*$/.test(word.text) || word.text === 'w' || word.text === 'abt') break;
    out.push(word.text);
  }
  return noun ? { text: out.join(' '), end: k } : { text: '', end: from };
}

/** "old petrol drained": the thing may stand before the word for the work, with "was" between. */
export function phraseBefore(words: readonly TaggedWord[], at: number): string {
  let end = at;
  while (
    end > 0 &&
    /^(?:was|were|is|are|got|been|be|'s|has|have|had|all|then|now|also)$/.test(words[end - 1]?.text ?? '')
  )
    end -= 1;
  let from = end;
  while (from > 0 && end - from < 4 && /^(?:NOUN|PROPN|ADJ)$/.test(words[from - 1]?.pos ?? '')) from -= 1;
  const things = words.slice(from, end);
  if (things.length === 0 || !/^(?:NOUN|PROPN)$/.test(things.at(-1)?.pos ?? '')) return '';
  return things.map(({ text }) => text).join(' ');
}

/** Behind what was worked on: "back on", "off", or a short "into the pan". */
export function whereTo(words: readonly TaggedWord[], from: number): { particles: string[]; to: string } {
  const particles: string[] = [];
  let k = from;
  for (; k < from + 2 && PARTICLES.has(words[k]?.text ?? ''); k++) {
    const way = words[k]?.text ?? '';
    const place = phraseAt(words, k + 1);
    const leads = /^(?:in|on|over|through|under|onto|into|round|to|from)$/.test(way);
    if (leads && place.text !== '' && place.text.split(' ').length <= 3)
      return { particles, to: `${way} ${withArticle(place.text)}` };
    if (leads && /^(?:DET|NOUN|PROPN|NUM|ADJ)$/.test(words[k + 1]?.pos ?? '')) break;
    particles.push(way);
  }
  const way = words[k]?.text ?? '';
  const place = /^(?:to|from|into|onto)$/.test(way) ? phraseAt(words, k + 1) : undefined;
  if (place && place.text !== '' && place.text.split(' ').length <= 3 && !/\d/.test(place.text))
    return { particles, to: `${way} ${withArticle(place.text)}` };
  return { particles, to: '' };
}
