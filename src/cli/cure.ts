import { EVENT } from '../record/files/faults.ts';
import { faultCommand } from './fault-command.ts';

const { text, rules_in, rules_out } = EVENT;

export const command = faultCommand({
  name: 'cure',
  summary: 'say how a fault was cured',
  what: 'cured',
  fields: { text, rules_in, rules_out },
  asks: ['text', 'rules_in'],
});
