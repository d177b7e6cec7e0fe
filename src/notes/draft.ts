/** From sources to a draft: every statement with its figures, what it says, and the step that it belongs to. */
import { type Figure, findFigures, type Habits } from './figures/find.ts';
import { MONEY } from './figures/unit-words.ts';
import type { ReadSource } from './read/source.ts';
import { lineFinder } from './read/source.ts';
import { type Clause, clausesOf } from './say/clauses.ts';
import { type Saying, tell } from './say/tell.ts';
import { AREAS, areaOf, BEGINS, DEEDS, OFF } from './say/vocabulary.ts';

export interface Statement extends Clause {
  source: string;
  figures: (Figure & { line: number })[];
  said: Map<Saying, string>;
  area?: string;
  /** Title of the work that it tells of, in the imperative. */
  deed?: string;
  home:
    | { kind: 'step'; step: number }
    | { kind: 'prose' }
    | { kind: 'proposal' }
    | { kind: 'not placed' }
    | { kind: 'heading' };
}

export interface DraftStep {
  title: string;
  at?: number;
  line: number;
  source: string;
  statements: Statement[];
}

export interface Draft {
  statements: Statement[];
  steps: DraftStep[];
}

export function draftOf(reads: readonly ReadSource[], habits: Habits): Draft {
  const statements = reads.flatMap((read) => statementsOf(read, habits));
  return { statements, steps: stepsOf(statements) };
}

function statementsOf(read: ReadSource, habits: Habits): Statement[] {
  const lineOf = lineFinder(read.source.text);
  const clauses = clausesOf(read);
  let section: string | undefined;
  const out = clauses.map((clause): Statement => {
    const raw = read.masked.slice(clause.start, clause.end);
    if (clause.kind === 'heading') section = clause.text.toLowerCase();
    return {
      ...clause,
      source: read.source.name,
      figures: findFigures(raw, habits).map((figure) => ({
        ...figure,
        start: figure.start + clause.start,
        end: figure.end + clause.start,
        line: lineOf(figure.start + clause.start),
      })),
      said: new Map(),
      home: { kind: 'prose' },
    };
  });
  // Figures that need their neighbours are read with the paragraph around them.
  const blocks = Map.groupBy(out, (one) => one.block);
  for (const block of blocks.values()) {
    const [first, last] = [block[0], block.at(-1)];
    if (!first || !last || block.length < 2) continue;
    for (const figure of findFigures(read.masked.slice(first.start, last.end), habits)) {
      const at = figure.start + first.start;
      const owner = block.find((one) => at >= one.start && at < one.end);
      if (!owner || owner.figures.some((one) => at < one.end && figure.end + first.start > one.start))
        continue;
      owner.figures.push({ ...figure, start: at, end: figure.end + first.start, line: lineOf(at) });
      owner.figures.sort((a, b) => a.start - b.start);
    }
  }
  section = undefined;
  for (const one of out) {
    if (one.kind === 'heading') {
      section = one.text.toLowerCase();
      continue;
    }
    if (one.kind === 'other') continue;
    const buying = section !== undefined && /want|buy|shop|need|bought|order|parcel/.test(section);
    const notBought = section !== undefined && /not bought|looked at/.test(section);
    one.said = tell(one.text, one.figures, one.kind === 'task', /\d/.test(one.text) && !notBought);
    if (notBought && !/bought it/.test(one.text)) {
      one.said.delete('part');
      one.said.delete('cost');
    }
    if (buying && !notBought && (one.kind === 'item' || one.kind === 'task')) one.said.set('part', 'list');
    const area = areaOf(` ${one.text.toLowerCase()}`);
    if (area) one.area = area;
    const deed = deedOf(one);
    if (deed) one.deed = deed;
    if (
      /\d|half|tenth|hundredth/.test(one.text) &&
      one.figures.some(({ unit }) => /^(?:mm|thou|in|cm)$/.test(unit)) &&
      /\b(?:measur|found|limit|wear|oval|gauge|bore|play|clearance|float|drum|lining|thick|gap|spigot|plates?|brush|book|min|max|across)/i.test(
        one.text,
      )
    )
      one.said.set('measurement', 'a figure');
    if (one.figures.some(({ unit }) => unit === 'km/h' || unit === 'mph')) one.said.set('speed', 'a speed');
  }
  return out;
}

