/** What somebody thinks it is: "I reckon it's the ball joints", "might be the float". Only things of the machine are suspects. */
import { placesIn } from '../../say/place.ts';
import type { TextFault } from './faults.ts';
import { capital, nounsIn, tagged } from './nouns.ts';
import type { Proposal } from './proposal.ts';

/** So many statements on, a guess is still about the fault told last. */
const NEAR = 3;

/** Suspects of a text, each with the fault that is talked of. */
export class Suspects {
  readonly #faults = new Map<TextFault, Proposal>();

  #last: { fault: TextFault; at: number } | undefined;

  /** `at` is the statement's index in its text. */
  opened(fault: TextFault, made: Proposal | undefined, at: number): void {
    if (made) this.#faults.set(fault, made);
    this.#last = { fault, at };
  }

  /** `talkedOf` is asked only where somebody is suspected. */
  heard(text: string, thing: string, at: number, talkedOf: () => TextFault | undefined): void {
    const said = suspectsIn(text, thing);
    if (said.length === 0) return;
    // A suspect is often of another place than the fault: a spring of the gearbox, when third gear jumps out.
    const last = this.#last;
    const fault = talkedOf() ?? (last && at - last.at <= NEAR ? last.fault : undefined);
    const made = fault && this.#faults.get(fault);
    if (!made) return;
    const known = (made.row['suspects'] ?? '').split('; ').filter(Boolean);
    // What has the fault is not what causes it.
    const more = said.filter(
      (one) => !known.includes(one) && !made.row['title']?.toLowerCase().startsWith(one.toLowerCase()),
    );
    if (more.length > 0) made.row = { ...made.row, suspects: [...known, ...more].join('; ') };
  }
}

const GUESS =
  /\b(?:i (?:think|thought|reckon|bet|suspect|suppose|guess)|i'd (?:say|bet)|my (?:guess|money)(?: is|'s)?(?: on)?|(?:might|may|could|must|has to|have to|got to) be|probably|possibly|perhaps|maybe|looks like|i'm blaming|i blame)\b/giu;
const ENDS = /[.,;:!?]|\b(?:and|but|because|so|or|when|if|which|not)\b/i;
const EQUALS = /=\s*(?:the |a )?([\p{L}][\p{L} -]{2,30})$/u;
const ASKED =
  /(?:^|[,;.:]\s*)(?:the |a )?([\p{L}][\p{L} -]{2,24}?) (?:tired|dirty|worn|loose|sticking|gone|blocked|damp)\?/giu;

/** `thing` is what "it" stands for. */
export function suspectsIn(text: string, thing: string): string[] {
  const said: string[] = [];
  for (const found of text.matchAll(GUESS)) {
    const rest = text.slice(found.index + found[0].length);
    const clause = rest.slice(0, Math.max(0, cut(rest)));
    // "I don't think it's the box": denied.
    if (
      /(?:n't|not|never|no)\s*$/i.test(text.slice(0, found.index)) ||
      /^ (?:it )?(?:isn't|is not|not)\b/i.test(rest)
    )
      continue;
    const first = nounsIn(tagged(clause), clause)[0];
    if (first) said.push(first.text);
    else if (/be$/i.test(found[0]) && /^\s*(?:that|it)?\s*$/i.test(clause) && thing !== '') said.push(thing);
  }
  const equals = EQUALS.exec(text)?.[1];
  if (equals) said.push(equals);
  for (const found of text.matchAll(ASKED)) said.push(found[1] ?? '');
  const names = said.map((one) => one.trim()).filter((one) => isPart(one.toLowerCase()));
  return [...new Set(names.map(capital))];
}

/** A part of the machine, named by the last of the words: a bearing is one, though it may be anywhere. */
function isPart(name: string): boolean {
  const words = tagged(name);
  return (
    /\bbearings?$/.test(name) ||
    placesIn(words).some(({ at, thing }) => at + thing.split(' ').length === words.length)
  );
}

const cut = (rest: string): number => {
  const at = rest.search(ENDS);
  return at < 0 ? rest.length : at;
};
