import { addCommand } from './add-to-table.ts';

export const command = addCommand({
  name: 'add-measurement',
  table: 'measurements',
  what: 'a measurement: as found, its limits, as left',
  today: 'date',
  asks: ['date', 'chapter', 'item', 'position', 'found', 'found_pm', 'unit', 'new', 'min', 'max', 'source'],
});
