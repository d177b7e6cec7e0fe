import { given, type Row } from '../read/field.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import type { ROAD_TESTS } from '../tables.ts';
import { count, shown } from '../text/words.ts';
import type { PointRun, PointsText, ReadPoint, SpeedPoint, SpeedUnit } from './points.ts';

type Line = Row<typeof ROAD_TESTS>;

const MOST_POINTS = 200;
/** 150 km/h: more than a vehicle of this kind does. */
const FASTEST: Record<SpeedUnit, number> = { 'km/h': 150, mph: 93 };

/** The points of a row as readers see them; undefined, with the problem told, where there is none to show. */
export function pointRun(line: Line, text: PointsText, report: Report): PointRun | undefined {
  const wanted = text.aloud ? within(line, text.points, report) : text.points;
  if (!wanted) return undefined;
  if (wanted.length === 0 || wanted.length > MOST_POINTS)
    return report.add('road-tests/read-aloud', line.at('file'), noneOrMany(line, text, wanted.length));
  const points: SpeedPoint[] = [];
  for (const one of wanted) {
    const point = settled(one, line, report);
    if (!point) return undefined;
    points.push(point);
  }
  if (!inOrder(wanted, text, report)) return undefined;
  const start = wanted.find((one) => one.time_s !== undefined)?.time_s ?? 0;
  const shownPoints = points.map((one) =>
    one.time_s === undefined ? one : { ...one, time_s: Math.round((one.time_s - start) * 10) / 10 },
  );
  return given({ direction: line.direction, aloud: text.aloud, points: shownPoints });
}

function within(line: Line, points: readonly ReadPoint[], report: Report): readonly ReadPoint[] | undefined {
  const { from = 0, until = Number.POSITIVE_INFINITY } = line;
  if (until <= from)
    return report.add(
      fieldRule('road-tests', 'until'),
      line.at('until'),
      'These words end before they begin. Write a time that comes after the one in "from".',
    );
  return points.filter(({ time_s = 0 }) => time_s >= from && time_s <= until);
}

function noneOrMany(line: Line, { aloud, points }: PointsText, length: number): string {
  if (length > MOST_POINTS)
    return `${shown(line.file)} has ${length} points; ${MOST_POINTS} are shown at most.${aloud ? ' Write a narrower "from" and "until".' : ' Take some out.'}`;
  if (!aloud) return `${shown(line.file)} has no point. Write a row for each.`;
  return points.length > 0
    ? `No speed is read aloud between these times of ${shown(line.file)}; in the whole of it ${count(points.length, 'speed')} ${points.length === 1 ? 'is' : 'are'}. Put "from" and "until" right.`
    : `No speed is read aloud in ${shown(line.file)}. It is heard in words such as "it shows forty-five" or "45 km/h on the level"; else write the points into a table with time, speed and slope.`;
}

/** A point with its unit, without words and place. */
function settled({ words, at, ...point }: ReadPoint, line: Line, report: Report): SpeedPoint | undefined {
  const unit = point.unit ?? line.said_in;
  if (unit === undefined)
    return report.add(
      'road-tests/said-in',
      at,
      `${shown(words)} is said without a unit. Write km/h or mph, as the dial has it, in the column "said_in" of ${shown(line.test)} in road-tests.csv.`,
    );
  if (!(point.value >= 0 && point.value <= FASTEST[unit]))
    return report.add(
      'road-tests/speed',
      at,
      `${shown(`${point.value} ${unit}`)} is ${point.value < 0 ? 'a speed backwards' : 'faster than 150 km/h, and so not a speed of a small old vehicle'}. Look at the figure and at its unit.`,
    );
  return { ...point, unit };
}

function inOrder(points: readonly ReadPoint[], { aloud }: PointsText, report: Report): boolean {
  const timed = points.filter((one) => one.time_s !== undefined);
  const late = timed.find((one, i) => (one.time_s ?? 0) < (timed[i - 1]?.time_s ?? 0));
  if (!late) return true;
  report.add(
    'road-tests/backwards',
    late.at,
    `This point was read before the one above it. ${aloud ? 'Export the captions again, in the order of their times.' : 'Put the rows in order, or give each ride its own file.'}`,
  );
  return false;
}
