import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { stringify } from 'yaml';
import { EVENT, FAULT } from '../record/files/faults.ts';
import { hazard } from '../record/hazards/catalogue.ts';
import { type Fields, needed, optional } from '../record/read/field.ts';
import { choice, id, line } from '../record/read/kinds.ts';
import { starterList, starterLists } from '../record/suspects/catalogue.ts';
import { GROUPS, MARK, type StarterList } from '../record/suspects/starter-list.ts';
import { flagList } from './add-to-table.ts';
import { type Command, type Io, UsageError } from './command.ts';
import { asked, eventOf, nothing, write } from './fault-command.ts';

const FIELDS: Fields = {
  ...FAULT,
  chapter: EVENT.chapter,
  date: EVENT.date,
  severity: needed(EVENT.severity.kind, 'Severity', 'Whether the machine may be driven follows from it.'),
  text: needed(EVENT.text.kind, 'Text', 'What was seen when it was found, in a sentence or two.'),
  waits_for: EVENT.waits_for,
  like: optional(
    choice(starterLists.map((one) => one.id)),
    'Like',
    'The usual symptom whose starter list of suspects is written in: common practice, no source.',
  ),
  suspects: optional(line, 'Suspects', 'Suspects of your own, parted by semicolons.'),
  name: optional(id, 'Name', 'The file’s name; left out, made from the title.'),
};

/** A short name of the letters that ids are made of. */
const named = (words: string): string =>
  words
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');

export const command: Command = {
  name: 'open-fault',
  summary: 'open a fault, with suspects to begin the search from',
  usage: `
npm run open-fault -- [--dry-run] [flags]

${flagList(FIELDS, 'date')}

Usual symptoms: ${starterLists.map((one) => one.id).join(', ')}.

A file of its own is made in content/faults/; one that is there is never written over. At a terminal, what no flag answers is
asked. With an error nothing is written.`,

  async run(args, io) {
    const chosen = await withList(args, io);
    if (!chosen) return nothing(io);
    const { folder, row, dryRun } = await asked(
      chosen,
      FIELDS,
      ['title', 'symptom', 'system', 'chapter', 'date', 'severity', 'text', 'suspects', 'waits_for'],
      io,
    );
    if (!row) return nothing(io);
    const title = row.get('title') ?? '';
    const name = row.get('name') ?? named(title);
    if (name === '') throw new UsageError('No name can be made from the title. Give one with --name.');
    const file = `faults/${name}.md`;
    if (existsSync(join(folder, file)))
      throw new UsageError(
        `${file} is there already. Add a finding to it, or give another name with --name.`,
      );
    const list = starterList(row.get('like') ?? '');
    const code = await write({ folder, file, written: '', next: faultText(row, list), dryRun }, io);
    if (list && code === 0) io.out(cautions(list));
    return code;
  },
};

/** At a terminal the usual symptoms are offered first; the list's own words stand in where flags give none. */
async function withList(args: readonly string[], io: Io): Promise<string[] | undefined> {
  const has = (flag: string) => args.some((one) => one === flag || one.startsWith(`${flag}=`));
  let all = [...args];
  if (io.interactive && !has('--like')) {
    const { isCancel, select } = await import('@clack/prompts');
    const like = await select({
      message:
        'Is it one of the usual symptoms? Its list of suspects is written in: common practice, no source.',
      options: [
        { value: '', label: 'none of these' },
        ...starterLists.map((one) => ({ value: one.id, label: one.title })),
      ],
    });
    if (isCancel(like)) return undefined;
    if (like !== '') all = [...all, '--like', like];
  }
  const at = all.indexOf('--like');
  const list = starterList(
    at >= 0 ? (all[at + 1] ?? '') : (all.find((one) => one.startsWith('--like='))?.slice(7) ?? ''),
  );
  if (list && !io.interactive) {
    if (!has('--system')) all.push('--system', list.system);
    if (!has('--symptom')) all.push('--symptom', list.symptom);
  }
  return all;
}

/** The new fault's file: head, suspects group by group, the event that found it. */
export function faultText(row: ReadonlyMap<string, string>, list: StarterList | undefined): string {
  const head = Object.fromEntries(['title', 'system', 'symptom'].map((key) => [key, row.get(key) ?? '']));
  const own = (row.get('suspects') ?? '')
    .split(';')
    .map((one) => one.trim())
    .filter((one) => one !== '');
  const taken = new Set(list?.suspects.map((one) => one.id));
  const lines: string[] = [];
  for (const one of own) {
    let made = named(one) || 'suspect';
    while (taken.has(made)) made += '-2';
    taken.add(made);
    lines.push(suspect(made, one));
  }
  if (list) {
    lines.push(`  # "${list.title}". ${MARK} Strike out what does not apply.`);
    for (const group of GROUPS) {
      const of = list.suspects.filter((one) => one.group === group);
      if (of.length > 0) lines.push(`  # ${group}`, ...of.map((one) => suspect(one.id, one.name)));
    }
  }
  const suspects = lines.length === 0 ? [] : ['suspects:', ...lines];
  const event = stringify({ events: [eventOf(row, 'found')] }, { lineWidth: 0 });
  return ['---', stringify(head, { lineWidth: 0 }).trimEnd(), ...suspects, `${event.trimEnd()}\n---\n`].join(
    '\n',
  );
}

const suspect = (name: string, words: string): string =>
  `  - ${stringify({ id: name, name: words }, { collectionStyle: 'flow', lineWidth: 0 }).trim()}`;

function cautions({ id: of, suspects }: StarterList): string {
  const notes = [...new Set(suspects.flatMap((one) => one.hazards))].flatMap((one) => hazard(one) ?? []);
  const lines = notes.map((one) => `  ${one.signal}: ${one.title}`);
  return `Its checks can hurt; the site's page suspects/${of}/ has each check with its notes:\n${lines.join('\n')}\n`;
}
