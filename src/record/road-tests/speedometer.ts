import type { Report } from '../report-to.ts';
import { shown } from '../text/words.ts';
import type { Machine } from '../types.ts';
import type { SpeedPoint } from './points.ts';

/** How much more the speedometer shows than is true, as a share of the true speed: −0.01 ± 0.024. */
export interface SpeedometerError {
  share: number;
  pm?: number;
}

/** Where the machine's sheet has it; the speed check's "of the true speed", with its ±, goes there. */
export const SPEEDOMETER_PATH = 'instruments.speedometer_error';
/** Beyond this the figure is something else; common practice, no source. */
const MOST = 0.5;

/** The speedometer's error where the sheet has it as measured. What was told or stands in a book is nobody's measurement. */
export function speedometerError(machine: Machine | undefined, report: Report): SpeedometerError | undefined {
  const value = machine?.values.get(SPEEDOMETER_PATH);
  if (!value) return undefined;
  const { now } = value;
  const share = now?.unit === '%' ? Number(now.text) / 100 : Number.NaN;
  if (!(Math.abs(share) <= MOST))
    return report.add(
      'road-tests/speedometer',
      value.place,
      `${shown(now ? `${now.text} ${now.unit}` : (value.text ?? ''))} is no share of the true speed. Write how much too much the speedometer shows in per cent of it, such as "4 %", or "-4 %" where it shows too little.`,
    );
  if (value.source !== 'measured') return undefined;
  return now?.pm === undefined ? { share } : { share, pm: Number(now.pm) / 100 };
}

/**
 * A speed as indicated, put right; in the point's unit.
 * @example
 * putRight({value: 52, unit: 'km/h'}, {share: 0.04}).value // => 50
 */
export function putRight({ value }: SpeedPoint, error: SpeedometerError): { value: number; pm?: number } {
  const right = value / (1 + error.share);
  return error.pm === undefined
    ? { value: right }
    : { value: right, pm: (right * error.pm) / (1 + error.share) };
}
