import { EVENT } from '../record/files/faults.ts';
import { needed } from '../record/read/field.ts';
import { faultCommand } from './fault-command.ts';

const severity = needed(
  EVENT.severity.kind,
  'Severity',
  'How bad it is now; whether it may be driven follows.',
);
const { text, rules_out, rules_in, waits_for } = EVENT;

export const command = faultCommand({
  name: 'came-back',
  summary: 'say that a cured fault came back',
  what: 'came back',
  fields: { severity, text, rules_out, rules_in, waits_for },
  asks: ['severity', 'text', 'rules_out', 'waits_for'],
});
