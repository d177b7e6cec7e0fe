import { execFileSync } from 'node:child_process';
import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { calculators } from '../../src/calc/index.ts';

const house = fileURLToPath(new URL('../../', import.meta.url));
const copy = mkdtempSync(join(tmpdir(), 'oilway-calculator-'));
afterAll(() => rmSync(copy, { recursive: true, force: true }));

/** A whole calculator as its author would write it. */
const DISPLACEMENT = `import type { Found, Values } from './contract.ts';
import { told } from './declare.ts';
import { reader } from './field-values.ts';
import { lines } from './says.ts';
import { spread } from './uncertainty.ts';

export function solve(values: Values): Found {
  const outputs = spread((v) => {
    const of = reader(v);
    return { swept: (Math.PI / 4) * of('bore') ** 2 * of('stroke') * of('cylinders') };
  }, values);
  return { ok: true, outputs };
}

const HEYWOOD = 'π/4 × bore² × stroke × cylinders: J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, eq. 2.4';
const swept = (bore: number, stroke: number, cylinders: number, expected: number) => ({
  id: \`\${bore}x\${stroke}x\${cylinders}\`,
  says: \`\${bore} mm bore, \${stroke} mm stroke, \${cylinders}\`,
  given: { bore: \`\${bore} mm\`, stroke: \`\${stroke} mm\`, cylinders: String(cylinders) },
  output: 'swept',
  expected,
  unit: 'cm3' as const,
  tolerance: 0.001,
  source: HEYWOOD,
  mark: 'derived' as const,
});

export const displacement = told({
  id: 'displacement',
  component: 'Displacement',
  title: 'Displacement',
  answers: 'How large is the engine?',
  fields: [
    { kind: 'figure', name: 'bore', label: 'Bore', quantity: 'length', units: ['mm', 'in'], start: '54 mm', machine: 'engine.bore', min: 0.01, max: 0.2 },
    { kind: 'figure', name: 'stroke', label: 'Stroke', quantity: 'length', units: ['mm', 'in'], start: '58 mm', machine: 'engine.stroke', min: 0.01, max: 0.3 },
    { kind: 'figure', name: 'cylinders', label: 'Cylinders', quantity: 'count', units: ['n'], start: '2', min: 1, max: 12, whole: true },
  ],
  outputs: [{ name: 'swept', label: 'Swept volume', quantity: 'volume', units: ['cm3', 'in3'], figures: 4 }],
  conventions: [],
  cautions: [],
  hazards: [],
  sources: [HEYWOOD],
  checks: [swept(54, 54, 1, 123.672), swept(72, 61, 2, 496.723), swept(47, 44, 1, 76.338), swept(68, 68.5, 2, 497.54), swept(54, 58, 2, 265.665)],
  says: {
    lines: lines(
      { V: ['swept', 'volume', 'cm3'], d: ['bore', 'length', 'mm'], s: ['stroke', 'length', 'mm'], z: ['cylinders', 'count', 'n', 1] },
      [['Swept volume', 'V = π/4 d^2 s z']],
    ),
  },
}, solve);
`;

test('another calculator takes one file and one line of contents.ts: it is listed, typed and checked', () => {
  cpSync(join(house, 'src/calc'), join(copy, 'calc'), { recursive: true });
  writeFileSync(join(copy, 'package.json'), '{ "type": "module" }');
  writeFileSync(join(copy, 'calc/displacement.ts'), DISPLACEMENT);
  appendFileSync(join(copy, 'calc/contents.ts'), "export { displacement } from './displacement.ts';\n");
  const lines = (folder: string) =>
    readFileSync(join(folder, 'calc/contents.ts'), 'utf8')
      .split('\n')
      .filter((l) => l.startsWith('export')).length;
  expect(lines(copy)).toBe(lines(join(house, 'src')) + 1);

  const program = `
    import { calculators } from './calc/index.ts';
    import { readValues } from './calc/read-values.ts';
    import { printOutput } from './calc/print-figure.ts';
    import { fromSi } from './calc/units.ts';
    const found = calculators.find((c) => c.component === 'Displacement');
    const wrong = found.checks.filter((check) => {
      const answer = found.solve(readValues(found, check.given, {}, false).values);
      return !(Math.abs(fromSi(answer.outputs.swept.si, 'volume', check.unit) - check.expected) <= check.tolerance);
    });
    const answer = found.solve(readValues(found, { bore: '54 ± 0.1 mm' }, { 'engine.stroke': '58 mm' }).values);
    console.log(JSON.stringify({ ids: calculators.map((c) => c.id).sort(), wrong: wrong.map((c) => c.id),
      printed: printOutput(found.outputs[0], answer.outputs.swept)[0], working: answer.parts.working.replace(/<[^>]*>/g, '') }));`;
  writeFileSync(join(copy, 'run.ts'), program);
  const said = JSON.parse(
    execFileSync(process.execPath, [join(copy, 'run.ts')], { encoding: 'utf8' }).replace(
      /[\u00a0\u202f]/g,
      ' ',
    ),
  );
  expect(said).toEqual({
    ids: [...calculators.map((c) => c.id), 'displacement'].sort(),
    wrong: [],
    printed: '266 ± 1 cm³',
    working: 'Swept volumeV=π4\u2062d2\u2062s\u2062z =π4×(54.00 mm)2×58.00 mm×2 =265.7 cm³',
  });

  const settings = {
    extends: join(house, 'node_modules/astro/tsconfigs/strictest.json'),
    include: ['calc'],
    compilerOptions: {
      lib: ['es2022'],
      types: [],
      erasableSyntaxOnly: true,
      allowImportingTsExtensions: true,
      noEmit: true,
    },
  };
  writeFileSync(join(copy, 'tsconfig.json'), JSON.stringify(settings));
  execFileSync(
    process.execPath,
    [join(house, 'node_modules/typescript/bin/tsc'), '-p', join(copy, 'tsconfig.json')],
    { encoding: 'utf8' },
  );
}, 120_000);
