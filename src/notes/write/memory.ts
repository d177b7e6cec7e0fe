/** What was written from which words; kept beside the chapter so that grown notes add only what is new. */
import type { Statement } from '../draft.ts';
import type { ReadSource } from '../read/source.ts';
import { proseOf } from './prose.ts';
import type { Answers } from './questions.ts';

export interface Remembered {
  words: string;
  home: string;
  /** As it was written into the chapter; left out where it was not. */
  as?: string;
}

export interface Memory {
  version: 1;
  sources: { name: string; statements: Remembered[] }[];
  /** Answers that were used: "gallon: imperial". */
  answers?: Answers;
}

export function memoryOf(
  reads: readonly ReadSource[],
  statements: readonly Statement[],
  answers: Answers,
): Memory {
  const own = Map.groupBy(statements, ({ source }) => source);
  return {
    version: 1,
    sources: reads.map(({ source, masked }) => ({
      name: source.name,
      statements: (own.get(source.name) ?? []).map((one) => ({
        words: one.text,
        home: homeName(one),
        ...(inText(one) ? { as: proseOf(one, masked) } : {}),
      })),
    })),
    ...(Object.keys(answers).length > 0 ? { answers } : {}),
  };
}

/** Whether the statement's own words stand in the chapter's text. */
export const inText = (one: Statement): boolean =>
  one.home.kind === 'step' || (one.home.kind === 'prose' && one.kind !== 'row');

export const homeName = ({ home }: Statement): string =>
  home.kind === 'step' ? `step ${home.step}` : home.kind;

/** Memory as it stands in write-up.json; undefined where that is damaged. */
export function readMemory(text: string): Memory | undefined {
  try {
    const raw = JSON.parse(text) as Memory;
    const whole =
      raw.version === 1 &&
      Array.isArray(raw.sources) &&
      raw.sources.every(
        ({ name, statements }) =>
          typeof name === 'string' &&
          Array.isArray(statements) &&
          statements.every(({ words }) => typeof words === 'string'),
      );
    return whole ? raw : undefined;
  } catch {
    return undefined;
  }
}

export const memoryText = (memory: Memory): string =>
  `{"version":1,${memory.answers ? `"answers":${JSON.stringify(memory.answers)},` : ''}"sources":[\n${memory.sources
    .map(
      ({ name, statements }) =>
        `{"name":${JSON.stringify(name)},"statements":[\n${statements.map((one) => JSON.stringify(one)).join(',\n')}\n]}`,
    )
    .join(',\n')}\n]}\n`;
