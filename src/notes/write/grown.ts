/** New words of the notes put into a chapter that stands: beside what they follow where that is found, else at its end. */
import type { Draft, DraftStep, Statement } from '../draft.ts';
import { type Called, hazardsOf, readBack } from './called.ts';
import { type Around, bodyOf, NOT_PLACED, notPlacedLine } from './chapter.ts';
import type { Compared } from './compared.ts';
import { declaredIn } from './declared.ts';
import { apartAt, type Edit, edited } from './edits.ts';
import { inText } from './memory.ts';
import { proseOf } from './prose.ts';
import { Standing } from './standing.ts';
import { Titles } from './titles.ts';

export interface Placed {
  chapter: string;
  called: Called[];
  /** What could not go where it belongs, in words. */
  notes: string[];
}

/** @throws where the chapter is no MDX that can be read. */
export function placeIn(
  written: string,
  draft: Draft,
  news: Compared,
  answered: ReadonlySet<Statement>,
  around: Around,
): Placed {
  const { known, fresh, changed } = news;
  const standing = new Standing(written);
  const textOf = (one: Statement): string => proseOf(one, around.texts.get(one.source) ?? '');
  /** As it was written at its time, which may differ from how it would be written now. */
  const writtenAs = (one: Statement): string => known.get(one)?.as ?? textOf(one);
  const order = new Map(draft.statements.map((one, at) => [one, at]));
  const placeOf = (one: Statement): number => order.get(one) ?? -1;
  const edits: Edit[] = [];
  const called: Called[] = [];
  const notes: string[] = [];
  const last: Statement[] = [];
  const apart = new Set<Statement>();

  const hazardsFor = (
    step: DraftStep,
    title: string,
    without: ReadonlySet<Statement>,
  ): Map<string, string> => {
    const those = step.statements.filter((one) => !without.has(one));
    return hazardsOf(
      title,
      those.map((one) => readBack(textOf(one))),
    );
  };
  /** Declares in a step that stands what its new words call for; false where its tag is not as it was written. */
  const declare = (
    block: { start: number; title?: string },
    step: DraftStep,
    news: ReadonlySet<Statement>,
  ): boolean => {
    const title = block.title ?? step.title;
    const before = hazardsFor(step, title, news);
    const wanted = [...hazardsFor(step, title, new Set())].filter(([id]) => !before.has(id));
    const tag = declaredIn(written, block.start);
    if (!tag) return wanted.length === 0;
    const lacking = wanted.filter(([id]) => !tag.text.includes(`"${id}"`));
    if (lacking.length === 0) return true;
    const ids = lacking.map(([id]) => JSON.stringify(id)).join(', ');
    if (tag.list === undefined) edits.push({ start: tag.name, end: tag.name, text: ` hazards={[${ids}]}` });
    else edits.push({ start: tag.list, end: tag.list, text: `${tag.empty ? '' : ', '}${ids}` });
    for (const [hazard, words] of lacking)
      called.push({ step: title, hazard, words, place: `${step.source}:${step.line}` });
    return true;
  };

  const draftStep = (one: Statement): DraftStep | undefined =>
    one.home.kind === 'step' ? draft.steps[one.home.step - 1] : undefined;

  for (const [one, was] of changed) {
    const found = was.as && inText(one) ? standing.find(was.as) : undefined;
    const step = draftStep(one);
    if (found && (!step || found.block.name !== 'Step' || declare(found.block, step, new Set([one]))))
      edits.push({ start: found.start, end: found.end, text: textOf(one) });
    else if (one.home.kind !== 'proposal') {
      notes.push(
        `${one.source}:${one.line} was changed in the notes, and its words are no longer in the chapter as they were written. The new ones stand under "Not placed".`,
      );
      last.push(one);
    }
  }

  for (const one of answered) {
    const [was, now] = [known.get(one)?.as, textOf(one)];
    if (was === undefined || was === now || !inText(one)) continue;
    const found = standing.find(was);
    if (found) edits.push({ start: found.start, end: found.end, text: now });
    else
      notes.push(
        `${one.source}:${one.line} has a figure that your answer gives its unit, and its words are no longer in the chapter as they were written. Write the unit there yourself.`,
      );
  }

  for (const run of runsOf(draft.statements, fresh)) {
    const [first] = run;
    if (!first) continue;
    const step = draftStep(first);
    const others = step?.statements.filter((one) => known.has(one)) ?? [];
    const at = placeOf(first);
    const text = run.map(textOf).join(' ');
    if (others.length > 0 && step) {
      // Words that grew into a step: behind those of the step that they follow, or before those that follow them.
      const before = others.filter((one) => placeOf(one) < at).reverse();
      const after = others.filter((one) => placeOf(one) > at);
      const behind = firstFound(before, (one) => standing.find(writtenAs(one)));
      const ahead = behind ? undefined : firstFound(after, (one) => standing.find(writtenAs(one)));
      const found = behind ?? ahead;
      if (found && found.block.name === 'Step' && declare(found.block, step, new Set(run))) {
        const here = behind ? found.end : found.start;
        edits.push({ start: here, end: here, text: behind ? ` ${text}` : `${text} ` });
        continue;
      }
      notes.push(
        `${first.source}:${first.line} belongs to the step "${step.title}", which is no longer in the chapter as it was written. What is new of it stands at the end.`,
      );
      for (const one of run) apart.add(one);
      continue;
    }
    for (const one of run) apart.add(one);
  }

  // A row that came to a table brings the table's heading with it.
  const heads = new Set<Statement>();
  let head: Statement | undefined;
  for (const one of draft.statements) {
    if (one.kind !== 'row') head = undefined;
    else if (one.head) head = one;
    else if (fresh.has(one) && head) heads.add(head);
  }
  // What is a block of its own, in the order of the notes, behind the block that it follows.
  const part: Draft = {
    statements: draft.statements.filter(
      (one) => apart.has(one) || (fresh.has(one) && !inText(one)) || heads.has(one),
    ),
    steps: draft.steps.map((step) => ({
      ...step,
      statements: step.statements.filter((one) => apart.has(one)),
    })),
  };
  const made = bodyOf(
    { ...part, statements: part.statements.filter((one) => one.home.kind !== 'not placed') },
    around,
    new Titles(standing.titles),
  );
  called.push(...made.called);
  let place = standing.end;
  for (const block of made.blocks) {
    const [one] = block.from;
    if (one) place = placeFor(one, draft.statements, placeOf(one), known, standing, writtenAs);
    if (written.includes(block.text)) continue;
    edits.push({ start: place, end: place, text: apartAt(written, place, block.text) });
  }
  const lines = [...last, ...part.statements.filter((one) => one.home.kind === 'not placed')]
    .map(notPlacedLine)
    .filter((line) => !written.includes(line));
  if (lines.length > 0) edits.push(notPlacedEdit(standing, lines));
  return { chapter: edited(written, edits), called, notes };
}

