import { EVENT } from '../record/files/faults.ts';
import { needed } from '../record/read/field.ts';
import { choice } from '../record/read/kinds.ts';
import { faultCommand } from './fault-command.ts';

const what = needed(
  choice(['tried', 'worse', 'better']),
  'What',
  'Something was tried, or the fault changed.',
);
const { text, severity, rules_out, rules_in, waits_for } = EVENT;

export const command = faultCommand({
  name: 'finding',
  summary: 'add a finding to a fault: what was tried, what was seen, whom it rules in or out',
  fields: { what, text, severity, rules_out, rules_in, waits_for },
  asks: ['what', 'text', 'severity', 'rules_out', 'rules_in', 'waits_for'],
});
