/** Faults that a text tells of: several statements of one become one with findings, and those of the register are gone on with. */
import { slug } from '../../../record/chapter/slug.ts';
import type { Statement } from '../../draft.ts';
import { taggedWords } from '../../say/words.ts';
import { wordsOf } from '../prose.ts';
import { faultTitle } from './fault-title.ts';

/** An open fault of the register. */
export interface KnownFault {
  id: string;
  title: string;
  system: string;
  symptom: string;
}

export interface TextFault {
  /** Name of its file. */
  file: string;
  title: string;
  head: string;
  side: string;
  area: string | undefined;
  /** Lemmas of its words. */
  words: Set<string>;
  /** In the register already. */
  known: boolean;
  cured: boolean;
  /** Index of the last statement that told of it. */
  last: number;
}

const SPEAKS = /^(?:NOUN|PROPN|ADJ|VERB)$/;
const EMPTY =
  /^(?:be|have|do|get|go|say|see|look|think|thing|side|bit|one|time|way|little|old|new|good|bad|same)$/;

export const contentOf = (text: string): Set<string> =>
  new Set(
    taggedWords(text)
      .filter(({ pos, lemma }) => SPEAKS.test(pos) && lemma.length > 2 && !EMPTY.test(lemma))
      .map(({ lemma }) => lemma),
  );

export const shared = (a: ReadonlySet<string>, b: ReadonlySet<string>): number =>
  [...a].filter((word) => b.has(word)).length;

/** The faults of one text as they come up, with those of the register before them. */
export class Faults {
  readonly #list: TextFault[] = [];
  readonly #files: Set<string>;
  /** The fault told of last, and the things that it was told with. */
  #last: { fault: TextFault; at: number; things: Set<string> } | undefined;

  constructor(known: readonly KnownFault[]) {
    this.#files = new Set(known.map(({ id }) => id));
    for (const { id, title, system, symptom } of known)
      this.#list.push({
        file: id,
        title,
        head: '',
        side: '',
        area: system,
        words: contentOf(`${title} ${symptom}`),
        known: true,
        cured: false,
        last: -1,
      });
  }

  /** The fault that a statement tells of: one that is known already, or a new one. */
  told(one: Statement, because: string, at: number, thing: string): { fault: TextFault; fresh: boolean } {
    const words = wordsOf(one);
    const { title, head, side } = faultTitle(words, because, thing);
    const content = contentOf(`${title} ${words}`);
    const before =
      this.#goneOnWith(one, at) ?? this.#sameAs({ title, head, side, area: one.area, content, at });
    if (before) {
      before.last = at;
      this.#remember(before, one, at);
      for (const word of content) before.words.add(word);
      return { fault: before, fresh: false };
    }
    let file =
      slug(title)
        .slice(0, 40)
        .replace(/-[^-]*$/, (end) => (slug(title).length > 40 ? '' : end)) || 'fault';
    for (let n = 2, stem = file; this.#files.has(file); n++) file = `${stem}-${n}`;
    this.#files.add(file);
    const fault: TextFault = {
      file,
      title,
      head,
      side,
      area: one.area,
      words: content,
      known: false,
      cured: false,
      last: at,
    };
    this.#list.push(fault);
    this.#remember(fault, one, at);
    return { fault, fresh: true };
  }

  #remember(fault: TextFault, one: Statement, at: number): void {
    const before = this.#last?.fault === fault ? this.#last.things : [];
    this.#last = { fault, at, things: new Set([...before, ...thingsOf(one)]) };
  }

  /** "It just spins", "there is half a turn of nothing", said right behind a fault: more of the same. */
  #goneOnWith(one: Statement, at: number): TextFault | undefined {
    const last = this.#last;
    if (!last || last.fault.cured || (one.opens && ENTRY.test(one.kind))) return undefined;
    const apart = at - last.at;
    const things = thingsOf(one);
    const goesOn =
      things.length === 0
        ? apart <= 2
        : (apart <= 4 && things.every((thing) => last.things.has(thing))) ||
          (apart === 1 && (MEANS_IT.test(one.text) || things.some((thing) => last.things.has(thing))));
    return goesOn ? last.fault : undefined;
  }

  #sameAs(now: {
    title: string;
    head: string;
    side: string;
    area: string | undefined;
    content: ReadonlySet<string>;
    at: number;
  }): TextFault | undefined {
    const title = contentOf(now.title);
    return this.#list.findLast((one) => {
      if (one.cured && !one.known) return false;
      if (one.area && now.area && one.area !== now.area && one.area !== 'whole machine') return false;
      if (one.known) {
        const common = shared(now.content, one.words);
        return (one.area === now.area || common > 2) && common >= 2 && shared(title, one.words) >= 1;
      }
      if (one.head === '' || one.head !== now.head) return false;
      if (one.side !== '' && now.side !== '' && one.side !== now.side) return false;
      // The same thing named again close by, or in much the same words.
      return now.at - one.last <= 4 || shared(title, one.words) >= 2;
    });
  }

  /** The open fault that a statement without one of its own goes on with: what was tried, put off or cured. */
  nearest(one: Statement, at: number, reach = 6): TextFault | undefined {
    const content = contentOf(one.text);
    const open = this.#list.filter((fault) => !fault.cured);
    const near = open.filter(({ last }) => last >= 0 && at - last <= reach);
    const best = near
      .map((fault) => ({ fault, common: shared(content, fault.words) }))
      .filter(({ common }) => common > 0)
      .sort((a, b) => b.common - a.common || b.fault.last - a.fault.last)[0];
    if (best) return best.fault;
    const close = near.filter(({ last }) => at - last <= 2).sort((a, b) => b.last - a.last)[0];
    if (close && (!one.area || !close.area || close.area === one.area)) return close;
    return open.find((fault) => fault.known && fault.area === one.area && shared(content, fault.words) >= 2);
  }
}

const thingsOf = (one: Statement): string[] => (one.things ?? []).map(({ thing }) => thing);

/** Entries of a list stand each for itself. */
const ENTRY = /^(?:item|task|done|row)$/;
/** Begins with what stands for a thing that was just named. */
const MEANS_IT =
  /^(?:(?:and|but|so|oh|well|yes|no|right|look|see|actually|because|there|then|now|i mean|you see)[, ]+)*(?:it|it'?s|that|that'?s|they|they'?re|this|those|which|both)\b/i;

export function severityOf(text: string, area: string | undefined): string {
  const lower = text.toLowerCase();
  if (/no driving|not to be (?:driven|moved)|do not drive|not driving|to the floor|no brake/.test(lower))
    return 'do not drive';
  if (area === 'brakes' || area === 'wheels' || area === 'front end' || area === 'steering')
    return 'do not drive';
  if (area === 'fuel' && /leak|weep|drip|smell|seep|run(?:s|ning) out/.test(lower)) return 'do not drive';
  return area === 'body' || /wiper|horn|lamp|seat|door/.test(lower) ? 'nuisance' : 'drive with care';
}