/** Lines behind those of "Not placed", or such a list at the end. */
function notPlacedEdit({ text, end, blocks }: Standing, lines: readonly string[]): Edit {
  const heading = blocks.findIndex(({ start }) => start === end);
  if (heading < 0)
    return { start: end, end, text: apartAt(text, end, `${NOT_PLACED}\n\n${lines.join('\n')}`) };
  const list = blocks[heading + 1];
  const place = (list?.name === 'list' ? list : blocks[heading])?.end ?? text.length;
  return { start: place, end: place, text: `${list?.name === 'list' ? '\n' : '\n\n'}${lines.join('\n')}` };
}

/** New statements that follow each other and have one home. */
function runsOf(statements: readonly Statement[], fresh: ReadonlySet<Statement>): Statement[][] {
  const runs: Statement[][] = [];
  let before: Statement | undefined;
  for (const one of statements) {
    if (fresh.has(one) && inText(one)) {
      const same =
        before?.home.kind === one.home.kind &&
        before.source === one.source &&
        !(one.home.kind === 'step' && before.home.kind === 'step' && one.home.step !== before.home.step);
      if (same) runs.at(-1)?.push(one);
      else runs.push([one]);
      before = one;
    } else before = undefined;
  }
  return runs;
}

function firstFound<T>(list: readonly Statement[], find: (one: Statement) => T | undefined): T | undefined {
  for (const one of list.slice(0, 20)) {
    const found = find(one);
    if (found) return found;
  }
  return undefined;
}

/** Behind the block of the chapter in which the words before it stand; the end where none of them is found. */
function placeFor(
  one: Statement,
  statements: readonly Statement[],
  at: number,
  known: ReadonlyMap<Statement, unknown>,
  standing: Standing,
  writtenAs: (one: Statement) => string,
): number {
  const before = statements
    .slice(Math.max(0, at - 200), at)
    .filter((other) => other.source === one.source && known.has(other) && inText(other))
    .reverse();
  const found = firstFound(before, (other) => standing.find(writtenAs(other)));
  if (!found) return standing.end;
  let index = standing.blocks.indexOf(found.block);
  // Calculators and tables go with the step that they follow.
  while (/^(?:Timing|Premix|Gearing)$/.test(standing.blocks[index + 1]?.name ?? '')) index += 1;
  return standing.blocks[index]?.end ?? standing.end;
}
