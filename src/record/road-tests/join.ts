import { airDensity } from '../../calc/road-load.ts';
import { type Quantity, toSi, type UnitId } from '../../calc/units.ts';
import { readQuantity } from '../files/machine.ts';
import type { References } from '../join/references.ts';
import type { DecimalMark } from '../money/decimal.ts';
import { unitNamed } from '../quantity/unit-named.ts';
import { given, type Row } from '../read/field.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import type { ROAD_TESTS } from '../tables.ts';
import { meant, shown } from '../text/words.ts';
import { speedsBySlope, timesBetween } from './between-speeds.ts';
import { type CoastAnswer, type CoastConditions, type CoastRun, fitCoastDown } from './coast-down.ts';
import type { RoadRun, RoadTest, RoadTestKind } from './road-test.ts';
import type { RunText } from './run.ts';
import { shownStretch } from './shown-stretch.ts';

type Line = Row<typeof ROAD_TESTS>;
type Measured = 'mass' | 'rotating' | 'fastest' | 'slowest' | 'speed_doubt' | 'temperature' | 'altitude';

interface Range {
  quantity: Quantity;
  from: number;
  to: number;
  says: string;
}

/** What each figure may be, SI; beyond it the unit is probably another one. */
const RANGES: Record<Measured, Range> = {
  mass: { quantity: 'mass', from: 60, to: 4000, says: 'between 60 kg and 4000 kg' },
  rotating: { quantity: 'mass', from: 0, to: 400, says: 'between 0 kg and 400 kg' },
  fastest: { quantity: 'speed', from: 1, to: 200 / 3.6, says: 'between 4 km/h and 200 km/h' },
  slowest: { quantity: 'speed', from: 0.5, to: 150 / 3.6, says: 'between 2 km/h and 150 km/h' },
  speed_doubt: { quantity: 'share', from: 0, to: 0.3, says: 'between 0 % and 30 %' },
  temperature: { quantity: 'temperature', from: 233.15, to: 328.15, says: 'between −40 °C and 55 °C' },
  altitude: { quantity: 'length', from: -500, to: 6000, says: 'between −500 m and 6000 m' },
};

const SPEED_DOUBT = 0.03;
/** Air pressure of a day and damp air differ from the standard's by about this much; common practice, no source. */
const DENSITY_DOUBT = 0.025;
const UNKNOWN_DENSITY_DOUBT = 0.05;

/** Puts runs together into tests, fits those that coast, and keeps of each what readers may see. */
export function joinRoadTests(
  rows: readonly Line[],
  runs: ReadonlyMap<string, RunText | undefined>,
  mark: DecimalMark | undefined,
  refer: References,
  report: Report,
): RoadTest[] {
  return [...Map.groupBy(rows, (row) => row.test)].flatMap(([id, lines]) => {
    const [first] = lines;
    if (!first || !refer.rowChapter('road-tests', 'chapter', first.chapter, first.at('chapter'))) return [];
    const read = lines.flatMap((line) => {
      const measured = readMeasured(line, mark, report);
      const text = runOf(line, runs, report);
      return together(line, first, report) && text ? [{ line, text, measured }] : [];
    });
    if (read.length === 0) return [];
    const coasting = first.kind === 'coast-down' ? coastingOf(read, report) : undefined;
    const title = first.title ?? TITLES[first.kind];
    const { chapter, kind, place } = first;
    const notes = lines.flatMap((line) => line.note ?? []);
    const shownRuns = read.map(({ line, text }) => shownRun(line, text));
    return [given({ id, title, chapter, kind, notes, runs: shownRuns, coasting, place })];
  });
}

const TITLES: Record<RoadTestKind, string> = {
  'coast-down': 'Coast-down',
  acceleration: 'Acceleration',
  hill: 'Hill',
  cruise: 'Cruise',
};

