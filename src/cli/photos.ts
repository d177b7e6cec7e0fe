import { existsSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { join, relative, resolve, sep } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { parseArgs } from 'node:util';
import { writeWhole } from '../photos/cache.ts';
import { addLines } from '../photos/import/chapter-lines.ts';
import { contactSheet, type SheetPicture } from '../photos/import/contact-sheet.ts';
import { findPictures } from '../photos/import/find-pictures.ts';
import { fitsByChapter } from '../photos/import/fits-by-chapter.ts';
import { chapterThatFits, type FitChapter, stepThatFits } from '../photos/import/fitting.ts';
import { type Entry, Journal } from '../photos/import/journal.ts';
import { type TakenIn, takeIn } from '../photos/import/take-in.ts';
import { clockCorrection } from '../photos/import/taken-at.ts';
import { readSeries } from '../record/read-series.ts';
import { count, meant } from '../record/text/words.ts';
import { type Command, type Io, UsageError } from './command.ts';
import { type Ask, answerQuestions, settleNear, tellMasks, tellOpen } from './photos-questions.ts';
import { progress } from './progress.ts';

const OPTIONS = {
  chapter: { type: 'string' },
  longest: { type: 'string', default: '2400' },
  clock: { type: 'string', default: '+0:00' },
  'recording-began': { type: 'string' },
  credit: { type: 'string' },
  permission: { type: 'string' },
  near: { type: 'string' },
  faces: { type: 'string' },
  plates: { type: 'string' },
  fronts: { type: 'string' },
  content: { type: 'string', default: process.env['OILWAY_CONTENT'] ?? 'content' },
} as const;

export const command: Command = {
  name: 'photos',
  summary: 'take phone photos into a chapter: clean, small, named by time, each once',
  usage: `
npm run photos -- FOLDER [--chapter ID] [more]

  FOLDER                 where the camera's files are; they are only read
  --chapter ID           the chapter's folder or number; left out, the chapters that fit by day are listed
  --longest PIXELS       longest edge of what is kept (default 2400)
  --clock CORRECTION     added to a camera's wrong clock: +1:02:10, -0:45 or -1d
  --recording-began TIME when the chapter's recording began, "2026-05-02 14:00:05"; proposes steps by their times
  --credit NAME          who took them, if it was not you, and with it
  --permission WORDS     how they agreed: "letter of 2 May 2026"
  --near take | leave    what to do with pictures that are nearly the same as another (asked at a terminal)
  --faces NUMBERS        pictures of the contact sheet that show a face: "3 7-9", or none
  --plates NUMBERS       that show a number plate
  --fronts NUMBERS       that show a house front, a street sign or a view from a window
  --content FOLDER       the author's folder (default content)

Place, serial numbers and names are dropped; the time is kept. Lines with an empty alt are added at the chapter's end, and the
check does not pass them until you say what is seen. Run it again after a stop: it goes on where it was.
Exit code 0: all were taken in. 1: some could not be; each is listed. 2: wrong use of the command.`,

  run: (args, io) => photos(args, io, io.interactive ? atTerminal : undefined),
};

async function atTerminal(question: string): Promise<string> {
  const lines = createInterface({ input: process.stdin, output: process.stderr });
  try {
    return await lines.question(question);
  } finally {
    lines.close();
  }
}

/** @param ask puts a question to whoever sits at the terminal; without it nothing is asked, and what is open is listed */
export async function photos(args: readonly string[], io: Io, ask?: Ask): Promise<number> {
  const { values, positionals } = parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true });
  const from = positionals[0];
  if (from === undefined || positionals.length > 1) throw new UsageError('Name one folder of photos.');
  const folder = resolve(io.root, from);
  if (!existsSync(folder)) throw new UsageError(`There is no folder "${from}".`);
  const content = resolve(io.root, values.content);
  if (`${folder}${sep}`.startsWith(`${content}${sep}`))
    throw new UsageError(`"${from}" lies in ${values.content}. Name the folder with the camera's own files.`);
  const clock_s = clockCorrection(values.clock);
  if (clock_s === undefined)
    throw new UsageError(`"${values.clock}" is no correction. Write +1:02:10, -0:45 or -1d.`);
  const longest_px = Number(values.longest);
  if (!Number.isInteger(longest_px) || longest_px < 200 || longest_px > 12_000)
    throw new UsageError(`"${values.longest}" is no size. Write pixels between 200 and 12000.`);
  const began = values['recording-began']?.trim().replace(' ', 'T');
  if (began !== undefined && !/^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d)?$/.test(began))
    throw new UsageError(`"${values['recording-began']}" is no time. Write it as "2026-05-02 14:00:05".`);
  if (values.near !== undefined && values.near !== 'take' && values.near !== 'leave')
    throw new UsageError(`--near is take or leave, not "${values.near}".`);
  if (values.credit !== undefined && values.permission === undefined)
    throw new UsageError(
      'Pictures of somebody else need --permission: how they agreed, such as "letter of 2 May 2026".',
    );

  const { series } = await readSeries(content, { root: io.root });
  const chapters: FitChapter[] = series?.chapters ?? [];
  const { pictures, others } = await findPictures(folder);
  if (pictures.length === 0) {
    io.out(`No pictures in ${from}.\n`);
    return 0;
  }
  if (values.chapter === undefined) return propose(pictures, chapters, clock_s, from, io);

  const id = chapterId(values.chapter, chapters, content);
  const chapter = join(content, 'chapters', id);
  const scratch = join(io.root, '.oilway', 'taken-in', id);
  const journal = await Journal.open(join(scratch, 'journal.jsonl'), chapter);
  const result = await takeIn(pictures, {
    chapter,
    scratch,
    journal,
    longest_px,
    clock_s,
    progress: progress(io, 'Photos'),
  });
  if (others.length > 0) io.out(`${count(others.length, 'other file')} left alone: ${list(others)}.\n`);
  tellTaken(result, id, io);
  await settleNear(result.near, values.near, { chapter, scratch, journal }, io, ask);

  const fits = fitWords(id, chapters, began);
  const sheet = await writeSheet(id, journal, scratch, fits, io);
  await answerQuestions(values, journal, sheet.inFolder, io, ask);
  const here = chapters.find((one) => one.id === id);
  const lined = await addLines(journal, {
    folder: chapter,
    ...(here && { chapter: here }),
    ...(began !== undefined && { began }),
    ...(values.credit !== undefined && { credit: values.credit }),
    ...(values.permission !== undefined && { permission: values.permission }),
  });
  if (lined.length > 0)
    io.out(`${count(lined.length, 'line')} added at the end of chapters/${id}/chapter.mdx. Say in each alt what is seen.
`);
  tellMasks(journal, lined, io);
  tellOpen(journal, io);
  return result.failed.length > 0 || result.full ? 1 : 0;
}

