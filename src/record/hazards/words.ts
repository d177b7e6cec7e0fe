/**
 * The small language in which a hazard names the words that point to it, and its compiler.
 *
 *   'trolley jack|axle stand'          any of these words or phrases
 *   'jack|lift + van|front|@tool'      one of the first near one of the second, in either order; @ names a class of lexicon.ts
 *   'jacked ~ her|it'                  … the second within a few words, where both are common
 *   'charge + battery - postage'       … unless one of these stands near
 *   'weld & fuel line'                 … the second anywhere in the same step
 *   'blow + #bar'                      a figure with its unit (figures.ts)
 *   '=gas'                             this form alone, without inflections
 *
 * All rules of all hazards become one matcher: a text is read once, each token looked up once, and a rule is looked at only where its
 * first term stands. rules.ts reads the language, vocabulary.ts knows the forms of its words, met.ts what the text at hand has of them.
 */
import { figuresAt } from './figures.ts';
import { type Token, tokenise } from './language.ts';
import { Met } from './met.ts';
import { type Rule, type Rules, readRules } from './rules.ts';
import { type Form, Vocabulary } from './vocabulary.ts';

/** Words round the first within which an exception counts. */
const EXCEPTION_WINDOW = 10;
/** Empty places between the fields of a step, and between two captions or tools. */
const FIELD_GAP = 3;

export interface Field {
  name: string;
  text: string;
}

export interface Match {
  /** Index of the hazard as handed to compile(). */
  hazard: number;
  /** The words that pointed to it, as written, in the order of the text. */
  words: string;
  field: string;
  /** Characters from the start of that field. */
  offset: number;
}

export type Matcher = (fields: readonly Field[]) => Match[];

/**
 * Compiles the words of all hazards.
 * @param lists words of each hazard, in the order in which matches name them
 * @param classes what @name stands for
 * @param sayings phrases that are taken out first
 * @throws {Error} an unknown class or an empty term: a slip in the catalogue, found by its tests
 */
export function compile(
  lists: readonly (readonly string[])[],
  classes: Readonly<Record<string, string>>,
  sayings: readonly string[],
): Matcher {
  const vocabulary = new Vocabulary();
  const rules = readRules(lists, classes, vocabulary);
  for (const saying of sayings) vocabulary.addSaying(saying);
  const met = new Met(rules);
  return (fields) => {
    const row = readRow(fields, vocabulary);
    takeSayingsOut(row);
    noteAll(row, vocabulary, met);
    return whatHolds(rules, row, met);
  };
}

/** The tokens of a step's fields in one row. */
interface Row {
  fields: readonly Field[];
  tokens: readonly Token[];
  /** Index of the field of each token. */
  fieldAt: readonly number[];
  /** What each token can stand for; null once a saying has taken it. */
  formAt: (Form | null)[];
}

function readRow(fields: readonly Field[], vocabulary: Vocabulary): Row {
  const tokens: Token[] = [];
  const fieldAt: number[] = [];
  const formAt: (Form | null)[] = [];
  let at = 0;
  for (const [index, field] of fields.entries()) {
    const before = tokens.length;
    at = tokenise(field.text, at, tokens) + FIELD_GAP;
    for (const token of before === 0 ? tokens : tokens.slice(before)) {
      fieldAt.push(index);
      formAt.push(vocabulary.form(token.word));
    }
  }
  return { fields, tokens, fieldAt, formAt };
}

/** Whether these words stand right after a token, with nothing between. */
function follow({ tokens, formAt }: Row, from: number, rest: readonly number[]): boolean {
  const here = tokens[from]?.at ?? 0;
  return rest.every(
    (base, k) =>
      tokens[from + k + 1]?.at === here + k + 1 && formAt[from + k + 1]?.bases.includes(base) === true,
  );
}

/** What token i + 1 can stand for; null where something stands between. */
const formAfter = ({ tokens, formAt }: Row, i: number): Form | null =>
  tokens[i + 1]?.at === (tokens[i]?.at ?? 0) + 1 ? (formAt[i + 1] ?? null) : null;

