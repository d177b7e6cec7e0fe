import { addCommand } from './add-to-table.ts';

export const command = addCommand({
  name: 'add-refit',
  table: 'refit',
  what: 'a line to the refit list: what is off, loose, drained or parted',
  asks: ['line', 'what', 'action', 'system', 'removed_in', 'why'],
});
