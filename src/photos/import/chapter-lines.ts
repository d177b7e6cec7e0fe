import { existsSync } from 'node:fs';
import { appendFile, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type FitChapter, stepThatFits } from './fitting.ts';
import type { Entry, Journal } from './journal.ts';
import { toBeMasked } from './people.ts';
import { type LineFacts, photoLines } from './photo-lines.ts';

export interface LinesOf {
  /** The chapter's folder. */
  folder: string;
  /** Undefined where the chapter's file could not be read as one. */
  chapter?: FitChapter;
  /** When its recording began, on the wall's clock. */
  began?: string;
  credit?: string;
  permission?: string;
}

/**
 * Adds a `<Photo>` line for each picture taken in that has none, and gives the names. Added at the file's end, never
 * written over: what an author has open in an editor stays as it is.
 */
export async function addLines(
  journal: Journal,
  { folder, chapter, began, credit, permission }: LinesOf,
): Promise<string[]> {
  const path = join(folder, 'chapter.mdx');
  const text = await readFile(path, 'utf8');
  const wanting = journal
    .inFolder()
    .filter(({ name }) => !journal.lined.has(name) && !text.includes(name) && existsSync(join(folder, name)));
  if (wanting.length === 0) return [];
  const facts = (entry: Entry): LineFacts => {
    const step =
      began === undefined ? undefined : stepThatFits(entry.takenAt.wall, began, chapter?.steps ?? []);
    return {
      masked: toBeMasked(entry.name, journal),
      ...(credit !== undefined && { credit }),
      ...(permission !== undefined && { permission }),
      ...(step && { step }),
    };
  };
  const lines = photoLines(
    chapter?.number ?? 0,
    wanting.map((entry) => ({ entry, facts: facts(entry) })),
  );
  const names = wanting.map((one) => one.name);
  await appendFile(path, `${text.endsWith('\n') ? '' : '\n'}\n${lines}`);
  await journal.add({ lined: names });
  return names;
}
