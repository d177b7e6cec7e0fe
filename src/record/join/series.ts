import { dirname } from 'node:path';
import type { ChapterText } from '../chapter/chapter-text.ts';
import type { FaultText } from '../files/faults.ts';
import type { SeriesFile } from '../files/series-file.ts';
import type { DecimalMark } from '../money/decimal.ts';
import { readAmount } from '../money/money.ts';
import { given, type Row } from '../read/field.ts';
import type { PictureStore } from '../read/pictures.ts';
import type { Mapping } from '../read/yaml.ts';
import { checkReleased } from '../released.ts';
import type { Report } from '../report-to.ts';
import { joinRoadTests } from '../road-tests/join.ts';
import type { PointsText } from '../road-tests/points.ts';
import type { RunText } from '../road-tests/run.ts';
import { fieldRule } from '../rules/written.ts';
import type { TABLES, TableName } from '../tables.ts';
import { shown } from '../text/words.ts';
import type { Cue } from '../transcript.ts';
import type { Machine, Series } from '../types.ts';
import { joinChapter } from './chapter.ts';
import { joinFault } from './faults.ts';
import { joinMoney } from './money-rows.ts';
import { References } from './references.ts';
import { joinState } from './state.ts';
import { checkNamesWithheld, joinSupporters } from './supporters.ts';

/** A chapter's folder as found. */
export interface ChapterFile {
  id: string;
  slug: string;
  number: number;
  file: string;
  path: string;
  /** Names in its folder. */
  names: readonly string[];
  text: ChapterText;
  captions: boolean;
  cues: Cue[];
}

export type TableRows = { [T in TableName]: readonly Row<(typeof TABLES)[T]>[] };

/** Every file as its own text tells it. */
export interface Parsed {
  folder: string;
  settings: SeriesFile | undefined;
  machine: Machine | undefined;
  mark: DecimalMark | undefined;
  chapters: readonly ChapterFile[];
  faults: ReadonlyMap<string, FaultText>;
  tables: TableRows;
  /** released.yaml, where there is one. */
  released: Mapping | undefined;
  /** By file name in road-tests/; undefined where it cannot be read. */
  roadTests: ReadonlyMap<string, RunText | PointsText | undefined>;
  /** Text of a file that was read; for looking through everything that is published. */
  texts(path: string): import('../text/lines.ts').Lines | undefined;
}

const DAYS_OF_A_RATE = 10;

/** Follows every cross-reference, works out what follows from several files, and makes the one record of them. */
export async function joinSeries(
  parsed: Parsed,
  pictures: PictureStore,
  report: Report,
): Promise<Series | undefined> {
  const { settings, machine, mark, tables } = parsed;
  checkChapters(parsed.chapters, report);
  const known = new Map(
    parsed.chapters.map(({ id, number, text }) => [id, { id, number, text, held: text.head?.held ?? false }]),
  );
  const refer = new References(known, report);
  const money = joinMoney(
    tables,
    { home: settings?.home_currency ?? 'EUR', maxDays: settings?.rate_max_days ?? DAYS_OF_A_RATE, mark },
    refer,
    report,
  );
  const faults = [...parsed.faults].map(([id, text]) => joinFault(id, text, refer, report));
  const supporters = joinSupporters(tables.supporters, refer, report);
  checkNamesWithheld(parsed, supporters, report);
  const state = joinState(parsed, refer, report);
  const waiting = new Set([...parsed.faults.keys(), ...state.refit.map((one) => one.id)]);
  for (const row of tables.parts)
    for (const name of row.needed_for ?? [])
      refer.has(name, waiting, 'fault or refit line', fieldRule('parts', 'needed_for'), row.at('needed_for'));
  const roadTests = joinRoadTests(tables['road-tests'], parsed.roadTests, machine, mark, refer, report);
  const named = new Map(tables['road-tests'].map((row) => [row.test, row.chapter]));
  const around = {
    roadTests: named,
    refer,
    machine,
    mark,
    faults: new Map(faults.map((fault) => [fault.id, fault])),
    parts: new Map(money.parts.map((part) => [part.id, part])),
    supporters,
    settings,
  };
  const joined = await Promise.all(
    parsed.chapters.map((file) => joinChapter(file, around, pictures, report)),
  );
  const chapters = joined.filter((chapter) => chapter !== undefined);
  if (parsed.released) checkReleased(parsed.released, { chapters, ...state }, report);
  if (!settings || !machine || chapters.length === 0) return undefined;
  const budget =
    settings.budget && readAmount(settings.budget.text, settings.home_currency, settings.budget.mark);
  if (budget && !budget.ok) report.add(fieldRule('series', 'budget'), settings.at('budget'), budget.message);
  const released = chapters.filter((chapter) => !chapter.held).map((chapter) => chapter.date);
  const newest =
    [...(released.length > 0 ? released : chapters.map((chapter) => chapter.date))].sort().at(-1) ?? '';
  return {
    ...given({
      title: settings.title,
      summary: settings.summary,
      byline: settings.byline,
      language: settings.language,
      homeCurrency: settings.home_currency,
      budget: budget?.ok ? budget.value : undefined,
      licence: settings.licence,
      address: settings.address,
    }),
    unitsFirst: settings.units_first ?? 'metric',
    publishLedger: settings.publish_ledger ?? 'lines',
    asOf: settings.as_of ?? newest,
    machine,
    chapters,
    ...money,
    faults,
    supporters,
    unnamedSupporters: 0,
    ...state,
    aims: settings.aims,
    finished: settings.finished ?? false,
    roadTests,
    decimal: mark === ',' ? 'comma' : 'point',
    folder: parsed.folder,
  };
}

/** Two chapters with one number or address, and dates that run backwards. */
function checkChapters(chapters: readonly ChapterFile[], report: Report): void {
  const numbers = new Map<number, string>();
  const slugs = new Map<string, string>();
  for (const { id, number, slug, file } of chapters) {
    const place = { file: dirname(file) };
    const sameNumber = numbers.get(number);
    const sameSlug = slugs.get(slug);
    if (sameNumber !== undefined)
      report.add(
        'chapters/number-twice',
        place,
        `${shown(id)} has the number of ${shown(sameNumber)}. Give each chapter its own.`,
      );
    if (sameSlug !== undefined)
      report.add(
        'chapters/number-twice',
        place,
        `${shown(id)} has the address of ${shown(sameSlug)}. Give each chapter its own name.`,
      );
    numbers.set(number, id);
    slugs.set(slug, id);
  }
  let before: { id: string; date: string } | undefined;
  for (const { id, text } of chapters) {
    if (!text.head) continue;
    if (before && text.head.date < before.date)
      report.add(
        'chapters/order',
        text.head.at('date'),
        `This chapter is dated ${text.head.date}, before ${shown(before.id)} of ${before.date}. Look at the dates, or change the numbers.`,
      );
    before = { id, date: text.head.date };
  }
}