const NOT_DONE = /^\s*(?:next(?: time|:)?|tomorrow|to do|later|still to|if|when i|i'?d|should|would|want)\b/i;

function deedOf(one: Statement): string | undefined {
  const lower = ` ${one.text.toLowerCase()}`;
  if (NOT_DONE.test(one.text) || one.kind === 'task' || one.kind === 'row') return undefined;
  const off = OFF.exec(lower);
  let best: { at: number; title: string } | undefined;
  if (off && areaOf(` ${off[1]} `)) best = { at: off.index, title: offTitle(off[1] ?? '', off[2] ?? '') };
  for (const [pattern, verb] of DEEDS) {
    const found = pattern.exec(lower);
    if (!found || (best && found.index >= best.at)) continue;
    const before = lower.slice(Math.max(0, found.index - 22), found.index + 1);
    if (
      /\b(?:can|could|would|will|'ll|never|not|n't|should|to be|when|if|until|till|been|who|which|has to be|needs? to|next time|wants?|says?|was|isn't|do not|don't)\s*(?:it |you |i |we |be |is |are )?$/.test(
        before,
      ) &&
      !/(?:i'll|we'll|you can|we can) $/.test(before)
    )
      continue;
    best = {
      at: found.index,
      title: workTitle(verb, lower.slice(0, found.index + 1), lower.slice(found.index + found[0].length)),
    };
  }
  return best?.title;
}

/** "old petrol drained into the can" → "Drain the petrol": what was worked on may stand before the word for the work. */
function workTitle(verb: string, before: string, rest: string): string {
  const title = withObject(verb, rest);
  const lost =
    title === verb || /^\S+(?: \S+)? (?:into|onto|with|from|at|on|in|for|to|by|w) /.test(`${title} `);
  if (!lost) return title;
  const here = before.split(/[.;:!?]/).at(-1) ?? '';
  let noun: { at: number; word: string } | undefined;
  for (const pattern of Object.values(AREAS))
    for (const found of here.matchAll(new RegExp(pattern.source, 'g')))
      if (found.index >= (noun?.at ?? -1))
        noun = { at: found.index, word: found[0].replace(/[^a-z/ ]/g, '').trim() };
  return noun?.word ? `${verb} the ${noun.word}` : title;
}

const STOP = new Set(
  'and so which that but because it i we you then w with for of at to in on from by is was are were first again now while when as until till abt about not still after before though or if the'.split(
    ' ',
  ),
);
const LEAD = new Set('the a an it them my our its up down off out back'.split(' '));

/** "Measure" + " the tap spigot: 7.9 mm" → "Measure the tap spigot". */
function withObject(verb: string, rest: string): string {
  const words = (/^[^,;.:!?()\d@+|]*/.exec(rest)?.[0] ?? '')
    .replace(/[^a-z/' -]/g, ' ')
    .trim()
    .split(/\s+/)
    .filter(Boolean);
  const out: string[] = [];
  for (const word of words) {
    if (out.length === 0 && /^(?:uh|um)$/.test(word)) continue;
    const content = out.filter((one) => !LEAD.has(one)).length;
    if (content > 0 && /^(?:the|a|an|my|our|it)$/.test(word)) break;
    if (STOP.has(word) && !LEAD.has(word) && (content > 0 || !/^(?:with|w|in|on|out|at|for|to)$/.test(word)))
      break;
    if (/^(?:it's|i'm|i've|there's|that's|he|she|they)$/.test(word)) break;
    out.push(word === 'w' || word === 'w/' ? 'with' : word);
    if (content >= 4 || out.length >= 6) break;
  }
  while (out.length > 0 && /^(?:the|a|an|with|in|on|my|our|its|to|at|for|out|and)$/.test(out.at(-1) ?? ''))
    out.pop();
  const next = words[out.length] ?? '';
  if (
    /^(?:Put|Take|Pull|Lift)$/.test(verb) &&
    out.length > 0 &&
    /^(?:on|in|back|off|out|up|down)$/.test(next)
  )
    out.push(next);
  return [verb, ...out].join(' ').replace(/\b(up|down|off|out) \1\b/g, '$1');
}

function offTitle(what: string, way: string): string {
  const noun = what.replace(/^(?:the|and|so|now|then|a|with|okay|right|is|uh|um)\s+/g, '').trim();
  if (way === 'off' || way === 'out') return `Take the ${noun} ${way}`;
  if (way === 'apart') return `Take the ${noun} apart`;
  return `Put the ${noun} ${way.startsWith('back') ? way : way}`;
}

/** A day or a place on a line of its own parts the notes as a heading does. */
const isLabel = (one: Statement): boolean =>
  one.kind === 'prose' &&
  one.opens &&
  one.figures.length === 0 &&
  !/[.!?,]/.test(one.text) &&
  one.text.split(' ').length <= 3 &&
  one.said.size === 0 &&
  !one.deed;

const ASIDE =
  /^\W*(?:thanks?|thank you|cheers|next(?: time| week|:)|total|post for|money for|see you|that'?s all|more next)\b/i;

/** Where a new piece of work begins: a bullet with a deed, a turn of speech, another part of the machine. */
function stepsOf(statements: readonly Statement[]): DraftStep[] {
  const steps: DraftStep[] = [];
  let now: DraftStep | undefined;
  let area: string | undefined;
  let words = 0;
  let fresh = false;
  let lastAt: number | undefined;
  for (const one of statements) {
    if (now && one.source !== now.source) now = undefined;
    if (one.kind === 'heading' || isLabel(one)) {
      one.home = { kind: 'heading' };
      fresh = true;
      now = undefined;
      continue;
    }
    if (one.kind === 'other') {
      one.home = { kind: 'not placed' };
      continue;
    }
    const aside = ASIDE.test(one.text) || (one.said.has('thanks') && !one.deed);
    const bullet = one.kind === 'item' || one.kind === 'done';
    let score = 0;
    if (one.deed) score += 2;
    if (BEGINS.test(one.text.toLowerCase())) score += one.deed || one.area ? 1.6 : 0.9;
    if (one.area && one.area !== area) score += area ? 1 : 0.7;
    if (fresh) score += 0.5;
    if (bullet && one.opens) score += one.deed ? 1.2 : -0.5;
    if (one.kind === 'prose' && one.opens) score += 0.6;
    if (one.kind === 'speech' && one.opens && one.at !== lastAt) score += 0.9;
    if (!now) score += 0.4;
    if (words < 14 && now && !bullet) score -= 1.3;
    if ((one.said.has('cost') || one.said.has('part')) && !/\b(?:fit|put it|charger)/.test(one.text))
      score -= 1.5;
    if (one.said.has('put off')) score -= 0.6;
    if (one.kind === 'task' || one.kind === 'row' || one.text.length < 12) score -= 2;
    if (aside) score = 0;
    if (score >= 2.6 || (!now && one.deed && score >= 2.4)) {
      now = {
        title: one.deed ?? lookAt(one),
        line: one.line,
        source: one.source,
        statements: [],
        ...(one.at === undefined ? {} : { at: one.at }),
      };
      steps.push(now);
      area = one.area ?? area;
      words = 0;
      fresh = false;
    }
    if (one.area && now) area = one.area;
    if (one.at !== undefined) lastAt = one.at;
    words += one.text.split(' ').length;
    place(one, now, steps.length);
  }
  titles(steps);
  return steps;
}

/** Sums, orders and thanks stand in the proposals; what tells of the work stands in its step. */
function place(one: Statement, now: DraftStep | undefined, number: number): void {
  const said = one.said;
  const business = said.has('cost') && !one.deed && !said.has('fault');
  if (one.kind === 'row') one.home = { kind: 'prose' };
  else if (said.has('thanks') || business) one.home = { kind: 'proposal' };
  else if (!/[\p{L}\p{N}]/u.test(one.text)) one.home = { kind: 'not placed' };
  else if (now) {
    one.home = { kind: 'step', step: number };
    now.statements.push(one);
  } else if (said.has('part') && one.kind !== 'prose' && one.kind !== 'speech')
    one.home = { kind: 'proposal' };
  else if (one.kind === 'task' || (one.kind === 'item' && said.size === 0 && one.figures.length > 0))
    one.home = { kind: 'not placed' };
  else one.home = { kind: 'prose' };
}

function lookAt(one: Statement): string {
  const lower = ` ${one.text.toLowerCase()}`;
  const pattern = one.area ? AREAS[one.area] : undefined;
  const noun = (pattern?.exec(lower)?.[0] ?? '').replace(/[^a-z/ ]/g, '').trim();
  return noun ? `Look at the ${noun}` : 'Look it over';
}

/** Titles start with a capital letter and are told apart. */
function titles(steps: DraftStep[]): void {
  const seen = new Map<string, number>();
  for (const step of steps) {
    let title = step.title
      .replace(/[<>{}&"\\`]/g, '')
      .replace(/\bw\/\s*/g, 'with ')
      .replace(/\bg\/box\b/g, 'gearbox')
      .replace(/\s+/g, ' ')
      .trim();
    if (/^\S+(?: (?:it|them|up|down|off|out))?$/.test(title)) {
      const nouns = step.statements
        .map((one) =>
          one.area
            ? (AREAS[one.area]?.exec(` ${one.text.toLowerCase()}`)?.[0] ?? '').replace(/[^a-z/ ]/g, '').trim()
            : '',
        )
        .find(Boolean);
      if (nouns && /\b(?:it|them)\b/.test(title)) title = title.replace(/\b(?:it|them)\b/, `the ${nouns}`);
      else if (nouns && /^\S+$/.test(title)) title = `${title} the ${nouns}`;
      else if (nouns) title = `${title}: the ${nouns}`;
    }
    title = title.slice(0, 1).toUpperCase() + title.slice(1);
    const key = title.toLowerCase();
    const count = (seen.get(key) ?? 0) + 1;
    seen.set(key, count);
    step.title =
      count > 1
        ? `${title}, ${['', '', 'again', 'a third time', 'a fourth time'][count] ?? `time ${count}`}`
        : title;
  }
}

export const isMoney = (unit: string): boolean => MONEY.has(unit);
