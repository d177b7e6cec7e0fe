import { toCsv, toJson, toSchema } from '../../record/money/export.ts';
import { ledgerTable, type Table, totalsTable } from '../../record/money/export-tables.ts';
import type { Series } from '../../record/types.ts';

export interface ExportFile {
  name: string;
  text: string;
}

/** The files that readers can take away, as far as the author publishes the ledger. */
export function exportFiles(series: Series): ExportFile[] {
  if (series.ledger.length === 0) return [];
  return [
    ...filesOf(series, 'ledger', 'Ledger of the rebuild, row by row', ledgerTable(series)),
    ...filesOf(series, 'totals', 'Totals of the rebuild’s ledger', totalsTable(series)),
  ];
}

function filesOf(series: Series, name: string, title: string, table: Table | undefined): ExportFile[] {
  if (!table) return [];
  return [
    { name: `${name}.csv`, text: toCsv(table) },
    { name: `${name}-decimal-comma.csv`, text: toCsv(table, ',') },
    { name: `${name}.json`, text: toJson(series, table, `${name}.schema.json`) },
    { name: `${name}.schema.json`, text: toSchema(title, table) },
  ];
}
