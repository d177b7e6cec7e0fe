/**
 * Every unit that a figure may be typed or printed in, by quantity: the one table of factors. Calculators work in SI;
 * units exist only where a figure is read (parse-figure.ts) or printed (print-figure.ts), and are converted in units.ts.
 * A number is the unit's size in SI; a pair holds the two ways of a unit that is no plain multiple.
 * Sources: international yard and pound 1959 (in 25.4 mm, lb 0.45359237 kg); standard gravity 9.80665 m/s² (CGPM 1901);
 * US gallon 231 in³ (NIST Handbook 44, App. C); imperial gallon 4.54609 L (Units of Measurement Regulations 1995, UK);
 * hp 550 ft·lbf/s, PS 75 kgf·m/s; conventional mercury 13 595.1 kg/m³ (NIST SP 811, App. B). All exact by definition.
 */

/**
 * Size of the unit in SI; or a unit that is no plain multiple, as data: `per` grows as the SI value shrinks (miles per
 * gallon), `from` has a zero point of its own, `tan` is an angle whose tangent is the SI value,
 * `pow` counts equal ratios (wire gauges): the first figure at 0, times the second at each number more.
 */
export type Scale =
  | number
  | readonly ['per', number]
  | readonly ['from', number, number]
  | readonly ['tan', number]
  | readonly ['pow', number, number];

const LB = 0.45359237;
const G = 9.80665;
const IN = 0.0254;
const MILE = 1609.344;
const US_GAL = 231 * IN ** 3;
const IMP_GAL = 4.54609e-3;
const RPM = (2 * Math.PI) / 60;
const DEG = Math.PI / 180;
const LBF = LB * G;

export const UNITS = {
  length: {
    mm: 1e-3,
    cm: 1e-2,
    m: 1,
    km: 1e3,
    in: IN,
    thou: IN / 1e3,
    um: 1e-6,
    ft: 12 * IN,
    yd: 36 * IN,
    mi: MILE,
  },
  area: { mm2: 1e-6, cm2: 1e-4, m2: 1, in2: IN ** 2, ft2: (12 * IN) ** 2 },
  /** Section of a conductor. AWG: 0.4600 in at No. 0000 (−3), 0.0050 in at No. 36, 39 equal ratios (ASTM B258). */
  section: { mm2: 1e-6, AWG: ['pow', (Math.PI / 4) * (0.005 * IN * 92 ** (36 / 39)) ** 2, 92 ** (-2 / 39)] },
  volume: {
    L: 1e-3,
    mL: 1e-6,
    cm3: 1e-6,
    m3: 1,
    in3: IN ** 3,
    'US gal': US_GAL,
    'US qt': US_GAL / 4,
    'US pt': US_GAL / 8,
    'US fl oz': US_GAL / 128,
    'imp gal': IMP_GAL,
    'imp qt': IMP_GAL / 4,
    'imp pt': IMP_GAL / 8,
    'imp fl oz': IMP_GAL / 160,
  },
  angle: { deg: DEG, rad: 1, arcmin: DEG / 60, turn: 2 * Math.PI },
  time: { s: 1, ms: 1e-3, min: 60, h: 3600 },
  speed: { 'km/h': 1 / 3.6, mph: MILE / 3600, 'm/s': 1, 'ft/s': 12 * IN },
  /** Turning speed; SI is rad/s. */
  rotation: { rpm: RPM, 'rad/s': 1, Hz: 2 * Math.PI },
  frequency: { Hz: 1, kHz: 1e3 },
  mass: { kg: 1, g: 1e-3, t: 1e3, lb: LB, oz: LB / 16, st: 14 * LB, cwt: 112 * LB },
  force: { N: 1, kN: 1e3, kgf: G, lbf: LBF },
  torque: { Nm: 1, 'kgf m': G, 'lbf ft': LBF * 12 * IN, 'lbf in': LBF * IN },
  power: { kW: 1e3, W: 1, hp: 550 * LBF * 12 * IN, PS: 75 * G },
  pressure: {
    kPa: 1e3,
    Pa: 1,
    hPa: 100,
    bar: 1e5,
    psi: LBF / IN ** 2,
    'kgf/cm2': G * 1e4,
    mmHg: 13.5951 * G,
    inHg: 13.5951 * G * 25.4,
    atm: 101325,
  },
  temperature: { degC: ['from', 1, 273.15], K: 1, degF: ['from', 5 / 9, 459.67 / 1.8] },
  /** A difference of temperatures: no zero point to shift. */
  'temperature step': { K: 1, degC: 1, degF: 5 / 9 },
  density: { 'kg/m3': 1, 'g/cm3': 1e3, 'lb/ft3': LB / (12 * IN) ** 3 },
  acceleration: { 'm/s2': 1, 'ft/s2': 12 * IN, g: G },
  /** Rise over run (tangent). "1 in" is the one-in-so-many of road signs. */
  slope: {
    '%': 0.01,
    '1 in': ['per', 1],
    deg: ['tan', DEG],
  },
  /** Turns of the driving shaft for one of the driven one. */
  ratio: { ':1': 1 },
  share: { '%': 0.01, '1': 1 },
  count: { n: 1 },
  /** Oil to fuel by volume; SI is parts of oil to one of fuel. */
  mixture: {
    ':1': ['per', 1],
    '%': 0.01,
    'mL/L': 1e-3,
    'US fl oz/US gal': 1 / 128,
    'imp fl oz/imp gal': 1 / 160,
  },
  /** Fuel used for a distance; SI is m³/m. */
  use: {
    'L/100km': 1e-8,
    'km/L': ['per', 1e-6],
    'US mpg': ['per', US_GAL / MILE],
    'imp mpg': ['per', IMP_GAL / MILE],
  },
  /** Money for a volume, in the money of the page. */
  price: {
    '/L': 1e3,
    '/US gal': 1 / US_GAL,
    '/US qt': 4 / US_GAL,
    '/imp gal': 1 / IMP_GAL,
    '/imp pt': 8 / IMP_GAL,
  },
  money: { n: 1 },
  /** Road speed for engine speed; SI is metres a radian. */
  'speed per rev': {
    'km/h per 1000': 1 / 3.6 / (1000 * RPM),
    'mph per 1000': MILE / 3600 / (1000 * RPM),
  },
  /** Moment of inertia. */
  inertia: { 'kg m2': 1, 'kg cm2': 1e-4, 'lb in2': LB * IN ** 2 },
  voltage: { V: 1, mV: 1e-3 },
  current: { A: 1, mA: 1e-3 },
  resistance: { ohm: 1, kohm: 1e3 },
  capacitance: { uF: 1e-6, nF: 1e-9 },
  charge: { Ah: 3600 },
} satisfies Record<string, Record<string, Scale>>;

