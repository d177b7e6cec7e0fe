import { readdirSync } from 'node:fs';
import { basename, dirname, join, relative, sep } from 'node:path';
import type { ChapterText } from './chapter/chapter-text.ts';
import { readChapter } from './chapter/read-chapter.ts';
import { type FaultText, readFault } from './files/faults.ts';
import { readMachine } from './files/machine.ts';
import { readSeriesFile } from './files/series-file.ts';
import { type ChapterFile, joinSeries, type Parsed, type TableRows } from './join/series.ts';
import type { DecimalMark } from './money/decimal.ts';
import { inOrder, type Problem } from './problem.ts';
import { FileStore } from './read/file-store.ts';
import { PictureStore } from './read/pictures.ts';
import { readTable } from './read/table.ts';
import { readYaml } from './read/yaml.ts';
import { Report } from './report-to.ts';
import type { PointsText } from './road-tests/points.ts';
import { readAloud } from './road-tests/read-aloud.ts';
import { CHAPTER_CAPTIONS, runReader } from './road-tests/read-run.ts';
import type { RunText } from './road-tests/run.ts';
import { TABLES, type TableName } from './tables.ts';
import type { Lines } from './text/lines.ts';
import { nearest } from './text/nearest.ts';
import { LIMITS, type Limits } from './text/text-file.ts';
import { shown } from './text/words.ts';
import { type Cue, readTranscript } from './transcript.ts';
import type { Series } from './types.ts';

export interface Counts {
  /** Files read. */
  files: number;
  chapters: number;
  steps: number;
  pictures: number;
  ledgerRows: number;
}

export interface Reading {
  /** Everything that could be joined, held chapters included; undefined where series.yaml, machine.yaml or every chapter cannot be read. */
  series: Series | undefined;
  /** All problems, by file, line and column. */
  problems: Problem[];
  counts: Counts;
}

export interface ReaderOptions {
  /** Problems name files from here; left out, the folder that holds the content folder. */
  root?: string;
  limits?: Partial<Limits>;
}

/** Reads a series from its folder, once. Never throws for what an author wrote: that comes back as problems. */
export function readSeries(folder: string, options: ReaderOptions = {}): Promise<Reading> {
  return createReader(folder, options).read();
}

/** A reader that keeps what it read: reading again after one edit reads and checks one file again. */
export function createReader(folder: string, options: ReaderOptions = {}): { read(): Promise<Reading> } {
  const reader = new Reader(folder, options);
  return { read: () => reader.read() };
}

const OTHER_FILES = [
  'series.yaml',
  'machine.yaml',
  'released.yaml',
  'supporters-from.yaml',
  'chapters',
  'faults',
  'road-tests',
  'notes',
];
const IGNORED = /^\.|^readme(\.\w+)?$|^thumbs\.db$|~$/i;

class Reader {
  readonly #folder: string;
  readonly #prefix: string;
  readonly #limits: Limits;
  readonly #files: FileStore;
  readonly #pictures: PictureStore;

  constructor(folder: string, { root = dirname(folder), limits = {} }: ReaderOptions) {
    this.#folder = folder;
    this.#prefix = relative(root, folder).split(sep).join('/') || basename(folder);
    this.#limits = { ...LIMITS, ...limits };
    this.#files = new FileStore(this.#limits);
    this.#pictures = new PictureStore(this.#limits.pixels);
  }

