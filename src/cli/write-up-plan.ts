import { existsSync, readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseDocument } from 'yaml';
import type { ReadSource } from '../notes/read/source.ts';
import { namesPattern, withoutNames } from '../notes/write/consent.ts';
import { headOf } from '../notes/write/head.ts';
import type { Plan } from '../notes/write-up.ts';
import { slug } from '../record/chapter/slug.ts';
import { chapterNumbers, faultAt, TODAY } from '../record/fault-life.ts';
import { readSeries } from '../record/read-series.ts';
import { rootOf } from './add-to-table.ts';
import { type Io, UsageError } from './command.ts';

/** What the series says that a write-up needs; undefined, with the reason told, where its language cannot be read. */
export async function planFor(
  folder: string,
  reads: readonly ReadSource[],
  values: { title?: string | undefined; date?: string | undefined },
  io: Io,
): Promise<Plan | undefined> {
  const { series } = await readSeries(folder, { root: rootOf(folder, io) });
  const language = series?.language ?? 'en';
  if (!/^en\b/i.test(language)) {
    io.err(
      `series.yaml says that the series is written in "${language}". Notes can be read in English only so far. Nothing was written.\n`,
    );
    return undefined;
  }
  const raw = existsSync(join(folder, 'series.yaml'))
    ? parseDocument(await readFile(join(folder, 'series.yaml'), 'utf8')).get('gallon')
    : undefined;
  const gallon = raw === 'imperial' || raw === 'US' ? raw : undefined;
  const head = headOf(reads, series?.asOf ?? '2000-01-01');
  const date = values.date ?? head.date;
  if (!isDay(date)) throw new UsageError(`"${date}" is not a day. Write it as 2026-05-02.`);
  const supporters = series?.supporters ?? [];
  const unnamed = supporters.filter(({ consent }) => !consent).map(({ name }) => name);
  const named = (values.title ?? head.title).trim() || head.title;
  // The folder's name becomes an address: a name that may not be said stands in neither.
  const title = withoutNames(named, namesPattern(unnamed)) || 'From the notes';
  const chapters = join(folder, 'chapters');
  const numbers = existsSync(chapters)
    ? readdirSync(chapters).map((name) => Number(/^(\d+)-/.exec(name)?.[1] ?? 0))
    : [];
  const next = String(Math.max(0, ...numbers) + 1).padStart(2, '0');
  return {
    chapter: `${next}-${slug(title).slice(0, 50).replace(/-+$/, '') || 'notes'}`,
    title,
    date,
    currency: series?.homeCurrency ?? 'EUR',
    habits: { money: series?.homeCurrency ?? 'EUR', ...(gallon ? { gallon } : {}) },
    ...(gallon ? { answers: { gallon } } : {}),
    around: {
      texts: new Map(reads.map(({ source }) => [source.name, source.text])),
      ...(series ? { machine: series.machine.values } : {}),
    },
    supporters: supporters.map(({ name, consent }) => ({ name, consent })),
    unnamed,
    faults: (series?.faults ?? [])
      .filter((fault) => series && faultAt(fault, chapterNumbers(series), TODAY)?.open === true)
      .map(({ id, title: name, system, symptom }) => ({ id, title: name, system, symptom })),
  };
}

function isDay(text: string): boolean {
  const [, year, month, day] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text) ?? [];
  if (year === undefined) return false;
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  return date.toISOString().slice(0, 10) === text;
}
