import { airDensity } from '../../calc/road-load.ts';
import { given, type Row } from '../read/field.ts';
import type { Report } from '../report-to.ts';
import type { ROAD_TESTS } from '../tables.ts';
import { shown } from '../text/words.ts';
import { type CoastAnswer, type CoastConditions, type CoastRun, fitCoastDown } from './coast-down.ts';
import type { Figure, Measured } from './measured.ts';
import { NO_COASTING } from './points.ts';
import type { RoadTest } from './road-test.ts';
import type { RunText } from './run.ts';

type Line = Row<typeof ROAD_TESTS>;

const SPEED_DOUBT = 0.03;
/** Air pressure of a day and damp air differ from the standard's by about this much; common practice, no source. */
const DENSITY_DOUBT = 0.025;
const UNKNOWN_DENSITY_DOUBT = 0.05;

export interface ReadRun {
  line: Line;
  text: RunText;
  measured: Partial<Record<Measured, Figure>>;
}

/** What runs that coast tell, or why they tell nothing; the latter is a warning too. */
export function coastingOf(runs: readonly ReadRun[], report: Report): NonNullable<RoadTest['coasting']> {
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

/** The same of single points, which never tell it. */
export function cannotCoast(line: Line, report: Report): NonNullable<RoadTest['coasting']> {
  report.add(
    'road-tests/cannot-tell',
    line.place,
    `${shown(line.test)} cannot tell drag area and rolling resistance. ${NO_COASTING}`,
  );
  return { answer: { ok: false, reason: NO_COASTING } };
}
