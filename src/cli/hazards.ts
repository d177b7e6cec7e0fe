import { existsSync, readFileSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { cancel, intro, isCancel, note, outro, select, text } from '@clack/prompts';
import { hazardIds } from '../record/hazards/catalogue.ts';
import { exemptionsOf, type Finding, gateFindings } from '../record/hazards/gate.ts';
import {
  labelledRows,
  type Measured,
  measure,
  precision,
  recall,
  type Score,
} from '../record/hazards/measure.ts';
import { noteText } from '../record/hazards/note-text.ts';
import { readSeries } from '../record/read-series.ts';
import type { Chapter } from '../record/types.ts';
import { type Command, type Io, UsageError } from './command.ts';

const UNTOUCHED = 'tests/record/hazards/labelled/untouched.jsonl';

/** The attribute to write in a step: `notHazard={{"noise": "the silencer is on"}}`. */
export const asAttributes = (declared: readonly string[], ruledOut: ReadonlyMap<string, string>): string =>
  [
    declared.length > 0 ? `hazards={${JSON.stringify(declared)}}` : '',
    ruledOut.size > 0
      ? `notHazard={{${[...ruledOut].map(([id, why]) => `${JSON.stringify(id)}: ${JSON.stringify(why)}`).join(', ')}}}`
      : '',
  ]
    .filter((one) => one !== '')
    .join(' ');

const placeOf = ({ place: { file, line, column } }: Finding) =>
  [file, line, column].filter((part) => part !== undefined).join(':');

/** A chapter as the gate reads it, with what its recording says. */
const spokenWith = (chapter: Chapter) => ({
  ...chapter,
  spoken: { file: chapter.file.replace(/chapter\.mdx$/, 'captions.vtt'), cues: chapter.cues },
});

/** Every finding as a block of text: place, words, what to write. */
export function asList(findings: readonly Finding[], ruledOut: number): string {
  const count = findings.length === 1 ? '1 finding' : `${findings.length} findings`;
  const exempt = ruledOut === 1 ? '1 hazard ruled out' : `${ruledOut} hazards ruled out`;
  const lines = findings.map((one) => `${placeOf(one)}\n  ${one.message}\n`);
  return `${lines.join('')}${count}, ${exempt} with a reason.\n`;
}

const share = (value: number | undefined) => (value === undefined ? '    –' : value.toFixed(3).padStart(5));

const row = (name: string, score: Score) =>
  `${name.padEnd(24)}${share(recall(score))}${String(score.heard).padStart(6)}/${String(score.heard + score.missed).padEnd(6)}${share(precision(score))}${String(score.right).padStart(6)}/${score.right + score.wrong}`;

/** The measurement as a table; recall with heard of asked, precision with right of called. */
export function asTable(measured: Measured): string {
  return [
    `${measured.sentences} labelled sentences`,
    `${'hazard'.padEnd(24)}recall  heard     precision  right`,
    ...hazardIds.flatMap((id) => {
      const score = measured.byHazard.get(id);
      return score === undefined ? [] : [row(id, score)];
    }),
    row('dangers and warnings', measured.grave),
    row('cautions', measured.cautions),
    '',
  ].join('\n');
}

async function walk(findings: readonly Finding[], chapters: readonly Chapter[], io: Io): Promise<void> {
  intro(`${findings.length} findings. Nothing is written to your files: what to write stands at the end.`);
  const answers = new Map<string, { declared: string[]; ruledOut: Map<string, string> }>();
  for (const [i, finding] of findings.entries()) {
    if (finding.kind === 'idle exemption' || finding.kind === 'both') {
      note(finding.message, placeOf(finding));
      continue;
    }
    note(noteText([finding.hazard.id]), `${i + 1} of ${findings.length}  ${placeOf(finding)}`);
    const answer = await select({
      message: `The words "${finding.words}" point to it. What applies?`,
      options: [
        { value: 'declare', label: 'It applies: show the note' },
        { value: 'rule out', label: 'It does not apply: say why' },
        { value: 'later', label: 'Decide later' },
      ],
    });
    if (isCancel(answer)) {
      cancel('Stopped. What was decided so far follows.');
      break;
    }
    if (answer === 'later') continue;
    const where =
      finding.step === undefined ? placeOf(finding) : `${finding.place.file}, step ${finding.step}`;
    const kept = answers.get(where) ?? { declared: [], ruledOut: new Map<string, string>() };
    if (answer === 'declare') {
      kept.declared.push(finding.hazard.id);
    } else {
      const why = await text({
        message: 'Why does it not apply?',
        validate: (value) =>
          value?.trim() ? undefined : 'Write the reason: readers of the code will ask for it.',
      });
      if (isCancel(why)) break;
      kept.ruledOut.set(finding.hazard.id, why.trim());
    }
    answers.set(where, kept);
  }
  outro('Write these beside what the steps have already:');
  for (const [where, { declared, ruledOut }] of answers)
    io.out(`${where}\n  ${asAttributes(declared, ruledOut)}\n`);
  io.out(asList([], exemptionsOf(chapters).length));
}

export const command: Command = {
  name: 'hazards',
  summary: 'walk through steps whose words point to a hazard without its note',
  usage: `
npm run hazards -- [--content FOLDER] [--list] [--measure] [--set FILE]

  --content FOLDER   the author's folder (default content)
  --list             print every finding instead of asking about each; so it does where nobody sits at the terminal
  --measure          recall and precision of the gate, in all and by hazard, on the sentences it was never tuned on
  --set FILE         other labelled sentences for --measure, one JSON object a line

Nothing is written to your files. Exit code 0: every danger and warning has its note. 1: some have not.
2: wrong use of the command.`,

  async run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: {
        content: { type: 'string', default: process.env['OILWAY_CONTENT'] ?? 'content' },
        list: { type: 'boolean', default: false },
        measure: { type: 'boolean', default: false },
        set: { type: 'string' },
      },
    });
    if (values.set !== undefined && !values.measure) throw new UsageError('--set goes with --measure.');
    if (values.measure) {
      const file = resolve(io.root, values.set ?? UNTOUCHED);
      if (!existsSync(file)) throw new UsageError(`There is no file "${values.set ?? UNTOUCHED}".`);
      io.out(asTable(measure(labelledRows(readFileSync(file, 'utf8')))));
      return 0;
    }
    const folder = resolve(io.root, values.content);
    if (!existsSync(folder)) throw new UsageError(`There is no folder "${values.content}".`);
    const root = relative(io.root, folder).startsWith('..') ? dirname(folder) : io.root;
    const { series } = await readSeries(folder, { root });
    if (!series) {
      io.err('The series cannot be read yet. Run npm run check first.\n');
      return 1;
    }
    const findings = series.chapters.flatMap((chapter) => gateFindings(spokenWith(chapter)));
    if (values.list || !io.interactive || findings.length === 0)
      io.out(asList(findings, exemptionsOf(series.chapters).length));
    else await walk(findings, series.chapters, io);
    return findings.some((one) => one.kind === 'missing' || one.kind === 'both') ? 1 : 0;
  },
};
