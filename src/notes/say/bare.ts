/** Work told without a verb: "tank off", "the chain has to come off", "primer on the tank". */
import type { Deed } from './deed.ts';
import { phraseAt } from './phrase.ts';
import { placesIn } from './place.ts';
import type { TaggedWord } from './words.ts';

/** Stands between a thing and where it goes: "the chain has to come off". */
const GOES =
  /^(?:is|'s|are|was|were|comes?|came|coming|goes|went|go|come|has|have|had|to|wants|needs|now|also|then|just|all|can)$/;

export function bareAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  const way = words[at]?.text ?? '';
  if (!/^(?:off|out|apart|in|on|back|down|up)$/.test(way)) return undefined;
  const next = words[at + 1];
  const ends =
    !next ||
    next.pos === 'PUNCT' ||
    /^(?:and|then|with|w|first|next|now|so|again|but|today|here|as)$/.test(next.text);
  const parts = /^(?:off|apart)$/.test(way) && /^(?:NOUN|DET|ADJ)$/.test(next?.pos ?? '');
  if (!ends && !parts && !(way === 'back' && /^(?:on|in|together)$/.test(next?.text ?? ''))) return undefined;
  let until = at;
  while (until > 0 && GOES.test(words[until - 1]?.text ?? '')) until -= 1;
  let from = until;
  while (from > 0 && inThing(words[from - 1])) from -= 1;
  const lead = words[from - 1];
  const led =
    !lead ||
    lead.pos === 'PUNCT' ||
    /^(?:the|and|then|so|both|with|now|right|okay|a|my|that|this|thing|job)$/.test(lead.text);
  if (from === until || (!led && until === at)) return undefined;
  return bare(words.slice(from, until), way, next, at);
}

/** Part of a thing's name. "Mounts" and "plugs" look like verbs to a tagger. */
const inThing = (word: TaggedWord | undefined): boolean =>
  word !== undefined &&
  !/^(?:first|next|last|same|other)$/.test(word.text) &&
  (/^(?:NOUN|PROPN|ADJ|NUM)$/.test(word.pos) ||
    (word.pos === 'VERB' && /s$/.test(word.text) && placesIn([word]).length > 0));

const NO_THING =
  /^(?:day|time|way|lot|bit|week|year|thing|job|money|price|turn|moment|mind|everything|side|end|half|rest|hour|minute)s?$/;

function bare(
  things: readonly TaggedWord[],
  way: string,
  next: TaggedWord | undefined,
  at: number,
): Deed | undefined {
  const object = things.map(({ text }) => text).join(' ');
  const last = things.at(-1);
  if (!last || last.pos === 'ADJ' || last.pos === 'NUM' || object.length > 40 || NO_THING.test(last.text))
    return undefined;
  const ways = way === 'back' && /^(?:on|in|together)$/.test(next?.text ?? '') ? `back ${next?.text}` : way;
  if (ways === 'back') return undefined;
  const deed = { told: 'bare', at, object } as const;
  if (way === 'up') return { ...deed, title: `Lift the ${object}`, verb: 'lift' };
  if (way === 'down') return { ...deed, title: `Lower the ${object}`, verb: 'lower' };
  const verb = /^(?:off|out|apart)$/.test(way) ? 'take' : 'put';
  return { ...deed, title: `${verb === 'take' ? 'Take' : 'Put'} the ${object} ${ways}`, verb };
}

/** "Trolley jack under the cross member", "primer on the tank": a thing of the shed and where it goes, without a verb. */
export function laidAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  const way = words[at]?.text ?? '';
  const tool = words[at - 1]?.text ?? '';
  if (!/^(?:under|on|in|over|onto|into|through|round)$/.test(way) || !LAID.has(tool)) return undefined;
  const before = words.slice(Math.max(0, at - 5), at - 1);
  if (before.some(({ pos, text }) => pos === 'VERB' || pos === 'AUX' || text === 'of' || text === 'no'))
    return undefined;
  const where = phraseAt(words, at + 1);
  if (where.text === '') return undefined;
  const title = tool === 'jack' ? `Jack up the ${where.text}` : `Put the ${tool} ${way} the ${where.text}`;
  return { title, verb: tool === 'jack' ? 'jack' : 'put', told: 'bare', at, object: where.text };
}

const LAID = new Set(
  'jack stands chocks primer undercoat topcoat paint grease gasket sealant clamp tray pan rag heat penetrating tape'.split(
    ' ',
  ),
);
