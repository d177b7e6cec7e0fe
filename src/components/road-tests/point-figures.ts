import { printFigure } from '../../calc/print-figure.ts';
import { toSi } from '../../calc/units.ts';
import type { SpeedPoint, SpeedUnit } from '../../record/road-tests/points.ts';
import { putRight, type SpeedometerError } from '../../record/road-tests/speedometer.ts';

const OTHER: Record<SpeedUnit, SpeedUnit> = { 'km/h': 'mph', mph: 'km/h' };

/** A point in the dial's unit, digits as read, and in the other one. */
export function indicated({ value, unit }: SpeedPoint): { own: string; other: string } {
  const si = toSi(value, 'speed', unit);
  return { own: `${value}\u00a0${unit}`, other: printFigure({ si }, 'speed', OTHER[unit], 3, 0) };
}

/** A point with the instrument's error taken out: "45.5 ± 1.1 km/h". */
export function rightAs(point: SpeedPoint, error: SpeedometerError): string {
  const { value, pm } = putRight(point, error);
  return pm === undefined
    ? `${Math.round(value)}\u00a0${point.unit}`
    : `${value.toFixed(1)} ± ${pm.toFixed(1)}\u00a0${point.unit}`;
}

/** "0:00", "1:05" from the first point. */
export function clockWords(time_s: number): string {
  const whole = Math.round(time_s);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

export const slopeSaid = ({ slope }: SpeedPoint): string => slope ?? 'not said';

/** What the sheet says of the instrument, in a sentence. */
export function correctionWords({ share, pm }: SpeedometerError): string {
  const percent = (x: number) => String(Math.round(Math.abs(x) * 1000) / 10);
  const way = share < 0 ? 'too little' : 'too much';
  const doubt = pm === undefined ? '' : `, ± ${percent(pm)} %`;
  return `As measured, and noted on the machine’s sheet, it shows ${percent(share)} % ${way}${doubt}; “put right” takes that out and leaves the doubt of reading the needle in. At speeds other than the one tried it may be off by more. `;
}
