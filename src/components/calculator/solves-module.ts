/**
 * The browser's way to each calculator: a module made from the index, so that a new calculator needs no line here. Only
 * `solve` is asked of a calculator's file; its labels, sources and published checks stay out of what a reader loads.
 */
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { calculators } from '../../calc/index.ts';

const SOLVES = 'virtual:oilway/solves';
const PRELOAD = '\0vite/preload-helper.js';

/** Gives the site's scripts `virtual:oilway/solves`. */
export function calculatorModules(): Plugin {
  return {
    name: 'oilway:calculators',
    enforce: 'pre',
    resolveId: (id) => (id === SOLVES ? `\0${SOLVES}` : undefined),
    load(id) {
      // A calculator brings no styles and few modules: the bundler's loader for both would be a tenth of a page's script.
      if (id === PRELOAD) return 'export const __vitePreload = (load) => load();';
      if (id !== `\0${SOLVES}`) return undefined;
      const lines = calculators.map(({ id: name }) => {
        const file = JSON.stringify(fileURLToPath(new URL(`../../calc/${name}.ts`, import.meta.url)));
        return `  ${JSON.stringify(name)}: () => import(${file}).then((one) => one.solve),`;
      });
      return `export const solves = {\n${lines.join('\n')}\n};\n`;
    },
  };
}
