/**
 * What a script only looks things up in travels in the page: tables (`*-table.ts`) and sentences (`*-messages.ts`) are read
 * once while the scripts are built, and a script has in their place what its page carries. In dev they stay where they are.
 */
import { basename } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Plugin, Rolldown } from 'vite';
import { calculators } from '../../calc/index.ts';
import { keepCarried } from './page-tables.ts';
import { solveModule } from './solves-module.ts';

const CARRIED = 'virtual:oilway/carried';
const TABLE = /\/src\/(?:calc|components\/calculator)\/[\w-]+-(?:table|messages)\.ts(?:\?|$)/;

/** Collects what the page carries before anything else of the scripts runs. */
const COLLECT = `export const carried = {};
for (const one of document.querySelectorAll('[data-tables]')) Object.assign(carried, JSON.parse(one.textContent));
`;

const nameOf = (id: string) => basename(id.replace(/\?.*/, ''), '.ts');

/** A chunk and all that it loads. */
function withImports(
  chunk: Rolldown.OutputChunk,
  chunks: readonly Rolldown.OutputChunk[],
  found = new Set<Rolldown.OutputChunk>(),
): ReadonlySet<Rolldown.OutputChunk> {
  if (found.has(chunk)) return found;
  found.add(chunk);
  for (const next of chunks.filter(({ fileName }) => chunk.imports.includes(fileName)))
    withImports(next, chunks, found);
  return found;
}

export function tablesOfScripts(): Plugin {
  const tables: Record<string, object> = {};
  return {
    name: 'oilway:tables',
    enforce: 'pre',
    apply: 'build',
    applyToEnvironment: (environment) => environment.name === 'client',
    resolveId: (id) => (id === CARRIED ? `\0${CARRIED}` : undefined),
    async load(id) {
      if (id === `\0${CARRIED}`) return COLLECT;
      if (!TABLE.test(id)) return undefined;
      const name = nameOf(id);
      const table = { ...(await import(pathToFileURL(id.replace(/\?.*/, '')).href)) };
      tables[name] = table;
      return `import { carried } from '${CARRIED}';
export const { ${Object.keys(table).join(', ')} } = carried['${name}'];
`;
    },
    generateBundle(_options, bundle) {
      const chunks = Object.values(bundle).filter((one): one is Rolldown.OutputChunk => one.type === 'chunk');
      for (const { id } of calculators) {
        const own = chunks.find((one) => one.facadeModuleId === solveModule(id));
        if (!own) continue;
        const modules = [...withImports(own, chunks)].flatMap((one) => one.moduleIds);
        // In the order of the alphabet: modules are loaded in another order at every build.
        const names = [...new Set(modules.filter((one) => TABLE.test(one)).map(nameOf))].sort();
        keepCarried(id, {
          script: own.fileName,
          tables: Object.fromEntries(names.flatMap((name) => (tables[name] ? [[name, tables[name]]] : []))),
        });
      }
    },
  };
}
