/** The labelled texts as statements with their features, and which of them a label means. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Statement } from '../../../src/notes/draft.ts';
import { statementsOf } from '../../../src/notes/draft.ts';
import { readSource } from '../../../src/notes/read/read-source.ts';
import type { ReadSource } from '../../../src/notes/read/source.ts';

export type Kind = 'faults' | 'parts' | 'costs' | 'thanks' | 'steps';

export interface Label {
  line: number;
  words?: string;
}

export interface Text {
  name: string;
  /** Who wrote it: texts of one hand are left out together. */
  hand: string;
  /** Statements without a text around them. */
  bank?: boolean;
  /** Left out for statements without a text. */
  read?: ReadSource;
  statements: Statement[];
  features: Map<Statement, string[]>;
  labels: Record<Kind, Label[]>;
}

export function readTexts(folders: readonly string[]): Text[] {
  return folders.flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.labels.json'))
      .sort()
      .map((labels) => readText(folder, labels)),
  );
}

function readText(folder: string, labelled: string): Text {
  const stem = labelled.replace('.labels.json', '');
  const name = readdirSync(folder).find((one) => one.startsWith(`${stem}.`) && one !== labelled) ?? '';
  const raw = JSON.parse(readFileSync(join(folder, labelled), 'utf8')) as Record<string, unknown>;
  const features = new Map<Statement, string[]>();
  const read = readSource({ name, text: readFileSync(join(folder, name), 'utf8') });
  const statements = statementsOf(read, {}, (one, found) =>
    features.set(one, [...new Set(found.map((feature) => feature.name))]),
  );
  const list = (kind: Kind): Label[] =>
    ((raw[kind] ?? raw[kind.replace(/s$/, '')] ?? []) as (number | Label)[]).map((one) =>
      typeof one === 'number' ? { line: one } : one,
    );
  return {
    name,
    hand: /^[a-z]-/.exec(name)?.[0] ?? 'first hand',
    read,
    statements,
    features,
    labels: {
      faults: list('faults'),
      parts: list('parts'),
      costs: list('costs'),
      thanks: list('thanks'),
      steps: list('steps'),
    },
  };
}

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();

/** The statements that labels mean: by their words, or else the likeliest of those on the line. `maybe` are the others there. */
export function meant(
  text: Text,
  kind: Kind,
  likely: (one: Statement) => number,
): { yes: Set<Statement>; maybe: Set<Statement> } {
  const yes = new Set<Statement>();
  const maybe = new Set<Statement>();
  for (const { line, words } of text.labels[kind]) {
    const here = text.statements.filter(
      (one) => text.features.get(one)?.length && line >= one.line && line <= one.lastLine,
    );
    const exact = words === undefined ? [] : here.filter((one) => plain(one.text).includes(plain(words)));
    for (const one of here) maybe.add(one);
    const best = (exact.length > 0 ? exact.slice(0, 1) : here).reduce<Statement | undefined>(
      (a, b) => (a && likely(a) >= likely(b) ? a : b),
      undefined,
    );
    if (best) yes.add(best);
  }
  return { yes, maybe };
}
