import { existsSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { exemptionsOf } from '../record/hazards/gate.ts';
import { type Reading, readSeries } from '../record/read-series.ts';
import { asJson, counted, grouped } from '../record/report.ts';
import { count } from '../record/text/words.ts';
import { type Command, UsageError } from './command.ts';

/** What `check` prints and its exit code, from what was read. */
export function told(
  { problems, counts, series }: Reading,
  options: { root: string; json: boolean },
): { text: string; code: number } {
  const code = problems.some((one) => one.severity === 'error') ? 1 : 0;
  if (options.json) return { text: asJson(problems), code };
  const exempt = exemptionsOf(series?.chapters ?? []).length;
  const ruledOut = exempt === 0 ? '' : `${count(exempt, 'hazard')} ruled out with a reason.\n`;
  if (problems.length > 0) return { text: grouped(problems, { root: options.root }) + ruledOut, code };
  const { chapters, steps, files } = counts;
  return {
    text: `${counted.problems(problems)} ${count(files, 'file')} read: ${count(chapters, 'chapter')}, ${count(steps, 'step')}.\n${ruledOut}`,
    code,
  };
}

export const command: Command = {
  name: 'check',
  summary: 'read the series and list every problem with its place',
  usage: `
npm run check -- [--json] [--content FOLDER]

  --json             the problems as JSON, for editors and scripts
  --content FOLDER   the author's folder (default content)

Exit code 0: nothing wrong, or warnings alone. 1: errors. 2: wrong use of the command.`,

  async run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: {
        json: { type: 'boolean', default: false },
        content: { type: 'string', default: process.env['OILWAY_CONTENT'] ?? 'content' },
      },
    });
    const folder = resolve(io.root, values.content);
    if (!existsSync(folder)) throw new UsageError(`There is no folder "${values.content}".`);
    const outside = relative(io.root, folder).startsWith('..');
    const root = outside ? dirname(folder) : io.root;
    const { text, code } = told(await readSeries(folder, { root }), { root, json: values.json });
    io.out(text);
    return code;
  },
};