const list = (names: readonly string[]): string =>
  names.length <= 5 ? names.join(', ') : `${names.slice(0, 4).join(', ')} and ${names.length - 4} more`;

function chapterId(written: string, chapters: readonly FitChapter[], content: string): string {
  const byNumber = /^\d+$/.test(written) ? chapters.find((one) => one.number === Number(written)) : undefined;
  const id = byNumber?.id ?? written;
  if (chapters.some((one) => one.id === id)) return id;
  // A chapter with errors is still a folder to put pictures into.
  if (/^[\w-]+$/.test(id) && existsSync(join(content, 'chapters', id, 'chapter.mdx'))) return id;
  throw new UsageError(
    `There is no chapter "${written}". ${meant(
      written,
      chapters.map((one) => one.id),
    )}`,
  );
}

async function propose(
  pictures: readonly string[],
  chapters: readonly FitChapter[],
  clock_s: number,
  from: string,
  io: Io,
): Promise<number> {
  const fits = await fitsByChapter(pictures, chapters, clock_s);
  if (fits.length === 0) {
    io.out('There is no chapter yet to put pictures into.\n');
    return 1;
  }
  const lines = fits.map(({ chapter, pictures: some }) => {
    const days = [...new Set(some.map((one) => one.takenAt.wall.slice(0, 10)))].sort();
    const when = days.length === 1 ? `of ${days[0]}` : `of ${days[0]} to ${days.at(-1)}`;
    return `${count(some.length, 'picture')} ${when}: ${chapter.id} (${chapter.date})\n  npm run photos -- ${from} --chapter ${chapter.id}`;
  });
  io.out(`By their days they fit:\n\n${lines.join('\n')}\n\nNothing was taken in.\n`);
  return 0;
}

function tellTaken({ taken, same, failed, full }: TakenIn, id: string, io: Io): void {
  io.out(`${count(taken.length, 'picture')} taken into chapters/${id}.\n`);
  if (same.length > 0)
    io.out(
      `${count(same.length, 'file')} taken in before or twice the same: ${list(same.map((one) => one.original))}.\n`,
    );
  for (const { original, why } of failed) io.out(`${original} ${why}\n`);
  if (full)
    io.err(
      'The disk is full. What was taken in is whole, nothing is half there. Make room and run the command again: it goes on from here.\n',
    );
}

/** What a picture fits, in words: a step of this chapter, or another chapter by its day. */
function fitWords(id: string, chapters: readonly FitChapter[], began: string | undefined) {
  const here = chapters.find((one) => one.id === id);
  return (entry: Entry): string | undefined => {
    const step = began === undefined ? undefined : stepThatFits(entry.takenAt.wall, began, here?.steps ?? []);
    if (step && here) return `step ${here.number}.${step.number}, ${step.title}`;
    const other = chapterThatFits(entry.takenAt.wall, chapters);
    return other && other.id !== id ? `chapter ${other.id} by its day` : undefined;
  };
}

async function writeSheet(
  id: string,
  journal: Journal,
  scratch: string,
  fits: (entry: Entry) => string | undefined,
  io: Io,
): Promise<{ inFolder: Entry[] }> {
  const inFolder = journal.inFolder();
  const near = [...journal.entries.values()].filter((one) => one.state === 'near');
  const pictures = [...inFolder, ...near].map((entry, at): SheetPicture => {
    const fit = fits(entry);
    return {
      number: at + 1,
      entry,
      small: `${entry.hash}.small.jpg`,
      ...(fit !== undefined && { fits: fit }),
    };
  });
  await mkdir(scratch, { recursive: true });
  const path = join(scratch, 'contact-sheet.html');
  await writeWhole(path, contactSheet(id, pictures));
  io.out(`Contact sheet: ${relative(io.root, path)}\n`);
  return { inFolder };
}
