import { fromSi, type Quantity, toSi, type UnitId } from '../../calc/units.ts';
import type { NamedUnit } from './unit-named.ts';

/** What a reader of the other system reckons in. Gallons by the land of the series' language. */
const COUNTERPARTS: Partial<Record<Quantity, Record<string, string>>> = {
  length: { mm: 'in', cm: 'in', m: 'ft', km: 'mi', in: 'mm', thou: 'mm', ft: 'm', yd: 'm', mi: 'km' },
  area: { mm2: 'in2', cm2: 'in2', m2: 'ft2', in2: 'cm2', ft2: 'm2' },
  volume: {
    L: 'gal',
    mL: 'fl oz',
    cm3: 'in3',
    in3: 'cm3',
    'US gal': 'L',
    'US qt': 'L',
    'US pt': 'L',
    'US fl oz': 'mL',
    'imp gal': 'L',
    'imp qt': 'L',
    'imp pt': 'L',
    'imp fl oz': 'mL',
  },
  speed: { 'km/h': 'mph', mph: 'km/h', 'm/s': 'ft/s', 'ft/s': 'm/s' },
  mass: { kg: 'lb', g: 'oz', t: 'cwt', lb: 'kg', oz: 'g', st: 'kg', cwt: 'kg' },
  force: { N: 'lbf', kN: 'lbf', kgf: 'lbf', lbf: 'N' },
  torque: { Nm: 'lbf ft', 'kgf m': 'lbf ft', 'lbf ft': 'Nm', 'lbf in': 'Nm' },
  power: { kW: 'hp', PS: 'kW', hp: 'kW' },
  pressure: { kPa: 'psi', bar: 'psi', psi: 'kPa', 'kgf/cm2': 'psi', inHg: 'kPa' },
  temperature: { degC: 'degF', degF: 'degC' },
  density: { 'g/cm3': 'lb/ft3', 'kg/m3': 'lb/ft3', 'lb/ft3': 'kg/m3' },
  use: { 'L/100km': 'mpg', 'km/L': 'mpg', 'US mpg': 'L/100km', 'imp mpg': 'L/100km' },
};

/** The unit of the other system for a unit, where the trade has one. `language` is a BCP 47 tag. */
export function counterpart({ quantity, unit }: NamedUnit, language: string): UnitId | undefined {
  const other = COUNTERPARTS[quantity]?.[unit];
  if (other !== 'gal' && other !== 'fl oz' && other !== 'mpg') return other as UnitId | undefined;
  return `${/-US$/i.test(language) ? 'US' : 'imp'} ${other}` as UnitId;
}

export type Rounding = 'nearest' | 'up' | 'down';

/**
 * Digits of a converted figure, to the coarsest decimal step that is no coarser than the author's last digit.
 * @param text the author's figure with a decimal point: its last digit says how closely it is known
 * @param rounding a lower limit goes up, an upper one down, so that nobody is led outside
 * @example
 * converted('3.4', { quantity: 'length', unit: 'mm' }, 'in', 'nearest') // => "0.134"
 */
export function converted(
  text: string,
  { quantity, unit }: Pick<NamedUnit, 'quantity' | 'unit'>,
  to: UnitId,
  rounding: Rounding,
): string {
  const convert = (x: number) => fromSi(toSi(x, quantity, unit), quantity, to);
  const lastDigit = 10 ** -(text.split('.')[1]?.length ?? 0);
  const value = Number(text);
  const exact = convert(value);
  const step = Math.abs(convert(value + lastDigit / 2) - convert(value - lastDigit / 2));
  // A hair of tolerance: a step of exactly 0.1 must not become 0.01 through the last bit of a binary fraction.
  const decimals = Math.max(0, Math.min(9, Math.ceil(-Math.log10(step) - 1e-9)));
  const scale = 10 ** decimals;
  const scaled = exact * scale;
  const near = Math.round(scaled);
  const sure = Math.abs(scaled - near) < 1e-11 * Math.max(1, Math.abs(scaled));
  const whole =
    sure || rounding === 'nearest' ? near : rounding === 'up' ? Math.ceil(scaled) : Math.floor(scaled);
  return (whole / scale).toFixed(decimals).replace(/^-(?=0(\.0*)?$)/, '');
}
