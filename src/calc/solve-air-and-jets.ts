import type { wrong } from './air-and-jets-says.ts';
import type { Found, FoundChart, Output, Refusal, Values } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import { moistAir } from './moist-air.ts';
import { airPressure } from './road-load.ts';
import type { Point } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';

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

/** A change that neither a rider nor a plug shows. */
const SMALL = 0.01;

/** The jet, or its area in per cent, against height at the temperature given. */
function heightChart(values: Values, out: Record<string, Output>): FoundChart {
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
  const height = v('altitude');
  return {
    x: { max: most },
    y: { min: Math.floor(Math.min(...ys, here) - 1), max: Math.ceil(Math.max(...ys, here) + 1) },
    curves: [{ points }],
    marks: height >= 0 && Number.isNaN(v('pressure')) ? [{ at: [height, here], here }] : [],
  };
}

/**
 * Density of the air in two places, what it does to the mixture, and the jet that brings the mixture back.
 * @returns refusals; ± carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const v = reader(values);
  const place = (when: When) => Number.isNaN(airOf(values, when).pressure) && 'place';
  const refused = refusal<keyof typeof wrong>({
    altitudeThen: place('Then'),
    altitude: place(''),
    temperatureThen: Number.isNaN(v('temperatureThen')) && 'temperature',
    temperature: Number.isNaN(v('temperature')) && 'temperature',
  });
  if (refused) return refused;
  const outputs = spread(compute, values);
  const richer = outputs['richer']?.si ?? 0;
  return {
    ok: true,
    outputs,
    figures: {
      mixture: Math.abs(richer) < SMALL ? 'same' : richer > 0 ? 'richer' : 'leaner',
      shift: Math.abs(richer),
      marking: byFlow(values) ? 'flow' : 'bore',
      ownJet: v('jet'),
    },
    shown: { height: heightChart(values, outputs) },
  };
}
