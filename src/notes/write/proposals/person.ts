/** Who is thanked, for what, and how it was given. */
import type { TaggedWord } from '../../say/words.ts';
import { capital } from './nouns.ts';

export interface Supporter {
  name: string;
  consent: boolean;
}

const HELPED =
  /^(?:lent|lends|lend|gave|gives|sent|sends|paid|drove|came|comes|helped|helps|has|brought|brings|rang|sat|held|holds|made|makes|found|told|showed|welded|turned|let|lets|took|looked|wrote|came|cut|posted|offered|did|does|knows|knew|machined|pressed|bored|drew)$/;
const NO_NAME =
  /^(?:the|a|an|you|him|her|them|he|she|they|it|who|that|this|everybody|everyone|all|for|and|i|we|to|to all|properly|again|so|god|goodness|heaven|goes|due|also|my|our|his|their|your|somebody|someone|both|those|these|another|whoever|anybody|people|lads|folks|mate|ordered|before|subject|dad|mum|mother|father|brother|sister|cousin|uncle|aunt|neighbour|neighbours|young|next|whoever|again|anyway|very|now|thank|thanks|cheers)$/i;

/** The name that is said, with the place behind it; none where nobody is named. */
export function personIn(text: string, words: readonly TaggedWord[]): string {
  const written = /\p{Ll}/u.test(text) && /\p{Lu}/u.test(text);
  // "Thank you to my aunt Vilma for the drill", also where nobody wrote a capital.
  const kin =
    /\b(?:thanks?|thank you|cheers)\b[^.;]*?\bto (?:my|our|his|her) (?:aunt|auntie|uncle|cousin|friend|mate|neighbour|brother|sister|son|daughter|nephew|niece|lad) ([\p{L}][\p{L}'-]{2,})(?= (?:for|who|and|from|at)\b|[,.;]|$)/iu.exec(
      text,
    )?.[1];
  if (
    kin &&
    !NO_NAME.test(kin) &&
    !HELPED.test(kin.toLowerCase()) &&
    !/^(?:for|who|and|from|at|next)$/i.test(kin)
  )
    return capital(tidy(kin));
  const behind =
    /\b(?:thanks? (?:also )?(?:again )?to|thanks|(?:a |big |huge )*thank you (?:very much |so much )?to|\bta to|thank you,?|thank|cheers,?(?: to)?|hat off to|grateful to|credit to)\s+([\p{L}][\p{L}'-]*(?:\s+[\p{L}][\p{L}'-]+)?)/giu;
  for (const found of text.matchAll(behind)) {
    const [first = '', second = ''] = (found[1] ?? '').split(/\s+/);
    if (NO_NAME.test(first) || first.length < 2) continue;
    return capital(tidy(/^\p{Lu}/u.test(first) && /^\p{Lu}/u.test(second) ? `${first} ${second}` : first));
  }
  const owner = /^(\p{Lu}\p{Ll}+)['’]s\b/u.exec(text)?.[1];
  if (owner && !NO_NAME.test(owner) && words.some(({ text: one }) => HELPED.test(one))) return owner;
  for (const [at, word] of words.entries()) {
    const said = text.slice(word.start, word.end);
    const next = words[at + 1];
    const second = words[at + 2];
    const isName = word.pos === 'PROPN' && !NO_NAME.test(word.text) && (!written || /^\p{Lu}/u.test(said));
    if (!isName || !next) continue;
    if (HELPED.test(next.text) || (next.text === ':' && at < 2)) return capital(tidy(said));
    if (next.pos === 'PROPN' && second && (HELPED.test(second.text) || second.text === ':'))
      return tidy(text.slice(word.start, next.end));
    if (/^(?:from|to|with|by)$/.test(words[at - 1]?.text ?? '') && /^\p{Lu}/u.test(said) && written)
      return tidy(said);
  }
  return '';
}

const tidy = (name: string): string =>
  name
    .replace(/['’]s$/, '')
    .replace(/\s+/g, ' ')
    .trim();

export function kindOfHelp(text: string): string {
  const lower = (text.toLowerCase().split(/ and (?:thanks )?to /)[0] ?? '').toLowerCase();
  if (/\b(?:lent|lend|lends|lending|loan|borrowed|on loan)\b/.test(lower)) return 'loan';
  if (
    /\b(?:gave|gives|gift|donated|given|for nothing|won't take|wouldn't take|sent (?:me|us|a|the|some))\b/.test(
      lower,
    )
  )
    return 'gift';
  return /(?<!(?:was|were|be|been|is|are|i|we) )\bpaid for\b/.test(lower) ? 'paid' : 'help';
}

const SAYS = /\p{L}{2}/u;
/** Marks at the beginning say nothing, and a table takes some of them for a formula's. */
const MARKS = /^[^\p{L}\p{N}]+/u;

/** What they did or gave, in a few words. */
export function whatOfHelp(text: string, name: string): string {
  const bare = text
    .trim()
    .replace(/[.!]+$/, '')
    .replace(/^(?:and|so|oh|but|well|note to self|also|then|right|okay|ps)\b[,:]?\s+/i, '');
  const given =
    /\bthank(?:s|(?: you))?\b.*?\bfor (?:the |his |her |their )?(.+?)(?=[.;]|, | and thanks\b| and to\b|$)/i.exec(
      bare,
    )?.[1];
  if (given && SAYS.test(given)) return capital(given.replace(MARKS, ''));
  const first = name.split(' ')[0] ?? '';
  const at = first === '' ? -1 : bare.toLowerCase().indexOf(first.toLowerCase());
  const did =
    at < 0 || /^['’]s\b/.test(bare.slice(at + first.length))
      ? ''
      : bare.slice(at + first.length).replace(/^[:,\s]+/, '');
  const piece = /^.{3,90}?(?=[.;]|, (?:thank|so|and|it)\b|$)/s.exec(did)?.[0] ?? '';
  return capital((SAYS.test(piece) ? piece : bare).replace(MARKS, '').slice(0, 160));
}

/** The one supporter of the register who is meant by a name; none where two could be. */
export function knownAs(name: string, supporters: readonly Supporter[]): Supporter | undefined {
  const wanted = name.toLowerCase().split(' ');
  if ((wanted[0] ?? '').length < 3) return undefined;
  const fits = supporters.filter((one) => {
    const words = one.name.toLowerCase().split(' ');
    return wanted.every((word) => words.includes(word));
  });
  return fits.length === 1 ? fits[0] : undefined;
}
