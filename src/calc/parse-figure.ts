import type { Figure } from './contract.ts';
import { fromSi, type Quantity, toSi, UNITS, type UnitId, unitSymbol, unitsOf } from './units.ts';

export type Reading = { ok: true; figure: Figure; unit: UnitId } | { ok: false; message: string };

/** Spellings that differ from the ids by more than case, dots, spaces, plural and a raised figure. */
const SPELLINGS: Readonly<Record<string, string>> = {
  '"': 'in',
  inch: 'in',
  inche: 'in',
  "'": 'ft',
  foot: 'ft',
  feet: 'ft',
  metre: 'm',
  meter: 'm',
  millimetre: 'mm',
  millimeter: 'mm',
  mile: 'mi',
  l: 'l',
  litre: 'l',
  liter: 'l',
  cc: 'cm3',
  ccm: 'cm3',
  '°': 'deg',
  degree: 'deg',
  o: 'deg',
  rev: 'turn',
  sec: 's',
  second: 's',
  minute: 'min',
  hour: 'h',
  kmh: 'km/h',
  kph: 'km/h',
  'mi/h': 'mph',
  'rev/min': 'rpm',
  'r/min': 'rpm',
  lbf·ft: 'lbfft',
  lbft: 'lbfft',
  ftlb: 'lbfft',
  ftlbf: 'lbfft',
  lbin: 'lbfin',
  inlb: 'lbfin',
  kgm: 'kgfm',
  bhp: 'hp',
  ch: 'ps',
  cv: 'ps',
  '°c': 'degc',
  c: 'degc',
  '°f': 'degf',
  f: 'degf',
  percent: '%',
  ':1': ':1',
  to1: ':1',
  mpgus: 'usmpg',
  mpgimp: 'impmpg',
};

const AMBIGUOUS: Readonly<Record<string, string>> = {
  gal: 'gallon',
  qt: 'quart',
  pt: 'pint',
  floz: 'fluid ounce',
  oz: 'fluid ounce',
};

const squash = (text: string) =>
  text
    .toLowerCase()
    .replace(/gallons?/, 'gal')
    .replace(/pints?/, 'pt')
    .replace(/quarts?/, 'qt')
    .replace(/fluid ounces?/, 'floz')
    .replace(/imperial|british|\buk\b/, 'imp')
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/[\s.·*^()]|per(?=\s)/g, '')
    .replace(/^(.+?)(us|imp)$/, '$2$1');

type Found = UnitId | { message: string } | undefined;

function findUnit(text: string, quantity: Quantity): Found {
  const plain = squash(text);
  const spellings = [plain, plain.replace(/s$/, '')];
  for (const one of spellings) {
    const wanted = quantity === 'angle' && one === "'" ? 'arcmin' : (SPELLINGS[one] ?? one);
    const unit = unitsOf(quantity).find((id) => squash(id) === wanted);
    if (unit) return unit;
  }
  const word = quantity === 'volume' ? AMBIGUOUS[spellings[1] ?? ''] : undefined;
  if (word) {
    const id = plain === 'oz' || plain === 'floz' ? 'fl oz' : plain.replace(/s$/, '');
    const size = (land: string) => {
      const mL = fromSi(toSi(1, 'volume', `${land} ${id}` as UnitId), 'volume', 'mL');
      return mL < 1000 ? `${mL.toFixed(1)} mL` : `${(mL / 1000).toFixed(2)} L`;
    };
    return {
      message: `A ${word} is ${size('US')} in the United States and ${size('imp')} in Britain. Write US ${id} or imp ${id}.`,
    };
  }
  if (plain.endsWith('mpg') && quantity === 'use')
    return { message: 'Miles a gallon differ by 20 % between the two gallons. Write US mpg or imp mpg.' };
  for (const other of Object.keys(UNITS) as Quantity[]) {
    if (unitsOf(other).some((id) => squash(id) === (SPELLINGS[plain] ?? plain)))
      return {
        message: `“${text.trim()}” is a unit of ${other}; a ${quantity} is wanted here, ${list(quantity)}.`,
      };
  }
  return undefined;
}

function list(quantity: Quantity): string {
  const units = unitsOf(quantity).filter((u) => u !== 'n' && u !== '1');
  return units.length ? `in ${units.slice(0, 4).join(', ')}` : 'without a unit';
}

/** One number in digits; a message where comma and point leave two readings. */
function number(text: string): number | string {
  const mixed = /^(?:(\d+)[ -]+)?(\d+)\/(\d+)$/.exec(text);
  if (mixed) return Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]);
  const t = text.replace(/ /g, '').replace(/[.,]$/, '');
  if (/^[1-9]\d{0,2},\d{3}$/.test(t))
    return `“${t}” may be ${t.replace(',', '.')} or ${t.replace(',', '')}. Write one of these.`;
  if (/^\d*[.,]?\d+$/.test(t)) return Number(t.replace(',', '.'));
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(t)) return Number(t.replace(/,/g, ''));
  if (/^\d{1,3}(\.\d{3})+(,\d+)?$/.test(t)) return Number(t.replace(/\./g, '').replace(',', '.'));
  return Number.NaN;
}

const NUMBER = /^([+-]?) *(\d+[ -]+\d+\/\d+|\d+\/\d+|\d{1,3}(?: \d{3})+(?!\d)(?:[.,]\d+)?|[\d.,]+)\s*/;