function takeSayingsOut(row: Row): void {
  const { formAt } = row;
  for (let i = 0; i < formAt.length; i++) {
    const form = formAt[i];
    if (!form) continue;
    let length = form.isSaying ? 1 : 0;
    const next = form.sayingBits === 0 ? null : formAfter(row, i);
    if (next && (form.sayingBits & next.bits) !== 0)
      for (const second of next.bases)
        for (const rest of form.sayings.get(second) ?? [])
          if (rest.length >= length && follow(row, i, rest)) length = rest.length + 1;
    if (length > 0) formAt.fill(null, i, i + length);
  }
}

/** Notes where each word, phrase and figure stands. */
function noteAll(row: Row, vocabulary: Vocabulary, met: Met): void {
  const { fields, tokens, fieldAt, formAt } = row;
  met.startText(tokens);
  for (let i = 0; i < tokens.length; i++) {
    const form = formAt[i];
    if (form) {
      for (const atom of form.atoms) met.note(atom, i);
      const next = formAfter(row, i);
      if (next && (form.phraseBits & next.bits) !== 0)
        for (const second of next.bases)
          for (const { rest, atom } of form.phrases.get(second) ?? [])
            if (rest.length === 1 || follow(row, i, rest)) met.note(atom, i);
    }
    if (tokens[i]?.number === undefined) continue;
    for (const name of figuresAt(tokens, i, fields[fieldAt[i] ?? 0]?.text ?? '')) {
      const atom = vocabulary.figure(name);
      if (atom !== undefined) met.note(atom, i);
    }
  }
}

/** Each hazard of which a rule holds, by the first that does. */
function whatHolds({ rules, beginsAt }: Rules, row: Row, met: Met): Match[] {
  const found = new Map<number, Match>();
  for (const term of met.begun) {
    const end = beginsAt[term + 1] ?? 0;
    for (let k = beginsAt[term] ?? end; k < end; k++) {
      const rule = met.hasNeedsOf(k) ? rules[k] : undefined;
      if (rule === undefined || found.has(rule.hazard)) continue;
      const used = whereItHolds(rule, met);
      if (used === undefined) continue;
      const elsewhere = rule.anywhere.map((term) => met.placesOf(term)[0]).filter((i) => i !== undefined);
      found.set(rule.hazard, asMatch(rule.hazard, used, elsewhere, row));
    }
  }
  return [...found.values()].sort((a, b) => a.hazard - b.hazard);
}

/** The tokens of the first place at which a rule holds; undefined where it holds nowhere. */
function whereItHolds({ first, near, except }: Rule, met: Met): number[] | undefined {
  for (const i of met.placesOf(first)) {
    const used = [i];
    for (const { term, window } of near) {
      const j = met.nearest(term, i, window);
      if (j < 0) break;
      used.push(j);
    }
    if (used.length <= near.length) continue;
    if (except === undefined || !stands(except, i, met)) return used;
  }
  return undefined;
}

const stands = (term: number, i: number, met: Met): boolean =>
  met.placesOf(term).includes(i) || met.nearest(term, i, EXCEPTION_WINDOW) >= 0;

function asMatch(
  hazard: number,
  used: readonly number[],
  /** What the rule wants anywhere in the step: told with the words, but the place is that of the others. */
  elsewhere: readonly number[],
  { tokens, fields, fieldAt }: Row,
): Match {
  const sorted = [...new Set([...used, ...elsewhere])].sort((a, b) => a - b);
  const first = Math.min(...used);
  const field = fields[fieldAt[first] ?? 0];
  const words = sorted.map((i) => {
    const token = tokens[i];
    return (fields[fieldAt[i] ?? 0]?.text ?? '').slice(token?.offset ?? 0, token?.end ?? 0);
  });
  return { hazard, words: words.join(' … '), field: field?.name ?? '', offset: tokens[first]?.offset ?? 0 };
}
