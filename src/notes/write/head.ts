/** Title and day of a chapter from the first heading or the file's name. */
import type { ReadSource } from '../read/source.ts';

const MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');

/** A day without a year has the year of `today`. */
export function headOf(reads: readonly ReadSource[], today: string): { title: string; date: string } {
  const [read] = reads;
  const heading = read?.blocks.find((block) => block.kind === 'heading');
  const stem =
    (read?.source.name ?? 'notes')
      .split('/')
      .at(-1)
      ?.replace(/\.[^.]+$/, '')
      .replace(/[-_]+/g, ' ') ?? 'notes';
  const raw = heading ? (read?.masked.slice(heading.start, heading.end).trim() ?? stem) : stem;
  const day =
    /\b(\d{1,2})(?:st|nd|rd|th)?\s+(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\.?(?:\s+(\d{4}))?/i.exec(
      raw,
    );
  const iso = /\b(\d{4}-\d\d-\d\d)\b/.exec(raw)?.[1];
  const date =
    iso ??
    (day
      ? `${day[3] ?? today.slice(0, 4)}-${String(MONTHS.indexOf((day[2] ?? '').slice(0, 3).toLowerCase()) + 1).padStart(2, '0')}-${(day[1] ?? '').padStart(2, '0')}`
      : today);
  const title =
    raw
      .replace(/\b(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?\b/gi, '')
      .replace(day?.[0] ?? '\0', '')
      .replace(iso ?? '\0', '')
      .replace(/^[\s,:–—-]+|[\s,:–—-]+$/g, '')
      .replace(/[<>{}[\]\\`*_"]/g, '')
      .replace(/\s+/g, ' ')
      .replace(/ \+ /g, ' and ')
      .trim()
      .slice(0, 70) || stem;
  return { title: title.slice(0, 1).toUpperCase() + title.slice(1), date };
}
