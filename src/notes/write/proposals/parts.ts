/** Parts that a statement tells of: wanted, ordered or come. */
import type { Statement } from '../../draft.ts';
import type { TaggedWord } from '../../say/words.ts';
import type { Sum } from './cost.ts';
import { capital, isMeasureWord, nounsIn, solid } from './nouns.ts';

export interface Part {
  name: string;
  qty: number;
  status: 'wanted' | 'ordered' | 'arrived';
}

const BEHIND =
  /\b(?:ordered|ord'?d|bought|buy|need(?:s|ed)?|find|wants?|wanted|get|replace|renew|look(?:ing)? for|on order|picked up|arrived|came|got|fitted|new)\b:?/gi;
const GOT =
  /\b(?:bought|arrived|came|come|picked up|got|have got|here|fitted|given|gave|sent|delivered|in the post|turned up)\b/;
const ORDERED = /\b(?:ordered|ord'?d|on order)\b/;

export function partsIn(
  one: Statement,
  text: string,
  words: readonly TaggedWord[],
  sums: readonly Sum[],
  thing: string,
): Part[] {
  // A sum of sums, "call it eighty-six euros", tells of no part.
  if (one.said.has('cost') && sums.length === 0) return [];
  const lower = text.toLowerCase();
  const status = ORDERED.test(lower)
    ? 'ordered'
    : /\bneed|\bfind\b|\bwant|\breplace\b|\bbuy\b|\bmissing\b|\bget\b|\brenew\b/.test(lower) ||
        one.kind === 'task'
      ? 'wanted'
      : GOT.test(lower) || sums.length > 0
        ? 'arrived'
        : 'wanted';
  const paid = sums.filter(({ kind, item }) => /^(?:part|consumable|tool)$/.test(kind) && item !== '');
  if (paid.length > 0) return paid.map(({ item, qty }) => ({ name: item, qty: qty ?? 1, status }));
  if (
    /\b(?:a|the|another) (?:new |other |better |good )?one\b|\bnew ones?\b/.test(lower) &&
    thing !== '' &&
    !nounsIn(words, text).some(({ head }) => thing.endsWith(head))
  )
    return [asPart(thing, undefined, status)];
  const nouns = solid(nounsIn(words, text)).filter(({ head }) => !isMeasureWord(head));
  for (const found of text.matchAll(BEHIND)) {
    const at = found.index + found[0].length;
    const noun = nouns.find(
      ({ start, from }) =>
        start >= at - (found[0].toLowerCase() === 'new' ? 3 : 0) && start - at < 24 && from >= 0,
    );
    if (noun) return [asPart(noun.text, noun.count, status)];
  }
  const [first] = nouns;
  if (first) return [asPart(first.text, first.count, status)];
  return thing === '' ? [] : [asPart(thing, undefined, status)];
}

const asPart = (name: string, count: number | undefined, status: Part['status']): Part => ({
  name: capital(name.replace(/^(?:new|another|more)\s+/i, '')),
  qty: count ?? 1,
  status,
});
