import { addCommand } from './add-to-table.ts';

export const command = addCommand({
  name: 'add-correction',
  table: 'corrections',
  what: 'a correction: what was published, what is right, and why',
  today: 'date',
  asks: ['date', 'chapter', 'step', 'was', 'now', 'why', 'can_hurt'],
});
