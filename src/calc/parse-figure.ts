import type { Figure } from './contract.ts';
import { firstFilled } from './holes.ts';
import { READING } from './reading-messages.ts';
import { NAMES } from './unit-table.ts';
import { fromSi, type Quantity, toSi, type UnitId, unitSymbol, unitsOf } from './units.ts';

export type Reading = { ok: true; figure: Figure; unit: UnitId } | { ok: false; message: string };

/** The unit that a text names; throws the message where it names none or two. */
function unitNamed(named: string, quantity: Quantity): UnitId {
  const text = named.trim();
  const word = text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/imperial|british|\buk\b/, 'imp')
    .replace(/[\s.·*]/g, '')
    .replace(/^(.+)(us|imp)$/, '$2$1');
  const names = NAMES[quantity] ?? {};
  const unit = [word, word.replace(/s$/, '')].map((one) => names[one]).find((one) => typeof one === 'string');
  if (unit && !unit.includes(' or ')) return unit as UnitId;
  const some = unitsOf(quantity).filter((u) => unitSymbol(u));
  const units = some.slice(0, 4).join(', ') || undefined;
  throw firstFilled(READING.unit, { text, quantity, either: unit, units });
}

/** One number in digits; throws where comma and point leave two readings. */
function number(text: string): number {
  const t = text.replace(/ /g, '').replace(/[.,]$/, '');
  if (/^[1-9]\d{0,2},\d{3}$/.test(t))
    throw firstFilled(READING.mark, { text: t, point: t.replace(',', '.'), none: t.replace(',', '') });
  for (const [group, mark] of [',.', '.,']) {
    const [, whole = '', part = ''] =
      new RegExp(`^(\\d*|[1-9]\\d{0,2}(?:\\${group}\\d{3})+)(?:\\${mark}(\\d*))?$`).exec(t) ?? [];
    if (whole + part !== '') return Number(`${whole.split(group as string).join('') || 0}.${part || 0}`);
  }
  return Number.NaN;
}

const NUMBER = /^([+-]?) *(?:(?:(\d+)[ -]+)?(\d+)\/(\d+)|(\d{1,3}(?: \d{3})+(?!\d)(?:[.,]\d+)?|[\d.,]+))\s*/;

interface Amount {
  x: number;
  /** As typed, where it is one number. */
  digits: string;
  unit?: UnitId;
}

/** A number and its unit, or two in a row (5 ft 3 in). Throws the message as text. */
function amount(text: string, quantity: Quantity): Amount {
  const [, many] = /^1 in (.+)/.exec(text) ?? [];
  if (many && quantity === 'slope') return { ...amount(many, quantity), unit: '1 in' };
  const [all = '', sign, whole = 0, over, under, figure = ''] = NUMBER.exec(text) ?? [];
  const size = over ? Number(whole) + Number(over) / Number(under) : number(figure);
  const x = sign === '-' ? -size : size;
  if (!Number.isFinite(x)) throw '';
  const digits = all.trim();
  const rest = text.slice(all.length);
  if (rest === '') return { x, digits };
  const [, first, second] = /^([^\d]+)(\d.*)$/.exec(rest) ?? [];
  if (first && second && /length|angle|mass|time/.test(quantity)) {
    const unit = unitNamed(first, quantity);
    const tail = amount(second, quantity);
    const small = tail.unit ?? (unit === 'ft' ? 'in' : unit);
    if (toSi(1, quantity, small) < toSi(1, quantity, unit)) {
      const large = fromSi(toSi(x, quantity, unit), quantity, small);
      return { x: large + (sign === '-' ? -tail.x : tail.x), digits: '', unit: small };
    }
  }
  return { x, digits, unit: unitNamed(rest, quantity) };
}

/** "25:1", "1:25" and "1 in 7"; tooth counts "35/9 x 28/15" of a ratio. */
function pairs(text: string, quantity: Quantity): Amount | undefined {
  if (!/mixture|slope|ratio/.test(quantity)) return undefined;
  let x = 1;
  for (const factor of text.split(/\s*[x×*]\s*/)) {
    const [, left, right] = /^([\d.,]+)\s*(?:\/|:|in)\s*([\d.,]+)$/.exec(factor) ?? [];
    if (!left || !right) return undefined;
    const [a, b] = [number(left), number(right)];
    x *= quantity === 'mixture' ? Math.max(a, b) / Math.min(a, b) : quantity === 'slope' ? b / a : a / b;
  }
  return { x, digits: '', unit: quantity === 'slope' ? '1 in' : ':1' };
}

