import { EVENT } from '../record/files/faults.ts';
import { needed } from '../record/read/field.ts';
import { faultCommand } from './fault-command.ts';

const text = needed(EVENT.text.kind, 'Reason', 'Why it is put off.');
const review = needed(EVENT.review.kind, 'Review', 'The day to look at it again.');
const { severity, waits_for } = EVENT;

export const command = faultCommand({
  name: 'put-off',
  summary: 'put a fault off, with the reason and the day to look again',
  what: 'put off',
  fields: { text, review, severity, waits_for },
  asks: ['text', 'review', 'waits_for'],
});
