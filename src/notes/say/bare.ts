/** Work told without a verb: "tank off", "the chain has to come off", "primer on the tank". */
import type { Deed } from './deed.ts';
import { notWorkedOn } from './not-worked-on.ts';
import { isThingWord, phraseAt, withArticle } from './phrase.ts';
import type { TaggedWord } from './words.ts';

/** Stands between a thing and where it goes: "the chain has to come off". */
const GOES =
  /^(?:is|'s|are|was|were|comes?|came|coming|goes|went|go|come|drops|slides|slips|lifts|pulls|swings|has|have|had|to|wants|needs|now|also|then|just|all|can)$/;

export function bareAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  const way = words[at]?.text ?? '';
  if (!/^(?:off|out|apart|in|on|back|down|up)$/.test(way)) return undefined;
  const next = words[at + 1];
  const ends =
    !next ||
    next.pos === 'PUNCT' ||
    /^(?:and|then|with|w|first|next|now|so|again|but|today|here|as|before)$/.test(next.text) ||
    (/^(?:off|out)$/.test(way) && /^(?:that|that's|there|there's)$/.test(next.text));
  const parts = /^(?:off|apart)$/.test(way) && /^(?:NOUN|DET|ADJ)$/.test(next?.pos ?? '');
  const charged = way === 'on' && next?.text === 'charge';
  if (!ends && !parts && !charged && !(way === 'back' && /^(?:on|in|together)$/.test(next?.text ?? '')))
    return undefined;
  // "The spring shot out": nobody took it out.
  if (/^(?:shot|flew|fell|jumped|popped|dropped|pinged)$/.test(words[at - 1]?.text ?? '')) return undefined;
  let until = at;
  while (until > 0 && GOES.test(words[until - 1]?.text ?? '')) until -= 1;
  let from = until;
  while (from > 0 && inThing(words, from - 1)) from -= 1;
  if (/^(?:both|all)$/.test(words[from - 1]?.text ?? '')) from -= 1;
  // "Never had the tank off", "no need to have the gearbox out".
  const unneeded = words.slice(Math.max(0, from - 6), from).map(({ text }) => text);
  if (words[from]?.denied || /\bno need\b/.test(unneeded.join(' '))) return undefined;
  const lead = words[from - 1];
  const led =
    !lead ||
    lead.pos === 'PUNCT' ||
    /^(?:the|and|then|so|with|now|right|okay|a|my|that|this|thing|job|get|got)$/.test(lead.text);
  if (from === until || (!led && until === at)) return undefined;
  // "With the plug out", "the stove in the corner was out": how it stood, not what was done.
  const outer = /^(?:DET|PRON)$/.test(lead?.pos ?? '') ? words[from - 2] : lead;
  if (/^(?:with|w|in|at|under|behind|of|near|by)$/.test(outer?.text ?? '')) return undefined;
  // "There's a tap down here", "it stank the street out".
  if (
    /^(?:there|'s|theres)$/.test(outer?.text ?? '') ||
    (outer?.pos === 'VERB' &&
      outer !== lead &&
      !/^(?:get|got|have|had|getting|let|letting)$/.test(outer.text) &&
      !isThingWord(outer.text) &&
      !/^(?:stands|ramps|blocks|bricks)$/.test(outer.text))
  )
    return undefined;
  const article = /^(?:a|an)$/.test(lead?.text ?? '') ? (lead?.text ?? '') : 'the';
  return bare(words.slice(from, until), article, charged ? 'on charge' : way, next, at);
}

/** Part of a thing's name. "Mounts" and "plugs" look like verbs to a tagger. */
const inThing = (words: readonly TaggedWord[], at: number): boolean => {
  const word = words[at];
  if (!word || /^(?:first|next|last|same|other|um|uh|er)$/.test(word.text)) return false;
  if (/^(?:NOUN|PROPN|ADJ|NUM)$/.test(word.pos)) return true;
  const before = words[at - 1];
  return (
    word.pos === 'VERB' &&
    isThingWord(word.text) &&
    (/s$/.test(word.text) ||
      !before ||
      before.pos === 'PUNCT' ||
      (at === 1 && isThingWord(before.text)) ||
      /^(?:DET|ADJ|NOUN|PROPN)$/.test(before.pos))
  );
};

const SWITCHED = /^(?:lights|ignition|compressor|charger|heater|mains|power|radio|torch)$/;

function bare(
  things: readonly TaggedWord[],
  article: string,
  way: string,
  next: TaggedWord | undefined,
  at: number,
): Deed | undefined {
  const object = things.map(({ text }) => text).join(' ');
  const last = things.at(-1);
  if (!last || last.pos === 'ADJ' || last.pos === 'NUM' || object.length > 40) return undefined;
  const ways = way === 'back' && /^(?:on|in|together)$/.test(next?.text ?? '') ? `back ${next?.text}` : way;
  if (ways === 'back') return undefined;
  if (notWorkedOn(object))
    return /^(?:off|out|on|in)$/.test(ways)
      ? { told: 'bare', at, object: '', title: '', verb: 'put' }
      : undefined;
  if (things.some(({ text }) => /^\d/.test(text)) && !/^\d+ (?:bolts|nuts|screws|clips|studs)/.test(object))
    return undefined;
  const deed = { told: 'bare', at, object } as const;
  const named = article === 'the' ? withArticle(object) : `${article} ${object}`;
  // A tap that goes on is opened; one that goes off by itself is taken off, unless it is said of what it holds back.
  if (last.text === 'tap' && ways === 'on') return { ...deed, title: `Open ${named}`, verb: 'open' };
  if (/\b(?:petrol|fuel|oil|gas) tap$/.test(object) && ways === 'off')
    return { ...deed, title: `Shut ${named}`, verb: 'shut' };
  if (SWITCHED.test(last.text) && /^(?:on|off)$/.test(ways))
    return { ...deed, title: `Switch ${named} ${ways}`, verb: 'switch' };
  if (way === 'up') return { ...deed, title: `Lift ${named}`, verb: 'lift' };
  if (way === 'down') return { ...deed, title: `Lower ${named}`, verb: 'lower' };
  const verb = /^(?:off|out|apart)$/.test(way) ? 'take' : 'put';
  return { ...deed, title: `${verb === 'take' ? 'Take' : 'Put'} ${named} ${ways}`, verb };
}

/** "Trolley jack under the cross member", "primer on the tank": a thing of the shed and where it goes, without a verb. */
export function laidAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  const way = words[at]?.text ?? '';
  const tool = words[at - 1]?.text ?? '';
  if (!/^(?:under|on|in|over|onto|into|through|round)$/.test(way)) return undefined;
  let from = at;
  while (from > 0 && at - from < 4 && inThing(words, from - 1)) from -= 1;
  const first = words[from]?.text ?? '';
  // "New tyre on the front rim": what is new goes where it is told to be.
  const renewed = /^(?:new|second|third)$/.test(first) && at - from > 1 && words[at + 1]?.pos === 'DET';
  if (!LAID.has(tool) && !renewed) return undefined;
  const before = words.slice(Math.max(0, at - 5), at - 1);
  if (
    before.some(
      ({ pos, text }, k) =>
        (pos === 'VERB' && !(k >= before.length - (at - 1 - from))) ||
        pos === 'AUX' ||
        text === 'of' ||
        text === 'no',
    )
  )
    return undefined;
  const where = phraseAt(words, at + 1);
  if (where.text === '') return undefined;
  const what = words
    .slice(from, at)
    .map(({ text }) => text)
    .join(' ');
  if (notWorkedOn(what) || /\d/.test(what)) return undefined;
  if (tool === 'jack')
    return { title: `Jack up ${where.full}`, verb: 'jack', told: 'bare', at, object: where.text };
  if (tool === 'tape' && way === 'round')
    return { title: `Tape ${where.full}`, verb: 'tape', told: 'bare', at, object: where.text };
  return {
    title: `Put ${withArticle(what)} ${way} ${where.full}`,
    verb: 'put',
    told: 'bare',
    at,
    object: where.text,
  };
}

const LAID = new Set(
  'jack stands chocks primer undercoat topcoat oxide paint grease gasket sealant clamp tray pan rag heat penetrating tape'.split(
    ' ',
  ),
);
