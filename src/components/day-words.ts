import type { Day } from '../record/types.ts';

const printers = new Map<string, Intl.DateTimeFormat>();

/** A day in words, in the series' language. @example dayInWords('2026-05-02', 'en-GB') // "2 May 2026" */
export function dayInWords(day: Day, language: string): string {
  let printer = printers.get(language);
  if (!printer) {
    printer = new Intl.DateTimeFormat(language, { dateStyle: 'long', timeZone: 'UTC' });
    printers.set(language, printer);
  }
  return printer.format(new Date(`${day}T00:00:00Z`));
}

/** Whole days from one day to a later one. */
export function daysBetween(from: Day, to: Day): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);
}

/** @example counted(1, 'open fault') // "1 open fault" ; counted(3, 'open fault') // "3 open faults" */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** @example listed(['a', 'b', 'c'], 'en-GB') // "a, b and c" */
export function listed(words: readonly string[], language = 'en-GB'): string {
  return new Intl.ListFormat(language, { type: 'conjunction' }).format(words);
}
