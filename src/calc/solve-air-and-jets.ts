import { chart } from './chart.ts';
import type { Answer, Drawing, Output, Refusal, Term, Values, WorkingLine } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import { moistAir } from './moist-air.ts';
import { printer } from './print-figure.ts';
import { airPressure } from './road-load.ts';
import type { Point } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';
import { line, num, over, power, sign, times } from './working.ts';

const percent = printer('share', '%', 2);
const size = printer('count', 'n', 4);
const density = printer('density', 'kg/m3', 4);

/** The root as a power: a radical is not drawn where the reader's device has no font for formulas. */
const half = (term: Term) => power(term, num(0.5, '½'));

type When = '' | 'Then';

function airOf(values: Values, when: When) {
  const v = reader(values);
  const pressure = v(`pressure${when}`, airPressure(v(`altitude${when}`)));
  return { pressure, ...moistAir(pressure, v(`temperature${when}`), v(`humidity${when}`, 0)) };
}

const byFlow = (values: Values) => textOf(values, 'marking') === 'flow';

/** The jet for the same mixture: its area goes as the root of density, a bore as the root of the area. */
const jetFor = (values: Values, area: number) =>
  reader(values)('jet') * (byFlow(values) ? area : Math.sqrt(area));

function compute(values: Values): Computed {
  const [then, now] = [airOf(values, 'Then'), airOf(values, '')];
  const change = now.density_kgpm3 / then.density_kgpm3;
  const area = Math.sqrt(change);
  return {
    pressure: now.pressure,
    densityThen: then.density_kgpm3,
    density: now.density_kgpm3,
    change: change - 1,
    dry: now.dry_kgpm3 / then.dry_kgpm3 - 1,
    richer: 1 / area - 1,
    area,
    jet: jetFor(values, area),
  };
}

function refuse(values: Values): Refusal | undefined {
  const v = reader(values);
  const place = (when: When) =>
    Number.isNaN(airOf(values, when).pressure) && 'Height or air pressure is needed.';
  return refusal({
    altitudeThen: place('Then'),
    altitude: place(''),
    temperatureThen: Number.isNaN(v('temperatureThen')) && 'The temperature is needed.',
    temperature: Number.isNaN(v('temperature')) && 'The temperature is needed.',
  });
}

/** A change that neither a rider nor a plug shows. */
const SMALL = 0.01;

function notes(values: Values, out: Record<string, Output>): string[] {
  const richer = out['richer']?.si ?? 0;
  const shift = percent(Math.abs(richer));
  const said = [
    Math.abs(richer) < SMALL
      ? 'The mixture hardly changes: leave the jet.'
      : richer > 0
        ? `With the same jet the mixture is ${shift} richer here: it fouls plugs and loses power, but does not seize.`
        : `With the same jet the mixture is ${shift} leaner here. A lean two-stroke runs hot, holes its piston or seizes: fit the larger jet before riding, not after.`,
    out['jet'] &&
      (byFlow(values)
        ? `Numbered by flow, the jet’s number goes as its area: ${size(out['jet'])}.`
        : `Numbered by bore, the jet’s number goes as the root of its area: ${size(out['jet'])}.`),
    out['jet'] &&
      'Between two sizes take the larger, the richer. Sizes of two makers are not comparable: one counts the bore, another the flow.',
    'On the way down into denser air change back before the descent.',
    `About so much power as well: ${percent(out['dry'])} of the oxygen, which no jet brings back.`,
    'Holds for jets at full throttle. Slide, needle and idle follow the same root; their own screws and clips come after.',
  ];
  return said.filter((note) => typeof note === 'string');
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const si = (name: string) => out[name]?.si ?? 0;
  const kg = (name: string, x: number) => sign(name, x, 'density', 'kg/m3');
  const [now, then] = [kg('ρ', si('density')), kg('ρ_0', si('densityThen'))];
  const area = sign('a', si('area'), 'share', '1');
  const lines = [line('Area of the jet, for the same mixture', area, half(over(now, then)))];
  if (!reader(values)('humidity', 0)) {
    const R = sign('R', 287.05287, 'count', 'n', 6);
    const T = sign('T', reader(values)('temperature'), 'temperature', 'K', 5);
    lines.unshift(
      line(
        'Density here, R in J/(kg·K)',
        now,
        over(sign('p', si('pressure'), 'pressure', 'Pa', 6), times(R, T)),
      ),
    );
  }
  if (out['jet']) {
    const j = sign('j_0', reader(values)('jet'), 'count', 'n');
    lines.push(
      line('Jet', sign('j', out['jet'].si, 'count', 'n'), times(j, byFlow(values) ? area : half(area))),
    );
  }
  return lines;
}

/** The jet, or its area in per cent, against height at the temperature given. */
function heightChart(values: Values, out: Record<string, Output>): Drawing {
  const v = reader(values);
  const then = airOf(values, 'Then').density_kgpm3;
  const jet = out['jet'] !== undefined;
  const most = Math.max(3000, Math.ceil((v('altitude', 0) * 1.1) / 500) * 500);
  const at = (height: number): Point => {
    const air = moistAir(airPressure(height), v('temperature'), v('humidity', 0));
    const area = Math.sqrt(air.density_kgpm3 / then);
    return [height, jet ? jetFor(values, area) : area * 100];
  };
  const points = Array.from({ length: 25 }, (_, i) => at((most * i) / 24));
  const ys = points.map(([, y]) => y);
  const here = jet ? (out['jet']?.si ?? 0) : (out['area']?.si ?? 0) * 100;
  const [low, high] = [Math.min(...ys, here), Math.max(...ys, here)];
  const height = v('altitude');
  return chart({
    name: 'height',
    title: jet ? 'Jet for the same mixture, by height' : 'Jet area for the same mixture, by height',
    desc: `Falls with height; ${density(out['density'])} here.`,
    x: { label: 'm above the sea', max: most },
    y: { label: jet ? 'jet number' : 'jet area, %', min: Math.floor(low - 1), max: Math.ceil(high + 1) },
    curves: [{ points }],
    marks:
      height >= 0 && Number.isNaN(v('pressure')) ? [{ at: [height, here], label: `here ${size(here)}` }] : [],
  });
}

/**
 * Density of the air in two places, what it does to the mixture, and the jet that brings the mixture back.
 * @returns refusals in plain words; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const outputs = spread(compute, values);
  return {
    ok: true,
    outputs,
    working: working(values, outputs),
    tables: [],
    notes: notes(values, outputs),
    drawings: [heightChart(values, outputs)],
  };
}
