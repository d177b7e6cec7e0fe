/** Figures with a unit that point to a hazard: "12 kV", "6 bar", "38 kg", "25 to one". Thresholds say what is worth a look, never what is safe. */
import { isTens, type Token } from './language.ts';

const UNITS: Readonly<Record<string, (value: number) => readonly string[]>> = {
  bar: (v) => (v >= 0.2 ? ['#bar'] : []),
  psi: (v) => (v >= 3 ? ['#psi'] : []),
  kv: () => ['#kv'],
  kilovolt: () => ['#kv'],
  kilovolts: () => ['#kv'],
  v: (v) => volts(v),
  volt: (v) => volts(v),
  volts: (v) => volts(v),
  amp: () => ['#amp'],
  amps: () => ['#amp'],
  ampere: () => ['#amp'],
  amperes: () => ['#amp'],
  '°': (v) => hot(v),
  degree: (v) => hot(v),
  degrees: (v) => hot(v),
  celsius: (v) => hot(v),
  c: (v) => hot(v),
  kg: (v) => (v >= 20 ? ['#heavy'] : []),
  kilo: (v) => (v >= 20 ? ['#heavy'] : []),
  kilos: (v) => (v >= 20 ? ['#heavy'] : []),
  lb: (v) => (v >= 45 ? ['#heavy'] : []),
  lbs: (v) => (v >= 45 ? ['#heavy'] : []),
  db: (v) => (v >= 80 ? ['#loud'] : []),
  dba: (v) => (v >= 80 ? ['#loud'] : []),
  decibel: (v) => (v >= 80 ? ['#loud'] : []),
  decibels: (v) => (v >= 80 ? ['#loud'] : []),
  km: () => ['#km'],
  kmh: () => ['#speed'],
  kph: () => ['#speed'],
  mph: () => ['#speed'],
  ton: () => ['#tonne'],
  tons: () => ['#tonne'],
  tonne: () => ['#tonne'],
  tonnes: () => ['#tonne'],
  nm: () => ['#nm'],
  newton: () => ['#nm'],
};
const unitOf = new Map(Object.entries(UNITS));

function volts(value: number): readonly string[] {
  if (value >= 1000) return ['#kv'];
  if (value === 6) return ['#volt', '#volt6'];
  if (value === 24) return ['#volt', '#volt24'];
  return ['#volt'];
}

const hot = (value: number): readonly string[] => (value >= 55 ? ['#hot'] : []);

/** Names of the figures that start at token `i`, such as ["#bar"]; empty for a bare number. */
export function figuresAt(tokens: readonly Token[], i: number, text: string): readonly string[] {
  const token = tokens[i];
  if (token?.number === undefined) return [];
  let value = token.number;
  let next = i + 1;
  const second = tokens[next];
  if (
    isTens(token.word) &&
    second?.number !== undefined &&
    second.number < 10 &&
    second.at === token.at + 1
  ) {
    value += second.number;
    next += 1;
  }
  const unit = tokens[next];
  const before = tokens[next - 1];
  if (unit === undefined || unit.at > token.at + (next - i) + 1) return [];
  if (unit.number === 1 && before !== undefined && text.slice(before.end, unit.offset).trim() === ':')
    return ratio(value);
  if (unit.at > token.at + (next - i)) return [];
  const after = tokens[next + 1];
  if (unit.word === 'to' && after?.number === 1) return ratio(value);
  if (unit.word === 'km' && tokens[next + 1]?.word === 'h') return ['#speed'];
  return unitOf.get(unit.word)?.(value) ?? [];
}

const ratio = (value: number): readonly string[] => (value >= 14 && value <= 100 ? ['#mixratio'] : []);
