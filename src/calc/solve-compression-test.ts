import type { wrong } from './compression-test-says.ts';
import type { Found, FoundRows, Output, Refusal, Values } from './contract.ts';
import { reader, refusal, rowsOf, textOf } from './field-values.ts';
import type { Figures } from './holes.ts';
import { airPressure } from './road-load.ts';
import { type Computed, spread } from './uncertainty.ts';

const SEA = 101325;

/**
 * How much air pressed slowly or fast enough gains: between no heat kept (1.0) and most of it (1.35). Common practice.
 */
const EXPONENT = { si: 1.175, pm: 0.175 };

const readings = (values: Values, name: string) => rowsOf(values, name).flat();
const airOf = (values: Values) => {
  const v = reader(values);
  return v('pressure', airPressure(v('altitude', 0)));
};

function compute(values: Values): Computed {
  const v = reader(values);
  const dry = readings(values, 'dry');
  const wet = readings(values, 'wet');
  const air = airOf(values);
  const share = air / SEA;
  const [low, high] = [Math.min(...dry), Math.max(...dry)];
  const mean = dry.reduce((a, b) => a + b, 0) / dry.length;
  const left = v('room') - v('oil');
  // Gauge pressure over the air's own is (r^n − 1); the air cancels in the ratio of both.
  const gain = (room: number) => (1 + v('swept') / room) ** v('exponent') - 1;
  const several = dry.length > 1;
  const found: Record<string, number | undefined> = {
    air,
    share,
    mean,
    meanSea: mean / share,
    low: several ? low : undefined,
    high: several ? high : undefined,
    spread: several ? high - low : undefined,
    spreadShare: several ? 1 - low / high : undefined,
    expected: (v('reference') * share * SEA) / airPressure(v('referenceAltitude', 0)),
    below: 1 - mean / ((v('reference') * share * SEA) / airPressure(v('referenceAltitude', 0))),
    byVolume: gain(left) / gain(v('room')) - 1,
  };
  wet.forEach((reading, i) => {
    found[`gain${i}`] = reading / (dry[i] ?? Number.NaN) - 1;
  });
  return found;
}

function refuse(values: Values): Refusal | undefined {
  const v = reader(values);
  const [dry, wet] = [readings(values, 'dry'), readings(values, 'wet')];
  return refusal<keyof typeof wrong>(
    {
      dry: !dry.length && 'dry',
      wet: wet.length > 0 && wet.length !== dry.length && 'wet',
      room: v('oil') >= v('room') && 'room',
    },
    { dryCount: dry.length, wetCount: wet.length },
  );
}

function cylinders(values: Values, out: Record<string, Output>): Figures[] {
  const [dry, wet] = [readings(values, 'dry'), readings(values, 'wet')];
  const high = Math.max(...dry);
  return dry.map((reading, i) => ({
    cylinder: i + 1,
    dry: reading,
    atSea: reading / (out['share']?.si ?? 1),
    ofHigh: reading / high,
    wet: wet[i],
    gain: out[`gain${i}`],
  }));
}

/** A bar a cylinder, dry, and beside it wet. */
function bars(rows: readonly Figures[], out: Record<string, Output>): FoundRows {
  const expected = out['expected']?.si ?? Number.NaN;
  const all = rows.map(({ dry, wet }) => [Number(dry), Number(wet)] as const);
  const most = Math.max(...[expected, ...all.flat()].filter((x) => x > 0)) * 1.12;
  const step = 280 / rows.length;
  const both = rows.some(({ wet }) => wet !== undefined);
  const wide = Math.min(34, step / (both ? 3 : 2));
  const y = (x: number) => 190 - (x / most) * 160;
  return {
    at: { expectedY: y(expected), expectedWords: y(expected) + 4 },
    rows: all.map(([dry, wet], i) => {
      const centre = 50 + step * (i + 0.5);
      const x = wet > 0 ? centre - wide - 2 : centre - wide / 2;
      const writes = all.length < 7;
      return {
        cylinder: i + 1,
        centre,
        wide,
        x,
        y: y(dry),
        mid: x + wide / 2,
        over: y(dry) - 5,
        written: writes ? dry : undefined,
        wetX: centre + 2,
        wetY: y(wet),
        wetMid: centre + 2 + wide / 2,
        wetOver: y(wet) - 5,
        wetWritten: writes ? wet : undefined,
      };
    }),
  };
}

/**
 * What a compression gauge read, set beside the air of the place, the other cylinders, and the room that oil fills.
 * @returns refusals; ± carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const outputs = spread(compute, { ...values, exponent: EXPONENT });
  const rows = cylinders(values, outputs);
  return {
    ok: true,
    outputs,
    figures: {
      wet: readings(values, 'wet').length,
      strokes: textOf(values, 'strokes') === '4' ? '4' : '2',
      referenceAir: airPressure(reader(values)('referenceAltitude', 0)),
    },
    lists: { readings: rows },
    shown: { cylinders: { rows }, bars: bars(rows, outputs) },
  };
}
