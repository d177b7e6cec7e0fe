import { addCommand } from './add-to-table.ts';

export const command = addCommand({
  name: 'add-rate',
  table: 'rates',
  what: 'a rate of exchange, as its source publishes it',
  today: 'date',
  asks: ['date', 'base', 'quote', 'rate', 'source'],
});
