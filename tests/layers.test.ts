import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

/** Imports run one way: each folder of src/ and the folders that it may import from. */
const MAY_IMPORT: Record<string, readonly string[]> = {
  calc: [],
  record: ['calc'],
  notes: ['record', 'calc'],
  photos: ['record'],
  components: ['photos', 'record', 'calc', 'styles'],
  layouts: ['components', 'photos', 'record', 'calc', 'styles'],
  pages: ['layouts', 'components', 'photos', 'record', 'calc', 'styles'],
  cli: ['components', 'notes', 'photos', 'record', 'calc'],
};

const SRC = fileURLToPath(new URL('../src', import.meta.url));

/** Static and dynamic imports, re-exports, `import type`, and what Astro's scripts and styles load. */
const IMPORTS =
  /(?:\bfrom\s*|\bimport\s*\(\s*|\bimport\s+|@import\s+(?:url\()?|new URL\(\s*)(['"])(\.{1,2}\/[^'"\n]+)\1/g;

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(?:ts|astro|css|mjs)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));
}

/** Every import of `text` that its folder may not make: "src/calc/a.ts: calc may not import record (../record/b.ts)". */
function forbidden(path: string, text: string): string[] {
  const folder = path.split('/')[1] ?? '';
  const allowed = MAY_IMPORT[folder];
  if (!allowed) return [];
  const bare = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '');
  return [...bare.matchAll(IMPORTS)].flatMap(([, , target = '']) => {
    const to = join(dirname(path), target).split(sep).join('/');
    const other = to.startsWith('src/') ? (to.split('/')[1] ?? '') : '';
    if (!(other in MAY_IMPORT) || other === folder || allowed.includes(other)) return [];
    return [`${path}: ${folder} may not import ${other} (${target})`];
  });
}

test('Every import runs down: pages, layouts, cli → components, notes, photos → record → calc', () => {
  const wrong = filesBelow(SRC).flatMap((file) => {
    const path = `src/${relative(SRC, file).split(sep).join('/')}`;
    return forbidden(path, readFileSync(file, 'utf8'));
  });
  expect(wrong).toEqual([]);
});

test('An import in the wrong direction is found in every form', () => {
  const path = 'src/calc/gear-ratio.ts';
  const expected = [`${path}: calc may not import record (../record/types.ts)`];
  for (const line of [
    "import type { Series } from '../record/types.ts';",
    "export * from '../record/types.ts';",
    "import '../record/types.ts';",
    "const late = await import('../record/types.ts');",
    "const late = import(\n  '../record/types.ts');",
  ])
    expect(forbidden(path, line)).toEqual(expected);
  expect(
    forbidden('src/record/deep/er/a.astro', "---\nimport X from '../../../pages/x.astro';\n---\n"),
  ).toEqual(['src/record/deep/er/a.astro: record may not import pages (../../../pages/x.astro)']);
  expect(forbidden(path, "// import x from '../record/types.ts';\nimport a from './units.ts';")).toEqual([]);
});

test('Calculators use no package but d3-array, so that they run in a browser', () => {
  const packages = new Set<string>();
  for (const file of filesBelow(join(SRC, 'calc')))
    for (const [, named, late] of readFileSync(file, 'utf8').matchAll(
      /^(?:import|export)\b[^'"`;]*?\bfrom '([^.'\n][^'\n]*)'|\bimport\('([^.'\n][^'\n]*)'\)/gm,
    ))
      packages.add(named ?? late ?? '');
  expect([...packages].filter((name) => name !== 'd3-array')).toEqual([]);
});

test('Nothing in src/ has a folder that says nothing', () => {
  for (const name of ['utils', 'helpers', 'common', 'types', 'lib', 'misc'])
    for (const folder of ['', ...Object.keys(MAY_IMPORT)])
      expect(existsSync(join(SRC, folder, name))).toBe(false);
});
