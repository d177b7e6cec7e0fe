import { type Quantity, toSi, UNITS, type UnitId, unitsOf } from '../../calc/units.ts';

/** Powers of length, mass, time, current, temperature and angle. Angle counts as a dimension: degrees are no bare number. */
export type Dimensions = readonly [number, number, number, number, number, number];

export const NONE: Dimensions = [0, 0, 0, 0, 0, 0];

const OF: Partial<Record<Quantity, Dimensions>> = {
  length: [1, 0, 0, 0, 0, 0],
  area: [2, 0, 0, 0, 0, 0],
  volume: [3, 0, 0, 0, 0, 0],
  angle: [0, 0, 0, 0, 0, 1],
  time: [0, 0, 1, 0, 0, 0],
  speed: [1, 0, -1, 0, 0, 0],
  rotation: [0, 0, -1, 0, 0, 1],
  mass: [0, 1, 0, 0, 0, 0],
  force: [1, 1, -2, 0, 0, 0],
  torque: [2, 1, -2, 0, 0, 0],
  power: [2, 1, -3, 0, 0, 0],
  pressure: [-1, 1, -2, 0, 0, 0],
  voltage: [2, 1, -3, -1, 0, 0],
  current: [0, 0, 0, 1, 0, 0],
  resistance: [2, 1, -3, -2, 0, 0],
  capacitance: [-2, -1, 4, 2, 0, 0],
  charge: [0, 0, 1, 1, 0, 0],
  density: [-3, 1, 0, 0, 0, 0],
  acceleration: [1, 0, -2, 0, 0, 0],
  inertia: [2, 1, 0, 0, 0, 0],
  use: [2, 0, 0, 0, 0, 0],
  'temperature step': [0, 0, 0, 0, 1, 0],
  share: NONE,
  ratio: NONE,
};

export interface SumUnit {
  name: string;
  size: number;
  dimensions: Dimensions;
}

/** The unit of a sum with this quantity and id; undefined where it is no plain multiple (°C, miles a gallon). */
export function sumUnit(quantity: Quantity, unit: UnitId): SumUnit | undefined {
  const dimensions = OF[quantity];
  const scale = (UNITS[quantity] as Record<string, unknown>)[unit];
  return dimensions && typeof scale === 'number'
    ? { name: unit, size: toSi(1, quantity, unit), dimensions }
    : undefined;
}

const SPELLINGS: Record<string, string> = {
  l: 'L',
  ml: 'mL',
  inch: 'in',
  Ω: 'ohm',
  '°': 'deg',
  cc: 'cm3',
  rev: 'turn',
};

/** Every unit that may stand in a sum by its one-word name. */
const BY_NAME = new Map<string, SumUnit>();
for (const quantity of Object.keys(OF) as Quantity[])
  for (const unit of unitsOf(quantity)) {
    const found = sumUnit(quantity, unit);
    if (found && /^[A-Za-z]+[23]?$|^%$/.test(unit) && !BY_NAME.has(unit)) BY_NAME.set(unit, found);
  }
for (const [spelling, unit] of Object.entries(SPELLINGS)) {
  const found = BY_NAME.get(unit);
  if (found) BY_NAME.set(spelling, found);
}

export function unitByName(name: string): SumUnit | undefined {
  return BY_NAME.get(name);
}

export const UNIT_NAMES: readonly string[] = [...BY_NAME.keys()];

export const times = (a: Dimensions, b: Dimensions, power = 1): Dimensions =>
  a.map((one, at) => one + power * (b[at] ?? 0)) as unknown as Dimensions;

export const same = (a: Dimensions, b: Dimensions): boolean =>
  a.every((one, at) => Math.abs(one - (b[at] ?? 0)) < 1e-9);

const BASE = ['m', 'kg', 's', 'A', 'K', 'rad'];

/** In words for a problem: "a length", "a bare number", "m²·s⁻¹". */
export function dimensionName(dimensions: Dimensions): string {
  if (same(dimensions, NONE)) return 'a bare number';
  for (const [quantity, of] of Object.entries(OF))
    if (of && same(of, dimensions) && quantity !== 'use' && quantity !== 'temperature step')
      return `${/^[aeiou]/.test(quantity) ? 'an' : 'a'} ${quantity}`;
  const powers = BASE.flatMap((unit, at) => {
    const power = dimensions[at] ?? 0;
    return power === 0 ? [] : [power === 1 ? unit : `${unit}^${power}`];
  });
  return `something in ${powers.join(' ')}`;
}
