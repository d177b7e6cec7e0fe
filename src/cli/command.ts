import type { Readable, Writable } from 'node:stream';
import type { Disk } from './write-up-disk.ts';

/** One command of the tool: help as data, the work as a function that returns the exit code. */
export interface Command {
  name: string;
  /** One line for the list of commands. */
  summary: string;
  /** How it is called and each flag with its meaning; printed by `--help`, and tested as text. */
  usage: string;
  /** Resolves to 0 fine, 1 errors in the author's files, 2 wrong use of the command. */
  run(args: readonly string[], io: Io): Promise<number>;
}

/** What a command may touch of its surroundings; tests hand in their own. */
export interface Io {
  /** The project's root. */
  root: string;
  out(text: string): void;
  err(text: string): void;
  /** Whether somebody sits at the terminal and can be asked. */
  interactive: boolean;
  /** Where questions are asked; left out, the terminal. */
  terminal?: { input: Readable; output: Writable };
  /** Left out, the real one. */
  disk?: Disk;
}

/** Wrong use of a command; its words are all that the user sees. */
export class UsageError extends Error {}
