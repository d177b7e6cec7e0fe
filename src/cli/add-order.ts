import { addCommand } from './add-to-table.ts';

export const command = addCommand({
  name: 'add-order',
  table: 'orders',
  what: 'an order, to which ledger rows can then point',
  today: 'date',
  asks: ['order', 'date', 'supplier', 'freight_by', 'duty_by', 'fee_by', 'note'],
});
