/**
 * The small language in which a hazard names the words that point to it, and its compiler.
 *
 *   'trolley jack|axle stand'          any of these words or phrases
 *   'jack|lift + van|front|@tool'      one of the first near one of the second, in either order; @ names a class of lexicon.ts
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
  near: readonly number[];
  anywhere: readonly number[];
  except: readonly number[];
}

interface Phrase {
  rest: readonly number[];
  atom: number;
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

  const spread = (text: string): string[] =>
    text
      .split('|')
      .map((part) => part.trim())
      .flatMap((part) => {
        if (!part.startsWith('@')) return [part];
        const list = classes[part.slice(1)];
        if (list === undefined) throw new Error(`there is no class ${part}`);
        return spread(list);
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
      const rule: Rule = {
        hazard,
        near: near.split(' + ').map(termOf),
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
  const NONE: number[] = [];

  return (fields) => {
    const tokens: Token[] = [];
    const fieldOf: number[] = [];
    let at = 0;
    fields.forEach((field, index) => {
      at = tokenise(field.text, at, tokens) + FIELD_GAP;
      while (fieldOf.length < tokens.length) fieldOf.push(index);
    });

    const basesAt: number[][] = tokens.map((token) => basesOfForm.get(token.word) ?? NONE);
    const follows = (from: number, rest: readonly number[]): boolean => {
      for (let k = 0; k < rest.length; k++) {
        const next = from + k + 1;
        if (tokens[next]?.at !== (tokens[from]?.at ?? 0) + k + 1) return false;
        if (basesAt[next]?.includes(rest[k] ?? -1) !== true) return false;
      }
      return true;
    };
    for (let i = 0; i < tokens.length; i++) {
      for (const base of basesAt[i] ?? NONE) {
        for (const rest of sayingsByBase.get(base) ?? []) {
          if (follows(i, rest)) for (let k = 0; k <= rest.length; k++) basesAt[i + k] = NONE;
        }
      }
    }

    // Where each term stands: indexes of tokens, rising.
    const places: (number[] | undefined)[] = new Array(termCount);
    const present: number[] = [];
    const note = (atom: number, i: number): void => {
      for (const term of termsOfAtom[atom] ?? NONE) {
        const list = places[term];
        if (list === undefined) {
          places[term] = [i];
          present.push(term);
        } else if (list[list.length - 1] !== i) list.push(i);
      }
    };
    for (let i = 0; i < tokens.length; i++) {
      const token = tokens[i];
      if (token === undefined) continue;
      for (const base of basesAt[i] ?? NONE) {
        const atom = atomOfBase.get(base);
        if (atom !== undefined) note(atom, i);
        for (const phrase of phrases.get(base) ?? []) if (follows(i, phrase.rest)) note(phrase.atom, i);
      }
      for (const atom of atomsOfForm.get(token.word) ?? NONE) note(atom, i);
      if (token.number !== undefined) {
        for (const name of figuresAt(tokens, i, fields[fieldOf[i] ?? 0]?.text ?? '')) {
          const atom = figureAtoms.get(name);
          if (atom !== undefined) note(atom, i);
        }
      }
    }

    const nearest = (term: number, i: number, window: number): number => {
      const list = places[term];
      if (list === undefined) return -1;
      const here = tokens[i]?.at ?? 0;
      let best = -1;
      let gap = window + 1;
      for (const j of list) {
        const apart = Math.abs((tokens[j]?.at ?? 0) - here);
        if (j !== i && apart < gap) {
          best = j;
          gap = apart;
        }
      }
      return best;
    };

    const found = new Map<number, Match>();
    for (const term of present) {
      for (const rule of rulesOfTerm.get(term) ?? []) {
        if (found.has(rule.hazard)) continue;
        if (!rule.anywhere.every((other) => places[other] !== undefined)) continue;
        for (const i of places[term] ?? NONE) {
          const used = [i];
          let holds = true;
          for (let k = 1; k < rule.near.length && holds; k++) {
            const j = nearest(rule.near[k] ?? -1, i, WINDOW);
            if (j < 0) holds = false;
            else used.push(j);
          }
          if (!holds) continue;
          if (rule.except.some((other) => stands(other, i, nearest, places))) continue;
          found.set(rule.hazard, asMatch(rule.hazard, used, tokens, fields, fieldOf));
          break;
        }
      }
    }
    return [...found.values()].sort((a, b) => a.hazard - b.hazard);
  };
}

function stands(
  term: number,
  i: number,
  nearest: (term: number, i: number, window: number) => number,
  places: readonly (readonly number[] | undefined)[],
): boolean {
  return places[term]?.includes(i) === true || nearest(term, i, EXCEPTION_WINDOW) >= 0;
}

function asMatch(
  hazard: number,
  used: readonly number[],
  tokens: readonly Token[],
  fields: readonly Field[],
  fieldOf: readonly number[],
): Match {
  const sorted = [...new Set(used)].sort((a, b) => a - b);
  const first = sorted[0] ?? 0;
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
