/**
 * Decimals as they are written, held exactly: 0.84828 is 84828 × 10⁻⁵. An author's file may use a decimal point or a
 * decimal comma; which one is stated in series.yaml or found here from the file's own figures.
 */
export type DecimalMark = '.' | ',';

/** A positive decimal. */
export interface Decimal {
  digits: bigint;
  /** Digits after the mark. */
  scale: number;
}

/** A value, or full sentences that say what is wrong and what to write. */
export type Read<T> = { ok: true; value: T } | { ok: false; message: string };

/** Spaces of all widths, and the apostrophe, group digits everywhere and mean nothing. */
const SPACE = "[ \\u00a0\\u2009\\u202f'’]";
const SPACES = new RegExp(SPACE, 'gu');
const GROUPED_BY_SPACE = new RegExp(`^\\d{1,3}(?:${SPACE}\\d{3})+(?=$|[.,])`, 'u');
const GROUPED_BY_MARK = /^\d{1,3}(?:[.,]\d{3})+$/;
const PLAIN = /^\d+$/;

/**
 * The mark that the figures of one file show without doubt: both marks in one figure, a mark that comes twice, or a mark
 * that cannot group thousands. 'mixed' if they contradict each other, nothing if none of them tells.
 */
export function findDecimalMark(texts: Iterable<string>): DecimalMark | 'mixed' | undefined {
  let found: DecimalMark | undefined;
  for (const text of texts) {
    const mark = markOf(text.trim());
    if (mark === undefined || mark === found) continue;
    if (found !== undefined) return 'mixed';
    found = mark;
  }
  return found;
}

function markOf(text: string): DecimalMark | undefined {
  const figures = text.replace(SPACES, '');
  if (!/^[\d.,]+$/.test(figures)) return undefined;
  const points = figures.split('.').length - 1;
  const commas = figures.split(',').length - 1;
  if (points > 0 && commas > 0) {
    const last: DecimalMark = figures.lastIndexOf('.') > figures.lastIndexOf(',') ? '.' : ',';
    return (last === '.' ? points : commas) === 1 ? last : undefined;
  }
  if (points + commas === 0) return undefined;
  const mark: DecimalMark = points > 0 ? '.' : ',';
  if (points + commas > 1) return GROUPED_BY_MARK.test(figures) ? other(mark) : undefined;
  return isDoubtful(figures) ? undefined : mark;
}

/** 1,234 may be a thousand times more or less; 0,234 and 1,23 may not. */
const isDoubtful = (figures: string): boolean => /^[1-9]\d{0,2}[.,]\d{3}$/.test(figures);
const other = (mark: DecimalMark): DecimalMark => (mark === '.' ? ',' : '.');

/**
 * A positive decimal from its text, with or without digit groups. With the mark unknown, a figure such as 1,234 is
 * refused with a question, as it could be a thousand times wrong.
 */
export function readDecimal(text: string, mark: DecimalMark | undefined, what = 'a number'): Read<Decimal> {
  const written = text.trim();
  const no = (why: string): Read<Decimal> => ({ ok: false, message: `"${text}" ${why}` });
  if (written === '') return { ok: false, message: `There is no figure here. Write ${what}, such as 12.50.` };
  if (/^[=@]/.test(written) || /^[+-].*[A-Za-z(*/]/.test(written))
    return no(`is a formula, not ${what}. Write the figure that it comes to.`);
  if (/^[-−–(]/.test(written)) return no('is negative. Write it without the sign.');
  if (mark === undefined && isDoubtful(written)) return no(question(written));
  const point = mark ?? markOf(written) ?? '.';
  const spaced = GROUPED_BY_SPACE.test(written) ? written.replace(SPACES, '') : written;
  const [whole = '', fraction, ...more] = spaced.split(point);
  const digits = GROUPED_BY_MARK.test(whole) ? whole.split(other(point)).join('') : whole;
  if (more.length > 0 || !PLAIN.test(digits) || (fraction !== undefined && !PLAIN.test(fraction))) {
    const name = point === '.' ? 'point' : 'comma';
    return no(`is not ${what}. Write digits and a decimal ${name}, such as 12${point}50.`);
  }
  return { ok: true, value: { digits: BigInt(digits + (fraction ?? '')), scale: fraction?.length ?? 0 } };
}

function question(written: string): string {
  const [whole = '', rest = ''] = written.split(/[.,]/);
  return `can be read as ${whole}${rest} or as ${whole} and ${rest} thousandths. Write it without a mark, or write "decimal: comma" or "decimal: point" in series.yaml.`;
}

/** Digits with a decimal point, as many as were written. */
export function decimalText({ digits, scale }: Decimal): string {
  const figures = String(digits).padStart(scale + 1, '0');
  return scale === 0 ? figures : `${figures.slice(0, -scale)}.${figures.slice(-scale)}`;
}

/** A decimal from a quantity or weight that was itself read from a short decimal: 0.35 is 35 × 10⁻². At most 6 places. */
export function decimalOf(value: number): Decimal {
  const read = readDecimal(value.toFixed(6).replace(/\.?0+$/, ''), '.');
  if (!read.ok) throw new RangeError(`value must be at least 0, got ${value}`);
  return read.value;
}

/** Digits after the mark that all of the decimals fit into. */
export const commonScale = (decimals: readonly Decimal[]): number =>
  decimals.reduce((most, one) => Math.max(most, one.scale), 0);

/** Whole numbers in the same proportion as the decimals: each × 10^commonScale. */
export function toWeights(decimals: readonly Decimal[]): bigint[] {
  const scale = commonScale(decimals);
  return decimals.map((one) => one.digits * 10n ** BigInt(scale - one.scale));
}

/** Whether two decimals are the same number: 1.20 and 1.2. */
export const sameDecimal = (a: Decimal, b: Decimal): boolean =>
  a.digits * 10n ** BigInt(b.scale) === b.digits * 10n ** BigInt(a.scale);
