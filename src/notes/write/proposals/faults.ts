/** Faults that a text tells of: several statements of one become one with findings, and those of the register are gone on with. */
import { slug } from '../../../record/chapter/slug.ts';
import type { Statement } from '../../draft.ts';
import { wordsOf } from '../prose.ts';
import { Content } from './content.ts';
import { faultTitle, type Titled } from './fault-title.ts';
import { FreeNames } from './free-names.ts';

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
  content: Content;
  /** In the register already. */
  known: boolean;
  cured: boolean;
  /** Index of the last statement that told of it. */
  last: number;
}

/** Within so many statements the same thing named again is the same fault, whatever is said of it. */
const CLOSE = 4;
/** After so many statements a fault is no longer what is talked about. */
const REACH = 6;

interface Now extends Titled {
  area: string | undefined;
  content: Content;
  at: number;
}

/** The faults of one text as they come up, with those of the register before them. */
export class Faults {
  readonly #known: readonly TextFault[];
  readonly #files: FreeNames;
  /** Those that came up, by what they are of, but for those that were cured. */
  readonly #byHead = new Map<string, TextFault[]>();
  /** Those told of within reach, the latest last. */
  #recent: TextFault[] = [];
  /** The fault told of last, and the things that it was told with. */
  #last: { fault: TextFault; at: number; things: Set<string> } | undefined;

  constructor(known: readonly KnownFault[]) {
    this.#files = new FreeNames(known.map(({ id }) => id));
    this.#known = known.map(({ id, title, system, symptom }) => ({
      file: id,
      title,
      head: '',
      side: '',
      area: system,
      content: new Content(`${title} ${symptom}`),
      known: true,
      cured: false,
      last: -1,
    }));
  }

  /** The fault that a statement tells of: one that is known already, or a new one. */
  told(one: Statement, because: string, at: number, thing: string): { fault: TextFault; fresh: boolean } {
    const words = wordsOf(one);
    const gone = this.#goneOnWith(one, at);
    if (gone) return this.#now(gone, words, one, at);
    const titled = faultTitle(words, because, thing);
    const said = `${titled.title} ${words}`;
    const content = new Content(said);
    const before = this.#sameAs({ ...titled, area: one.area, content, at });
    if (before) return this.#now(before, said, one, at);
    const fault = this.#newFault(titled, content, one.area, at);
    this.#up(fault, one, at);
    return { fault, fresh: true };
  }

  #now(fault: TextFault, said: string, one: Statement, at: number): { fault: TextFault; fresh: boolean } {
    fault.content.take(said);
    this.#up(fault, one, at);
    return { fault, fresh: false };
  }

  /** It is the one told of last. */
  #up(fault: TextFault, one: Statement, at: number): void {
    fault.last = at;
    this.#recent = this.#recent.filter((each) => each !== fault && at - each.last <= REACH);
    this.#recent.push(fault);
    const before = this.#last?.fault === fault ? this.#last.things : [];
    this.#last = { fault, at, things: new Set([...before, ...thingsOf(one)]) };
  }

  #newFault(
    { title, head, side }: Titled,
    content: Content,
    area: string | undefined,
    at: number,
  ): TextFault {
    const whole = slug(title);
    const stem = whole.slice(0, 40).replace(/-[^-]*$/, (end) => (whole.length > 40 ? '' : end)) || 'fault';
    const file = this.#files.take(stem);
    const fault = { file, title, head, side, area, content, known: false, cured: false, last: at };
    // "It" may be anything: such a fault is not found again by what it is of.
    const list = this.#byHead.get(head);
    if (list) list.push(fault);
    else if (head !== '') this.#byHead.set(head, [fault]);
    return fault;
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

  /** The one that came up last of those that can be meant; one of the register where none of the text's can. */
  #sameAs(now: Now): TextFault | undefined {
    const title = new Content(now.title);
    return (
      this.#byHead.get(now.head)?.findLast(
        (one) =>
          !one.cured &&
          mayBeIn(one, now.area) &&
          (one.side === '' || now.side === '' || one.side === now.side) &&
          // The same thing named again close by, or in much the same words.
          (now.at - one.last <= CLOSE || title.shared(one.content) >= 2),
      ) ??
      this.#known.findLast((one) => {
        if (!mayBeIn(one, now.area)) return false;
        const common = now.content.shared(one.content);
        return (one.area === now.area || common > 2) && common >= 2 && title.shared(one.content) >= 1;
      })
    );
  }

  /** The open fault that a statement without one of its own goes on with: what was tried, put off or cured. */
  nearest(one: Statement, at: number): TextFault | undefined {
    const content = new Content(one.text);
    const near = this.#recent
      .filter(({ cured, last }) => !cured && at - last <= REACH)
      .sort((a, b) => b.last - a.last);
    const best = near
      .map((fault) => ({ fault, common: content.shared(fault.content) }))
      .filter(({ common }) => common > 0)
      .sort((a, b) => b.common - a.common)[0];
    if (best) return best.fault;
    const [close] = near;
    if (close && at - close.last <= 2 && (!one.area || !close.area || close.area === one.area)) return close;
    return this.#known.find(
      (fault) => !fault.cured && fault.area === one.area && content.shared(fault.content) >= 2,
    );
  }
}

/** Whether a fault of one place of the machine can be told of in words for another. */
const mayBeIn = ({ area }: TextFault, now: string | undefined): boolean =>
  !area || !now || area === now || area === 'whole machine';

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
