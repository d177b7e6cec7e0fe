/** Title and day of a chapter from the first heading or the file's name. */
import type { ReadSource } from '../read/source.ts';
import { chiefThings } from './chief-things.ts';

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
  // A head of fields, "title: Load bed, date: …", has its title in one of them.
  const field = /\b(?:title|what|subject|job):\s*(.+?)(?=\s+\w+:\s|$)/i.exec(raw)?.[1] ?? raw;
  const title =
    shortened(
      field
        .replace(
          /^(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?\b[,\s]*(?=\d|$|[-–—:,])/i,
          '',
        )
        .replace(day?.[0] ?? '\0', '')
        .replace(iso ?? '\0', '')
        .replace(/[,\s]+(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?[\s,]*$/i, '')
        .replace(/(?:,\s*)+(?=,|$)/g, '')
        .replace(day ? /,?\s+\d{1,2}(?:\s*[-/–+&]\s*\d{1,2})*\s*$/ : '\0', '')
        .replace(/[<>{}[\]\\`*_"]/g, '')
        .replace(/^[\s,:.–—-]+|[\s,:–—+-]+$/g, '')
        .replace(/\s+/g, ' ')
        .replace(/ \+ /g, ' and ')
        .trim(),
    ) || stem;
  const told = heading || !SAYS_NOTHING.test(title) ? title : (chiefThings(reads) ?? title);
  const named = told.replace(OF_THE_NOTES, '').trim() || told;
  return { title: named.slice(0, 1).toUpperCase() + named.slice(1), date };
}

/** As many whole words as fit into 70 characters. */
const shortened = (title: string): string =>
  title.length <= 70
    ? title
    : title
        .slice(0, 71)
        .replace(/\s+\S*$/, '')
        .slice(0, 70)
        .replace(/[\s,:;(–—-]+$/, '');

/** "Notes for the chapter on cooling" is on cooling. */
const OF_THE_NOTES =
  /^(?:rough |bench |shed |my )?notes?(?: for (?:the|a) (?:chapter|video|recording))? (?:on|about|from) (?:the )?/i;

/** A file's name that a telephone or a recorder gave, or that says only what kind of file it is. */
const SAYS_NOTHING =
  /^(?:(?:new|my|the|a|untitled|recording|record|rec|audio|voice|memo|sound|video|vid|img|mov|dsc|clip|captions?|subtitles?|transcript|talk|speech|notes?|note|text|file|draft|phone|bench|shed|workshop|garage|diary|log|evening|morning|afternoon|day|sat|sun|mon|tue|wed|thu|fri|long|short|rambling|part|take|final|copy|of|from|en|eng|auto|[a-z])\b[\s.]*|[\d\s.:_()-]+)+$/i;