function runOf(
  line: Line,
  runs: ReadonlyMap<string, RunText | undefined>,
  report: Report,
): RunText | undefined {
  if (runs.has(line.file)) return runs.get(line.file);
  return report.add(
    fieldRule('road-tests', 'file'),
    line.at('file'),
    `There is no file ${shown(line.file)} in the folder road-tests. ${meant(line.file, runs.keys())}`,
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

interface Figure {
  si: number;
  pm: number;
}

function readMeasured(
  line: Line,
  mark: DecimalMark | undefined,
  report: Report,
): Partial<Record<Measured, Figure>> {
  const found: Partial<Record<Measured, Figure>> = {};
  for (const [name, range] of Object.entries(RANGES) as [Measured, Range][]) {
    const text = line[name];
    if (text === undefined) continue;
    const wrong = (why: string) =>
      report.add(fieldRule('road-tests', name), line.at(name), `${shown(text)} ${why}`);
    const read = readQuantity(text, mark);
    const unit = read && 'quantity' in read ? unitOf(read.quantity.unit, range.quantity) : undefined;
    if (!read || 'wrong' in read || unit === undefined) {
      wrong(`is no figure with a unit of ${range.quantity}. Write one ${range.says}, with its unit.`);
      continue;
    }
    const si = toSi(Number(read.quantity.text), range.quantity, unit);
    const pm = Math.abs(
      toSi(Number(read.quantity.text) + Number(read.quantity.pm ?? 0), range.quantity, unit) - si,
    );
    if (si < range.from || si > range.to)
      wrong(`is out of range. Write one ${range.says}, or look at its unit.`);
    else found[name] = { si, pm };
  }
  return found;
}

function unitOf(written: string, quantity: Quantity): UnitId | undefined {
  if (quantity === 'share') return written === '%' ? '%' : undefined;
  const named = unitNamed(written);
  return named?.quantity === quantity ? named.unit : undefined;
}

interface ReadRun {
  line: Line;
  text: RunText;
  measured: Partial<Record<Measured, Figure>>;
}

function coastingOf(runs: readonly ReadRun[], report: Report): NonNullable<RoadTest['coasting']> {
  const first = runs[0];
  const tell = (answer: CoastAnswer, conditions?: CoastConditions) => {
    if (!answer.ok && first)
      report.add(
        'road-tests/cannot-tell',
        first.line.place,
        `${shown(first.line.test)} cannot tell drag area and rolling resistance. ${answer.reason}`,
      );
    return given({ answer, conditions });
  };
  const { mass, rotating, fastest, slowest, speed_doubt, temperature, altitude } = first?.measured ?? {};
  if (!mass || !rotating || !fastest || !slowest)
    return tell({
      ok: false,
      reason: 'Mass, rotating mass, fastest and slowest speed are needed in the first row of the test.',
    });
  if (runs.some(({ measured }) => measured.mass && measured.mass.si !== mass.si))
    return tell({
      ok: false,
      reason: 'The runs were made with different masses. Make each mass a test of its own.',
    });
  const known = runs.flatMap(({ line, text }): CoastRun[] =>
    line.direction ? [{ samples: text.samples, direction: line.direction }] : [],
  );
  if (known.length < runs.length)
    return tell({
      ok: false,
      reason: 'Not every run says its direction. Write "there" or "back" in each row.',
    });
  const conditions: CoastConditions = {
    mass_kg: mass.si,
    mass_pm_kg: mass.pm,
    rotating_kg: rotating.si,
    rotating_pm_kg: rotating.pm,
    density_kgpm3: airDensity(altitude?.si ?? 0, temperature?.si ?? 288.15),
    density_pm: temperature && altitude ? DENSITY_DOUBT : UNKNOWN_DENSITY_DOUBT,
    speed_pm: speed_doubt?.si ?? SPEED_DOUBT,
    from_mps: slowest.si,
    to_mps: fastest.si,
  };
  return tell(fitOnce(runs, known, conditions), conditions);
}

interface Fitting {
  texts: readonly RunText[];
  key: string;
  answer: CoastAnswer;
}

/** By the first run's text, which stays the same object until its file changes: other edits fit nothing again. */
const fittings = new WeakMap<RunText, Fitting>();

function fitOnce(
  runs: readonly ReadRun[],
  known: readonly CoastRun[],
  conditions: CoastConditions,
): CoastAnswer {
  const texts = runs.map((run) => run.text);
  const key = JSON.stringify([conditions, known.map((run) => run.direction)]);
  const [first] = texts;
  const before = first && fittings.get(first);
  if (
    before?.key === key &&
    before.texts.length === texts.length &&
    before.texts.every((one, at) => one === texts[at])
  )
    return before.answer;
  const answer = fitCoastDown(known, conditions);
  if (first) fittings.set(first, { texts, key, answer });
  return answer;
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
