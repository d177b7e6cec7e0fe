/** What the photos command asks: pictures that are nearly the same, and who or what is seen. */
import { join, relative } from 'node:path';
import { ASKED, type Asked, type Entry, type Journal } from '../photos/import/journal.ts';
import { numbersIn, QUESTIONS, toBeMasked, unanswered } from '../photos/import/people.ts';
import { answerNear } from '../photos/import/take-in.ts';
import { count } from '../record/text/words.ts';
import { type Io, UsageError } from './command.ts';

/** Puts a question to whoever sits at the terminal. */
export type Ask = (question: string) => Promise<string>;

export async function settleNear(
  near: readonly Entry[],
  choice: string | undefined,
  where: { chapter: string; scratch: string; journal: Journal },
  io: Io,
  ask: Ask | undefined,
): Promise<void> {
  for (const entry of near) {
    let wanted = choice === undefined ? undefined : choice === 'take';
    if (wanted === undefined && ask) {
      const small = relative(io.root, join(where.scratch, `${entry.hash}.small.jpg`));
      const answer = await ask(
        `${entry.original} is nearly the same as ${entry.near} (see ${small}). Take it in too? [y/n, Enter to leave open] `,
      );
      if (/^y/i.test(answer)) wanted = true;
      else if (/^n/i.test(answer)) wanted = false;
    }
    if (wanted === undefined) {
      io.out(
        `${entry.original} is nearly the same as ${entry.near}; it waits. Answer with --near take or --near leave.\n`,
      );
      continue;
    }
    const settled = await answerNear(entry, wanted, where);
    io.out(`${entry.original} ${settled.state === 'taken' ? `taken in as ${settled.name}` : 'left out'}.\n`);
  }
}

export async function answerQuestions(
  flags: Partial<Record<Asked, string>>,
  journal: Journal,
  inFolder: readonly Entry[],
  io: Io,
  ask: Ask | undefined,
): Promise<void> {
  const open = new Set(unanswered(journal).map((one) => one.asked));
  for (const asked of ASKED) {
    let answer = flags[asked];
    while (answer !== undefined || (ask && open.has(asked))) {
      answer ??= await ask?.(
        `${QUESTIONS[asked].question} Numbers of the contact sheet, none, or Enter to leave it open: `,
      );
      if (answer === undefined || answer.trim() === '') break;
      const numbers = numbersIn(answer, inFolder.length);
      if (typeof numbers === 'string') {
        if (!ask || flags[asked] !== undefined) throw new UsageError(numbers);
        io.err(`${numbers}\n`);
        answer = undefined;
        continue;
      }
      const shown = numbers.flatMap((at) => inFolder[at - 1]?.name ?? []);
      // An answer is about pictures not yet answered for, and those that it names; it takes back nothing said before.
      const known = journal.answers.get(asked);
      const of = inFolder.map((one) => one.name).filter((name) => shown.includes(name) || !known?.has(name));
      await journal.add({ asked, of, shown });
      break;
    }
  }
}

export function tellOpen(journal: Journal, io: Io): void {
  for (const { asked, names } of unanswered(journal))
    io.out(
      `Not answered, ${QUESTIONS[asked].seen} in ${count(names.length, 'picture')}: --${asked} NUMBERS or none.\n`,
    );
}

/** Pictures with somebody or some place in them whose line was written before that was known. */
export function tellMasks(journal: Journal, lined: readonly string[], io: Io): void {
  const late = journal.inFolder().filter(({ name }) => toBeMasked(name, journal) && !lined.includes(name));
  for (const { name } of late)
    io.out(
      `${name} shows somebody or some place: see that its line has mask={["left top width height"]} or that they agreed.\n`,
    );
}
