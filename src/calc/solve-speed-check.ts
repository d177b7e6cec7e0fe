import type { Found, FoundChart, Output, Refusal, Values } from './contract.ts';
import { reader, refusal } from './field-values.ts';
import type { Figures } from './holes.ts';
import type { wrong } from './speed-check-says.ts';
import type { Point } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';

/** What a speedometer may show beyond a tenth more; m/s. */
const MARGIN = 4 / 3.6;

/**
 * The most that a new vehicle's speedometer may show at a true speed; it may never show less than that. m/s.
 * Source: UN Regulation No. 39, 5.3: 0 ≤ shown − true ≤ true / 10 + 4 km/h.
 * @example
 * mostShown(10) // => 12.1111 m/s
 */
export const mostShown = (speed_ms: number): number => 1.1 * speed_ms + MARGIN;

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

/** Where the reading lies between right and the most allowed. */
function verdict(out: Record<string, Output>): string | undefined {
  const [off, room] = [side(out['off']), side(out['room'])];
  if (!off || !room) return undefined;
  if (off === 'below') return 'low';
  if (room === 'below') return 'high';
  return off === 'open' || room === 'open' ? 'open' : 'within';
}

/** A field's ± as a share of its figure. */
function shareOf(values: Values, name: string): number {
  const value = values[name];
  return typeof value === 'object' && 'si' in value ? (value.pm ?? 0) / value.si : 0;
}

function said(values: Values, out: Record<string, Output>): Figures {
  const sure = !out['speed']?.pm;
  const odoShare = out['odoShare']?.si ?? Number.NaN;
  return {
    side: verdict(out),
    watch: !sure && shareOf(values, 'time') > shareOf(values, 'distance'),
    sure,
    odoBy: Math.abs(odoShare),
    counts: odoShare < 0 ? 'little' : 'much',
  };
}

function picture(values: Values, out: Record<string, Output>): FoundChart | undefined {
  const at = (out['speed']?.si ?? Number.NaN) * 3.6;
  if (!(at > 0)) return undefined;
  const shown = reader(values)('indicated', 0) * 3.6;
  const most = Math.max(at, shown) * 1.4;
  const upper = (x: number): Point => [x, 1.1 * x + 4];
  return {
    x: { max: most },
    y: { max: 1.1 * most + 4 },
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
    marks: shown > 0 ? [{ at: [at, shown] }] : [],
  };
}

/**
 * True speed over a measured distance, the speedometer's error against it, and the odometer's factor.
 * @returns refusals; ± carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const v = reader(values);
  const [ride, odo] = [v('distance') > 0 || v('time') > 0, v('odoTrue') > 0 || v('odoShown') > 0];
  const [shown, speed] = [v('indicated'), v('distance') / v('time')];
  const factor = v('odoTrue') / v('odoShown');
  const needs = (on: boolean, name: string) => on && !(v(name) > 0) && 'needed';
  const refused = refusal<keyof typeof wrong>(
    {
      distance: !ride && !odo ? 'nothing' : needs(ride, 'distance'),
      time: needs(ride, 'time') || (speed > 70 && 'fast') || (speed < 0.5 && 'slow'),
      indicated:
        shown > 0 &&
        (Number.isNaN(speed) ? 'noRide' : (shown > 2 * speed || shown < speed / 2) && 'unlikely'),
      odoTrue: needs(odo, 'odoTrue'),
      odoShown: needs(odo, 'odoShown') || ((factor > 1.5 || factor < 0.67) && 'factor'),
      reading: v('reading') > 0 && !odo && 'noOdometer',
    },
    { speed, factor },
  );
  if (refused) return refused;
  const outputs = spread(compute, values);
  return {
    ok: true,
    outputs,
    figures: said(values, outputs),
    shown: { band: picture(values, outputs) },
  };
}
