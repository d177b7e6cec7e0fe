import { type Quantity, toSi, type UnitId } from '../../calc/units.ts';
import { readQuantity } from '../files/machine.ts';
import type { DecimalMark } from '../money/decimal.ts';
import { unitNamed } from '../quantity/unit-named.ts';
import type { Row } from '../read/field.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import type { ROAD_TESTS } from '../tables.ts';
import { shown } from '../text/words.ts';

export type Measured =
  | 'mass'
  | 'rotating'
  | 'fastest'
  | 'slowest'
  | 'speed_doubt'
  | 'temperature'
  | 'altitude';

interface Range {
  quantity: Quantity;
  from: number;
  to: number;
  says: string;
}

/** What each figure may be, SI; beyond it the unit is probably another one. */
const RANGES: Record<Measured, Range> = {
  mass: { quantity: 'mass', from: 60, to: 4000, says: 'between 60 kg and 4000 kg' },
  rotating: { quantity: 'mass', from: 0, to: 400, says: 'between 0 kg and 400 kg' },
  fastest: { quantity: 'speed', from: 1, to: 200 / 3.6, says: 'between 4 km/h and 200 km/h' },
  slowest: { quantity: 'speed', from: 0.5, to: 150 / 3.6, says: 'between 2 km/h and 150 km/h' },
  speed_doubt: { quantity: 'share', from: 0, to: 0.3, says: 'between 0 % and 30 %' },
  temperature: { quantity: 'temperature', from: 233.15, to: 328.15, says: 'between −40 °C and 55 °C' },
  altitude: { quantity: 'length', from: -500, to: 6000, says: 'between −500 m and 6000 m' },
};

/** SI. */
export interface Figure {
  si: number;
  pm: number;
}

/** The figures of a row that have units: mass, speeds, air. */
export function readMeasured(
  line: Row<typeof ROAD_TESTS>,
  mark: DecimalMark | undefined,
  report: Report,
): Partial<Record<Measured, Figure>> {
  const found: Partial<Record<Measured, Figure>> = {};
  for (const [name, range] of Object.entries(RANGES) as [Measured, Range][]) {
    const text = line[name];
    if (text === undefined) continue;
    const wrong = (why: string) =>
      report.add(fieldRule('road-tests', name), line.at(name), `${shown(text)} ${why}`);
    const read = readQuantity(text, mark);
    const unit = read && 'quantity' in read ? unitOf(read.quantity.unit, range.quantity) : undefined;
    if (!read || 'wrong' in read || unit === undefined) {
      wrong(`is no figure with a unit of ${range.quantity}. Write one ${range.says}, with its unit.`);
      continue;
    }
    const si = toSi(Number(read.quantity.text), range.quantity, unit);
    const pm = Math.abs(
      toSi(Number(read.quantity.text) + Number(read.quantity.pm ?? 0), range.quantity, unit) - si,
    );
    if (si < range.from || si > range.to)
      wrong(`is out of range. Write one ${range.says}, or look at its unit.`);
    else found[name] = { si, pm };
  }
  return found;
}

function unitOf(written: string, quantity: Quantity): UnitId | undefined {
  if (quantity === 'share') return written === '%' ? '%' : undefined;
  const named = unitNamed(written);
  return named?.quantity === quantity ? named.unit : undefined;
}
