import type { References } from '../join/references.ts';
import type { DecimalMark } from '../money/decimal.ts';
import { given, type Row } from '../read/field.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import type { ROAD_TESTS } from '../tables.ts';
import { meant, shown } from '../text/words.ts';
import type { Machine } from '../types.ts';
import { speedsBySlope, timesBetween } from './between-speeds.ts';
import { cannotCoast, coastingOf } from './join-coasting.ts';
import { pointRun } from './join-points.ts';
import { type Figure, type Measured, readMeasured } from './measured.ts';
import { isPoints, type PointsText } from './points.ts';
import { CHAPTER_CAPTIONS } from './read-run.ts';
import type { RoadRun, RoadTest, RoadTestKind } from './road-test.ts';
import type { RunText } from './run.ts';
import { shownStretch } from './shown-stretch.ts';
import { type SpeedometerError, speedometerError } from './speedometer.ts';

type Line = Row<typeof ROAD_TESTS>;
/** By file name in road-tests/; undefined where it cannot be read. */
type Files = ReadonlyMap<string, RunText | PointsText | undefined>;

interface Read<T> {
  line: Line;
  text: T;
  measured: Partial<Record<Measured, Figure>>;
}

/** Puts runs together into tests, fits those that coast, and keeps of each what readers may see. */
export function joinRoadTests(
  rows: readonly Line[],
  files: Files,
  machine: Machine | undefined,
  mark: DecimalMark | undefined,
  refer: References,
  report: Report,
): RoadTest[] {
  const speedometer = speedometerError(machine, report);
  return [...Map.groupBy(rows, (row) => row.test).values()].flatMap((lines): RoadTest[] => {
    const [first] = lines;
    if (!first || !refer.rowChapter('road-tests', 'chapter', first.chapter, first.at('chapter'))) return [];
    const read = lines.flatMap((line): Read<RunText | PointsText>[] => {
      const measured = readMeasured(line, mark, report);
      const text = fileOf(line, files, report);
      return together(line, first, report) && text ? [{ line, text, measured }] : [];
    });
    const points = read.filter((one): one is Read<PointsText> => isPoints(one.text));
    const runs = read.filter((one): one is Read<RunText> => !isPoints(one.text));
    for (const { line } of [...runs, ...points.filter(({ text }) => !text.aloud)]) checkWords(line, report);
    if (points[0] && runs[0]) return mixed(read, report);
    return points.length > 0
      ? testOfPoints(lines, points, speedometer, report)
      : testOfRuns(lines, runs, report);
  });
}

function testOfRuns(lines: readonly Line[], runs: readonly Read<RunText>[], report: Report): RoadTest[] {
  const told = toldOf(lines);
  if (!told || runs.length === 0) return [];
  const coasting = told.kind === 'coast-down' ? coastingOf(runs, report) : undefined;
  const shownRuns = runs.map(({ line, text }) => shownRun(line, text));
  return [given({ ...told, runs: shownRuns, points: [], coasting })];
}

function testOfPoints(
  lines: readonly Line[],
  read: readonly Read<PointsText>[],
  speedometer: SpeedometerError | undefined,
  report: Report,
): RoadTest[] {
  const [told, first] = [toldOf(lines), read[0]];
  const points = read.flatMap(({ line, text }) => pointRun(line, text, report) ?? []);
  if (!told || !first || points.length === 0) return [];
  const coasting = told.kind === 'coast-down' ? cannotCoast(first.line, report) : undefined;
  return [given({ ...told, runs: [], points, coasting, speedometer })];
}

function toldOf(lines: readonly Line[]) {
  const [first] = lines;
  if (!first) return undefined;
  const { test: id, title, chapter, kind, place } = first;
  const notes = lines.flatMap((line) => line.note ?? []);
  return { id, title: title ?? TITLES[kind], chapter, kind, notes, place };
}

/** Points and recordings of whole runs are not shown as one test. */
function mixed(read: readonly Read<RunText | PointsText>[], report: Report): [] {
  const sort = ({ text }: Read<RunText | PointsText>) => (isPoints(text) ? 'single points' : 'a whole run');
  const [first] = read;
  const other = read.find((one) => first && sort(one) !== sort(first));
  if (first && other)
    report.add(
      'road-tests/apart',
      other.line.at('file'),
      `${shown(other.line.file)} holds ${sort(other)}, and the first row of ${shown(other.line.test)} ${sort(first)}. Give it another test’s name.`,
    );
  return [];
}

/** What belongs to the words of a recording alone. */
function checkWords(line: Line, report: Report): void {
  for (const key of ['from', 'until', 'said_in'] as const)
    if (line[key] !== undefined)
      report.add(
        fieldRule('road-tests', key),
        line.at(key),
        `"${key}" belongs to speeds that are read aloud, and ${shown(line.file)} holds no words. Leave it empty.`,
      );
}

const TITLES: Record<RoadTestKind, string> = {
  'coast-down': 'Coast-down',
  acceleration: 'Acceleration',
  hill: 'Hill',
  cruise: 'Cruise',
};

function fileOf(line: Line, files: Files, report: Report): RunText | PointsText | undefined {
  const own = line.file === CHAPTER_CAPTIONS ? `${line.chapter}/${CHAPTER_CAPTIONS}` : line.file;
  for (const name of [line.file, own]) if (files.has(name)) return files.get(name);
  const inFolder = [...files.keys()].filter((name) => !name.includes('/'));
  return report.add(
    fieldRule('road-tests', 'file'),
    line.at('file'),
    line.file === CHAPTER_CAPTIONS
      ? `The chapter ${shown(line.chapter)} has no captions.vtt, and the folder road-tests neither. Put it into one of them.`
      : `There is no file ${shown(line.file)} in the folder road-tests. ${meant(line.file, inFolder)}`,
  );
}

function together(line: Line, first: Line, report: Report): boolean {
  for (const key of ['chapter', 'kind'] as const)
    if (line[key] !== first[key]) {
      report.add(
        'road-tests/apart',
        line.at(key),
        `This run of ${shown(line.test)} has the ${key} ${shown(line[key])} and the first one ${shown(first[key])}. Give it the same, or another test’s name.`,
      );
      return false;
    }
  return true;
}

function shownRun(line: Line, text: RunText): RoadRun {
  const falling = line.kind === 'coast-down';
  const round = line.kind === 'cruise';
  return given({
    direction: line.direction,
    from: text.from,
    indicated: text.indicated,
    stretch: shownStretch(text, line.whole ?? false),
    top_mps: Math.max(...text.samples.map((one) => one.speed_mps)),
    between: round ? [] : timesBetween(text.samples, !falling),
    bySlope: speedsBySlope(text.samples),
  });
}
