import { checkMoney } from '../money/checks.ts';
import type { DecimalMark } from '../money/decimal.ts';
import { readAmount } from '../money/money.ts';
import { contradictingRates, rateTable } from '../money/rates.ts';
import { rowMoney } from '../money/row-money.ts';
import { given, type Row } from '../read/field.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import type { LEDGER, ORDERS, PARTS, RATES } from '../tables.ts';
import { shown } from '../text/words.ts';
import type { LedgerLine, Order, Part, RateRow } from '../types.ts';
import type { References } from './references.ts';

export interface MoneyTables {
  orders: readonly Row<typeof ORDERS>[];
  ledger: readonly Row<typeof LEDGER>[];
  parts: readonly Row<typeof PARTS>[];
  rates: readonly Row<typeof RATES>[];
}

export interface MoneySettings {
  home: string;
  /** How many days old a rate may be. */
  maxDays: number;
  mark: DecimalMark | undefined;
}

export interface MoneyRecord {
  orders: Order[];
  ledger: LedgerLine[];
  parts: Part[];
  rates: RateRow[];
}

/** Joins ledger, orders, parts and rates; every row's amount is turned into home money at its day's rate. */
export function joinMoney(
  tables: MoneyTables,
  settings: MoneySettings,
  refer: References,
  report: Report,
): MoneyRecord {
  const rates = tables.rates.map(({ date, base, quote, rate, source, place }) => ({
    date,
    base,
    quote,
    rate,
    source,
    place,
  }));
  const rateBook = rateTable(rates);
  for (const [one, other] of contradictingRates(rateBook)) {
    const place = tables.rates
      .find((row) => row.date === other.date && row.base === other.base && row.rate === other.rate)
      ?.at('rate');
    if (place)
      report.add(
        'rates/contradiction',
        place,
        `For ${other.date} there is ${one.rate} and ${other.rate} ${other.quote} for 1 ${other.base}. Remove one.`,
      );
  }
  const orders = new Map<string, Order>();
  for (const row of tables.orders) {
    if (twice(orders, row.order, row, 'orders', 'order', report)) continue;
    orders.set(row.order, {
      ...given({ id: row.order, date: row.date, supplier: row.supplier, note: row.note }),
      freightBy: row.freight_by ?? 'value',
      dutyBy: row.duty_by ?? 'customs value',
      feeBy: row.fee_by ?? 'even',
      lines: [],
      place: row.place,
    });
  }
  const parts = new Map<string, Part>();
  for (const row of tables.parts) {
    if (twice(parts, row.part, row, 'parts', 'part', report)) continue;
    if (row.fitted_in !== undefined)
      refer.rowChapter('parts', 'fitted_in', row.fitted_in, row.at('fitted_in'));
    const estimate = row.estimate === undefined ? undefined : readEstimate(row, settings, report);
    parts.set(row.part, {
      ...given({ id: row.part, name: row.name, system: row.system, makerNumber: row.maker_number }),
      ...given({ fittedIn: row.fitted_in, estimate, note: row.note, neededFor: row.needed_for }),
      qty: row.qty ?? 1,
      status: row.status,
      origin: row.origin ?? 'bought',
      lines: [],
      place: row.place,
    });
  }
  const ledger: LedgerLine[] = [];
  for (const row of tables.ledger) {
    const line = readLine(row, rateBook, settings, report);
    if (row.chapter !== undefined) refer.rowChapter('ledger', 'chapter', row.chapter, row.at('chapter'));
    const order = row.order === undefined ? undefined : orders.get(row.order);
    const part = row.part === undefined ? undefined : parts.get(row.part);
    if (row.order !== undefined)
      refer.has(row.order, orders, 'order', fieldRule('ledger', 'order'), row.at('order'));
    if (row.part !== undefined)
      refer.has(row.part, parts, 'part', fieldRule('ledger', 'part'), row.at('part'));
    if (!line) continue;
    ledger.push(line);
    order?.lines.push(line);
    part?.lines.push(line);
    if (order && line.supplier === undefined) line.supplier = order.supplier;
  }
  checkMoney(ledger, [...orders.values()], ({ rule, line, message }) =>
    report.add(rule, line.place, message),
  );
  return { orders: [...orders.values()], ledger, parts: [...parts.values()], rates };
}

/** Tells a second row of the same id. */
export function twice(
  known: ReadonlyMap<string, { place: { line: number } }>,
  id: string,
  row: { at(column: never): import('../problem.ts').Place },
  area: string,
  column: string,
  report: Report,
): boolean {
  const before = known.get(id);
  if (!before) return false;
  report.add(
    fieldRule(area, column),
    row.at(column as never),
    `${shown(id)} already stands in line ${before.place.line}. Give each its own name.`,
  );
  return true;
}

type RateBook = ReturnType<typeof rateTable>;

function readLine(
  row: Row<typeof LEDGER>,
  rates: RateBook,
  { home, maxDays }: MoneySettings,
  report: Report,
): LedgerLine | undefined {
  const cells = { date: row.date, kind: row.kind, amount: row.amount.text, currency: row.currency ?? home };
  const written = row.rate === undefined ? cells : { ...cells, rate: row.rate };
  const said = rowMoney(
    written,
    { home, rates, maxDays, mark: row.amount.mark },
    ({ column, severity, message }) => {
      const rule = severity === 'warning' ? 'ledger/rate-doubtful' : fieldRule('ledger', column);
      report.add(rule, row.at(column === 'rate' && row.rate === undefined ? 'currency' : column), message);
    },
  );
  if (row.qty !== undefined && Number(row.qty) === 0 && row.kind !== 'refund')
    report.add(
      fieldRule('ledger', 'qty'),
      row.at('qty'),
      `${shown(row.qty)} is too few. Write how many; only a refund may have 0, where nothing was sent back.`,
    );
  if (!said) return undefined;
  return {
    ...given({ date: row.date, kind: row.kind, item: row.item, part: row.part, order: row.order }),
    qty: Number(row.qty ?? '1'),
    ...said,
    ...given({
      supplier: row.supplier,
      weight_kg: row.weight === undefined ? undefined : Number(row.weight),
      chapter: row.chapter,
      privateNote: row.private_note,
    }),
    place: row.place,
  };
}

/** "40", "40-60", "40 to 60": the least and the most that it will cost. */
function readEstimate(
  row: Row<typeof PARTS>,
  { home, mark }: MoneySettings,
  report: Report,
): Part['estimate'] | undefined {
  const written = row.estimate ?? '';
  const [low = '', high = low, ...more] = written.split(/\s*(?:[-–—]|\bto\b)\s*/);
  const currency = row.currency ?? home;
  const no = (message: string) => report.add(fieldRule('parts', 'estimate'), row.at('estimate'), message);
  if (more.length > 0 || low === '')
    return no(`${shown(written)} is no estimate. Write one amount, or a range such as 40-60.`);
  const from = readAmount(low, currency, mark);
  if (!from.ok) return no(from.message);
  const to = readAmount(high, currency, mark);
  if (!to.ok) return no(to.message);
  if (to.value.minor < from.value.minor)
    return no(`${shown(written)} ends below its start. Write the lower amount first.`);
  return { low: from.value, high: to.value };
}
