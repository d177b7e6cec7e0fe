/** Work told in a roundabout way: "had a look at the points", "gave the shoes a rub", "took her down the lane". */
import type { Deed } from './deed.ts';
import { notWorkedOn } from './not-worked-on.ts';
import { phraseAt, withArticle } from './phrase.ts';
import type { TaggedWord } from './words.ts';

const TREATMENTS =
  /^(?:rub|clean|wipe|wash|brush|scrub|polish|soak|squirt|dust|sand|flush|rinse|going-over|coat|tap|bleed|service|charge|test)$/;
const WITH_WHAT: Readonly<Record<string, string>> = {
  oil: 'oil',
  grease: 'grease',
  paint: 'paint',
  primer: 'prime',
  polish: 'polish',
  wax: 'wax',
  heat: 'heat',
};
const ROADS = /\b(?:lane|road|block|yard|street|hill|village|drive|track|field|farm|bridge|corner|park)$/;

export function otherDeedAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  switch (words[at]?.text) {
    case 'look':
      return lookAt(words, at);
    case 'gave':
    case 'give':
    case 'giving':
      return giveAt(words, at);
    case 'drove':
    case 'drive':
    case 'took':
    case 'take':
      return driveAt(words, at);
    case 'checked':
    case 'check':
    case 'tested':
      return checkFor(words, at);
    case 'gun':
      return greaseGunAt(words, at);
    default:
      return undefined;
  }
}

function lookAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  if (!/^(?:at|into|over)$/.test(words[at + 1]?.text ?? '')) return undefined;
  const lead = words
    .slice(Math.max(0, at - 3), at)
    .map(({ text }) => text)
    .join(' ');
  const had = /\b(had|have|having|take|took|get|got) (?:a|another|a good|a quick)$/.exec(lead)?.[1];
  if (!had || /\b(?:n't|not|could|should|would|will)\b/.test(lead)) return undefined;
  const thing = phraseAt(words, at + 2);
  if (thing.text === '' || notWorkedOn(thing.text)) return undefined;
  return {
    title: `Look ${words[at + 1]?.text} ${thing.full}`,
    verb: 'look',
    told: /^(?:had|took|got)$/.test(had) ? 'done' : 'meant',
    at,
    object: thing.text,
  };
}

function giveAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  if (/^(?:he|she|they|who|to)$/.test(words[at - 1]?.text ?? '')) return undefined;
  const thing = phraseAt(words, at + 1);
  let k = thing.end;
  if (thing.text === '' || notWorkedOn(thing.text) || !/^(?:a|another)$/.test(words[k]?.text ?? ''))
    return undefined;
  k += 1;
  while (/^(?:good|quick|bit|little|light|thorough|proper)$/.test(words[k]?.text ?? '')) k += 1;
  const how = words[k]?.text ?? '';
  const stuff = words[k + 1]?.text === 'of' ? WITH_WHAT[words[k + 2]?.text ?? ''] : undefined;
  const verb = stuff ?? (TREATMENTS.test(how) ? how : undefined);
  if (verb === undefined || verb === 'coat') return undefined;
  const tool = words[k + 1]?.text === 'with' ? phraseAt(words, k + 2) : undefined;
  const tail = tool && tool.text !== '' ? ` with ${tool.led ? tool.full : tool.text}` : '';
  return {
    title: `${verb.slice(0, 1).toUpperCase()}${verb.slice(1)} ${thing.full}${tail}`,
    verb,
    told: 'done',
    at,
    object: thing.text,
  };
}

function driveAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  if (/^(?:he|she|they|who|to)$/.test(words[at - 1]?.text ?? '')) return undefined;
  let k = at + 1;
  if (/^(?:it|her|him)$/.test(words[k]?.text ?? '')) k += 1;
  else if (words[k]?.pos === 'DET' && /^(?:van|car|truck|machine)$/.test(words[k + 1]?.text ?? '')) k += 2;
  if (words[k]?.text === 'out') k += 1;
  const way = words[k]?.text ?? '';
  if (!/^(?:down|round|up|along|through|to)$/.test(way)) return undefined;
  const road = phraseAt(words, k + 1);
  if (!ROADS.test(road.text)) return undefined;
  return {
    title: `Drive ${way} ${withArticle(road.text)}`,
    verb: 'drive',
    told: 'done',
    at,
    object: road.text,
  };
}

/** "Checked for play at the rim." */
function checkFor(words: readonly TaggedWord[], at: number): Deed | undefined {
  if (words[at + 1]?.text !== 'for') return undefined;
  const named = phraseAt(words, at + 2);
  const word = words[at + 2];
  const what =
    named.text === '' &&
    word?.text === word?.lemma &&
    /^(?:play|wear|movement|leaks|cracks)$/.test(word?.text ?? '')
      ? { ...named, text: word?.text ?? '' }
      : named;
  if (what.text === '' || /^(?:to|n't|not)$/.test(words[at - 1]?.text ?? '')) return undefined;
  const verb = words[at]?.text === 'tested' ? 'test' : 'check';
  return {
    title: `${verb === 'test' ? 'Test' : 'Check'} for ${what.led ? what.full : what.text}`,
    verb,
    told: words[at]?.text === 'check' ? 'ordered' : 'done',
    at,
    object: what.text,
  };
}

/** "Grease gun on the left nipple." */
function greaseGunAt(words: readonly TaggedWord[], at: number): Deed | undefined {
  if (words[at - 1]?.text !== 'grease') return undefined;
  let k = at + 1;
  if (/^(?:put|was|went)$/.test(words[k]?.text ?? '')) k += 1;
  if (!/^(?:on|to|onto)$/.test(words[k]?.text ?? '')) return undefined;
  const thing = phraseAt(words, k + 1);
  if (thing.text === '') return undefined;
  return { title: `Grease ${thing.full}`, verb: 'grease', told: 'bare', at, object: thing.text };
}