interface Part {
  x: number;
  unit: UnitId | undefined;
}

/** A number and its unit, or several in a row (5 ft 3 in). Throws the message as text. */
function part(text: string, quantity: Quantity): Part {
  const head = NUMBER.exec(text);
  const x = head ? number(head[2] ?? '') : Number.NaN;
  if (typeof x === 'string') throw x;
  if (!head || !Number.isFinite(x)) throw '';
  const sign = head[1] === '-' ? -1 : 1;
  const rest = text.slice(head[0].length);
  if (rest === '') return { x: sign * x, unit: undefined };
  const unit = findUnit(rest, quantity);
  if (typeof unit === 'string') return { x: sign * x, unit };
  const split = /^([^\d]+)(\d.*)$/.exec(rest);
  const first = split ? findUnit(split[1] ?? '', quantity) : undefined;
  if (split && typeof first === 'string' && ['length', 'angle', 'mass', 'time'].includes(quantity)) {
    const tail = part(split[2] ?? '', quantity);
    const tailUnit = tail.unit ?? (first === 'ft' ? 'in' : first);
    if (toSi(1, quantity, tailUnit) < toSi(1, quantity, first)) {
      const sum = toSi(x, quantity, first) + toSi(tail.x, quantity, tailUnit);
      return { x: sign * fromSi(sum, quantity, tailUnit), unit: tailUnit };
    }
  }
  throw (
    unit?.message ?? `“${rest.trim()}” is not a unit that is known here. Write the figure ${list(quantity)}.`
  );
}

/** "25:1", "1:25" and "1 in 7"; tooth counts "35/9 x 28/15" of a ratio. */
function pairs(text: string, quantity: Quantity): Part | undefined {
  if (quantity !== 'mixture' && quantity !== 'slope' && quantity !== 'ratio') return undefined;
  const factors = text.split(/\s*[x×*]\s*/).map((f) => /^([\d.,]+)\s*(?:\/|:|in)\s*([\d.,]+)$/.exec(f));
  if (factors.length > 1 && quantity !== 'ratio') return undefined;
  let x = 1;
  for (const f of factors) {
    if (!f) return undefined;
    const [a, b] = [number(f[1] ?? ''), number(f[2] ?? '')];
    if (typeof a === 'string' || typeof b === 'string') throw typeof a === 'string' ? a : b;
    x *= quantity === 'mixture' ? Math.max(a, b) / Math.min(a, b) : quantity === 'slope' ? b / a : a / b;
  }
  return { x, unit: quantity === 'slope' ? '1 in' : ':1' };
}

/**
 * Reads a figure as a person types it: digits with point or comma, fractions, a unit or none, ± behind it.
 * "0.157 in", "0,157 in", "3/8 in", "1 3/8″", "5 ft 3 in", "3.4 ± 0.05 mm", "120 kg ± 5 %", "25:1", "1 in 7", "35/9".
 * What has two readings (1,234 in; a gallon) is refused in plain words, never guessed.
 * @param fallback unit of a figure without one
 * @example
 * parseFigure('3/8 in', 'length', 'mm').figure.si // => 0.009525 m
 */
export function parseFigure(text: string, quantity: Quantity, fallback: UnitId): Reading {
  const clean = text
    .replace(/[¼-¾⅐-⅞]/g, (c) => ` ${c.normalize('NFKC').replace('⁄', '/')}`)
    .replace(/[\u00a0\u2000-\u200a\u202f\t\n]/g, ' ')
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/′′|''|[″”“]/g, '"')
    .replace(/[′’]/g, "'")
    .replace(/\+\s*\/?\s*-/g, '±')
    .trim();
  const [mainText = '', pmText, more] = clean.split(/\s*±\s*/);
  try {
    if (more !== undefined) throw '';
    const relative = pmText?.endsWith('%') && !/%$/.test(mainText) && fallback !== '%';
    const pm = pmText
      ? part(relative ? pmText.slice(0, -1).trim() : pmText, relative ? 'count' : quantity)
      : undefined;
    const main = pairs(mainText, quantity) ?? part(mainText, quantity);
    const unit = main.unit ?? (relative ? undefined : pm?.unit) ?? fallback;
    const si = toSi(main.x, quantity, unit);
    if (!Number.isFinite(si) || !Number.isFinite(main.x)) throw '';
    if (!pm) return pmText === '' ? fail(text, fallback) : { ok: true, figure: { si }, unit };
    if (pm.x < 0) throw 'Write a ± without a sign of its own.';
    const pmUnit = pm.unit ?? unit;
    const at = fromSi(si, quantity, pmUnit);
    const half = relative
      ? (Math.abs(si) * pm.x) / 100
      : Math.abs(toSi(at + pm.x, quantity, pmUnit) - toSi(at - pm.x, quantity, pmUnit)) / 2;
    if (!Number.isFinite(half)) throw 'The ± is as large as the figure itself.';
    return { ok: true, figure: { si, pm: half }, unit };
  } catch (message) {
    if (typeof message !== 'string') throw message;
    return message ? { ok: false, message } : fail(text, fallback);
  }
}

function fail(text: string, unit: UnitId): Reading {
  const sample = unit === ':1' ? '25:1' : unit === '1 in' ? '1 in 7' : `12.5 ${unitSymbol(unit)}`.trim();
  return {
    ok: false,
    message: `“${text.trim()}” is not a figure. Write digits and one decimal mark, such as ${sample}.`,
  };
}
