import { describe, expect, test } from 'vitest';
import { chartRows } from '../../src/calc/chart-rows.ts';
import { calculators } from '../../src/calc/index.ts';
import { pageSays } from '../../src/calc/page-says.ts';
import { UNITS } from '../../src/calc/unit-table.ts';

const HOLE = /\{([^{}]+)\}/g;

describe.each(calculators.map((c) => [c.title, c] as const))('%s', (_, calculator) => {
  const said = JSON.stringify(pageSays(calculator, calculator.says));
  const holes = [...said.matchAll(HOLE)].map(([, hole = '']) => hole).filter((hole) => !hole.startsWith('"'));

  test('every figure that it says is printed in a unit of its quantity, which a page carries', () => {
    const units: Readonly<Record<string, Readonly<Record<string, unknown>>>> = UNITS;
    const printed = holes.map((hole) => hole.split('|')).filter(([, quantity]) => quantity);
    expect(printed.length).toBeGreaterThan(3);
    for (const [name, quantity = '', unit = '', figures, as = 'plain'] of printed) {
      expect(Object.keys(units[quantity] ?? {}), `${name} of ${quantity}`).toContain(unit);
      expect(figures, name).toMatch(/^\d+(\.\d+)?$/);
      expect(['plain', 'bare', 'math', 'term'], name).toContain(as);
    }
  });

  test('every hole is one that is understood', () => {
    for (const hole of holes)
      expect(hole).toMatch(/^(\?!?|~)?\w+#?(=[^{}|]+)?(\|[^{}|]+\|[^{}|]+\|[\d.]+(\|\w+)?)?$/);
  });

  test('no figure of its own has a name that charts use for places', () => {
    const rows = chartRows({
      x: { max: 1 },
      y: { max: 1 },
      curves: [{ points: [[0, 0]], label: 'a', dash: '1' }],
      marks: [{ at: [0, 0] }],
    });
    const places = new Set(rows.flatMap((row) => Object.keys(row)));
    for (const { name } of [...calculator.fields, ...calculator.outputs]) expect(places).not.toContain(name);
  });

  test('tables and drawings have names of their own', () => {
    const { tables = [], drawings = [] } = calculator.says;
    const names = [...tables, ...drawings].map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });
});
