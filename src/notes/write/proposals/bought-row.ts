/** A table's row that tells of something bought or wanted: what, how many, for how much, from whom. */
import { isMoney, type Statement } from '../../draft.ts';
import { findFigures } from '../../figures/find.ts';
import type { Collector } from './collector.ts';
import { costKind, costRow, type Sum } from './cost.ts';
import { capital } from './nouns.ts';
import type { Part } from './parts.ts';
import type { PartsTold } from './parts-told.ts';

const ITEM = /item|part|what|thing|bought|wanted|description|article|ordered|stuff/;
const COUNT = /^(?:qty|quantity|number|no\.?|how many|pcs|pieces|count|off|#)$/;
const SELLER = /from|shop|where|supplier|seller|sold|source|who/;
const EACH = /each|unit|apiece|per/;
const TOTAL = /total|sum|all|together/;
const WANTED = /\b(?:want|wanted|not yet|needed|need|missing|to (?:get|buy|order))\b/i;
const ORDERED = /\b(?:ordered|on order|in (?:the )?post|on (?:its|the) way|coming)\b/i;

interface BoughtRow {
  sum?: Sum;
  part?: Part;
}

interface Money {
  value: number;
  currency: string;
  column: number;
  /** Offset in its cell. */
  start: number;
}

/** Undefined where no sum stands in the row, nor a word of wanting. */
function boughtRow(one: Statement, head: readonly string[] | undefined): BoughtRow | undefined {
  const cells = (one.cells ?? []).map((cell) => cell.trim());
  const columns = cells.map((_, at) => (head?.[at] ?? '').trim().toLowerCase());
  const sums = cells.flatMap((cell, at) => moneyIn(cell, columns[at] ?? '', at));
  const named = columns.findIndex((name, at) => ITEM.test(name) && /\p{L}{2}/u.test(cells[at] ?? ''));
  const at = named >= 0 ? named : cells.findIndex((cell) => /\p{L}{3}/u.test(cell));
  const whole = cells[at] ?? '';
  if (whole === '' || /^(?:total|sum|all|together)\b/i.test(whole)) return undefined;
  const status = WANTED.test(cells.join(' '))
    ? 'wanted'
    : ORDERED.test(cells.join(' '))
      ? 'ordered'
      : 'arrived';
  if (sums.length === 0 && (status === 'arrived' || !one.said.has('part'))) return undefined;
  // "Fuse box, paid £7.25" has its sum in the item's own cell.
  const own = sums.find(({ column }) => column === at);
  const item = capital(
    (own ? whole.slice(0, own.start) : whole).replace(
      /[\s,;:(]*(?:\b(?:paid|for|at|cost|want(?:ed)? one|various)\b[\s,;:]*)*$/i,
      '',
    ),
  );
  if (!/\p{L}{2}/u.test(item)) return undefined;
  const counted = columns.findIndex((name) => COUNT.test(name));
  const qty = Number(/^\s*(?:x\s*)?(\d{1,3})\b/.exec(cells[counted] ?? '')?.[1] ?? 1);
  const price = sums.find(({ column }) => TOTAL.test(columns[column] ?? '')) ?? sums.at(-1);
  const kind = costKind(item, item);
  const each = price !== undefined && EACH.test(columns[price.column] ?? '') && qty > 1;
  const seller = columns.findIndex((name) => SELLER.test(name));
  return {
    ...(price
      ? {
          sum: {
            kind,
            item,
            ...(qty > 1 ? { qty } : {}),
            amount: (price.value * (each ? qty : 1)).toFixed(price.currency === 'JPY' ? 0 : 2),
            currency: price.currency,
            ...(seller >= 0 && /\p{L}{3}/u.test(cells[seller] ?? '')
              ? { supplier: capital(cells[seller] ?? '') }
              : {}),
            at: 0,
          },
        }
      : {}),
    ...(/^(?:freight|duty|fee|refund|sale)$/.test(kind) ? {} : { part: { name: item, qty, status } }),
  };
}

function moneyIn(cell: string, column: string, at: number): Money[] {
  const said = findFigures(cell, {}).filter(({ unit }) => isMoney(unit));
  if (said.length > 0)
    return said.map(({ value, unit, start }) => ({ value, currency: unit, column: at, start }));
  if (!/^\d+(?:[.,]\d{1,2})?$/.test(cell)) return [];
  // A bare number is of the money that its heading names: "each, GBP".
  for (const word of column.split(/[\s,;:()/]+/)) {
    const [sum] = findFigures(`${cell} ${word}`, {}).filter(({ unit }) => isMoney(unit));
    if (sum) return [{ value: sum.value, currency: sum.unit, column: at, start: 0 }];
  }
  return [];
}

/** What the row tells of, proposed. */
export function fromBoughtRow(
  one: Statement,
  head: readonly string[] | undefined,
  { chapter, date }: { chapter: string; date: string },
  out: Collector,
  parts: PartsTold,
): void {
  const row = boughtRow(one, head);
  if (!row) return;
  if (row.part) parts.add(one, row.part, 'a row of a table', out);
  if (row.sum) out.add(one, 'cost', 'a row of a table', costRow(row.sum, { chapter, date }));
}
