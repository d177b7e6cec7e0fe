import type { Field, Figure, FormFacts, InputError, TableField, Value, Values } from './contract.ts';
import { firstFilled } from './holes.ts';
import { figureOf } from './parse-figure.ts';
import { printFigure } from './print-figure.ts';
import { READING } from './reading-messages.ts';
import { fromSi, type Quantity, toSi, type UnitId } from './units.ts';

export type Texts = Readonly<Record<string, string>>;
export type From = 'given' | 'machine' | 'start';

export interface Filled {
  /** What each field shows. */
  texts: Record<string, string>;
  /** Where it came from; absent for empty fields. */
  from: Record<string, From>;
}

export interface Read extends Filled {
  values: Record<string, Value>;
  errors: InputError[];
}

/**
 * What each field shows: the text given (an empty one stays empty), else the machine's, else the start value.
 * A field given without the choice that shows it makes that choice (`travel="4 mm"` says that the travel is known).
 * @param machine texts by the path that fields name ("engine.stroke" → "58 mm ± 0.05 mm")
 */
export function fillTexts(
  form: Pick<FormFacts, 'fields'>,
  given: Texts,
  machine: Texts = {},
  starts = true,
): Filled {
  const chosen: Record<string, string> = {};
  for (const { name, when } of form.fields) {
    const only = when?.is[0];
    if (when && only && given[name] && given[when.field] === undefined) chosen[when.field] = only;
  }
  const filled: Filled = { texts: {}, from: {} };
  for (const field of form.fields) {
    const options: [From, string | undefined][] = [
      ['given', given[field.name] ?? chosen[field.name]],
      ['machine', field.machine === undefined ? undefined : machine[field.machine]],
      ['start', starts ? field.start : undefined],
    ];
    const [from, text] = options.find(([, t]) => t !== undefined) ?? ['start', undefined];
    filled.texts[field.name] = text ?? (field.kind === 'choice' ? field.start : '');
    if (text) filled.from[field.name] = from;
  }
  return filled;
}

/** Whether the present choices leave a field standing; the others are neither shown nor read. */
export const stands = ({ when }: Field, texts: Texts): boolean =>
  !when || when.is.includes(texts[when.field] ?? '');

/**
 * Turns the texts of a form, of MDX attributes or of an address into SI values, with every error in plain words.
 * Fields hidden by a choice are not read.
 */
export function readValues(
  form: Pick<FormFacts, 'fields'>,
  given: Texts,
  machine: Texts = {},
  starts = true,
): Read {
  const filled = fillTexts(form, given, machine, starts);
  return { ...filled, ...readFilled(form, filled.texts) };
}

/** The same from texts that are all there, choices among them: a form's own. */
export function readFilled(
  { fields }: Pick<FormFacts, 'fields'>,
  texts: Texts,
): Pick<Read, 'values' | 'errors'> {
  const values: Record<string, Value> = {};
  const errors: InputError[] = [];
  for (const field of fields) {
    const text = (texts[field.name] ?? '').trim();
    if (!stands(field, texts) || (text === '' && field.optional)) continue;
    try {
      values[field.name] = readField(field, text);
    } catch (message) {
      if (typeof message !== 'string') throw message;
      errors.push({ field: field.name, message });
    }
  }
  return { values, errors };
}

/** Throws what is wrong, in plain words. */
function readField(field: Field, text: string): Value {
  if (text === '') throw firstFilled(READING.needed, { start: field.start });
  if (field.kind === 'figure') return readFigure(field, text);
  if (field.kind === 'table') return readTable(field, text);
  if (field.kind === 'text') {
    if (text.length > 60) throw firstFilled(READING.long, {});
    return text;
  }
  const { options } = field;
  const option = options.find((o) => o.value === text || o.label === text);
  if (option) return option.value;
  throw firstFilled(READING.choose, { options: options.map((o) => o.value).join(' or ') });
}

interface Limits {
  quantity: Quantity;
  units: readonly UnitId[];
  min?: number;
  max?: number;
  whole?: boolean;
}

