import { readFileSync, statSync } from 'node:fs';
import type { Problem } from '../problem.ts';
import { Report } from '../report-to.ts';
import { Lines } from '../text/lines.ts';
import { type Limits, textOf } from '../text/text-file.ts';
import { count } from '../text/words.ts';

/** One text file as read, with everything that was worked out from its text alone. */
export class Source {
  readonly lines: Lines | undefined;
  readonly problems: Problem[];
  /** Whether it holds nothing but space. */
  readonly empty: boolean;
  stamp: string;
  readonly #made = new Map<string, { value: unknown; problems: Problem[] }>();

  constructor(lines: Lines | undefined, problems: Problem[], stamp: string) {
    this.lines = lines;
    this.problems = problems;
    this.stamp = stamp;
    this.empty = lines !== undefined && lines.text.trim() === '';
  }

  /** What `make` gives for this text; made once for a key, its problems told at every reading. */
  derive<T>(key: string, report: Report, make: (lines: Lines, report: Report) => T): T | undefined {
    if (!this.lines) return undefined;
    let known = this.#made.get(key);
    if (!known) {
      const own = new Report();
      known = { value: make(this.lines, own), problems: own.problems };
      // Settings change seldom; what was made under the last ones is not worth keeping.
      if (this.#made.size > 8) this.#made.clear();
      this.#made.set(key, known);
    }
    report.problems.push(...known.problems);
    return known.value as T;
  }
}

/** The author's text files, read again only where size or time of change differ. */
export class FileStore {
  readonly #limits: Limits;
  readonly #sources = new Map<string, Source>();

  constructor(limits: Limits) {
    this.#limits = limits;
  }

  /** The file, or undefined where there is none. Its problems are told to `report`. */
  open(path: string, file: string, report: Report): Source | undefined {
    const source = this.#read(path, file);
    if (source) report.problems.push(...source.problems);
    else this.#sources.delete(path);
    return source;
  }

  /** The text of a file that was opened before. */
  peek(path: string): Lines | undefined {
    return this.#sources.get(path)?.lines;
  }

  #read(path: string, file: string): Source | undefined {
    const facts = statSync(path, { bigint: true, throwIfNoEntry: false });
    if (!facts) return undefined;
    const stamp = `${facts.mtimeNs} ${facts.ctimeNs} ${facts.size}`;
    const before = this.#sources.get(path);
    if (before?.stamp === stamp) return before;
    const report = new Report();
    const text = this.#text(path, file, facts.isFile(), Number(facts.size), report);
    if (text !== undefined && before?.lines?.text === text) {
      before.stamp = stamp;
      return before;
    }
    const source = new Source(text === undefined ? undefined : new Lines(file, text), report.problems, stamp);
    this.#sources.set(path, source);
    return source;
  }

  #text(path: string, file: string, isFile: boolean, size: number, report: Report): string | undefined {
    if (!isFile)
      return report.add(
        'file/unreadable',
        { file },
        'A file is expected here and a folder stands in its place. Rename it.',
      );
    if (size > this.#limits.bytes)
      return report.add(
        'file/too-large',
        { file },
        `The file has ${count(size, 'byte')}; ${this.#limits.bytes} are read at most. Split it, or look whether it is the right one.`,
      );
    try {
      return textOf(readFileSync(path), file, report);
    } catch (error) {
      const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
      return report.add(
        'file/unreadable',
        { file },
        `The file cannot be read (${reason}). Look at its permissions.`,
      );
    }
  }
}
