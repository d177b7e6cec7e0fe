/** The build's side of page-words.ts: takes the texts out of the browser's scripts and notes which of them each needs. */
import { readdir, readFile } from 'node:fs/promises';
import type { Plugin, Rolldown } from 'vite';
import { calculators } from '../../calc/index.ts';
import { UNITS } from '../../calc/units.ts';
import { keepSpoken } from './page-words.ts';
import { solveModule } from './solves-module.ts';

const WORDS = 'virtual:oilway/words';
/** The list of the reader's own machine stands on a page without a sheet, and so keeps its texts. */
const SCRIPTS = /\/src\/(?:calc|components\/calculator)\/(?!own-machine-panel)[\w-]+\.ts(?:\?of=[\w-]+)?$/;
/** Shorter ones cost more as `_said[12]` and a place in the page than they do in the script. */
const LONG = 14;

/** Reads what the page carries, before anything else of the scripts runs. */
const READ = `export const _said = {};
export const UNITS = {};
export const SYMBOLS = {};
export const SPELLINGS = {};
for (const one of document.querySelectorAll('[data-words]')) {
  const words = JSON.parse(one.textContent);
  Object.assign(_said, words.said);
  Object.assign(UNITS, words.units);
  Object.assign(SYMBOLS, words.symbols);
  Object.assign(SPELLINGS, words.spellings);
}
`;

interface Node {
  type: string;
  start: number;
  end: number;
  [key: string]: unknown;
}

interface Piece {
  start: number;
  end: number;
  text: string;
  /** Stands between the back-ticks of a template. */
  inTemplate: boolean;
}

const worded = (text: string) =>
  (text.length >= LONG ? /\p{L} |\p{L}\p{L}\p{L}/u : /^.{8}.*$(?<=\p{L}\p{L} \p{L}.*)/u).test(text) &&
  !/[<>\\=[\]]/.test(text);

/** Every longer text of a module, but for types, imports and keys. */
function textsIn(code: string, program: unknown): Piece[] {
  const pieces: Piece[] = [];
  const walk = (value: unknown, key: string, parent: Node | undefined): void => {
    if (Array.isArray(value)) {
      for (const one of value) walk(one, key, parent);
      return;
    }
    if (typeof value !== 'object' || value === null || !('type' in value)) return;
    const node = value as Node;
    if (
      node.type.startsWith('TS') &&
      !/^TS(AsExpression|SatisfiesExpression|NonNullExpression)$/.test(node.type)
    )
      return;
    if (/^(Import|ExportAll)/.test(node.type) || key === 'typeAnnotation' || key === 'source') return;
    if (parent?.type === 'Property' && key === 'key') return;
    if (node.type === 'Literal' && typeof node['value'] === 'string' && worded(node['value'])) {
      pieces.push({ start: node.start, end: node.end, text: node['value'], inTemplate: false });
    }
    if (node.type === 'TemplateElement') {
      const { cooked } = node['value'] as { cooked: string | null };
      // The element's own range takes in the back-tick or the braces beside it in some parsers.
      const inner = code.slice(node.start, node.end);
      const at = cooked === null ? -1 : inner.indexOf(cooked);
      if (cooked !== null && at >= 0 && worded(cooked)) {
        pieces.push({
          start: node.start + at,
          end: node.start + at + cooked.length,
          text: cooked,
          inTemplate: true,
        });
      }
      return;
    }
    for (const [name, child] of Object.entries(node)) if (typeof child === 'object') walk(child, name, node);
  };
  walk(program, '', undefined);
  return pieces.sort((a, b) => b.start - a.start);
}

/** units.ts as the scripts have it: the tables come with the page. */
function withoutTables(code: string): string {
  const cut = (text: string, start: string, end: string) => {
    const from = text.indexOf(start);
    const to = text.indexOf(end, from);
    if (from < 0 || to < 0) throw new Error('The tables of units are not where the scripts look for them.');
    return text.slice(0, from) + text.slice(to + end.length);
  };
  const few = cut(cut(code, 'const PRINTED', '};\n\n'), 'export const SPELLINGS', ');\n\n');
  const bare = cut(few, 'export const UNITS =', '} satisfies Record<string, Record<string, Scale>>;');
  return `${cut(cut(bare, 'const raised', ';\n\n'), 'export const SYMBOLS', ');\n\n')}\nexport { SPELLINGS, SYMBOLS, UNITS };\n`;
}

/**
 * How the scripts are parted: the form with what most calculators share is one file, each calculator's arithmetic one of
 * its own, and what a sheet seldom does another.
 */
