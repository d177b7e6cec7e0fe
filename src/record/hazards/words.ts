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
 * All rules of all hazards become one matcher: a text is read once, each token looked up once.
 */
import { figuresAt } from './figures.ts';
import { formsOf, isSkipped, type Token, tokenise } from './language.ts';

/** Words between the first and the last of a rule. */
const WINDOW = 10;
/** The same where a rule joins them by ~. */
const TIGHT_WINDOW = 4;
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

interface Rule {
  hazard: number;
  /** Second and third of `near`, or the first again: what is looked at before anything else. */
  second: number;
  third: number;
  near: readonly number[];
  /** How far each of `near` may stand from the first. */
  windows: readonly number[];
  anywhere: readonly number[];
  except: readonly number[];
}

interface Phrase {
  rest: readonly number[];
  atom: number;
}

const NOWHERE: readonly number[] = [];

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
  const bases = new Map<string, number>();
  const basesOfForm = new Map<string, number[]>();
  const atoms = new Map<string, number>();
  const atomsOfForm = new Map<string, number[]>();
  const atomOfBase = new Map<number, number>();
  const phrases = new Map<number, Phrase[]>();
  const sayingsByBase = new Map<number, number[][]>();
  const terms = new Map<string, number>();
  const termsOfAtom: number[][] = [];
  const figureAtoms = new Map<string, number>();

  const baseOf = (word: string): number => {
    const known = bases.get(word);
    if (known !== undefined) return known;
    const id = bases.size;
    bases.set(word, id);
    for (const form of formsOf(word)) push(basesOfForm, form, id);
    return id;
  };

  const atomOf = (text: string): number => {
    const known = atoms.get(text);
    if (known !== undefined) return known;
    const id = atoms.size;
    atoms.set(text, id);
    termsOfAtom[id] = [];
    if (text.startsWith('#')) {
      figureAtoms.set(text, id);
      return id;
    }
    const words = withoutSkipped(text);
    const [first, ...rest] = words.map(baseOf);
    if (first === undefined) throw new Error(`nothing is left of "${text}"`);
    if (rest.length === 0 && /\s/.test(text)) throw new Error(`only "${words[0]}" is left of "${text}"`);
    if (rest.length === 0) {
      atomOfBase.set(first, id);
    } else {
      push(phrases, first, { rest, atom: id });
      const [head = '', tail = ''] = words;
      if (words.length === 2 && /^[a-z]+$/.test(head) && /^[a-z]{2,}$/.test(tail)) {
        for (const form of formsOf(tail)) push(atomsOfForm, head + form, id);
      }
    }
    return id;
  };

  const spreadClasses = new Map<string, string[]>();
  const spread = (text: string): string[] =>
    text
      .split('|')
      .map((part) => part.trim())
      .flatMap((part) => {
        if (!part.startsWith('@')) return [part];
        const list = classes[part.slice(1)];
        if (list === undefined) throw new Error(`there is no class ${part}`);
        const known = spreadClasses.get(part);
        if (known !== undefined) return known;
        const words = spread(list);
        spreadClasses.set(part, words);
        return words;
      });

  const termOf = (text: string): number => {
    const known = terms.get(text);
    if (known !== undefined) return known;
    const id = terms.size;
    terms.set(text, id);
    for (const atom of new Set(spread(text).map(atomOf))) termsOfAtom[atom]?.push(id);
    return id;
  };

  const rulesOfTerm = new Map<number, Rule[]>();
  lists.forEach((list, hazard) => {
    for (const written of list) {
      const [wanted = '', exceptions] = written.split(' - ');
      const [near = '', ...anywhere] = wanted.split(' & ');
      const needed = near.split(/ [+~] /).map(termOf);
      const joints = near.match(/ [+~] /g) ?? [];
      const [first = -1, second = first, third = first] = needed;
      const rule: Rule = {
        hazard,
        second,
        third,
        near: needed,
        windows: [0, ...joints.map((joint) => (joint === ' ~ ' ? TIGHT_WINDOW : WINDOW))],
        anywhere: anywhere.map(termOf),
        except: exceptions === undefined ? [] : [termOf(exceptions)],
      };
      push(rulesOfTerm, rule.near[0] ?? -1, rule);
    }
  });
  for (const saying of sayings) {
    const [first, ...rest] = withoutSkipped(saying).map(baseOf);
    if (first === undefined || (rest.length === 0 && /\s/.test(saying)))
      throw new Error(`too little is left of "${saying}"`);
    push(sayingsByBase, first, rest);
  }

  const termCount = terms.size;
  /** Rules that begin with a term; what they need beside it stands apart, since hardly any rule has it. */
  interface Begun {
    second: Int32Array;
    third: Int32Array;
    rules: readonly Rule[];
  }
  const begunBy: (Begun | undefined)[] = [];
  for (const [term, rules] of rulesOfTerm)
    begunBy[term] = {
      second: Int32Array.from(rules, (rule) => rule.second),
      third: Int32Array.from(rules, (rule) => rule.third),
      rules,
    };

  /** Everything that a written form can stand for, looked up once a token. */
  interface Form {
    bases: readonly number[];
    /** Atoms that the form alone meets. */
    atoms: readonly number[];
    /** Phrases that start with it, by the base of their second word. */
    phrases: ReadonlyMap<number, readonly Phrase[]>;
    sayings: ReadonlyMap<number, readonly (readonly number[])[]>;
    /** A saying of one word. */
    isSaying: boolean;
  }
  const forms = new Map<string, Form>();
  const formOf = (word: string): Form | undefined => {
    const known = forms.get(word);
    if (known !== undefined) return known;
    const own = basesOfForm.get(word);
    const joined = atomsOfForm.get(word);
    if (own === undefined && joined === undefined) return undefined;
    const form = newForm(own ?? [], joined ?? []);
    forms.set(word, form);
    return form;
  };
  const newForm = (own: readonly number[], joined: readonly number[]): Form => {
    const single = own.map((base) => atomOfBase.get(base)).filter((atom) => atom !== undefined);
    const sayingsOfForm = own.flatMap((base) => sayingsByBase.get(base) ?? []);
    return {
      bases: own,
      atoms: [...new Set([...single, ...joined])],
      phrases: Map.groupBy(
        own.flatMap((base) => phrases.get(base) ?? []),
        (phrase) => phrase.rest[0] ?? -1,
      ),
      sayings: Map.groupBy(sayingsOfForm, (rest) => rest[0] ?? -1),
      isSaying: sayingsOfForm.some((rest) => rest.length === 0),
    };
  };

  // Kept from text to text, since making them anew for each would cost more than the reading.
  const placesOfAtom: number[][] = Array.from(atoms, () => []);
  const atomsHere: number[] = [];
  /** Number of the text in which a term was last met, and the chain of atoms that met it. */
  const metIn = new Uint32Array(termCount);
  const firstLink = new Int32Array(termCount);
  const termsHere: number[] = [];
  const linkAtom: number[] = [];
  const linkNext: number[] = [];
  const placesOfTerm = new Map<number, number[]>();
  let text = 0;

  return (fields) => {
    const tokens: Token[] = [];
    const fieldOf: number[] = [];
    let at = 0;
    fields.forEach((field, index) => {
      at = tokenise(field.text, at, tokens) + FIELD_GAP;
      while (fieldOf.length < tokens.length) fieldOf.push(index);
    });
    const formAt: (Form | undefined)[] = tokens.map((token) => formOf(token.word));
    /** The form right after token i, where nothing stands between. */
    const after = (i: number): Form | undefined =>
      tokens[i + 1]?.at === (tokens[i]?.at ?? -9) + 1 ? formAt[i + 1] : undefined;

    const follows = (from: number, rest: readonly number[]): boolean => {
      let here = tokens[from]?.at ?? 0;
      for (let k = 0; k < rest.length; k++) {
        const next = from + k + 1;
        here += 1;
        if (tokens[next]?.at !== here) return false;
        if (formAt[next]?.bases.includes(rest[k] ?? -1) !== true) return false;
      }
      return true;
    };
    for (let i = 0; i < tokens.length; i++) {
      const form = formAt[i];
      if (form === undefined) continue;
      if (form.isSaying) formAt[i] = undefined;
      if (form.sayings.size === 0) continue;
      let length = -1;
      for (const base of after(i)?.bases ?? [])
        for (const rest of form.sayings.get(base) ?? [])
          if (follows(i, rest)) length = Math.max(length, rest.length);
      for (let k = 0; k <= length; k++) formAt[i + k] = undefined;
    }

    for (const atom of atomsHere) (placesOfAtom[atom] ?? []).length = 0;
    atomsHere.length = 0;
    placesOfTerm.clear();
    termsHere.length = 0;
    let links = 0;
    text += 1;
    const note = (atom: number, i: number): void => {
      const list = placesOfAtom[atom];
      if (list === undefined) return;
      if (list.length === 0) {
        atomsHere.push(atom);
        for (const term of termsOfAtom[atom] ?? []) {
          linkAtom[links] = atom;
          if (metIn[term] === text) {
            linkNext[links] = firstLink[term] ?? -1;
          } else {
            linkNext[links] = -1;
            metIn[term] = text;
            if (begunBy[term] !== undefined) termsHere.push(term);
          }
          firstLink[term] = links++;
        }
      }
      list.push(i);
    };
    for (let i = 0; i < tokens.length; i++) {
      const form = formAt[i];
      if (form !== undefined) {
        for (const atom of form.atoms) note(atom, i);
        if (form.phrases.size > 0)
          for (const base of after(i)?.bases ?? [])
            for (const phrase of form.phrases.get(base) ?? [])
              if (phrase.rest.length === 1 || follows(i, phrase.rest)) note(phrase.atom, i);
      }
      if (tokens[i]?.number !== undefined) {
        for (const name of figuresAt(tokens, i, fields[fieldOf[i] ?? 0]?.text ?? '')) {
          const atom = figureAtoms.get(name);
          if (atom !== undefined) note(atom, i);
        }
      }
    }

    const met = (term: number): boolean => metIn[term] === text;
    /** Tokens at which a term stands, rising. */
    const placesOf = (term: number): readonly number[] => {
      if (!met(term)) return NOWHERE;
      const known = placesOfTerm.get(term);
      if (known !== undefined) return known;
      const list: number[] = [];
      let atomsMet = 0;
      for (let link = firstLink[term] ?? -1; link >= 0; link = linkNext[link] ?? -1) {
        atomsMet += 1;
        for (const i of placesOfAtom[linkAtom[link] ?? -1] ?? NOWHERE) list.push(i);
      }
      if (atomsMet > 1) list.sort((a, b) => a - b);
      placesOfTerm.set(term, list);
      return list;
    };
    const nearest = (term: number, i: number, window: number): number => {
      const here = tokens[i]?.at ?? 0;
      let best = -1;
      let gap = window + 1;
      for (const j of placesOf(term)) {
        const apart = Math.abs((tokens[j]?.at ?? 0) - here);
        if (j !== i && apart < gap) {
          best = j;
          gap = apart;
        }
      }
      return best;
    };
    const stands = (term: number, i: number): boolean =>
      met(term) && (placesOf(term).includes(i) || nearest(term, i, EXCEPTION_WINDOW) >= 0);

    const found = new Map<number, Match>();
    for (const term of termsHere) {
      const begun = begunBy[term];
      if (begun === undefined) continue;
      const { second, third, rules } = begun;
      for (let k = 0; k < rules.length; k++) {
        if (metIn[second[k] ?? 0] !== text || metIn[third[k] ?? 0] !== text) continue;
        const rule = rules[k];
        if (rule === undefined || found.has(rule.hazard)) continue;
        if (!rule.near.every(met) || !rule.anywhere.every(met)) continue;
        const used = whereItHolds(rule, placesOf, nearest, stands);
        if (used === undefined) continue;
        const elsewhere = rule.anywhere.map((term) => placesOf(term)[0]).filter((i) => i !== undefined);
        found.set(rule.hazard, asMatch(rule.hazard, used, elsewhere, tokens, fields, fieldOf));
      }
    }
    return [...found.values()].sort((a, b) => a.hazard - b.hazard);
  };
}

