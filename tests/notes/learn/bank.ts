/** Single statements with letters for what they say: F fault, P part, C cost, T thanks, S a piece of work, "-" nothing of these. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Statement, statementsOf } from '../../../src/notes/draft.ts';
import type { BlockKind } from '../../../src/notes/read/source.ts';
import type { Text } from './texts.ts';

/** A text for every hundred statements, so that they can be left out in turn. */
export function readBank(folder: string): Text[] {
  const files = readdirSync(folder).filter((name) => name.endsWith('.tsv'));
  return files.flatMap((name) => {
    const lines = readFileSync(join(folder, name), 'utf8')
      .split('\n')
      .map((line) => line.split('\t'))
      .filter((cells): cells is [string, string] => cells.length === 2 && cells[1] !== '');
    return Array.from({ length: Math.ceil(lines.length / 100) }, (_, at) =>
      textOf(`${name} ${at + 1}`, lines.slice(at * 100, at * 100 + 100)),
    );
  });
}

function textOf(name: string, lines: readonly (readonly [string, string])[]): Text {
  const features = new Map<Statement, string[]>();
  const statements = lines.map(([, words], at) => {
    const kind: BlockKind = /[A-Z.,;:]/.test(words) ? 'item' : 'speech';
    const said = statementsOf(
      {
        source: { name, text: words },
        kind: 'notes',
        masked: words,
        // A line of a table is never cut: the labels are of the statement as it stands.
        blocks: [{ kind: 'row', start: 0, end: words.length, cells: [words] }],
        warnings: [],
      },
      {},
      (one, found) =>
        features.set(one, [
          ...new Set(
            found.map((feature) => (feature.name === '[kind row]' ? `[kind ${kind}]` : feature.name)),
          ),
        ]),
    )[0] as Statement;
    said.line = at + 1;
    said.lastLine = at + 1;
    return said;
  });
  const of = (letter: string) =>
    lines.flatMap(([letters], at) => (letters.includes(letter) ? [{ line: at + 1 }] : []));
  return {
    name,
    hand: 'bank',
    bank: true,
    statements,
    features,
    labels: { faults: of('F'), parts: of('P'), costs: of('C'), thanks: of('T'), steps: of('S') },
  };
}
