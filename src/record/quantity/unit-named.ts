import { parseFigure } from '../../calc/parse-figure.ts';
import { type Quantity, type UnitId, unitSymbol, unitsOf } from '../../calc/units.ts';

/** A unit as an author may write it: "N m", "°", "cm^3", "L/100 km". */
export interface NamedUnit {
  quantity: Quantity;
  unit: UnitId;
  symbol: string;
}

/** Where one spelling fits several quantities, the first of these is meant: "g" is grams, "°" an angle. */
const QUANTITIES: readonly Quantity[] = [
  'length',
  'angle',
  'volume',
  'mass',
  'torque',
  'pressure',
  'speed',
  'rotation',
  'temperature',
  'force',
  'power',
  'time',
  'area',
  'use',
  'voltage',
  'current',
  'resistance',
  'capacitance',
  'charge',
  'density',
  'acceleration',
  'inertia',
  'share',
];

const known = new Map<string, NamedUnit | undefined>();

/** The unit that a spelling means; undefined where the table of units has none. */
export function unitNamed(spelling: string): NamedUnit | undefined {
  const key = spelling.trim();
  if (!known.has(key)) known.set(key, find(key));
  return known.get(key);
}

function find(spelling: string): NamedUnit | undefined {
  if (spelling === '') return undefined;
  for (const quantity of QUANTITIES) {
    const [first] = unitsOf(quantity);
    if (first === undefined) continue;
    const read = parseFigure(`1 ${spelling}`, quantity, first);
    if (read.ok) return { quantity, unit: read.unit, symbol: unitSymbol(read.unit) };
  }
  return undefined;
}
