import type { Day } from './types.ts';

/** Days of a month; February by the Gregorian rule. */
function lastDay(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** A day as read, or what is wrong with it in a full sentence. The one reader of dates, for tables, YAML and frontmatter. */
export function readDay(written: string): { day: Day } | { wrong: string } {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(written);
  const show = `"${written}"`;
  if (!found)
    return { wrong: `${show} is not a date. Write year, month, day, such as ${suggestion(written)}.` };
  const [year, month, day] = [Number(found[1]), Number(found[2]), Number(found[3])];
  if (month < 1 || month > 12)
    return { wrong: `${show} does not exist: there is no month ${month}. Write 01 to 12.` };
  if (day < 1 || day > lastDay(year, month))
    return {
      wrong: `${show} does not exist: that month has ${lastDay(year, month)} days. Write a day of the calendar.`,
    };
  if (year < 1900 || year > 2200)
    return { wrong: `${show} lies outside 1900 to 2200. Look at the year again.` };
  return { day: written };
}

/** The same day in the right form, where only one reading is possible. */
function suggestion(written: string): string {
  const found = /^(\d{4})[-/. ](\d{1,2})[-/. ](\d{1,2})$/.exec(written);
  const made = found ? `${found[1]}-${found[2]?.padStart(2, '0')}-${found[3]?.padStart(2, '0')}` : undefined;
  if (made && 'day' in readDay(made)) return made;
  return '2026-05-02';
}

/** Whole days from one day to another; negative where `to` is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000);
}
