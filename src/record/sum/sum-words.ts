import { nearest } from '../text/nearest.ts';
import { shown } from '../text/words.ts';
import { UNIT_NAMES, unitByName } from './dimensions.ts';
import { FUNCTIONS, SumProblem } from './sum-node.ts';

const ALLOWED = 'Write figures with units, + - * / ^, brackets and machine.section.key.';

/** What else the parser can read, by its type of node. */
const OTHER: Record<string, string> = {
  RangeNode: 'A range',
  AssignmentNode: 'An assignment',
  FunctionAssignmentNode: 'A function of one’s own',
  ArrayNode: 'A list',
  ObjectNode: 'An object',
  ConditionalNode: 'A condition',
  RelationalNode: 'A comparison',
  BlockNode: 'A second sum',
};

export const notInSums = (type: string, at: number): SumProblem =>
  new SumProblem(`${OTHER[type] ?? 'This'} cannot stand in a sum. ${ALLOWED}`, at);

export const noCharacter = (character: string, at: number): SumProblem =>
  character === ','
    ? new SumProblem('A comma cannot stand here. Write decimals with a point, such as 3.4.', at)
    : new SumProblem(`${shown(character)} cannot stand in a sum. ${ALLOWED}`, at);

export const endsEarly = (at: number): SumProblem =>
  new SumProblem('The sum ends too early. Write what is missing.', at);

export const signMissing = (text: string, at: number): SumProblem =>
  new SumProblem(`${shown(text)} cannot stand here. A sum needs a sign between two values: + - * or /.`, at);

export function unknownName(text: string, at: number): SumProblem {
  if (FUNCTIONS.some((one) => one === text))
    return new SumProblem(`"${text}" needs brackets. Write ${text}(…).`, at);
  if (text === 'pi' || text.startsWith('machine.') || unitByName(text)) return signMissing(text, at);
  const near = nearest(text, [...UNIT_NAMES, ...FUNCTIONS, 'pi', 'machine']);
  const write = near ? `The nearest is "${near}".` : 'A machine value is written machine.section.key.';
  return new SumProblem(`${shown(text)} is no unit, function or machine value. ${write}`, at);
}
