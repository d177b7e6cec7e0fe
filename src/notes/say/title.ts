/** A step's title from the work that its statements tell of, with what "it" stands for put in, and titles that are alike told apart. */
import type { DraftStep } from '../draft.ts';

const FLOWS =
  /^(?:petrol|fuel|mixture|coolant|antifreeze|oil|brake fluid|petroil|premix|paint|primer|spark|timing|voltage)$/;

export function titles(steps: readonly DraftStep[]): void {
  const seen = new Map<string, number>();
  let thing: string | undefined;
  for (const step of steps) {
    const works = step.statements.filter(({ work }) => work);
    const first = step.statements[0];
    // The statement that begins the step tells its work; else the first that tells of a thing.
    const chosen =
      (first?.work ? first : undefined) ?? works.find(({ work }) => work && work.object !== '') ?? works[0];
    const named = first?.thing ?? step.statements.find((one) => one.thing)?.thing;
    const solid = (one: string | undefined): string | undefined => (one && FLOWS.test(one) ? undefined : one);
    const about = solid(chosen?.thing) ?? solid(named) ?? thing ?? named;
    const raw = chosen?.work
      ? withThing(chosen.work.title, chosen.work.object, about)
      : named
        ? `See to the ${named}`
        : 'See to it';
    // What flows is never the thing worked on next: "drained the petrol, rinsed with hot water" is the tank.
    if (named && !FLOWS.test(named)) thing = named;
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

/** "Set it" beside a talk of points → "Set the points". */
function withThing(title: string, object: string, thing: string | undefined): string {
  if (object !== '' || !thing) return title;
  if (/\b(?:it|them|that|this|her|those|these)\b/.test(title))
    return title.replace(/\b(?:it|them|that|this|her|those|these)\b/, `the ${thing}`);
  const [verb = title, ...rest] = title.split(' ');
  return [verb, `the ${thing}`, ...rest].join(' ');
}
