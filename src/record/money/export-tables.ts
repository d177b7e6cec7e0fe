import type { LedgerLine, Series } from '../types.ts';
import { type Account, accountOf } from './account.ts';
import { money, plainAmount } from './money.ts';

/** One column of what readers download. CSV, JSON and the schema follow from the entry. */
export interface Column<Row> {
  name: string;
  /** 'amount' is a decimal with all digits of its currency; 'text' is anything that an author wrote. */
  type: 'text' | 'date' | 'quantity' | 'amount' | 'code';
  says: string;
  /** Every row has it. */
  always?: true;
  of(row: Row, account: Account): string | undefined;
}

interface Context {
  chapterTitle(id: string | undefined): string | undefined;
}

const homeText = (minor: bigint | undefined, account: Account): string | undefined =>
  minor === undefined ? undefined : plainAmount(money(minor, account.home));

/** Columns of the ledger as published. Private notes are not among them, nor chapters that are not out. */
export function ledgerColumns({ chapterTitle }: Context): Column<LedgerLine>[] {
  return [
    {
      name: 'date',
      type: 'date',
      always: true,
      says: 'The day it was paid or came back.',
      of: (line) => line.date,
    },
    {
      name: 'kind',
      type: 'code',
      always: true,
      says: 'What the money was for; a refund or a sale came back.',
      of: (line) => line.kind,
    },
    { name: 'item', type: 'text', always: true, says: 'What it was, in words.', of: (line) => line.item },
    { name: 'part', type: 'text', says: 'Id of the part it was for.', of: (line) => line.part },
    { name: 'order', type: 'text', says: 'Id of the order it came with.', of: (line) => line.order },
    { name: 'supplier', type: 'text', says: 'Who was paid.', of: (line) => line.supplier },
    { name: 'qty', type: 'quantity', always: true, says: 'How many.', of: (line) => String(line.qty) },
    {
      name: 'amount',
      type: 'amount',
      always: true,
      says: 'The total of the row as paid, in its currency; without a sign.',
      of: (line) => plainAmount(line.amount),
    },
    {
      name: 'currency',
      type: 'code',
      always: true,
      says: 'Currency of the amount, ISO 4217.',
      of: (line) => line.amount.currency,
    },
    {
      name: 'rate',
      type: 'text',
      says: 'The rate of exchange used, as published.',
      of: (line) => line.rate?.text,
    },
    { name: 'rate_date', type: 'date', says: 'Day of that rate.', of: (line) => line.rate?.date },
    { name: 'rate_source', type: 'text', says: 'Who published it.', of: (line) => line.rate?.source },
    {
      name: 'home_amount',
      type: 'amount',
      always: true,
      says: 'The amount in home money, negative for money back. These sum to the total.',
      of: (line) => plainAmount(line.home),
    },
    {
      name: 'home_currency',
      type: 'code',
      always: true,
      says: 'Home currency, ISO 4217.',
      of: (line) => line.home.currency,
    },
    ...(['freight', 'duty', 'fee'] as const).map(
      (kind): Column<LedgerLine> => ({
        name: `${kind}_share`,
        type: 'amount',
        says: `The row's share of the ${kind} of its order, in home money.`,
        of: (line, account) => homeText(account.landedOf.get(line)?.[kind], account),
      }),
    ),
    {
      name: 'landed',
      type: 'amount',
      says: 'What the row came to at the door: price and shares, less refunds and what went back with pieces sent back.',
      of: (line, account) => homeText(account.landedOf.get(line)?.landed, account),
    },
    {
      name: 'chapter',
      type: 'text',
      says: 'Title of its chapter.',
      of: (line) => chapterTitle(line.chapter),
    },
  ];
}

interface TotalRow {
  by: string;
  name: string;
  rows: number;
  home: bigint;
}

/** Columns of the totals. */
export const TOTAL_COLUMNS: Column<TotalRow>[] = [
  {
    name: 'by',
    type: 'code',
    always: true,
    says: 'What the rows were gathered by; "all" is the whole series.',
    of: (row) => row.by,
  },
  {
    name: 'name',
    type: 'text',
    always: true,
    says: 'Which chapter, system, kind, month or currency.',
    of: (row) => row.name,
  },
  {
    name: 'rows',
    type: 'quantity',
    always: true,
    says: 'How many entries went into it.',
    of: (row) => String(row.rows),
  },
  {
    name: 'home_amount',
    type: 'amount',
    always: true,
    says: 'Total in home money; money back is taken off.',
    of: (row, account) => homeText(row.home, account),
  },
  {
    name: 'home_currency',
    type: 'code',
    always: true,
    says: 'Home currency, ISO 4217.',
    of: (_, account) => account.home,
  },
];

export interface Table {
  columns: readonly Omit<Column<never>, 'of'>[];
  /** Cells by column; undefined where there is nothing to say. */
  rows: (string | undefined)[][];
}

const tableOf = <Row>(columns: readonly Column<Row>[], rows: readonly Row[], account: Account): Table => ({
  columns: columns.map(({ of: _, ...column }) => column),
  rows: rows.map((row) => columns.map((column) => column.of(row, account))),
});

/** The ledger as published, row by row; nothing where the author publishes totals or nothing. */
export function ledgerTable(series: Series): Table | undefined {
  if (series.publishLedger !== 'lines') return undefined;
  const account = accountOf(series);
  const titles = new Map(series.chapters.map((one) => [one.id, one.title]));
  const columns = ledgerColumns({ chapterTitle: (id) => titles.get(id ?? '') });
  return tableOf(columns, account.lines, account);
}

/** Totals as published; nothing where the author publishes nothing. Suppliers are named only with the rows. */
export function totalsTable(series: Series): Table | undefined {
  if (series.publishLedger === 'nothing') return undefined;
  const account = accountOf(series);
  const rows: TotalRow[] = [{ by: 'all', name: 'total', rows: account.lines.length, home: account.total }];
  for (const { by, groups } of account.groups)
    if (by !== 'supplier' || series.publishLedger === 'lines')
      for (const { label, rows: count, home } of groups) rows.push({ by, name: label, rows: count, home });
  return tableOf(TOTAL_COLUMNS, rows, account);
}
