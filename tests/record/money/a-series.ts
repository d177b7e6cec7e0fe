import { readAmount } from '../../../src/record/money/money.ts';
import { rateTable } from '../../../src/record/money/rates.ts';
import { type RowMoneyCells, rowMoney } from '../../../src/record/money/row-money.ts';
import type { LedgerLine, Order, Part, RateRow, Series } from '../../../src/record/types.ts';

const PLACE = { file: 'content/ledger.csv', line: 1, column: 1 };

export interface WrittenRow extends Omit<RowMoneyCells, 'currency'> {
  currency?: string;
  item?: string;
  part?: string;
  order?: string;
  supplier?: string;
  qty?: number;
  weight_kg?: number;
  chapter?: string;
}

export interface WrittenSeries {
  home?: string;
  budget?: string;
  asOf?: string;
  rates?: RateRow[];
  orders?: (Pick<Order, 'id'> & Partial<Order>)[];
  parts?: (Pick<Part, 'id'> & Partial<Part>)[];
  rows: WrittenRow[];
}

export const rate = (date: string, base: string, quote: string, figure: string): RateRow => ({
  date,
  base,
  quote,
  rate: figure,
  source: 'a bank',
  place: { ...PLACE, file: 'content/rates.csv' },
});

/** A joined series from the few cells that money needs; rows stand in the file in the order given. */
export function aSeries(written: WrittenSeries): Series {
  const home = written.home ?? 'EUR';
  const rates = written.rates ?? [];
  const rules = { home, rates: rateTable(rates), maxDays: 10, mark: '.' as const };
  const ledger = written.rows.map((row, index): LedgerLine => {
    const read = rowMoney({ ...row, currency: row.currency ?? home }, rules, ({ severity, message }) => {
      if (severity === 'error') throw new Error(message);
    });
    if (!read) throw new Error(`row ${index + 1} has no money`);
    return {
      date: row.date,
      kind: row.kind,
      item: row.item ?? row.part ?? row.kind,
      qty: row.qty ?? 1,
      ...(row.part !== undefined && { part: row.part }),
      ...(row.order !== undefined && { order: row.order }),
      ...(row.supplier !== undefined && { supplier: row.supplier }),
      ...(row.chapter !== undefined && { chapter: row.chapter }),
      ...(row.weight_kg !== undefined && { weight_kg: row.weight_kg }),
      ...read,
      place: { ...PLACE, line: index + 2 },
    };
  });
  const budget = written.budget === undefined ? undefined : readAmount(written.budget, home, '.');
  return {
    title: 'A rebuild',
    summary: '',
    byline: 'Wenna Straik',
    language: 'en-GB',
    homeCurrency: home,
    ...(budget?.ok && { budget: budget.value }),
    unitsFirst: 'metric',
    publishLedger: 'lines',
    asOf: written.asOf ?? '2026-09-19',
    machine: { name: 'Tarn 265 Carrier', sections: [], values: new Map() },
    chapters: [],
    orders: (written.orders ?? []).map((order) => ({
      date: '2026-03-02',
      supplier: 'Korbel & Sons',
      freightBy: 'value',
      dutyBy: 'value',
      feeBy: 'value',
      place: { ...PLACE, file: 'content/orders.csv' },
      ...order,
      lines: ledger.filter((line) => line.order === order.id),
    })),
    parts: (written.parts ?? []).map((part) => ({
      name: part.id,
      system: 'engine',
      qty: 1,
      status: 'fitted',
      origin: 'bought',
      place: { ...PLACE, file: 'content/parts.csv' },
      ...part,
      lines: ledger.filter((line) => line.part === part.id),
    })),
    ledger,
    faults: [],
    supporters: [],
    unnamedSupporters: 0,
    rates,
    refit: [],
    corrections: [],
    measurements: [],
    due: [],
    odometer: [],
    aims: [],
    finished: false,
    roadTests: [],
    decimal: 'point',
    folder: '',
  };
}
