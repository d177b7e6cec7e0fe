import { addCommand } from './add-to-table.ts';

export const command = addCommand({
  name: 'add-row',
  table: 'ledger',
  what: 'a row to the ledger: what was paid, or came back',
  today: 'date',
  asks: ['date', 'kind', 'item', 'part', 'order', 'supplier', 'qty', 'amount', 'currency', 'rate', 'chapter'],
});
