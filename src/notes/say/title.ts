/** A step's title from the work that its statements tell of, with what "it" stands for put in, and titles that are alike told apart. */
import type { DraftStep, Statement } from '../draft.ts';
import { withArticle } from './phrase.ts';

const FLOWS =
  /^(?:petrol|fuel|mixture|coolant|antifreeze|oil|brake fluid|petroil|premix|paint|primer|spark|timing|voltage)$/;
/** A step is called by work told in its first so many statements; what comes later is a detail of it. */
const REACH = 4;

/** How many statements before a step may have named what its "it" stands for. */
const BACK = 8;

/** `statements` are all of the text, in order: what stands outside the steps may have named the thing. */
export function titles(steps: readonly DraftStep[], statements: readonly Statement[] = []): void {
  const places = new Map(statements.map((one, at) => [one, at]));
  const seen = new Map<string, number>();
  let before: string | undefined;
  for (const step of steps) {
    const at = step.statements[0] ? (places.get(step.statements[0]) ?? 0) : 0;
    before = namedBefore(statements.slice(Math.max(0, at - BACK), at)) ?? before;
    const chosen = chosenOf(step.statements);
    const meant = chosen && meantBy(chosen, step.statements, before);
    const raw =
      chosen?.work && (chosen.work.object !== '' || meant !== undefined)
        ? withThing(chosen, meant)
        : withoutWork(step.statements, before);
    before = lastSolid(step.statements) ?? before;
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

/** The statement whose work the step is called by: as near to its beginning as may be, but with a thing of its own. */
function chosenOf(statements: readonly Statement[]): Statement | undefined {
  let best: { one: Statement; score: number } | undefined;
  for (const [at, one] of statements.slice(0, REACH).entries()) {
    if (!one.work || one.work.title === '') continue;
    const { object, told, verb } = one.work;
    const score =
      (object === '' ? 0 : 2) +
      (told === 'meant' ? -0.5 : 0) +
      (/^(?:look|check|try|hold|feel)$/.test(verb) ? -0.5 : 0) -
      at * 0.9;
    if (!best || score > best.score) best = { one, score };
  }
  return (
    best?.one ??
    statements.find(({ work }) => work && work.object !== '') ??
    statements.find(({ work }) => work && work.title !== '')
  );
}

const solids = (one: Statement): readonly { thing: string; full: string; at: number; aside: boolean }[] =>
  (one.things ?? []).filter(({ thing }) => !FLOWS.test(thing));

/** The thing that was named last, with no heading since. */
function namedBefore(statements: readonly Statement[]): string | undefined {
  const heading = statements.findLastIndex(({ kind }) => kind === 'heading');
  return lastSolid(statements.slice(heading + 1));
}

const lastSolid = (statements: readonly Statement[]): string | undefined =>
  statements.map(chiefOf).findLast((thing) => thing !== undefined) ?? statements.flatMap(solids).at(-1)?.full;

/** What a statement is about: what is worked on in it ("tank off, 2 bolts and the strap"), or else what it names last. */
function chiefOf(one: Statement): string | undefined {
  const list = solids(one);
  const object = one.work?.object ?? '';
  const worked = object === '' ? undefined : list.find(({ thing }) => object.includes(thing));
  return (worked ?? list.findLast(({ aside }) => !aside))?.full;
}

/** What "it" stands for: the thing named last before the word for the work, here or in what went before. What flows is never worked on. */
function meantBy(
  chosen: Statement,
  statements: readonly Statement[],
  before: string | undefined,
): string | undefined {
  const at = chosen.work?.at ?? Number.POSITIVE_INFINITY;
  // "Emptied what was in the tank": with no "it", what is worked on is named behind.
  if (!IT.test(chosen.work?.title ?? '') && !ONE.test(chosen.work?.title ?? '')) {
    const behind = solids(chosen).filter((one) => one.at > at && inOneBreath(chosen.text, one.thing));
    const next = behind.find(({ aside }) => !aside) ?? behind[0];
    if (next) return next.full;
  }
  const here = solids(chosen).filter((one) => one.at < at);
  const own = here.findLast(({ aside }) => !aside) ?? here.at(-1);
  if (own) return own.full;
  const earlier = statements
    .slice(0, statements.indexOf(chosen))
    .map((one) => solids(one).findLast(({ aside }) => !aside)?.full)
    .findLast((thing) => thing !== undefined);
  return earlier ?? before ?? solids(chosen)[0]?.full;
}

/** "Charged at 2 A. Terminals green": behind a stop or a comma something else is named. */
function inOneBreath(text: string, thing: string): boolean {
  const at = text.toLowerCase().indexOf(thing);
  return at < 0 || !/[.;,:!?]\s/.test(text.slice(0, at));
}

const IT = /\b(?:it|them|that|this|those|these)\b/;
/** "The new one", of seals, is the new seal. */
const ONE = /\bones?\b/;

/** "Set it" beside a talk of points → "Set the points". */
function withThing({ work }: Statement, thing: string | undefined): string {
  if (work === undefined || work.object !== '' || !thing) return work?.title ?? '';
  const { title } = work;
  if (/\b(?:her|engine)\b/.test(title)) return title;
  if (ONE.test(title)) return title.replace(ONE, thing.split(' ').at(-1) ?? thing);
  if (IT.test(title)) return title.replace(IT, withArticle(thing));
  const [verb = title, ...rest] = title.split(' ');
  return [verb, withArticle(thing), ...rest].join(' ');
}

/** A step that tells no work is called by what was looked at, and how it was found out. */
function withoutWork(statements: readonly Statement[], before: string | undefined): string {
  const first = statements.slice(0, REACH);
  const named = first.flatMap((one) => solids(one).map((thing) => ({ one, thing })));
  const found = named.find(({ thing }) => !thing.aside) ?? named[0];
  const flows = statements.flatMap(({ things }) => things ?? [])[0];
  if (!found)
    return flows
      ? `See to ${withArticle(flows.full)}`
      : before
        ? `Go on with ${withArticle(before)}`
        : 'Go on';
  const { one, thing } = found;
  const units = one.figures.map(({ unit }) => unit);
  const verb = units.some((unit) => /^(?:N m|lbf ft)$/.test(unit))
    ? 'Tighten'
    : one.said.has('fault')
      ? 'Inspect'
      : units.some((unit) => /^(?:V|A|ohm|W)$/.test(unit))
        ? 'Test'
        : units.some((unit) => /^(?:mm|in|thou|cm)$/.test(unit))
          ? 'Measure'
          : 'Look at';
  return `${verb} ${withArticle(thing.full)}`;
}
