import { fromSi, toSi, type UnitId, unitSymbol } from '../../calc/units.ts';
import type { Quantity, QuantityText } from '../types.ts';
import { converted, counterpart, type Rounding } from './counterpart.ts';
import { type NamedUnit, unitNamed } from './unit-named.ts';

const NBSP = '\u00a0';

/** A quantity to print: one figure, a limit, or a range whose ends are both limits. */
export type Printable =
  | { kind: 'figure'; quantity: Quantity }
  | { kind: 'at least' | 'at most'; quantity: Quantity }
  | { kind: 'range'; low: string; high: string; unit: string };

/** Digits as a language writes them: its decimal mark, a true minus. */
export function inLanguage(figure: string, language: string): string {
  return figure.replace('.', decimalMark(language)).replace(/^-/, '−');
}

const marks = new Map<string, string>();

function decimalMark(language: string): string {
  const known = marks.get(language);
  if (known !== undefined) return known;
  const parts = new Intl.NumberFormat(language).formatToParts(1.5);
  const mark = parts.find((part) => part.type === 'decimal')?.value ?? '.';
  marks.set(language, mark);
  return mark;
}

/** Figure and unit with a no-break space; signs such as ° stand close. */
export function withSymbol(figure: string, symbol: string): string {
  if (symbol === '') return figure;
  return /^[°′″]$|^:/.test(symbol) ? figure + symbol : `${figure}${NBSP}${symbol}`;
}

/** The author's figure first, digit for digit, and the other system's beside it where the trade has one. */
export function printQuantity(printable: Printable, language: string): QuantityText {
  const unitText = printable.kind === 'range' ? printable.unit : printable.quantity.unit;
  const unit = unitNamed(unitText);
  const text = print(printable, (figure) => inLanguage(figure, language), unit?.symbol ?? unitText);
  const to = unit && counterpart(unit, language);
  if (!unit || !to) return { text };
  return { text, also: printAlso(printable, unit, to, language) };
}

function print(printable: Printable, digits: (figure: string) => string, symbol: string): string {
  if (printable.kind === 'range')
    return withSymbol(`${digits(printable.low)} to ${digits(printable.high)}`.replaceAll(' ', NBSP), symbol);
  const { text, pm } = printable.quantity;
  const figure = pm === undefined ? digits(text) : `${digits(text)}${NBSP}±${NBSP}${digits(pm)}`;
  const said = withSymbol(figure, symbol);
  return printable.kind === 'figure' ? said : `${printable.kind} ${said}`;
}

function printAlso(printable: Printable, unit: NamedUnit, to: UnitId, language: string): string {
  const turned = (text: string, rounding: Rounding) =>
    converted(text, unit, to, falls(unit, to) ? opposite(rounding) : rounding);
  const digits = (figure: string) => inLanguage(figure, language);
  const symbol = unitSymbol(to);
  if (printable.kind === 'range') {
    const ends = [turned(printable.low, 'up'), turned(printable.high, 'down')].sort(
      (a, b) => Number(a) - Number(b),
    );
    return print({ kind: 'range', low: ends[0] ?? '', high: ends[1] ?? '', unit: to }, digits, symbol);
  }
  const { pm } = printable.quantity;
  const text = pm === undefined ? printable.quantity.text : asFineAs(printable.quantity.text, pm);
  const rounding = printable.kind === 'at least' ? 'up' : printable.kind === 'at most' ? 'down' : 'nearest';
  const kind = falls(unit, to) && printable.kind !== 'figure' ? swapped(printable.kind) : printable.kind;
  const quantity = { text: turned(text, rounding), unit: to };
  const doubt = pm === undefined ? undefined : doubtIn(text, pm, unit, to);
  return print(
    { kind, quantity: doubt === undefined ? quantity : { ...quantity, pm: doubt } },
    digits,
    symbol,
  );
}

/** Units that shrink as the other grows: litres for a distance and miles for a gallon. */
function falls(unit: NamedUnit, to: UnitId): boolean {
  return unit.quantity === 'use' && /mpg|km\/L/.test(unit.unit) !== /mpg|km\/L/.test(to);
}

const opposite = (rounding: Rounding): Rounding =>
  rounding === 'up' ? 'down' : rounding === 'down' ? 'up' : 'nearest';
const swapped = (kind: 'at least' | 'at most'): 'at least' | 'at most' =>
  kind === 'at least' ? 'at most' : 'at least';

/** The figure with as many decimals as its ±: 160 ± 0.1 is known to a tenth. */
function asFineAs(text: string, pm: string): string {
  const decimals = (figure: string) => figure.split('.')[1]?.length ?? 0;
  const missing = decimals(pm) - decimals(text);
  return missing <= 0 ? text : `${text}${text.includes('.') ? '' : '.'}${'0'.repeat(missing)}`;
}

/** A ± in the other unit with the decimals of its figure there, rounded up: a doubt is never made smaller. */
function doubtIn(text: string, pm: string, unit: NamedUnit, to: UnitId): string {
  const convert = (x: number) => fromSi(toSi(x, unit.quantity, unit.unit), unit.quantity, to);
  const [value, half] = [Number(text), Number(pm)];
  const doubt = Math.abs(convert(value + half) - convert(value - half)) / 2;
  const decimals = converted(text, unit, to, 'nearest').split('.')[1]?.length ?? 0;
  return (Math.ceil(doubt * 10 ** decimals - 1e-6) / 10 ** decimals).toFixed(decimals);
}
