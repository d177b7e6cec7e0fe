/** Homes put right once the whole is known: what would stand nowhere, or mean nothing where it stands, is "not placed". */
import type { Draft, Statement } from '../draft.ts';
import type { ReadSource } from '../read/source.ts';

/** `told` are the statements that a proposal was made of, `title` the heading that became the chapter's. */
export function settleHomes(
  draft: Draft,
  reads: readonly ReadSource[],
  told: ReadonlySet<Statement>,
  title: Statement | undefined,
): void {
  let strays = 0;
  let near: Statement | undefined;
  for (const one of draft.statements) {
    if (one.home.kind === 'proposal' && !told.has(one)) goBack(one, near, draft);
    if (one.home.kind === 'heading' || one.source !== near?.source) near = undefined;
    if (one.home.kind === 'step' || one.home.kind === 'prose') near = one;
    if (!isStray(one)) continue;
    strays += 1;
    one.home = { kind: 'not placed' };
  }
  if (strays > 0)
    for (const step of draft.steps)
      step.statements = step.statements.filter((one) => one.home.kind === 'step');
  for (const { source, blocks } of reads)
    emptyHeadings(
      draft.statements.filter((one) => one.source === source.name),
      (one) => blocks[one.block]?.depth ?? 7,
      title,
    );
}

/** Words of which nothing was proposed stand where they were said: in the step that goes on round them, or in the prose. */
function goBack(one: Statement, near: Statement | undefined, draft: Draft): void {
  if (one.kind === 'task' || one.kind === 'row' || one.kind === 'other') {
    one.home = { kind: 'not placed' };
    return;
  }
  const step =
    near?.source === one.source && near.home.kind === 'step' ? draft.steps[near.home.step - 1] : undefined;
  if (!step || near?.home.kind !== 'step') {
    one.home = { kind: 'prose' };
    return;
  }
  one.home = { kind: 'step', step: near.home.step };
  step.statements.splice(step.statements.indexOf(near) + 1, 0, one);
}

/** A figure on a line of its own, with no word that says of what. */
const isStray = (one: Statement): boolean =>
  (one.home.kind === 'prose' || one.home.kind === 'step') &&
  (one.kind === 'item' || one.kind === 'prose' || one.kind === 'done') &&
  one.opens &&
  !/\p{L}{3}/u.test(one.text) &&
  one.text.split(' ').length <= 4;

/** A heading with nothing of the chapter under it; the chapter's title stands at its head. */
function emptyHeadings(
  statements: readonly Statement[],
  depth: (one: Statement) => number,
  title: Statement | undefined,
): void {
  /** Headings that what comes stands under, from the highest down. */
  const open: { one: Statement; depth: number; full: boolean }[] = [];
  const close = (from: number): void => {
    while ((open.at(-1)?.depth ?? 0) >= from) {
      const last = open.pop();
      if (last && !last.full && last.one !== title) last.one.home = { kind: 'not placed' };
    }
  };
  for (const one of statements) {
    if (one.home.kind === 'heading') {
      close(depth(one));
      open.push({ one, depth: depth(one), full: false });
    } else if (one.home.kind === 'step' || one.home.kind === 'prose')
      for (const heading of open) heading.full = true;
  }
  close(1);
}
