import { nearest } from './nearest.ts';

/** "a", "a or b", "a, b or c". */
export function either(choices: readonly string[], word = 'or'): string {
  if (choices.length < 2) return choices.join('');
  return `${choices.slice(0, -1).join(', ')} ${word} ${choices.at(-1)}`;
}

/** "1 error", "2 errors", "0 files". */
export function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}

/** A value as shown in a problem: in quotes, on one line, cut where it is long. */
export function shown(text: string): string {
  // A control character must not reach a terminal.
  const line = text
    .replace(/\s+/g, ' ')
    .replace(/\p{Cc}/gu, '\uFFFD')
    .trim();
  const letters = [...line];
  return `"${letters.length > 60 ? `${letters.slice(0, 57).join('')}…` : line}"`;
}

/** The second sentence of a problem about a name: the nearest one, else the choices where they are few. */
export function meant(name: string, choices: Iterable<string>, none = 'There is none yet.'): string {
  const all = [...choices];
  const near = nearest(name, all);
  if (near !== undefined) return `The nearest is "${near}".`;
  if (all.length === 0) return none;
  const longer = all.filter((one) => name.length > 2 && one.startsWith(name));
  if (longer.length > 0 && longer.length <= 10) return `Write ${either(longer.map((one) => `"${one}"`))}.`;
  return all.length <= 10 ? `Write ${either(all.map((one) => `"${one}"`))}.` : 'None is near to it.';
}