export const scriptsOfSheets = {
  rolldownOptions: {
    output: {
      codeSplitting: {
        groups: [
          {
            name: 'sheet',
            test: /\/Calculator\.astro\?astro|\/calculator\/start-sheets\.ts|\/calc\/(?:chart|field-values|uncertainty|working)\.ts/,
          },
        ],
      },
    },
  },
};

/** Numbers of the texts that a script asks for; what was `a ? _said[1] : _said[2]` may have become `_said[a ? 1 : 2]`. */
function asked(code: string): number[] {
  const numbers: number[] = [];
  for (const { index, 0: start } of code.matchAll(/\b_said(?:\$\d+)?\[/g)) {
    let end = index + start.length;
    for (let open = 1; open > 0 && end < code.length; end++)
      open += code[end] === '[' ? 1 : code[end] === ']' ? -1 : 0;
    // A script may have 1000 written as 1e3.
    const inside = code.slice(index + start.length, end).match(/\b\d+(?:e\d+)?\b/g) ?? [];
    numbers.push(...inside.map(Number));
  }
  return numbers;
}

export function wordsOfScripts(): Plugin {
  const numbers = new Map<string, number>();

  return {
    name: 'oilway:words',
    enforce: 'pre',
    apply: 'build',
    applyToEnvironment: (environment) => environment.name === 'client',
    resolveId: (id) => (id === WORDS ? `\0${WORDS}` : undefined),
    load: (id) => (id === `\0${WORDS}` ? READ : undefined),
    async buildStart() {
      // Numbered before any script is read: scripts are read side by side, and two builds have to be the same.
      for (const folder of [new URL('../../calc/', import.meta.url), new URL('./', import.meta.url)]) {
        for (const name of (await readdir(folder)).filter((one) => one.endsWith('.ts')).sort()) {
          const source = await readFile(new URL(name, folder), 'utf8');
          const texts = textsIn(source, this.parse(source, { lang: 'ts' })).map(({ text }) => text);
          for (const text of texts.reverse()) if (!numbers.has(text)) numbers.set(text, numbers.size);
        }
      }
    },
    transform(source, id) {
      if (!SCRIPTS.test(id)) return undefined;
      let code = source;
      for (const { start, end, text, inTemplate } of textsIn(source, this.parse(source, { lang: 'ts' }))) {
        const said = `_said[${numbers.get(text)}]`;
        code = code.slice(0, start) + (inTemplate ? `\${${said}}` : said) + code.slice(end);
      }
      if (id.endsWith('/calc/units.ts')) code = withoutTables(code);
      const wants = [
        code.includes('_said[') && '_said',
        id.endsWith('/calc/units.ts') && 'SPELLINGS, SYMBOLS, UNITS',
      ].filter(Boolean);
      if (wants.length === 0) return undefined;
      return { code: `import { ${wants.join(', ')} } from '${WORDS}';\n${code}`, map: null };
    },
    generateBundle(_options, bundle) {
      const chunks = Object.values(bundle).filter((one): one is Rolldown.OutputChunk => one.type === 'chunk');
      const byName = new Map(chunks.map((one) => [one.fileName, one]));
      const texts = new Map([...numbers].map(([text, number]) => [number, text]));
      /** A chunk and all that it loads, at once or when it is asked to. */
      const withImports = (chunk: Rolldown.OutputChunk, found = new Set<Rolldown.OutputChunk>()) => {
        if (found.has(chunk)) return found;
        found.add(chunk);
        for (const name of [...chunk.imports, ...chunk.dynamicImports]) {
          const next = byName.get(name);
          if (next) withImports(next, found);
        }
        return found;
      };
      const starts = chunks.filter((one) =>
        Object.keys(one.modules).some((id) => id.endsWith('/start-sheets.ts')),
      );
      for (const { id } of calculators) {
        const own = chunks.filter((one) => one.facadeModuleId === solveModule(id));
        const all = new Set([...starts, ...own].flatMap((one) => [...withImports(one)]));
        const code = [...all]
          .flatMap((one) => Object.values(one.modules).map((module) => module.code ?? ''))
          .join('\n');
        const said = Object.fromEntries(asked(code).map((number) => [number, texts.get(number) ?? '']));
        const quantities = Object.keys(UNITS).filter(
          (quantity) => code.includes(`'${quantity}'`) || code.includes(`"${quantity}"`),
        );
        keepSpoken(id, { said, quantities, script: own[0]?.fileName ?? '' });
      }
    },
  };
}
