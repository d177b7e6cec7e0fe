/** The reading of a long recording, shared among the machine's cores. What comes out is what one core would make of it. */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import {
  type Draft,
  inSteps,
  lastHeadingOf,
  type Overview,
  overviewOf,
  type Statement,
  statementsIn,
  statementsOf,
} from './draft.ts';
import type { Habits } from './figures/find.ts';
import type { Block, ReadSource } from './read/source.ts';

/** Shorter sources are read before another core has begun. */
const LONG = 1_000_000;
const MOST = 4;

/** What a core is given to read. */
export interface Share {
  read: ReadSource;
  overview: Overview;
}

/** What another core runs. */
const HELPER = new URL('./draft-share.ts', import.meta.url);

/** `cores` are those that may be used; the machine's, up to four. */
export async function sharedDraft(
  reads: readonly ReadSource[],
  habits: Habits,
  { cores = Math.min(MOST, availableParallelism()), long = LONG, helper = HELPER } = {},
): Promise<Draft> {
  const statements: Statement[] = [];
  for (const read of reads) {
    const parts = cores > 1 && read.masked.length >= long ? partsOf(read.blocks, cores) : [];
    const own = parts.length > 1 ? await amongCores(read, habits, parts, helper) : statementsOf(read, habits);
    for (const one of own) statements.push(one);
  }
  return inSteps(statements);
}

async function amongCores(
  read: ReadSource,
  habits: Habits,
  [own, ...others]: readonly Part[],
  program: URL,
): Promise<Statement[]> {
  // The others load what they need while the figures are found.
  const helpers = others.map(() => new Helper(program));
  const overview = overviewOf(read, habits);
  const first = shareOf(read, overview, own);
  // What stands like a heading stands in the first share, and over the others as well.
  const written = first.read.blocks.filter(({ kind }) => kind !== 'speech');
  const section = lastHeadingOf({ ...first.read, blocks: written });
  const under = { ...overview, ...(section === undefined ? {} : { section }) };
  const lists = helpers.map((helper, at) => helper.read(shareOf(read, under, others[at])));
  const statements = statementsIn(first.read, first.overview);
  for (const [at, list] of lists.entries())
    for (const one of await list) {
      one.block += others[at]?.from ?? 0;
      statements.push(one);
    }
  await Promise.all(helpers.map((helper) => helper.end()));
  return statements;
}

interface Part {
  from: number;
  to: number;
}

/**
 * Runs of blocks of about one length in characters; none ends where the next block goes on with its sentence. No runs at all where
 * headings stand further on, each of which tells of what follows it: that is how notes are written, and no recording.
 */
function partsOf(blocks: readonly Block[], count: number): Part[] {
  const end = blocks.at(-1)?.end ?? 0;
  const parts: Part[] = [];
  let from = 0;
  for (let at = 0; at < blocks.length; at++) {
    const last = at === blocks.length - 1;
    const full = (blocks[at]?.end ?? 0) >= (end * (parts.length + 1)) / count;
    if (!last && (!full || blocks[at]?.goesOn)) continue;
    parts.push({ from, to: at + 1 });
    from = at + 1;
  }
  const written = blocks.findLastIndex(({ kind }) => kind !== 'speech');
  return written < (parts[0]?.to ?? 0) ? parts : [];
}

function shareOf(read: ReadSource, { figures, ...known }: Overview, part: Part | undefined): Share {
  const blocks = part ? read.blocks.slice(part.from, part.to) : [];
  const [start, end] = [blocks[0]?.start ?? 0, blocks.at(-1)?.end ?? 0];
  return {
    read: { ...read, blocks, warnings: [] },
    overview: { ...known, figures: figures.filter((one) => one.start >= start && one.start < end) },
  };
}

/** Another core. Where it cannot be had, or fails, its share is read here. */
class Helper {
  readonly #worker: Worker | undefined;
  readonly #failed: Promise<undefined>;

  constructor(program: URL) {
    let fail: () => void = () => undefined;
    this.#failed = new Promise((done) => {
      fail = () => done(undefined);
    });
    try {
      this.#worker = new Worker(program);
      this.#worker.on('error', fail);
      this.#worker.on('exit', fail);
    } catch {
      fail();
    }
  }

  async read(share: Share): Promise<Statement[]> {
    const answer = new Promise<Statement[]>((done) => {
      this.#worker?.once('message', done);
    });
    this.#worker?.postMessage(share);
    return (await Promise.race([answer, this.#failed])) ?? statementsIn(share.read, share.overview);
  }

  async end(): Promise<void> {
    await this.#worker?.terminate();
  }
}
