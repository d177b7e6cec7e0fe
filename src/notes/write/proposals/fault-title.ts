/** A fault's title as a mechanic would write it: "Fuel tap weeping at lever", from "fuel tap weeps at the lever, cork is hard as wood". */
import type { TaggedWord } from '../../say/words.ts';
import { capital, type Noun, nounsIn, tagged } from './nouns.ts';

const MOST = 7;
/** A title ends before one of these. */
const ENDS =
  /^(?:i|you|we|he|she|they|it|which|who|what|that|and|but|so|because|when|if|or|as|until|till|then|though|where|while|by|than|somebody|someone)$/;
const DROPPED =
  /^(?:the|a|an|is|are|was|were|be|been|being|am|'s|'re|this|these|those|some|just|really|very|quite|actually|still|also|now|there|here|altogether|all|of course|bit|my|his|her|its|our|their|got|getting|gets|has|have|had|does|do)$/;
const LOOSE_END =
  /^(?:at|in|on|of|with|to|for|from|by|out|near|under|over|about|half|no|not|only|up|down|so|one|two)$/;

export interface Titled {
  title: string;
  /** Dictionary form of the thing's last word: "tap"; empty where only "it" is said. */
  head: string;
  /** Words that tell it from its like: "left", "front". */
  side: string;
}

/** `thing` is what "it" stands for. */
export function faultTitle(words: string, because: string, thing: string): Titled {
  const label = /^([\p{L}][\p{L} /'-]{2,28}):\s/u.exec(words)?.[1] ?? '';
  const labelled = label !== '' && nounsIn(tagged(label), label).length > 0;
  const pieces = piecesOf(labelled ? words.slice(label.length + 1) : words);
  const named = labelled ? label : thing;
  let best: { text: string; score: number } | undefined;
  for (const [at, text] of pieces.entries()) {
    const lower = text.toLowerCase();
    const tags = tagged(text);
    const nouns = nounsIn(tags, text).length;
    // What the book says is no fault.
    const rule = /\b(?:limit|book|should|supposed|allow)/.test(lower);
    const score =
      (because !== '' && because !== 'as noted' && lower.includes(because) ? 3 : 0) +
      (nouns > 0 ? 2 : 0) +
      (tags.some(({ pos }) => pos === 'VERB' || pos === 'ADJ' || pos === 'AUX') ? 2 : 0) +
      (tags.length > 1 ? 1 : -4) -
      (rule ? 3 : 0) -
      (/^(?:it|they|that|there|i|we|you)\b/.test(lower) ? 1.5 : 0) -
      at * 0.5;
    if (!best || score > best.score) best = { text, score };
  }
  const text = (best?.text ?? words).replace(/\b(?:is|was|are|were) what /gi, '');
  return titled(text, tagged(text), named);
}

function titled(text: string, tags: readonly TaggedWord[], thing: string): Titled {
  const nouns = nounsIn(tags, text);
  const subject = subjectOf(tags, nouns);
  const out: string[] = [];
  let from = 0;
  if (subject) {
    out.push(subject.text);
    from = subject.to;
  } else if (thing !== '') {
    out.push(thing);
    from = tags.findIndex(({ pos }) => pos === 'AUX' || pos === 'VERB' || pos === 'ADJ');
    if (from < 0) from = tags.length;
  }
  let length = out.join(' ').split(' ').filter(Boolean).length;
  for (let at = from; at < tags.length && length < MOST; at++) {
    const word = tags[at];
    if (!word || word.pos === 'PUNCT' || word.pos === 'SYM') continue;
    if (ENDS.test(word.text) && out.length > 0) break;
    const next = tags[at + 1];
    if (/^(?:has|have|had|with)$/.test(word.text) && next && /^(?:DET|NUM|NOUN|ADJ)$/.test(next.pos)) {
      out.push('with');
      length += 1;
      continue;
    }
    if (DROPPED.test(word.text) || word.pos === 'PRON' || word.pos === 'INTJ') continue;
    const said = text.slice(word.start, word.end);
    const doing = word.pos === 'VERB' && /[^s]s$/.test(word.text) && word.lemma !== word.text;
    out.push(doing ? inProgress(word.lemma) : said);
    length += 1;
  }
  while (out.length > 1 && LOOSE_END.test(out.at(-1) ?? '')) out.pop();
  const joined = out
    .join(' ')
    .replace(/[^\p{L}\p{N} .,/'-]/gu, '')
    .replace(/\b(?:n't|'s)\b/g, '')
    .replace(/\s+/g, ' ')
    .replace(/[ .,'-]+$/, '')
    .trim();
  const enough = joined.split(' ').length > 1;
  const title = enough ? joined : joined === '' ? 'Fault as noted' : `${joined} at fault`;
  const head = subject?.head ?? thing.split(' ').at(-1) ?? '';
  return { title: capital(title), head, side: sideOf(text) };
}

/** The thing that the clause is about: the first that is named, or the one behind "there's a". */
function subjectOf(tags: readonly TaggedWord[], nouns: readonly Noun[]): Noun | undefined {
  const [first] = nouns;
  if (!first) return undefined;
  const lead = tags.slice(0, first.from);
  // "it's oval by three tenths": the thing stands behind what is said of "it".
  const it = lead.some(({ text }) => /^(?:it|that|this|they|them)$/.test(text));
  const said = lead.some(
    ({ pos, text }) =>
      pos === 'ADP' ||
      (pos === 'VERB' && !/^(?:found|find|got|see|check|checked)$/.test(text)) ||
      (pos === 'ADJ' && it),
  );
  const predicate =
    it &&
    lead.some(({ pos }) => pos === 'AUX') &&
    tags[first.from - 1]?.text !== 'the' &&
    tags[first.from - 2]?.text !== 'the';
  return (it && said) || predicate ? undefined : first;
}

/** Clauses of a statement, labels such as "next time:" put aside. */
function piecesOf(words: string): string[] {
  const list = words
    .replace(/^(?:next time|next|todo|to do|note|also|oh|and|so|but|right|okay|ok|well)[:,\s]+/i, '')
    .split(/[,;:!?()|]+\s*|\.\s+|\s(?:and|but|so|because|although|though)\s/)
    .map((one) => one.trim())
    .filter((one) => /\p{L}{2}/u.test(one));
  return list.length > 0 ? list : [words];
}

function inProgress(lemma: string): string {
  if (/[^aeiou]e$/.test(lemma) && !/ee$/.test(lemma)) return `${lemma.slice(0, -1)}ing`;
  if (/^[^aeiou]*[aeiou][bdgmnprt]$/.test(lemma)) return `${lemma}${lemma.at(-1)}ing`;
  return `${lemma}ing`;
}

const SIDES =
  /\b(?:left|right|front|rear|back|inner|outer|upper|lower|top|bottom|near ?side|off ?side|nearside|offside|first|second|third|l\/h|r\/h|n\/s|o\/s|no\.? ?\d|number (?:one|two)|this side|other side)\b/gi;

export const sideOf = (text: string): string =>
  [...new Set((text.toLowerCase().match(SIDES) ?? []).map((one) => one.replace('back', 'rear')))]
    .sort()
    .join(' ');
