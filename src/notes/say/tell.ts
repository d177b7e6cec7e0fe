/** What a statement says: wrong, put off, bought, thanked … Each finding is one word of the house and the words that told it. */
import type { Figure } from '../figures/find.ts';
import { MONEY } from '../figures/unit-words.ts';
import {
  COSTS,
  CURED,
  GOT,
  NO_COST,
  NO_THANKS,
  PUT_OFF,
  THANKS,
  TRIED,
  WANTED,
  WELL,
  WRONG,
} from './vocabulary.ts';

export type Saying =
  | 'fault'
  | 'put off'
  | 'tried'
  | 'cured'
  | 'part'
  | 'cost'
  | 'thanks'
  | 'refit'
  | 'measurement'
  | 'speed';

export function tell(
  text: string,
  figures: readonly Figure[],
  task = false,
  money = false,
): Map<Saying, string> {
  const said = new Map<Saying, string>();
  const lower = ` ${text.toLowerCase().replaceAll('’', "'")} `;
  const word = (pattern: RegExp): string | undefined =>
    pattern
      .exec(lower)?.[0]
      .replace(/^[^a-z]+/, '')
      .trim();
  const wrong = [...lower.matchAll(new RegExp(WRONG.source, 'g'))].map((found) => found[0].trim());
  const well = new RegExp(WELL.source, 'g');
  const without = lower
    .replace(well, ' ')
    .replace(/\b(?:no smoking|broken studs|old \w+ were|cracked on with)\b/g, ' ');
  const future = /^\s*(?:next(?: time)?|tomorrow|then)\b/.test(lower);
  const left = WRONG.exec(without)?.[0];
  if (wrong.length > 0 && left && !future && !/^\s*thank/.test(lower))
    said.set('fault', left.replace(/^[^a-z]+/, '').trim());
  const putOff = word(PUT_OFF);
  if (putOff) said.set('put off', putOff);
  const tried = word(TRIED);
  if (tried) said.set('tried', tried);
  if (said.has('fault') && CURED.test(lower)) said.set('cured', word(CURED) ?? '');
  const sums = figures.filter(({ unit }) => MONEY.has(unit));
  const got = word(GOT);
  const wanted =
    word(WANTED) ??
    (task &&
      /\b(?:new|find|get|buy|order|need|seal|gasket|bush|bearing|spring|strainer|litre)\b/.exec(lower)?.[0]);
  const noCost = NO_COST.test(lower);
  if (
    sums.length > 0 &&
    !(noCost && !/\bbought it after all|so i bought/.test(lower)) &&
    (COSTS.test(lower) || money)
  )
    said.set('cost', word(COSTS) ?? 'money');
  const onlyPost = sums.length > 0 && /^\W*(?:post|postage|freight|duty|customs|carriage)\b/.test(lower);
  if (
    (got || wanted || (sums.length > 0 && said.has('cost'))) &&
    !onlyPost &&
    !future &&
    !/\b(?:sold|total|money for|paid for the|petrol money)\b/.test(lower)
  ) {
    if (!(got && /^(?:paid|costs?|costing|came to|parcel|has the)$/.test(got) && sums.length === 0))
      said.set('part', String(got ?? wanted ?? 'price'));
  }
  const thanks = word(THANKS);
  if (thanks && !NO_THANKS.test(lower)) said.set('thanks', thanks);
  return said;
}
