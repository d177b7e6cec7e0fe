/**
 * What was done with each original, one line a fact, so that a run goes on where the last one stopped. A line that a killed
 * process left torn is passed over: its picture is simply done again.
 */
import { existsSync } from 'node:fs';
import { appendFile, mkdir, readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { TakenAt } from './taken-at.ts';

/** People and places that may be seen in a picture, and that the author is asked about. */
export const ASKED = ['faces', 'plates', 'fronts'] as const;
export type Asked = (typeof ASKED)[number];

export interface Entry {
  /** SHA-256 of the original. */
  hash: string;
  /**
   * writing: about to get its name; taken: in the chapter's folder; near: nearly the same as another, waiting for an answer;
   * left: not wanted.
   */
  state: 'writing' | 'taken' | 'near' | 'left';
  /** File name in the chapter's folder; of "near", the name it would get. */
  name: string;
  /** File name of the original. */
  original: string;
  likeness: string;
  takenAt: TakenAt;
  width: number;
  height: number;
  /** Name of the picture that it nearly is. */
  near?: string;
}

type Fact = Entry | { lined: string[] } | { asked: Asked; of: string[]; shown: string[] };

export class Journal {
  readonly #path: string;
  /** The last state of each original, by hash. */
  readonly entries = new Map<string, Entry>();
  /** Names that have their line in the chapter. */
  readonly lined = new Set<string>();
  /** For each question the names asked about, and whether each shows it. */
  readonly answers = new Map<Asked, Map<string, boolean>>(ASKED.map((one) => [one, new Map()]));

  private constructor(path: string) {
    this.#path = path;
  }

  /** @param folder the chapter's folder, where "writing" tells by the file whether it came to be */
  static async open(path: string, folder: string): Promise<Journal> {
    const journal = new Journal(path);
    await mkdir(dirname(path), { recursive: true });
    const text = await readFile(path, 'utf8').catch(() => '');
    // A torn last line must not swallow the next one.
    if (text !== '' && !text.endsWith('\n')) await appendFile(path, '\n');
    for (const line of text.split('\n')) {
      try {
        if (line !== '') journal.#take(JSON.parse(line));
      } catch {
        // Torn; see above.
      }
    }
    const taken = new Set(
      [...journal.entries.values()].filter((one) => one.state === 'taken').map((one) => one.name),
    );
    for (const entry of [...journal.entries.values()]) {
      if (entry.state !== 'writing') continue;
      if (existsSync(join(folder, entry.name)) && !taken.has(entry.name))
        await journal.add({ ...entry, state: 'taken' });
      else journal.entries.delete(entry.hash);
    }
    return journal;
  }

  async add(fact: Fact): Promise<void> {
    await appendFile(this.#path, `${JSON.stringify(fact)}\n`);
    this.#take(fact);
  }

  #take(fact: Fact): void {
    if ('lined' in fact) for (const name of fact.lined) this.lined.add(name);
    else if ('asked' in fact) {
      const answers = this.answers.get(fact.asked);
      for (const name of fact.of) answers?.set(name, fact.shown.includes(name));
    } else this.entries.set(fact.hash, fact);
  }

  /** Pictures in the chapter's folder by the journal, in the order of time. */
  inFolder(): Entry[] {
    return [...this.entries.values()]
      .filter((one) => one.state === 'taken')
      .sort((a, b) => (a.name < b.name ? -1 : 1));
  }
}
