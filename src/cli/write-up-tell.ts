import { basename } from 'node:path';
import type { ReadSource } from '../notes/read/source.ts';
import { reportOf } from '../notes/spans.ts';
import type { WrittenUp } from '../notes/write-up.ts';
import type { Io } from './command.ts';

/** So many hazards are listed one by one. */
const LISTED = 60;

/** What was made of the notes, for the terminal. */
export function tellOf(
  { draft, proposals, called }: Pick<WrittenUp, 'draft' | 'proposals' | 'called'>,
  reads: readonly ReadSource[],
  chapter: string,
  report: boolean,
  io: Io,
): void {
  const placed = draft.statements.filter((one) => one.home.kind === 'not placed').length;
  const kinds = [...Map.groupBy(proposals, ({ kind }) => kind)]
    .map(([kind, list]) => `${list.length} ${kind}`)
    .join(', ');
  const steps = draft.steps.filter(({ statements }) => statements.length > 0).length;
  io.out(
    `${steps} ${steps === 1 ? 'step' : 'steps'}, ${placed} not placed. Proposals: ${kinds || 'none'}.\n`,
  );
  for (const one of called.slice(0, LISTED))
    io.out(
      `  ${one.hazard}: "${one.words}" (${one.place}${one.step === '' ? ', outside the steps' : `, step "${one.step}"`})\n`,
    );
  if (called.length > LISTED) io.out(`  … and ${called.length - LISTED} more hazards in their steps.\n`);
  for (const { row } of proposals.filter(({ kind }) => kind === 'question'))
    io.out(`To answer in proposals.yaml: ${row['ask']}\n`);
  if (report)
    for (const { source } of reads) {
      const own = draft.statements.filter((one) => one.source === source.name);
      const byLine = new Map<number, string[]>();
      for (const { place, kind } of proposals.filter((one) => one.place.startsWith(`${source.name}:`))) {
        const line = Number(place.slice(source.name.length + 1));
        byLine.set(line, [...(byLine.get(line) ?? []), kind]);
      }
      io.out(`\n${source.name}\n${reportOf(source.text, own, byLine)}\n`);
    }
  io.out(`Next: read ${chapter}/chapter.mdx, then npm run write-up -- --take ${basename(chapter)}\n`);
}