/** A figure's two sides of "±", the second as an amount; `share` where that is per cent of the first. */
function sides(text: string, quantity: Quantity, fallback: UnitId) {
  const clean = text
    .replace(/[¼-¾⅐-⅞]/g, (c) => ` ${c.normalize('NFKC').replace('⁄', '/')}`)
    .replace(/\s/g, ' ')
    .replace(/[−–]/g, '-')
    .replace(/′′|''|[″”“]/g, '"')
    .replace(/[′’]/g, "'")
    .replace(/\+ *\/? *-/g, '±')
    .trim();
  const [main = '', half, more] = clean.split(/ *± */);
  if (more !== undefined || half === '') throw '';
  const share = half?.endsWith('%') && !main.endsWith('%') && fallback !== '%';
  const pm = half && (share ? amount(half.slice(0, -1).trim(), 'count') : amount(half, quantity));
  return { main, pm, share };
}

/** A figure's text as its boxes hold it: "58 mm ± 0.05 mm" is 58, 0.05, mm. */
export interface Parts {
  number: string;
  pm: string;
  /** Chosen in the box of units. */
  unit: UnitId | undefined;
}

/**
 * Parts a text over its boxes. What does not part cleanly (a unit that is not offered, two units) stays whole in the first
 * box, where the reading of figures understands it or says what is wrong. `chosen` is the unit of a text without one.
 */
export function partsOfText(
  { quantity, units }: { quantity: Quantity; units: readonly UnitId[] },
  text: string,
  chosen = units[0],
): Parts {
  try {
    const { main, pm, share } = sides(text, quantity, units[0] ?? 'n');
    const { digits, unit: own } = amount(main, quantity);
    const half = pm ? pm.digits : '';
    const unit = own ?? (pm && !share ? pm.unit : undefined) ?? chosen;
    const alike = !pm || share || (half !== '' && (pm.unit ?? unit) === unit);
    if (digits && alike && unit && units.includes(unit))
      return { number: digits, pm: share ? `${half} %` : half, unit };
  } catch (message) {
    if (typeof message !== 'string') throw message;
  }
  return { number: text.trim(), pm: '', unit: chosen };
}

/**
 * Reads a figure as a person types it: digits with point or comma, fractions, a unit or none, ± behind it.
 * "0.157 in", "0,157 in", "3/8 in", "1 3/8″", "5 ft 3 in", "3.4 ± 0.05 mm", "120 kg ± 5 %", "25:1", "1 in 7", "35/9".
 * What has two readings (1,234 in; a gallon) is refused in plain words, never guessed.
 * @param fallback unit of a figure without one
 * @throws {string} the plain words
 */
export function figureOf(
  text: string,
  quantity: Quantity,
  fallback: UnitId,
): { figure: Figure; unit: UnitId } {
  try {
    const { main, pm, share } = sides(text, quantity, fallback);
    const { x, unit: own } = pairs(main, quantity) ?? amount(main, quantity);
    const unit = own ?? (pm && !share ? pm.unit : undefined) ?? fallback;
    const si = toSi(x, quantity, unit);
    if (!Number.isFinite(si) || !Number.isFinite(x)) throw '';
    if (!pm) return { figure: { si }, unit };
    if (pm.x < 0) throw firstFilled(READING.signed, {});
    const pmUnit = (!share && pm.unit) || unit;
    const at = fromSi(si, quantity, pmUnit);
    const half = share
      ? (Math.abs(si) * pm.x) / 100
      : Math.abs(toSi(at + pm.x, quantity, pmUnit) - toSi(at - pm.x, quantity, pmUnit)) / 2;
    if (!Number.isFinite(half)) throw firstFilled(READING.vague, {});
    return { figure: { si, pm: half }, unit };
  } catch (message) {
    if (message !== '') throw message;
    const sample = fallback === ':1' ? '25:1' : `12.5 ${unitSymbol(fallback)}`.trim();
    throw firstFilled(READING.figure, { text: text.trim(), sample });
  }
}

/**
 * The same, with what is wrong as an answer.
 * @example
 * parseFigure('3/8 in', 'length', 'mm').figure.si // => 0.009525 m
 */
export function parseFigure(text: string, quantity: Quantity, fallback: UnitId): Reading {
  try {
    return { ok: true, ...figureOf(text, quantity, fallback) };
  } catch (message) {
    if (typeof message === 'string') return { ok: false, message };
    throw message;
  }
}
