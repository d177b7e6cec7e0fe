import type { Answer, AnswerTable, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { reader, refusal, rowsOf, textOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import { airPressure } from './road-load.ts';
import { drawing, lettering, path, r1 } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';
import { line, minus, num, over, sign, times } from './working.ts';

const SEA = 101325;
const bar = printer('pressure', 'bar');
const percent = printer('share', '%', 2);

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
  return refusal({
    dry: !dry.length && 'Give one reading for each cylinder, such as 7.5; 7.2.',
    wet:
      wet.length > 0 &&
      wet.length !== dry.length &&
      `Give one for each dry reading: ${dry.length}, not ${wet.length}.`,
    room:
      v('oil') >= v('room') && 'The oil fills all the room above the piston: the engine would lock solid.',
  });
}

function tables(values: Values, out: Record<string, Output>): AnswerTable[] {
  const [dry, wet] = [readings(values, 'dry'), readings(values, 'wet')];
  const high = Math.max(...dry);
  const share = out['share']?.si ?? 1;
  const labels = ['Cylinder', 'Dry', 'As at the sea', 'Of the highest'];
  if (wet.length) labels.push('With oil', 'Rise');
  const rows = dry.map((reading, i) => {
    const cells = [String(i + 1), bar(reading), bar(reading / share), percent(reading / high)];
    const wetted = wet[i];
    return wetted === undefined ? cells : [...cells, bar(wetted), percent(out[`gain${i}`])];
  });
  return [
    {
      name: 'cylinders',
      caption: 'Each cylinder',
      columns: labels.map((label) => ({ label, numeric: true })),
      rows,
    },
  ];
}

function notes(values: Values, out: Record<string, Output>): string[] {
  const twoStroke = textOf(values, 'strokes') !== '4';
  const wet = readings(values, 'wet').length > 0;
  const said = [
    `A gauge reads in proportion to the air: here ${percent(out['share'])} of what it would read at the sea in the same engine.`,
    out['spreadShare'] &&
      `The lowest is ${percent(out['spreadShare'])} below the highest. Where the maker gives no limit, more than 10 to 15 % is looked into: common practice, no source.`,
    out['expected'] && `The figure given for comparison would read ${bar(out['expected'])} here.`,
    !out['expected'] &&
      'Without the maker’s figure compare the cylinders, and each with its own earlier readings.',
    wet &&
      (twoStroke
        ? 'Oil tells little in a two-stroke: it fills up room above the piston and so raises any reading, runs away through the ports, and the crankcase is oily as it is. Take a rise for weak evidence of rings, and look through the exhaust port.'
        : 'A clear rise with oil points to rings and bore, none to valves or gasket; part of any rise is the room that the oil fills.'),
    out['byVolume'] &&
      `That oil would raise the reading by ${percent(out['byVolume'])} by the room it fills alone. Only what goes beyond it speaks of sealing.`,
    'Gauge, hose and its valve, throttle, battery and warmth move the reading more than wear does: repeat it all the same way, throttle wide open, until it stops rising.',
  ];
  return said.filter((note) => typeof note === 'string');
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const v = reader(values);
  const p = (name: string, x: number) => sign(name, x, 'pressure', 'bar', 4);
  const a = p('p_a', out['air']?.si ?? 0);
  const sea = p('p_0', SEA);
  const lines = [
    line(
      'Mean reading, as at the sea',
      p('m_0', out['meanSea']?.si ?? 0),
      over(times(p('m', out['mean']?.si ?? 0), sea), a),
    ),
  ];
  const { spreadShare, low, high, expected } = out;
  if (spreadShare && low && high)
    lines.push(
      line(
        'Lowest below highest',
        sign('s', spreadShare.si, 'share', '1', 3),
        minus(num(1), over(p('l', low.si), p('h', high.si))),
      ),
    );
  if (expected) {
    const there = p('p_r', airPressure(v('referenceAltitude', 0)));
    lines.push(line('Expected here', p('e', expected.si), over(times(p('g', v('reference')), a), there)));
  }
  return lines;
}

/** A bar a cylinder, dry, and beside it wet. */
function bars(values: Values, out: Record<string, Output>): Drawing {
  const [dry, wet] = [readings(values, 'dry'), readings(values, 'wet')];
  const expected = out['expected']?.si;
  const most = Math.max(...dry, ...wet, expected ?? 0) * 1.12;
  const step = 280 / dry.length;
  const wide = Math.min(34, step / (wet.length ? 3 : 2));
  const y = (x: number) => 190 - (x / most) * 160;
  const box = (x: number, reading: number, more: string) =>
    path(`M${r1(x)} 190V${r1(y(reading))}h${r1(wide)}V190`, more) +
    (dry.length < 7
      ? lettering(x + wide / 2, y(reading) - 5, bar(reading).replace(/\s.*/, ''), 'middle')
      : '');
  const body = dry.flatMap((reading, i) => {
    const mid = 50 + step * (i + 0.5);
    const wetted = wet[i];
    return [
      box(wetted === undefined ? mid - wide / 2 : mid - wide - 2, reading, 'stroke-width="2"'),
      wetted === undefined ? '' : box(mid + 2, wetted, 'stroke-dasharray="3 2"'),
      lettering(mid, 206, String(i + 1), 'middle'),
    ];
  });
  return drawing('bars', 236, 'Reading of each cylinder', `Dry: ${dry.map((x) => bar(x)).join(', ')}.`, [
    path('M44 190H336'),
    expected === undefined
      ? ''
      : path(`M44 ${r1(y(expected))}H336`, 'stroke-dasharray="8 4" stroke-opacity=".6"') +
        lettering(4, y(expected) + 4, bar(expected).replace(/\s.*/, '')),
    ...body,
    lettering(4, 12, 'bar on the gauge'),
    lettering(336, 226, wet.length ? 'cylinder; dashed: with oil' : 'cylinder', 'end'),
  ]);
}

/**
 * What a compression gauge read, set beside the air of the place, the other cylinders, and the room that oil fills.
 * @returns refusals in plain words; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const outputs = spread(compute, { ...values, exponent: EXPONENT });
  return {
    ok: true,
    outputs,
    working: working(values, outputs),
    tables: tables(values, outputs),
    notes: notes(values, outputs),
    drawings: [bars(values, outputs)],
  };
}
