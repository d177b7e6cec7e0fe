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

/**
 * Calculators that are one script: they have the drive line in common, and a chapter that shows both has room for both only
 * so.
 */
const TOGETHER: readonly (readonly string[])[] = [['gearing', 'hills']];

/** What the form itself needs, or nearly every calculator: loaded once for all sheets of a page. */
const SHARED: readonly string[] = [
  'answer',
  'chart-rows',
  'field-values',
  'holes',
  'parse-figure',
  'print-figure',
  'read-values',
  'reading-messages',
  'svg',
  'uncertainty',
  'unit-table',
  'units',
];
/** Modules that a calculator's script has for itself, and the list of the reader's own machine, whose page has no sheet. */
const OWN = /\/src\/(?:calc|components\/calculator)\/[\w-]+\.ts\?of=/;
const PANEL = 'own-machine-panel.ts';

/** The calculators of one script, joined by "+". */
const scriptOf = (calculator: string): string =>
  (TOGETHER.find((ids) => ids.includes(calculator)) ?? [calculator]).join('+');

/** Id of the module that is a calculator's script; it exports each `solve` by the name of its component. */
export const solveModule = (calculator: string): string => `\0${ONE}${scriptOf(calculator)}`;

/** How the scripts are parted: the form with what most calculators share is one file, each calculator's arithmetic another. */
export const scriptsOfSheets = {
  rolldownOptions: {
    output: {
      // Every calculator's script names the form's: a short name is so many bytes less in each.
      entryFileNames: ({ name }: { name: string }) =>
        `_astro/${name.startsWith('Calculator.astro') ? 'sheet' : '[name]'}.[hash].js`,
      codeSplitting: {
        groups: [
          {
            name: 'sheet',
            test: /\/Calculator\.astro\?astro|\/calculator\/start-sheets\.ts$|\/calc\/(?:field-values|uncertainty)\.ts$/,
          },
        ],
      },
    },
  },
};

/** While building: the page names the script. */
const BUILT = `export const solveOf = ({ dataset }) => import(/* @vite-ignore */ dataset.solve).then((one) => one[dataset.component]);\n`;

/** While writing: every calculator, loaded when asked for. */
function listed(): string {
  const lines = calculators.map(
    ({ id, component }) => `  ${component}: () => import('${ONE}${scriptOf(id)}'),`,
  );
  return `const all = {\n${lines.join('\n')}\n};
export const solveOf = ({ dataset: { component } }) => all[component]().then((one) => one[component]);\n`;
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
      for (const name of new Set(calculators.map(({ id }) => scriptOf(id))))
        this.emitFile({ type: 'chunk', id: `${ONE}${name}`, name });
    },
    resolveId(id, importer) {
      if (id === SOLVES || id.startsWith(ONE)) return `\0${id}`;
      if (OWN.test(id)) return { id, moduleSideEffects: false };
      const folder = importer?.replace(/[^/]*(\?.*)?$/, '');
      if (building && id === `./${PANEL}`)
        return { id: `${folder}${PANEL}?of=panel`, moduleSideEffects: false };
      // One script a calculator, whole: a page with one of them loads it as one file.
      const [of] = /\?of=[\w+-]+$/.exec(importer ?? '') ?? [];
      const [, name = ''] = /^\.\/([\w-]+)\.ts$/.exec(id) ?? [];
      if (!of || !name || SHARED.includes(name)) return undefined;
      return { id: `${folder}${name}.ts${of}`, moduleSideEffects: false };
    },
    load(id) {
      if (id === PRELOAD) return 'export const __vitePreload = (load) => load();';
      if (id === `\0${SOLVES}`) return building ? BUILT : listed();
      if (!id.startsWith(`\0${ONE}`)) return undefined;
      const script = id.slice(ONE.length + 1);
      const lines = calculators
        .filter((one) => scriptOf(one.id) === script)
        .map(({ id: one, component }) => {
          const file = fileURLToPath(new URL(`../../calc/${one}.ts`, import.meta.url));
          const from = building ? `${file}?of=${script}` : file;
          return `export { solve as ${component} } from ${JSON.stringify(from)};`;
        });
      return lines.join('\n');
    },
  };
}
