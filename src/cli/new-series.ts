import { existsSync } from 'node:fs';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { stringify } from 'yaml';
import { isCurrency } from '../record/money/currencies.ts';
import { tableHeadings } from '../record/tables.ts';
import { type Command, type Io, UsageError } from './command.ts';

interface Answers {
  title: string;
  by: string;
  machine: string;
  currency: string;
  language: string;
}

const QUESTIONS: { flag: keyof Answers; asks: string; start?: string }[] = [
  { flag: 'title', asks: 'What is the series called?' },
  { flag: 'by', asks: 'Whose name stands under it?' },
  { flag: 'machine', asks: 'Which machine is it?' },
  { flag: 'currency', asks: 'Home currency, as three letters?', start: 'EUR' },
  { flag: 'language', asks: 'Language, as in en-GB?', start: 'en-GB' },
];

async function ask(given: Partial<Answers>, io: Io): Promise<Answers | undefined> {
  const answers: Partial<Answers> = { ...given };
  for (const { flag, asks, start } of QUESTIONS) {
    if (answers[flag] !== undefined) continue;
    if (!io.interactive) {
      if (start === undefined)
        throw new UsageError(`--${flag} is missing, and there is nobody at the terminal to ask.`);
      answers[flag] = start;
      continue;
    }
    const { isCancel, text } = await import('@clack/prompts');
    const said = await text({
      message: asks,
      ...(start ? { initialValue: start } : {}),
      validate: (one) => (one?.trim() ? undefined : 'Write a few words.'),
    });
    if (isCancel(said)) return undefined;
    answers[flag] = said.trim();
  }
  return answers as Answers;
}

/** The files of a new series: as little as the check accepts, each with the headings that it may hold. */
function starter({ title, by, machine, currency, language }: Answers, today: string): Map<string, string> {
  const files = new Map<string, string>();
  files.set(
    'series.yaml',
    stringify({
      title,
      summary: `The rebuild of a ${machine}, written down as it goes.`,
      byline: by,
      language,
      home_currency: currency,
      units_first: 'metric',
      publish_ledger: 'lines',
    }),
  );
  files.set(
    'machine.yaml',
    `${stringify({ name: machine })}# One section a system, one line a value. Every value has its unit; source is maker's book, measured or told.\n${stringify(
      {
        engine: {
          title: 'Engine',
          cylinders: { label: 'Cylinders', as_built: '1', source: 'measured' },
        },
      },
    )}`,
  );
  files.set(
    'chapters/01-the-first-evening/chapter.mdx',
    `---
title: The first evening
date: ${today}
summary: What stands in the workshop, and what is to become of it.
held: true
---

This chapter is held: it shows while you write with \`npm start\`, and is in nothing that is built. Take the line
\`held: true\` away to release it.

<Step title="Write down what came home" tools={["notebook"]}
  expect="A list that tells what is there, what is missing and what is broken.">
Walk round the machine once before anything is taken off, and write down what you see.
</Step>
`,
  );
  for (const [name, headings] of Object.entries(tableHeadings())) files.set(name, `${headings.join(',')}\n`);
  return files;
}

/** A name that is not taken: "content-set-aside", "content-set-aside-2" … */
function free(root: string): string {
  for (let count = 1; ; count += 1) {
    const name = count === 1 ? 'content-set-aside' : `content-set-aside-${count}`;
    if (!existsSync(join(root, name))) return name;
  }
}

export const command: Command = {
  name: 'new-series',
  summary: 'set the present content/ aside and start a series of your own',
  usage: `
npm run new-series -- [--title TEXT] [--by NAME] [--machine NAME] [--currency CODE] [--language TAG]

What is in content/ is moved to content-set-aside/ as it is; nothing is deleted or changed. What no flag answers is asked.`,

  async run(args, io) {
    const text = { type: 'string' } as const;
    const { values } = parseArgs({
      args: [...args],
      options: { title: text, by: text, machine: text, currency: text, language: text },
    });
    if (values.currency !== undefined && !isCurrency(values.currency)) {
      throw new UsageError(
        `"${values.currency}" is not a currency of ISO 4217. Write three capital letters, such as EUR.`,
      );
    }
    const answers = await ask(values, io);
    if (!answers) {
      io.out('Nothing was changed.\n');
      return 0;
    }
    // The day a folder is made is the one date that only the clock can give; nothing published reads it.
    const today = new Date().toISOString().slice(0, 10);
    const made = join(io.root, '.oilway', 'new-content');
    await rm(made, { recursive: true, force: true });
    for (const [name, content] of starter(answers, today)) {
      await mkdir(dirname(join(made, name)), { recursive: true });
      await writeFile(join(made, name), content, { flag: 'wx' });
    }
    const content = join(io.root, 'content');
    const aside = free(io.root);
    if (existsSync(content)) await rename(content, join(io.root, aside));
    try {
      await rename(made, content);
    } catch (error) {
      if (existsSync(join(io.root, aside))) await rename(join(io.root, aside), content);
      throw error;
    }
    io.out(
      `Your series is in content/. What was there before is in ${aside}/, untouched.\nStart writing: npm start\n`,
    );
    return 0;
  },
};
