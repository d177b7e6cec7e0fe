import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { readSeries } from '../record/read-series.ts';
import { recordingText } from '../record/recording-text.ts';
import { grouped } from '../record/report.ts';
import { meant } from '../record/text/words.ts';
import { type Command, UsageError } from './command.ts';

export const command: Command = {
  name: 'video-text',
  summary: 'write the text that goes under a chapter’s published recording',
  usage: `
npm run video-text -- CHAPTER [--site ADDRESS] [--limit CHARACTERS] [--content FOLDER]

  CHAPTER             the chapter's folder or number
  --site ADDRESS      where the series is published, such as https://example.org/van/ (default: series.yaml's address)
  --limit CHARACTERS  longest text that the place takes (default 5000)
  --content FOLDER    the author's folder (default content)

Who paid, what can injure, corrections of what could hurt and the address always stand in it; the rest gives way.
Only supporters who agreed are named. Exit code 1: errors in the files, or the limit is too small for what must be said.`,

  async run(args, io) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        site: { type: 'string' },
        limit: { type: 'string', default: '5000' },
        content: { type: 'string', default: process.env['OILWAY_CONTENT'] ?? 'content' },
      },
    });
    const [written] = positionals;
    if (written === undefined || positionals.length > 1) throw new UsageError('Name one chapter.');
    const limit = Number(values.limit);
    if (!Number.isInteger(limit) || limit < 1)
      throw new UsageError(`"${values.limit}" is no length. Write a number of characters.`);
    const folder = resolve(io.root, values.content);
    if (!existsSync(folder)) throw new UsageError(`There is no folder "${values.content}".`);
    const { series, problems } = await readSeries(folder, { root: io.root });
    if (!series || problems.some((one) => one.severity === 'error')) {
      io.err(grouped(problems, { root: io.root }));
      return 1;
    }
    const chapter = series.chapters.find((one) => one.id === written || String(one.number) === written);
    if (!chapter) {
      const ids = series.chapters.map((one) => one.id);
      throw new UsageError(`There is no chapter "${written}". ${meant(written, ids)}`);
    }
    const address = values.site ?? series.address;
    if (address === undefined)
      throw new UsageError(
        'Say where the series is published: --site https://example.org/van/, or address in series.yaml.',
      );
    if (!/^https?:$/.test(URL.parse(address)?.protocol ?? ''))
      throw new UsageError(`"${address}" is not a web address. Write it as https://example.org/van/.`);
    const made = recordingText(series, chapter, { address: address.replace(/\/*$/, '/'), limit });
    if (!made) {
      io.err(`What must be said is longer than ${limit} characters. Use a place that takes more.\n`);
      return 1;
    }
    io.out(made.text);
    io.err(
      `\n${made.length} of ${limit} characters${made.shortened.length > 0 ? `; ${made.shortened.join(', ')}` : ''}.\n`,
    );
    if (chapter.held) io.err('The chapter is held: its address leads nowhere until it is released.\n');
    return 0;
  },
};