function readFigure({ quantity, units, min, max, whole }: Limits, text: string): Figure {
  const [first = 'n'] = units;
  const { figure, unit } = figureOf(text, quantity, first);
  const x = fromSi(figure.si, quantity, unit);
  // A bound typed in its own unit may differ from it in the last bit.
  const slack = Math.abs(figure.si) * 1e-9;
  const inside = (si: number) => si >= (min ?? -Infinity) - slack && si <= (max ?? Infinity) + slack;
  const print = (si: number | undefined, u: UnitId) =>
    si === undefined
      ? undefined
      : printFigure({ si }, quantity, u, 6)
          // 10.500 is 10.5, and 10.000 is 10.
          .replace(/\.0*(?=\D|$)|(?<=\.\d*)0+(?=\D|$)/, '');
  if (!inside(figure.si)) {
    const slip = units.find((u) => u !== unit && inside(toSi(x, quantity, u)));
    throw firstFilled(READING.range, {
      typed: print(figure.si, unit),
      likely: slip && print(toSi(x, quantity, slip), slip),
      low: print(min, first),
      high: print(max, first),
    });
  }
  if (whole && Math.abs(x - Math.round(x)) > 1e-9)
    throw firstFilled(READING.whole, { below: Math.floor(x), above: Math.ceil(x) });
  return figure;
}

const CELL = /[+-]?[.,]?\d[\d.,/:]*(?:\s*(?:±|\+\/-)\s*[\d.,]+)?[^\d|;±+-]*/g;

function readTable({ columns, maxRows, start }: TableField, text: string): readonly (readonly Figure[])[] {
  const lines = text.split(/[;\n]/).filter((line) => line.trim() !== '');
  const cells = lines.map((line) => line.match(CELL)?.map((c) => c.replace(/[\s|,]+$/, '')) ?? []);
  const rows = columns.length === 1 ? cells.flat().map((c) => [c]) : cells;
  if (!rows.length) throw firstFilled(READING.empty, {});
  if (rows.length > maxRows) throw firstFilled(READING.rows, { most: maxRows, rows: rows.length });
  return rows.map((cellsOf, i) => {
    const row = i + 1;
    if (cellsOf.length !== columns.length) {
      const names = columns.map((c) => c.label.toLowerCase()).join(' and ');
      throw firstFilled(READING.columns, { row, names, start: start?.split(/[;\n]/)[0] ?? '1000 12' });
    }
    return columns.map((column, j) => {
      try {
        return readFigure(column, cellsOf[j] ?? '');
      } catch (wrong) {
        throw typeof wrong === 'string' ? firstFilled(READING.row, { row, wrong }) : wrong;
      }
    });
  });
}

/** Values as texts that `readValues` reads back to the last digit: for an address, or a set-up kept on the device. */
export function writeTexts(form: Pick<FormFacts, 'fields'>, values: Values): Record<string, string> {
  const texts: Record<string, string> = {};
  for (const field of form.fields) {
    const value = values[field.name];
    if (value === undefined) continue;
    if (typeof value === 'string') texts[field.name] = value;
    else if (field.kind === 'figure')
      texts[field.name] = write(value as Figure, field.quantity, field.units[0]);
    else if (field.kind === 'table')
      texts[field.name] = (value as readonly (readonly Figure[])[])
        .map((row) =>
          row.map((f, j) => write(f, field.columns[j]?.quantity, field.columns[j]?.units[0])).join(' '),
        )
        .join('; ');
  }
  return texts;
}

function write(figure: Figure, quantity: Quantity | undefined, unit: UnitId | undefined): string {
  if (!quantity || !unit) return '';
  const plain = (x: number) => {
    const digits = Math.abs(x) < 1e-6 ? x.toFixed(15) : x.toPrecision(12);
    return digits.replace(/(\.\d*?)0+$/, '$1').replace(/\.$/, '');
  };
  const x = fromSi(figure.si, quantity, unit);
  const pm = figure.pm ? ` ± ${plain(Math.abs(fromSi(figure.si + figure.pm, quantity, unit) - x))}` : '';
  const tail = unit === 'n' || unit === '1' || unit === '1 in' ? '' : unit === ':1' ? unit : ` ${unit}`;
  return unit === '1 in' ? `1 in ${plain(x)}` : pm ? `${plain(x)}${pm}${tail}` : plain(x) + tail;
}

/** Fields without their words, small enough to travel in the page: what `readValues` needs. */
export const bareFields = (fields: readonly Field[]): Field[] =>
  fields.map((field) => {
    const { help: _help, group: _group, ...rest } = field;
    return rest as Field;
  });
