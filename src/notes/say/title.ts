/** A step's title from the work that its statements tell of, with what "it" stands for put in, and titles that are alike told apart. */
import type { DraftStep, Statement } from '../draft.ts';

const FLOWS =
  /^(?:petrol|fuel|mixture|coolant|antifreeze|oil|brake fluid|petroil|premix|paint|primer|spark|timing|voltage)$/;

export function titles(steps: readonly DraftStep[]): void {
  const seen = new Map<string, number>();
  let before: string | undefined;
  for (const step of steps) {
    const first = step.statements[0];
    // The statement that begins the step tells its work; else the first that tells of a thing.
    const chosen =
      (first?.work ? first : undefined) ??
      step.statements.find(({ work }) => work && work.object !== '') ??
      step.statements.find(({ work }) => work);
    const named =
      step.statements.flatMap(({ things }) => things ?? []).find(({ thing }) => !FLOWS.test(thing))?.thing ??
      first?.things?.[0]?.thing;
    const raw = chosen?.work
      ? withThing(chosen.work.title, chosen.work.object, meantBy(chosen, step.statements, before) ?? named)
      : named
        ? `See to the ${named}`
        : 'See to it';
    before =
      step.statements.flatMap(({ things }) => things ?? []).findLast(({ thing }) => !FLOWS.test(thing))
        ?.thing ?? before;
    const title = raw
      .replace(/[<>{}&"\\`]/g, '')
      .replace(/\s+/g, ' ')
      .trim();
    const key = title.toLowerCase();
    const count = (seen.get(key) ?? 0) + 1;
    seen.set(key, count);
    step.title =
      count > 1
        ? `${title}, ${['', '', 'again', 'a third time', 'a fourth time'][count] ?? `time ${count}`}`
        : title;
  }
}

/** What "it" stands for: the thing named last before the word for the work, here or in what went before. What flows is never worked on. */
function meantBy(
  chosen: Statement,
  statements: readonly Statement[],
  before: string | undefined,
): string | undefined {
  const solid = (one: Statement, until = Number.POSITIVE_INFINITY): string | undefined =>
    (one.things ?? []).findLast(({ thing, at }) => at < until && !FLOWS.test(thing))?.thing;
  const here = solid(chosen, chosen.work?.at);
  if (here) return here;
  const earlier = statements
    .slice(0, statements.indexOf(chosen))
    .map((one) => solid(one))
    .findLast((thing) => thing !== undefined);
  return earlier ?? before ?? solid(chosen);
}

/** "Set it" beside a talk of points → "Set the points". */
function withThing(title: string, object: string, thing: string | undefined): string {
  if (object !== '' || !thing) return title;
  if (/\b(?:it|them|that|this|her|those|these)\b/.test(title))
    return title.replace(/\b(?:it|them|that|this|her|those|these)\b/, `the ${thing}`);
  const [verb = title, ...rest] = title.split(' ');
  return [verb, `the ${thing}`, ...rest].join(' ');
}
