/** The text that goes under a chapter's published recording, as plain text of a limited length. */
import { hazard } from './hazards/catalogue.ts';
import type { Hazard } from './hazards/hazard.ts';
import type { Chapter, Series, Supporter } from './types.ts';

export interface RecordingText {
  text: string;
  /** Counted as Unicode characters. */
  length: number;
  /** What was shortened or left out to stay within the limit, in words. */
  shortened: string[];
}

/** A part of the text, from its full wording to its shortest; "" leaves it out. */
interface Part {
  name: string;
  wordings: string[];
}

const stop = (text: string): string => (/[.!?…]$/.test(text) ? text : `${text}.`);
const length = (text: string): number => [...text].length;

/** A place in a recording as its list of times is written: "0:00", "12:31", "1:05:05". */
function clock(seconds: number, withHours: boolean): string {
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
  const minutes = Math.floor((seconds % 3600) / 60);
  return withHours
    ? `${Math.floor(seconds / 3600)}:${two(minutes)}:${two(seconds % 60)}`
    : `${minutes}:${two(seconds % 60)}`;
}

/**
 * What readers of the recording's page must and may know: who paid, the summary, the chapter's address, cautions, times of
 * the steps, corrections and thanks. Who paid, what can injure, corrections of what could hurt, and the address are never
 * left out. Undefined where those alone are longer than the limit. Names only those who agreed.
 * @param address of the site, ended by a slash: "https://example.org/van/"
 */
export function recordingText(
  series: Series,
  chapter: Chapter,
  { address, limit }: { address: string; limit: number },
): RecordingText | undefined {
  const and = new Intl.ListFormat(series.language, { type: 'conjunction' });
  const parts = [
    { name: 'title', wordings: [`${chapter.title}: ${series.machine.name}`] },
    paid(chapter, and),
    { name: 'summary', wordings: [stop(chapter.summary), ''] },
    {
      name: 'address',
      wordings: [
        `The chapter, with every figure, what it cost and what is still open:\n${address}chapters/${chapter.slug}/`,
      ],
    },
    cautions(chapter),
    times(chapter),
    corrections(series, chapter),
    thanks(series, chapter, and),
  ].filter((part) => part.wordings[0] !== '');
  return fitted(parts, limit);
}

/** Shortened in this order until it fits: first what a reader finds in the chapter as well. */
const GIVES_WAY = ['thanks', 'corrections', 'times', 'cautions', 'summary'];

function fitted(parts: readonly Part[], limit: number): RecordingText | undefined {
  const chosen = new Map(parts.map((part) => [part, 0]));
  const whole = () =>
    `${parts
      .map((part) => part.wordings[chosen.get(part) ?? 0] ?? '')
      .filter((words) => words !== '')
      .join('\n\n')}\n`;
  const shortened: string[] = [];
  for (const name of GIVES_WAY) {
    const part = parts.find((one) => one.name === name);
    if (!part) continue;
    for (let at = 1; at < part.wordings.length && length(whole()) > limit; at += 1) {
      chosen.set(part, at);
      const words = `${name} ${part.wordings[at] === '' ? 'left out' : 'shortened'}`;
      if (shortened.at(-1)?.startsWith(name)) shortened.pop();
      shortened.push(words);
    }
  }
  const text = whole();
  return length(text) <= limit ? { text, length: length(text), shortened } : undefined;
}

const named = (one: Supporter): string => one.credit || one.name;

function paid(chapter: Chapter, and: Intl.ListFormat): Part {
  const agreed = chapter.paidBy.filter((one) => one.consent);
  const others = chapter.paidBy.length - agreed.length;
  const payers = agreed.map(named);
  if (others > 0)
    payers.push(others === 1 ? 'a supporter who is not named' : `${others} supporters who are not named`);
  if (payers.length === 0) return { name: 'paid', wordings: [''] };
  const what = agreed.map((one) => ` ${stop(one.what)}`).join('');
  return {
    name: 'paid',
    wordings: [`Paid support: money for this chapter came from ${and.format(payers)}.${what}`],
  };
}

function cautions(chapter: Chapter): Part {
  const entries = chapter.hazards.map(hazard).filter((one): one is Hazard => one !== undefined);
  const injure = entries.filter((one) => one.signal === 'DANGER' || one.signal === 'WARNING');
  const lines = (some: readonly Hazard[], full: boolean) =>
    some.map((one) => `${one.signal}: ${stop(one.title)}${full ? ` ${one.harm}` : ''}`);
  const tail =
    'Precautions stand at each step of the chapter. The maker’s data, the law where you live and licensed people come first.';
  const wording = (some: readonly Hazard[], full: boolean) =>
    some.length === 0 ? tail : [...lines(some, full), tail].join('\n');
  if (entries.length === 0) return { name: 'cautions', wordings: [''] };
  return {
    name: 'cautions',
    wordings: [wording(entries, true), wording(entries, false), wording(injure, false)],
  };
}

function times(chapter: Chapter): Part {
  const timed = chapter.steps
    .flatMap(({ at, number, title }) =>
      at === undefined ? [] : [{ at, words: `${chapter.number}.${number} ${title}` }],
    )
    .sort((a, b) => a.at - b.at);
  if (timed.length === 0) return { name: 'times', wordings: [''] };
  const marks = (timed[0]?.at ?? 0) > 0 ? [{ at: 0, words: 'Beginning' }, ...timed] : timed;
  const hours = (timed.at(-1)?.at ?? 0) >= 3600;
  const list = marks.map(({ at, words }) => `${clock(at, hours)} ${words}`).join('\n');
  return { name: 'times', wordings: [`Steps:\n${list}`, ''] };
}

function corrections(series: Series, chapter: Chapter): Part {
  const own = series.corrections.filter((one) => one.chapter === chapter.id);
  if (own.length === 0) return { name: 'corrections', wordings: [''] };
  const list = (some: typeof own) =>
    some.map((one) => {
      const step = chapter.steps.find(({ id }) => id === one.step);
      const where = step ? `Step ${chapter.number}.${step.number}` : 'Chapter';
      const hurt = one.canHurt ? ' The old words can hurt.' : '';
      return `${where}, corrected ${one.date}.${hurt} Was: ${stop(one.was)} Now: ${stop(one.now)}`;
    });
  const block = (lines: readonly string[]) => (lines.length === 0 ? '' : `Corrections:\n${lines.join('\n')}`);
  const canHurt = own.filter((one) => one.canHurt);
  const rest = own.length - canHurt.length;
  const hint = rest > 0 ? [`${rest} more in the chapter.`] : [];
  return {
    name: 'corrections',
    wordings: [block(list(own)), block([...list(canHurt), ...hint]), block(list(canHurt))],
  };
}

function thanks(series: Series, chapter: Chapter, and: Intl.ListFormat): Part {
  const helpers = series.supporters.filter(
    (one) => one.consent && one.kind !== 'paid' && one.chapters.includes(chapter.id),
  );
  if (helpers.length === 0) return { name: 'thanks', wordings: [''] };
  return {
    name: 'thanks',
    wordings: [
      `Thanks:\n${helpers.map((one) => `${named(one)}: ${stop(one.what)}`).join('\n')}`,
      `Thanks to ${and.format(helpers.map(named))}.`,
      '',
    ],
  };
}
