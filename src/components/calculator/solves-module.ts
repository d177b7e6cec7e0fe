/**
 * The browser's way to each calculator: a script of its own made from the index, so that a new calculator needs no line
 * here. Only `solve` is asked of a calculator's file; its labels, sources and published checks stay out of what a reader
 * loads. A built page says which script its sheet solves with, so that no page carries a list of them all.
 */
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { calculators } from '../../calc/index.ts';

const SOLVES = 'virtual:oilway/solves';
const ONE = 'virtual:oilway/solve/';
const PRELOAD = '\0vite/preload-helper.js';

/** What the form itself or nearly every calculator needs: loaded once for all sheets of a page. */
const SHARED: readonly string[] = [
  'chart',
  'field-values',
  'parse-figure',
  'print-figure',
  'read-values',
  'svg',
  'uncertainty',
  'units',
  'working',
];
/** Modules that a calculator's script has for itself. */
const OWN = /\/src\/calc\/[\w-]+\.ts\?of=/;

/** Id of the module that is a calculator's script. */
export const solveModule = (calculator: string): string => `\0${ONE}${calculator}`;

/** While building: the page names the script. */
const BUILT = `export const solveOf = (sheet) => import(/* @vite-ignore */ sheet.dataset.solve).then((one) => one.solve);\n`;

/** While writing: every calculator, loaded when asked for. */
function listed(): string {
  const lines = calculators.map(({ id }) => `  ${JSON.stringify(id)}: () => import('${ONE}${id}'),`);
  return `const all = {\n${lines.join('\n')}\n};
export const solveOf = (sheet) => all[sheet.dataset.calculator]().then((one) => one.solve);\n`;
}

/** Gives the site's scripts `virtual:oilway/solves`, and a build one script a calculator. */
export function calculatorModules(): Plugin {
  let building = false;
  return {
    name: 'oilway:calculators',
    enforce: 'pre',
    configResolved(config) {
      building = config.command === 'build';
    },
    configEnvironment(name) {
      // A calculator brings no styles and few modules: a list of what to fetch ahead would be a part of every page's script.
      const modulePreload = { polyfill: false, resolveDependencies: () => [] };
      return name === 'client' ? { build: { modulePreload } } : undefined;
    },
    buildStart() {
      if (!building || this.environment.name !== 'client') return;
      for (const { id } of calculators) this.emitFile({ type: 'chunk', id: `${ONE}${id}`, name: id });
    },
    resolveId(id, importer) {
      if (id === SOLVES || id.startsWith(ONE)) return `\0${id}`;
      if (OWN.test(id)) return { id, moduleSideEffects: false };
      // One script a calculator, whole: a page with one of them loads it as one file.
      const [, folder, of] = /^(.*\/src\/calc\/)[\w-]+\.ts(\?of=[\w-]+)$/.exec(importer ?? '') ?? [];
      const [, name = ''] = /^\.\/([\w-]+)\.ts$/.exec(id) ?? [];
      if (!of || !name || SHARED.includes(name)) return undefined;
      return { id: `${folder}${name}.ts${of}`, moduleSideEffects: false };
    },
    load(id) {
      if (id === PRELOAD) return 'export const __vitePreload = (load) => load();';
      if (id === `\0${SOLVES}`) return building ? BUILT : listed();
      if (!id.startsWith(`\0${ONE}`)) return undefined;
      const name = id.slice(ONE.length + 1);
      const file = fileURLToPath(new URL(`../../calc/${name}.ts`, import.meta.url));
      return `export { solve } from ${JSON.stringify(building ? `${file}?of=${name}` : file)};\n`;
    },
  };
}
