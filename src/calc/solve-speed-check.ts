import { chart } from './chart.ts';
import type { Answer, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { reader, refusal } from './field-values.ts';
import { printer } from './print-figure.ts';
import type { Point } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';
import { add, line, minus, num, over, sign, times } from './working.ts';

const kmh = printer('speed', 'km/h');
const percent = printer('share', '%');

/**
 * The most that a new vehicle's speedometer may show at a true speed; it may never show less than that. m/s.
 * Source: UN Regulation No. 39, 5.3: 0 ≤ shown − true ≤ true / 10 + 4 km/h.
 * @example
 * mostShown(10) // => 12.1111 m/s
 */
export const mostShown = (speed_ms: number): number => 1.1 * speed_ms + 4 / 3.6;

function compute(values: Values): Computed {
  const v = reader(values);
  const speed = v('distance') / v('time');
  const factor = v('odoTrue') / v('odoShown');
  const off = v('indicated') - speed;
  return {
    speed,
    off,
    share: off / speed,
    most: mostShown(speed),
    room: mostShown(speed) - v('indicated'),
    factor,
    odoShare: 1 / factor - 1,
    really: v('reading') * factor,
  };
}

/** Whether an answer is above nothing, below it, or too uncertain to tell. */
function side(o: Output | undefined): 'above' | 'below' | 'open' | undefined {
  if (!o) return undefined;
  const [low, high] = o.interval
    ? [o.interval.low, o.interval.high]
    : [o.si - (o.pm ?? 0), o.si + (o.pm ?? 0)];
  return low > 0 ? 'above' : high < 0 ? 'below' : low < -1e-9 ? 'open' : 'above';
}

function verdict(out: Record<string, Output>): string | undefined {
  const [off, room] = [side(out['off']), side(out['room'])];
  if (!off || !room) return undefined;
  if (off === 'below')
    return 'It reads low: the vehicle is faster than it shows. UN Regulation No. 39 allows that at no speed.';
  if (room === 'below')
    return 'It reads higher than UN Regulation No. 39 allows a new vehicle at this speed.';
  if (off === 'open' || room === 'open')
    return 'The ± of this run is too wide to tell which side of the limit it lies: take a longer distance.';
  return 'At this speed it lies where UN Regulation No. 39 puts a new vehicle’s. Old vehicles have rules of their own.';
}

function notes(values: Values, out: Record<string, Output>): string[] {
  const v = reader(values);
  const o = out['speed'];
  const [dt, dd] = (['time', 'distance'] as const).map((name) => {
    const value = values[name];
    return typeof value === 'object' && 'si' in value ? (value.pm ?? 0) / value.si : 0;
  });
  const said = [
    verdict(out),
    out['off'] &&
      'One run says what it shows at one speed. A needle may be right at 30 and wrong at 60: take three speeds, both ways.',
    dt && dt > (dd ?? 0) && o?.pm
      ? `The stopwatch is the larger doubt: twice the distance at the same speed halves its share.`
      : '',
    !o?.pm && 'Give the time a ± of 0.3 s or more for the thumb, and the distance its own.',
    v('odoShown') > 0 &&
      `The odometer counts ${percent(Math.abs(out['odoShare']?.si ?? 0))} too ${(out['odoShare']?.si ?? 0) < 0 ? 'little' : 'much'}: multiply what it shows by ${printer('count', 'n', 4)(out['factor'])}.`,
  ];
  return said.filter((note): note is string => Boolean(note));
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const v = reader(values);
  const speed = sign('v', out['speed']?.si ?? 0, 'speed', 'km/h');
  const lines: WorkingLine[] = [];
  if (out['speed'])
    lines.push(
      line(
        'True speed',
        speed,
        over(sign('d', v('distance'), 'length', 'm'), sign('t', v('time'), 'time', 's')),
      ),
      line(
        'The most that may be shown',
        sign('V_max', mostShown(speed.si), 'speed', 'km/h'),
        add(times(num(1.1), speed), num(4 / 3.6, '4\u00a0km/h')),
      ),
    );
  if (out['off'])
    lines.push(
      line(
        'Shown too high',
        sign('e', out['off'].si, 'speed', 'km/h', 3),
        minus(sign('V', v('indicated'), 'speed', 'km/h'), speed),
      ),
    );
  if (out['factor'])
    lines.push(
      line(
        'Odometer’s factor',
        sign('k', out['factor'].si, 'count', 'n'),
        over(sign('D', v('odoTrue'), 'length', 'km'), sign('D_o', v('odoShown'), 'length', 'km')),
      ),
    );
  return lines;
}

function picture(values: Values, out: Record<string, Output>): Drawing[] {
  const v = reader(values);
  const at = (out['speed']?.si ?? Number.NaN) * 3.6;
  if (!(at > 0)) return [];
  const shown = v('indicated', 0) * 3.6;
  const most = Math.max(at, shown) * 1.4;
  const upper = (x: number): Point => [x, 1.1 * x + 4];
  return [
    chart({
      name: 'band',
      title: 'Shown against true speed',
      desc: `The lower line is right, the upper the most that UN Regulation No. 39 allows${shown > 0 ? `; this run stands at ${kmh(at / 3.6)} true, ${kmh(shown / 3.6)} shown` : ''}.`,
      x: { label: 'true, km/h', max: most },
      y: { label: 'shown, km/h', max: 1.1 * most + 4 },
      curves: [
        {
          points: [
            [0, 0],
            [most, most],
          ],
          label: 'right',
        },
        { points: [upper(0), upper(most)], label: 'the most', labelAt: upper(most * 0.75), dash: '5 3' },
      ],
      marks: shown > 0 ? [{ at: [at, shown], label: kmh(shown / 3.6) }] : [],
    }),
  ];
}

/**
 * True speed over a measured distance, the speedometer's error against it, and the odometer's factor.
 * @returns refusals in plain words; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const v = reader(values);
  const [ride, odo] = [v('distance') > 0 || v('time') > 0, v('odoTrue') > 0 || v('odoShown') > 0];
  const speed = v('distance') / v('time');
  const factor = v('odoTrue') / v('odoShown');
  const needs = (on: boolean, name: string) => on && !(v(name) > 0) && 'This is needed as well.';
  const refused = refusal({
    distance:
      !ride && !odo
        ? 'Give a distance and its time, or two distances for the odometer.'
        : needs(ride, 'distance'),
    time:
      needs(ride, 'time') ||
      (speed > 70 &&
        `That would be ${kmh(speed)}: check the time, and whether the distance is in m, km or miles.`) ||
      (speed < 0.5 &&
        `That would be ${kmh(speed)}, slower than walking: check metres against kilometres, seconds against minutes.`),
    indicated:
      v('indicated') > 0 &&
      (Number.isNaN(speed)
        ? 'To check it, a distance and its time are needed.'
        : (v('indicated') > 2 * speed || v('indicated') < speed / 2) &&
          `It shows ${kmh(v('indicated'))} at a true ${kmh(speed)}: km/h against mph, or a wrong distance?`),
    odoTrue: needs(odo, 'odoTrue'),
    odoShown:
      needs(odo, 'odoShown') ||
      ((factor > 1.5 || factor < 0.67) &&
        `The two differ by a factor of ${printer('count', 'n')(factor)}; a mile is 1.609 km.`),
    reading: v('reading') > 0 && !odo && 'Give the two distances that compare the odometer first.',
  });
  if (refused) return refused;
  const outputs = spread(compute, values);
  return {
    ok: true,
    outputs,
    working: working(values, outputs),
    tables: [],
    notes: notes(values, outputs),
    drawings: picture(values, outputs),
  };
}