/** Printed where it differs from the id with its figures raised ("mm2" is printed mm²). */
const PRINTED: Readonly<Record<string, string>> = {
  deg: '°',
  degC: '°C',
  degF: '°F',
  arcmin: '′',
  rpm: 'rev/min',
  Nm: 'N·m',
  'kgf m': 'kgf·m',
  'lbf ft': 'lbf·ft',
  'lbf in': 'lbf·in',
  'L/100km': 'L/100 km',
  'US mpg': 'mpg (US)',
  'imp mpg': 'mpg (imp)',
  'km/h per 1000': 'km/h per 1000 rev/min',
  'mph per 1000': 'mph per 1000 rev/min',
  ohm: 'Ω',
  kohm: 'kΩ',
  um: 'µm',
  uF: 'µF',
  n: '',
  '1': '',
};

const raised = (unit: string) =>
  unit.replace(/([a-z])([23])(?![a-z0-9])/g, (_, a, d) => a + (d === '2' ? '²' : '³'));

/** Every unit as printed where that is not its id. */
export const SYMBOLS: Readonly<Record<string, string>> = Object.fromEntries(
  Object.values(UNITS)
    .flatMap((units) => Object.keys(units))
    .map((unit) => [unit, PRINTED[unit] ?? raised(unit)])
    .filter(([unit, printed]) => unit !== printed),
);

/** Spellings that differ from a unit's id by more than case, dots, blanks, a raised figure and the plural's s. */
const SPELLINGS =
  `in " inch inche|ft ' foot feet|m metre meter|mm millimetre millimeter|mi mile|l litre liter|cm3 cc ccm
|gal gallon|pt pint|qt quart|floz oz fluidounce fluidoz|deg ° degree|arcmin '|turn rev|s sec second|min minute|h hour
|km/h kmh kph|mph mi/h|rpm rev/min|lbfft lbft ftlb ftlbf|lbfin lbin|kgfm kgm|hp bhp|degc °c c|degf °f f|% percent`
    .split('|')
    .map((row) => row.trim().split(' '));

/** "US gallons", "gal. US" and the id "US gal" come to the same: usgal. */
const squashed = (id: string) => id.toLowerCase().replace(/[\s.·*]/g, '');

/** Every name of a quantity's units; one that may be US or imperial has both, "US gal or imp gal". */
function namesOf(units: readonly string[]): Record<string, string> {
  const names: Record<string, string> = {};
  const add = (name: string, id: string) => {
    names[name] = names[name] && names[name] !== id ? `${names[name]} or ${id}` : id;
  };
  for (const id of units) {
    const [, land = '', word = ''] = /^(us|imp|)(.*)$/.exec(squashed(id)) ?? [];
    for (const name of new Set([word, ...SPELLINGS.filter(([base]) => base === word).flat()])) {
      add(land + name, id);
      if (land) add(name, id);
    }
  }
  return names;
}

export const NAMES: Readonly<Record<string, Readonly<Record<string, string>>>> = Object.fromEntries(
  Object.entries(UNITS).map(([quantity, units]) => [quantity, namesOf(Object.keys(units))]),
);
