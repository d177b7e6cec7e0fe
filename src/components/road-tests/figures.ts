import { printFigure } from '../../calc/print-figure.ts';
import type { BySlope } from '../../record/road-tests/between-speeds.ts';
import type { CoastAnswer, CoastConditions } from '../../record/road-tests/coast-down.ts';
import { at } from '../address.ts';

export const speed = (mps: number): string => printFigure({ si: mps }, 'speed', 'km/h', 3, 0);
export const alsoSpeed = (mps: number): string => printFigure({ si: mps }, 'speed', 'mph', 3, 0);
export const time = (s: number): string => printFigure({ si: s }, 'time', 's', 3, 1);

type Told = Extract<CoastAnswer, { ok: true }>;

const doubted = ({ value, pm }: { value: number; pm: number }, decimals: number) =>
  ({ value: value.toFixed(decimals), pm: pm.toFixed(decimals) }) as const;

/** What the runs tell, each with its ±. */
export function told(answer: Told): { name: string; text: string }[] {
  const drag = doubted(answer.drag_m2, 2);
  const rolling = doubted(answer.rolling, 4);
  return [
    { name: 'Drag area', text: `${drag.value} ± ${drag.pm} m²` },
    { name: 'Rolling resistance', text: `${rolling.value} ± ${rolling.pm}` },
    {
      name: 'Wind along the road, as the runs have it',
      text:
        speed(Math.abs(answer.wind_mps)) +
        way(answer.wind_mps, ' against the runs there', ' against the runs back'),
    },
    {
      name: 'Slope, as the runs have it',
      text: `${Math.abs(answer.slope * 100).toFixed(1)} %${way(answer.slope, ' uphill there', ' uphill back')}`,
    },
    { name: 'Scatter of a point', text: printFigure({ si: answer.scatter_mps }, 'speed', 'km/h', 2) },
  ];
}

const way = (x: number, positive: string, negative: string) =>
  Math.abs(x) < 1e-4 ? '' : x > 0 ? positive : negative;

/** What they were fitted with, in words. */
export function fittedWith(answer: Told, given: CoastConditions): string {
  const kg = (si: number, pm: number) => printFigure({ si, pm }, 'mass', 'kg');
  return `${answer.runs} runs, ${answer.samples} points from ${speed(given.to_mps)} to ${speed(given.from_mps)}; mass ${kg(given.mass_kg, given.mass_pm_kg)}, of wheels and shafts ${kg(given.rotating_kg, given.rotating_pm_kg)} more; air ${given.density_kgpm3.toFixed(3)} kg/m³ ± ${(given.density_pm * 100).toFixed(1)} %; speeds ± ${(given.speed_pm * 100).toFixed(1)} %.`;
}

/** The hills calculator filled with what was found. */
export function hillsWith(answer: Told, given: CoastConditions): string {
  const drag = doubted(answer.drag_m2, 2);
  const rolling = doubted(answer.rolling, 4);
  const mass = `${given.mass_kg.toFixed(0)}+kg${given.mass_pm_kg > 0 ? `~${given.mass_pm_kg.toFixed(0)}` : ''}`;
  return at(
    `/calculators/hills/?mass=${mass}&drag=${drag.value}+m2~${drag.pm}&rolling=${rolling.value}~${rolling.pm}`,
  );
}

export function slopeWords({ from, to }: BySlope): string {
  const percent = (x: number) => `${Math.abs(Math.round(x * 100))} %`;
  if (from < 0 && to > 0) return `Level, within ${percent(to)}`;
  const steeper = Math.max(Math.abs(from), Math.abs(to));
  const gentler = Math.min(Math.abs(from), Math.abs(to));
  return `${from >= 0 ? 'Uphill' : 'Downhill'}, ${steeper >= 0.3 ? `steeper than ${percent(gentler)}` : `${percent(gentler)} to ${percent(steeper)}`}`;
}