/** The tokens of the first place at which a rule holds; undefined where it holds nowhere. */
function whereItHolds(
  rule: Rule,
  placesOf: (term: number) => readonly number[],
  nearest: (term: number, i: number, window: number) => number,
  stands: (term: number, i: number) => boolean,
): number[] | undefined {
  const [anchor = -1, ...others] = rule.near;
  for (const i of placesOf(anchor)) {
    const used = [i];
    for (const [k, term] of others.entries()) {
      const j = nearest(term, i, rule.windows[k + 1] ?? WINDOW);
      if (j < 0) break;
      used.push(j);
    }
    if (used.length === rule.near.length && !rule.except.some((term) => stands(term, i))) return used;
  }
  return undefined;
}

function asMatch(
  hazard: number,
  used: readonly number[],
  /** What the rule wants anywhere in the step: told with the words, but the place is that of the others. */
  elsewhere: readonly number[],
  tokens: readonly Token[],
  fields: readonly Field[],
  fieldOf: readonly number[],
): Match {
  const sorted = [...new Set([...used, ...elsewhere])].sort((a, b) => a - b);
  const first = Math.min(...used);
  const field = fields[fieldOf[first] ?? 0];
  const words = sorted.map((i) => {
    const token = tokens[i];
    return (fields[fieldOf[i] ?? 0]?.text ?? '').slice(token?.offset ?? 0, token?.end ?? 0);
  });
  return { hazard, words: words.join(' … '), field: field?.name ?? '', offset: tokens[first]?.offset ?? 0 };
}

const withoutSkipped = (text: string): string[] => {
  const words = text.trim().split(/\s+/);
  const kept = words.filter((word) => !isSkipped(word));
  return kept.length === 0 ? words : kept;
};

function push<K, V>(map: Map<K, V[]>, key: K, value: V): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}
