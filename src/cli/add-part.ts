import { addCommand } from './add-to-table.ts';

export const command = addCommand({
  name: 'add-part',
  table: 'parts',
  what: 'a part to the parts list',
  asks: ['part', 'name', 'system', 'maker_number', 'qty', 'status', 'origin', 'estimate', 'needed_for'],
});
