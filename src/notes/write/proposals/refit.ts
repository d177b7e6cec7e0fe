/** What was taken off, loosened, drained or parted, and what of it went back in the same text. */
import type { Statement } from '../../draft.ts';
import { capital } from './nouns.ts';

export interface RefitLine {
  what: string;
  action: 'removed' | 'loosened' | 'drained' | 'disconnected';
}

const ACTIONS: Readonly<Record<string, RefitLine['action']>> = {
  take: 'removed',
  remove: 'removed',
  unbolt: 'removed',
  unscrew: 'removed',
  drain: 'drained',
  disconnect: 'disconnected',
  unplug: 'disconnected',
  unhook: 'disconnected',
  loosen: 'loosened',
  slacken: 'loosened',
};
const BACK: Readonly<Record<string, string>> = {
  refit: 'refitted',
  fit: 'refitted',
  put: 'refitted',
  reconnect: 'refitted',
  connect: 'refitted',
  tighten: 'refitted',
  renew: 'renewed',
  replace: 'renewed',
  fill: 'filled',
  refill: 'filled',
};
/** Switched off, cleaned off, or gone for good: nothing to refit. */
const NOT_A_THING =
  /\b(?:lamps?|lights?|switch|ignition|petrol tap|fuel tap|tap|engine|motor|heater|radio|rust|paint|scale|dirt|muck|grease|primer|dust|old gasket|nail|sludge|carbon|coke|day|time)$/i;

export function refitIn(one: Statement): RefitLine | undefined {
  const { work } = one;
  const action = work && ACTIONS[work.verb];
  if (!work || !action || work.told === 'meant' || work.object.length < 3) return undefined;
  if (work.verb === 'take' && !/\b(?:off|out|apart)\b/.test(work.title)) return undefined;
  if (action === 'removed' && NOT_A_THING.test(work.object)) return undefined;
  // "it weighs less with the gearbox off" tells of no work.
  if (
    new RegExp(
      `\\bwith (?:the |both |all )?${work.object.replace(/[^a-z0-9 ]/gi, '.')} (?:off|out)\\b`,
      'i',
    ).test(one.text)
  )
    return undefined;
  return { what: capital(work.object.replace(/^(?:both|all|the)\s+/, '')), action };
}

/** How a statement closes a line: "refitted", "filled"; undefined where it does not. */
export function closes(one: Statement, line: RefitLine): string | undefined {
  const { work } = one;
  const how = work && BACK[work.verb];
  if (!work || !how || work.told === 'meant') return undefined;
  if (work.verb === 'put' && !/ (?:back|back on|back in|on|in)$/.test(work.title)) return undefined;
  if ((line.action === 'drained') !== (how === 'filled')) return undefined;
  return headOf(work.object) === headOf(line.what) ? how : undefined;
}

/** What a thing is, of "left brake shoes": "shoe". */
export const headOf = (thing: string): string =>
  (thing.toLowerCase().split(' ').at(-1) ?? '').replace(/s$/, '');
