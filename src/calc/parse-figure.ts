import type { Figure } from './contract.ts';
import { fromSi, type Quantity, SPELLINGS, toSi, type UnitId, unitSymbol, unitsOf } from './units.ts';

export type Reading = { ok: true; figure: Figure; unit: UnitId } | { ok: false; message: string };

/** "US gallons", "gal. US" and the id "US gal" come to the same: usgal. */
const squash = (text: string): string =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/imperial|british|\buk\b/, 'imp')
    .replace(/[\s.·*]/g, '')
    .replace(/^(.+)(us|imp)$/, '$2$1');

/** The unit that a text names; throws the message where it names none or two. */
function unitNamed(text: string, quantity: Quantity): UnitId {
  const units = unitsOf(quantity);
  const [, land = '', word = ''] = /^(us(?=\D)|imp|)(.*)$/.exec(squash(text)) ?? [];
  for (const one of [word, word.replace(/s$/, '')]) {
    // A prime is a foot of length and a minute of arc.
    const spelt = quantity === 'angle' && one === "'" ? 'arcmin' : (SPELLINGS[one] ?? one);
    const found = [one, spelt].flatMap((w) => units.find((id) => squash(id) === land + w) ?? [])[0];
    if (found) return found;
    const two = units.filter((id) => [`us${spelt}`, `imp${spelt}`].includes(squash(id)));
    if (two.length && !land)
      throw `“${text.trim()}” may be US or imperial, which differ by a fifth or less. Write ${two.join(' or ')}.`;
  }
  const some = units.filter((u) => unitSymbol(u)).slice(0, 4);
  throw `“${text.trim()}” is no unit of ${quantity}. Write the figure ${some.length ? `in ${some.join(', ')}` : 'without a unit'}.`;
}

/** One number in digits; throws where comma and point leave two readings. */
function number(text: string): number {
  const t = text.replace(/ /g, '').replace(/[.,]$/, '');
  if (/^[1-9]\d{0,2},\d{3}$/.test(t))
    throw `“${t}” may be ${t.replace(',', '.')} or ${t.replace(',', '')}. Write one of these.`;
  for (const [group, mark] of [',.', '.,']) {
    const [, whole = '', part = ''] =
      new RegExp(`^(\\d*|[1-9]\\d{0,2}(?:\\${group}\\d{3})+)(?:\\${mark}(\\d*))?$`).exec(t) ?? [];
    if (whole + part !== '') return Number(`${whole.split(group as string).join('') || 0}.${part || 0}`);
  }
  return Number.NaN;
}

const NUMBER = /^([+-]?) *(?:(?:(\d+)[ -]+)?(\d+)\/(\d+)|(\d{1,3}(?: \d{3})+(?!\d)(?:[.,]\d+)?|[\d.,]+))\s*/;

interface Part {
  x: number;
  unit: UnitId | undefined;
}

/** A number and its unit, or two in a row (5 ft 3 in). Throws the message as text. */
function part(text: string, quantity: Quantity): Part {
  const [all = '', sign, whole = 0, over, under, digits = ''] = NUMBER.exec(text) ?? [];
  const size = over ? Number(whole) + Number(over) / Number(under) : number(digits);
  const x = sign === '-' ? -size : size;
  if (!Number.isFinite(x)) throw '';
  const rest = text.slice(all.length);
  if (rest === '') return { x, unit: undefined };
  const [, first, second] = /^([^\d]+)(\d.*)$/.exec(rest) ?? [];
  if (first && second && /length|angle|mass|time/.test(quantity)) {
    const unit = unitNamed(first, quantity);
    const tail = part(second, quantity);
    const small = tail.unit ?? (unit === 'ft' ? 'in' : unit);
    if (toSi(1, quantity, small) < toSi(1, quantity, unit))
      return {
        x: fromSi(toSi(x, quantity, unit), quantity, small) + (sign === '-' ? -tail.x : tail.x),
        unit: small,
      };
  }
  return { x, unit: unitNamed(rest, quantity) };
}

/** "25:1", "1:25" and "1 in 7"; tooth counts "35/9 x 28/15" of a ratio. */
function pairs(text: string, quantity: Quantity): Part | undefined {
  if (!/mixture|slope|ratio/.test(quantity)) return undefined;
  let x = 1;
  for (const factor of text.split(/\s*[x×*]\s*/)) {
    const [, left, right] = /^([\d.,]+)\s*(?:\/|:|in)\s*([\d.,]+)$/.exec(factor) ?? [];
    if (!left || !right) return undefined;
    const [a, b] = [number(left), number(right)];
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
    .replace(/\s/g, ' ')
    .replace(/[−–]/g, '-')
    .replace(/′′|''|[″”“]/g, '"')
    .replace(/[′’]/g, "'")
    .replace(/\+\s*\/?\s*-/g, '±')
    .trim();
  const [mainText = '', pmText, more] = clean.split(/\s*±\s*/);
  try {
    if (more !== undefined || pmText === '') throw '';
    const share = pmText?.endsWith('%') && !mainText.endsWith('%') && fallback !== '%';
    const pm = pmText && (share ? part(pmText.slice(0, -1).trim(), 'count') : part(pmText, quantity));
    const main = pairs(mainText, quantity) ?? part(mainText, quantity);
    const unit = main.unit || (pm && !share && pm.unit) || fallback;
    const si = toSi(main.x, quantity, unit);
    if (!Number.isFinite(si) || !Number.isFinite(main.x)) throw '';
    if (!pm) return { ok: true, figure: { si }, unit };
    if (pm.x < 0) throw 'Write a ± without a sign of its own.';
    const pmUnit = (!share && pm.unit) || unit;
    const at = fromSi(si, quantity, pmUnit);
    const half = share
      ? (Math.abs(si) * pm.x) / 100
      : Math.abs(toSi(at + pm.x, quantity, pmUnit) - toSi(at - pm.x, quantity, pmUnit)) / 2;
    if (!Number.isFinite(half)) throw 'The ± is as large as the figure itself.';
    return { ok: true, figure: { si, pm: half }, unit };
  } catch (message) {
    if (typeof message !== 'string') throw message;
    const sample = fallback === ':1' ? '25:1' : `12.5 ${unitSymbol(fallback)}`.trim();
    return {
      ok: false,
      message:
        message || `“${text.trim()}” is not a figure. Write digits and one decimal mark, such as ${sample}.`,
    };
  }
}