  async read(): Promise<Reading> {
    const report = new Report();
    const counts: Counts = { files: 0, chapters: 0, steps: 0, pictures: 0, ledgerRows: 0 };
    this.#unknownFiles(report);
    const settings = this.#derive('series.yaml', 'series', report, counts, (lines, own) => {
      const mapping = readYaml(lines, lines.text, 0, own);
      return mapping && readSeriesFile(mapping, own);
    });
    const mark: DecimalMark | undefined =
      settings?.decimal === 'comma' ? ',' : settings?.decimal === 'point' ? '.' : undefined;
    const machine = this.#derive('machine.yaml', `machine ${mark}`, report, counts, (lines, own) => {
      const mapping = readYaml(lines, lines.text, 0, own);
      return mapping && readMachine(mapping, mark, own);
    });
    const chapters = this.#chapters(mark, report, counts);
    const faults = this.#faults(mark, report, counts);
    const tables = this.#tables(mark, report, counts);
    const released = this.#derive(
      'released.yaml',
      'released',
      report,
      counts,
      (lines, own) => readYaml(lines, lines.text, 0, own),
      'fine',
    );
    const parsed: Parsed = {
      folder: this.#folder,
      settings,
      machine,
      mark,
      chapters,
      faults,
      tables,
      released,
      roadTests: this.#roadTests(tables['road-tests'], report, counts),
      texts: (path) => this.#files.peek(path),
    };
    const series = await joinSeries(parsed, this.#pictures, report);
    counts.chapters = chapters.length;
    counts.steps = chapters.reduce((sum, chapter) => sum + chapter.text.steps.length, 0);
    counts.pictures = series?.chapters.reduce((sum, chapter) => sum + chapter.photos.length, 0) ?? 0;
    counts.ledgerRows = series?.ledger.length ?? 0;
    return { series, problems: inOrder(report.problems), counts };
  }

  #file(name: string): string {
    return `${this.#prefix}/${name}`;
  }

  /** What `make` gives for a file's text, kept until the text changes. */
  #derive<T>(
    name: string,
    key: string,
    report: Report,
    counts: Counts,
    make: (lines: Lines, report: Report) => T | undefined,
    missing: 'tell' | 'fine' = 'tell',
  ): T | undefined {
    const file = this.#file(name);
    const source = this.#files.open(join(this.#folder, name), file, report);
    if (!source) {
      if (missing === 'tell') report.add('file/missing', { file }, 'The file is missing. A series needs it.');
      return undefined;
    }
    counts.files++;
    if (source.empty)
      return report.add(
        'file/empty',
        { file },
        `The file is empty. ${missing === 'tell' ? 'Write it: a series needs it.' : 'Fill it, or remove it.'}`,
      );
    return source.derive(key, report, make);
  }

  #chapters(mark: DecimalMark | undefined, report: Report, counts: Counts): ChapterFile[] {
    const chapters: ChapterFile[] = [];
    for (const name of this.#names('chapters')) {
      const file = this.#file(`chapters/${name}/chapter.mdx`);
      const place = { file: this.#file(`chapters/${name}`) };
      const found = /^(\d{1,4})-([a-z0-9]+(?:-[a-z0-9]+)*)$/.exec(name);
      const names = this.#names(`chapters/${name}`);
      if (names.length === 0 && !found) {
        report.add('chapters/folder', place, 'Only chapters’ folders belong here. Move it elsewhere.');
        continue;
      }
      if (!found) {
        report.add(
          'chapters/folder',
          place,
          `${shown(name)} is no chapter’s name. Write a number, a hyphen and small letters, such as "03-front-brakes".`,
        );
        continue;
      }
      if (!names.includes('chapter.mdx')) {
        const near = nearest(
          'chapter.mdx',
          names.filter((one) => /\.mdx?$/i.test(one)),
        );
        report.add(
          'chapters/no-text',
          place,
          `The folder holds no chapter.mdx. ${near ? `Rename "${near}".` : 'Write one.'}`,
        );
        continue;
      }
      const text = this.#derive(
        `chapters/${name}/chapter.mdx`,
        `chapter ${mark}`,
        report,
        counts,
        (lines, own) => readChapter(lines, mark, own),
      );
      chapters.push({
        id: name,
        slug: found[2] ?? name,
        number: Number(found[1]),
        file,
        path: join(this.#folder, 'chapters', name, 'chapter.mdx'),
        names,
        text: text ?? EMPTY_CHAPTER,
        ...this.#captions(name, names, report),
      });
    }
    if (chapters.length === 0)
      report.add(
        'chapters/none',
        { file: this.#file('chapters') },
        'There is no chapter. Write one as chapters/01-a-name/chapter.mdx.',
      );
    return chapters.sort((a, b) => a.number - b.number || (a.id < b.id ? -1 : 1));
  }

  #captions(name: string, names: readonly string[], report: Report): { captions: boolean; cues: Cue[] } {
    if (!names.includes('captions.vtt')) return { captions: false, cues: [] };
    const file = `chapters/${name}/captions.vtt`;
    const source = this.#files.open(join(this.#folder, file), this.#file(file), report);
    const cues = source?.empty ? [] : source?.derive('captions', report, readTranscript);
    return { captions: source !== undefined, cues: cues ?? [] };
  }

  #faults(mark: DecimalMark | undefined, report: Report, counts: Counts): Map<string, FaultText> {
    const faults = new Map<string, FaultText>();
    for (const name of this.#names('faults')) {
      if (!name.endsWith('.md')) {
        report.add(
          'file/unknown',
          { file: this.#file(`faults/${name}`) },
          'Faults are files that end with .md, so this one is not read. Rename it.',
        );
        continue;
      }
      const read = (lines: Lines, own: Report) => readFault(lines, mark, own);
      const fault = this.#derive(`faults/${name}`, `fault ${mark}`, report, counts, read, 'fine');
      if (fault) faults.set(name.slice(0, -3), fault);
    }
    return faults;
  }

  #tables(mark: DecimalMark | undefined, report: Report, counts: Counts): TableRows {
    const read = (name: TableName) =>
      this.#derive(
        `${name}.csv`,
        `table ${mark}`,
        report,
        counts,
        (lines, own) =>
          readTable(lines, name, TABLES[name], { report: own, mark, maxRows: this.#limits.rows }),
        'fine',
      ) ?? [];
    return Object.fromEntries(
      Object.keys(TABLES).map((name) => [name, read(name as TableName)]),
    ) as unknown as TableRows;
  }

  /** The recordings of road tests, by name. One that no row names is told, as its row was probably forgotten. */
  #roadTests(
    rows: TableRows['road-tests'],
    report: Report,
    counts: Counts,
  ): Map<string, RunText | PointsText | undefined> {
    const runs = new Map<string, RunText | PointsText | undefined>();
    for (const name of this.#names('road-tests')) {
      const read = runReader(name);
      const unread = read
        ? 'No row of road-tests.csv names this file, so it is not shown. Add a row, or remove it.'
        : 'Road tests are files that end with .csv, .gpx, .vtt, .srt or .txt, so this one is not read. Export it as one of them.';
      if (!read || !rows.some((row) => row.file === name))
        report.add('file/unknown', { file: this.#file(`road-tests/${name}`) }, unread);
      if (read) runs.set(name, this.#derive(`road-tests/${name}`, 'run', report, counts, read, 'fine'));
    }
    const ownCaptions = rows.filter((row) => row.file === CHAPTER_CAPTIONS && !runs.has(row.file));
    for (const chapter of new Set(ownCaptions.map((row) => row.chapter))) {
      const name = `${chapter}/${CHAPTER_CAPTIONS}`;
      if (!/^[\w-]+$/.test(chapter) || !this.#names(`chapters/${chapter}`).includes(CHAPTER_CAPTIONS))
        continue;
      const file = this.#files.open(
        join(this.#folder, 'chapters', name),
        this.#file(`chapters/${name}`),
        report,
      );
      runs.set(name, file?.empty ? undefined : file?.derive('read aloud', report, readAloud));
    }
    return runs;
  }

  #unknownFiles(report: Report): void {
    const known = [...OTHER_FILES, ...Object.keys(TABLES).map((name) => `${name}.csv`)];
    for (const name of this.#names('')) {
      if (known.includes(name)) continue;
      const near = nearest(name, known);
      report.add(
        'file/unknown',
        { file: this.#file(name) },
        `Nothing reads this file. ${near ? `The nearest is "${near}".` : 'Notes belong in notes/.'}`,
      );
    }
  }

  /** Names in a folder of the series, in order; none where there is no such folder. */
  #names(folder: string): string[] {
    try {
      return readdirSync(join(this.#folder, folder))
        .filter((name) => !IGNORED.test(name))
        .sort();
    } catch {
      return [];
    }
  }
}

const EMPTY_CHAPTER: ChapterText = {
  head: undefined,
  steps: [],
  photos: [],
  figures: [],
  tables: [],
  prose: [],
  words: 0,
  calculators: [],
  uses: [],
  reckoned: [],
  sheets: [],
};
