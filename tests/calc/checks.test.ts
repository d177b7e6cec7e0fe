import { describe, expect, test } from 'vitest';
import { figuresOf } from '../../src/calc/answer.ts';
import type { Term } from '../../src/calc/contract.ts';
import { type Figures, filled } from '../../src/calc/holes.ts';
import { calculators } from '../../src/calc/index.ts';
import { printOutput } from '../../src/calc/print-figure.ts';
import { readValues } from '../../src/calc/read-values.ts';
import { fromSi } from '../../src/calc/units.ts';
import { workingMathml } from '../../src/calc/working.ts';
import { answerOf, drawingsOf, linesOf, said } from './answers.ts';

/** Works a formula out again from the figures its symbols stand for. */
function workOut(term: Term, figures: Figures): number {
  if (term.k !== 'op') {
    const x = term.of === undefined ? term.si : figures[term.of];
    return typeof x === 'object' ? x.si : Number(x);
  }
  const [a = Number.NaN, ...rest] = term.args.map((arg) => workOut(arg, figures));
  const [b = Number.NaN] = rest;
  switch (term.op) {
    case '+':
      return rest.reduce((x, y) => x + y, a);
    case '-':
      return rest.reduce((x, y) => x - y, a);
    case '*':
      return rest.reduce((x, y) => x * y, a);
    case '/':
      return a / b;
    case '^':
      return a ** b;
    default:
      return Math[term.op](a);
  }
}

describe.each(calculators.map((c) => [c.title, c] as const))('%s', (_, calculator) => {
  test('at least five published checks, each with its source', () => {
    expect(calculator.checks.length).toBeGreaterThanOrEqual(5);
    for (const check of calculator.checks) expect(check.source.length, check.id).toBeGreaterThan(10);
    expect(new Set(calculator.checks.map((c) => c.id)).size).toBe(calculator.checks.length);
  });

  test.each(calculator.checks.map((c) => [c.says, c] as const))('%s', (_says, check) => {
    const read = readValues(calculator, check.given, {}, false);
    expect(read.errors.filter((e) => check.given[e.field] !== undefined)).toEqual([]);
    const answer = calculator.solve(read.values);
    if (!answer.ok) throw new Error(answer.errors.map((e) => `${e.field}: ${e.message}`).join('\n'));
    const field = calculator.outputs.find((o) => o.name === check.output);
    if (!field) throw new Error(`${check.id}: no output is called ${check.output}`);
    const got = fromSi(answer.outputs[check.output]?.si ?? Number.NaN, field.quantity, check.unit);
    const off = Math.abs(got - check.expected);
    expect(off, `${got} ${check.unit}, published ${check.expected} ± ${check.tolerance}`).toBeLessThanOrEqual(
      check.tolerance + 1e-12 * Math.abs(check.expected),
    );
  });

  test('every formula of the working gives its result when worked out again', () => {
    const worked = new Set<string>();
    const cases = [...calculator.checks.map(({ given }) => [given, false] as const), [{}, true] as const];
    for (const [given, starts] of cases) {
      const { values } = readValues(calculator, given, {}, starts);
      const found = calculator.finds(values);
      if (!found.ok) continue;
      const figures = figuresOf(values, found);
      for (const line of calculator.says.lines ?? []) {
        const mathml = filled(`${line.when ?? ''}${workingMathml(line)}`, figures);
        if (mathml === '') continue;
        const result = workOut(line.is, figures);
        const scale = Math.max(Math.abs(result), 1e-9);
        expect(Math.abs(workOut(line.formula, figures) - result) / scale, said(mathml)).toBeLessThan(1e-6);
        expect(mathml).not.toMatch(/NaN|Infinity|undefined|[{}]/);
        worked.add(line.says);
      }
      expect(linesOf(answerOf(calculator.solve(values))).length).toBeLessThanOrEqual(
        calculator.says.lines?.length ?? 0,
      );
    }
    expect(worked.size).toBeGreaterThan(0);
  });

  test('the start values give an answer, and every printed figure is one', () => {
    const read = readValues(calculator, {});
    expect(read.errors).toEqual([]);
    const answer = calculator.solve(read.values);
    if (!answer.ok) throw new Error(answer.errors.map((e) => `${e.field}: ${e.message}`).join('\n'));
    const declared = calculator.outputs.filter((o) => answer.outputs[o.name] !== undefined);
    expect(declared.length).toBeGreaterThan(0);
    for (const field of declared)
      for (const text of printOutput(field, answer.outputs[field.name] ?? { si: Number.NaN }))
        expect(text, field.name).toMatch(/^(?!.*(NaN|Infinity)).*\d/);
    expect(JSON.stringify(answer)).not.toMatch(/NaN|Infinity|undefined|null/);
    for (const { svg } of drawingsOf(answer)) expect(svg).not.toMatch(/style=|<style|NaN|undefined|Infinity/);
  });

  test('fields that a choice hides name an option of that choice, and machine paths are paths', () => {
    for (const field of calculator.fields) {
      if (field.when) {
        const choice = calculator.fields.find((f) => f.name === field.when?.field);
        if (choice?.kind !== 'choice') throw new Error(`${field.name}: ${field.when.field} is no choice`);
        const values = choice.options.map((o) => o.value);
        for (const one of field.when.is) expect(values).toContain(one);
      }
      if (field.kind !== 'choice' && field.machine !== undefined)
        expect(field.machine).toMatch(/^[a-z]+\.[a-z_]+$/);
      expect(field.name).toMatch(/^[a-z][a-zA-Z0-9]*$/);
    }
  });
});
