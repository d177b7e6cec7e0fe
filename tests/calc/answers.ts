import type { Answer, Calculator } from '../../src/calc/contract.ts';
import { readValues } from '../../src/calc/read-values.ts';
import { fromSi, type UnitId } from '../../src/calc/units.ts';

const spaces = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

/** What one calculator says to the fields given, the others empty. */
export function asked(calculator: Calculator) {
  const solved = (given: Record<string, string>) =>
    calculator.solve(readValues(calculator, given, {}, false).values);
  const answered = (given: Record<string, string>): Answer => {
    const answer = solved(given);
    if (!answer.ok) throw new Error(answer.errors.map((e) => `${e.field}: ${e.message}`).join('\n'));
    return answer;
  };
  return {
    answered,
    /** One output in a unit; not a number where there is none. */
    output(given: Record<string, string>, name: string, unit: UnitId): number {
      const field = calculator.outputs.find((o) => o.name === name);
      if (!field) throw new Error(`no output is called ${name}`);
      return fromSi(answered(given).outputs[name]?.si ?? Number.NaN, field.quantity, unit);
    },
    notes: (given: Record<string, string>): string => spaces(answered(given).notes.join('\n')),
    /** What is refused, each as "field: sentence". */
    refusals(given: Record<string, string>): string[] {
      const answer = solved(given);
      return answer.ok ? [] : answer.errors.map((e) => spaces(`${e.field}: ${e.message}`));
    },
    /** What the form itself says of a text, before anything is worked out. */
    typed: (given: Record<string, string>): string[] =>
      readValues(calculator, given, {}, true).errors.map((e) => spaces(`${e.field}: ${e.message}`)),
    rows: (given: Record<string, string>, table: string): string[][] =>
      answered(given)
        .tables.find((t) => t.name === table)
        ?.rows.map((row) => row.map(spaces)) ?? [],
  };
}
