/** The rules of all hazards, read from the words of the catalogue in the language that words.ts tells. */
import { type Rows, rowsOf, rowsWith } from './rows.ts';
import type { Vocabulary } from './vocabulary.ts';

/** Words between the first and the last of a rule. */
const WINDOW = 10;
/** The same where a rule joins them by ~. */
const TIGHT_WINDOW = 4;

/** What a rule needs in one place, "van|front|@tool", is a term; terms are numbered as the catalogue names them. */
export interface Rule {
  /** Index of the hazard as handed to compile(). */
  hazard: number;
  first: number;
  /** What must stand near the first, and how far it may stand from it. */
  near: readonly { term: number; window: number }[];
  /** What must stand anywhere in the step. */
  anywhere: readonly number[];
  except: number | undefined;
}

export interface Rules {
  /** By their first term. */
  rules: readonly Rule[];
  /** The rules that a term begins are those from beginsAt[term] up to, without, beginsAt[term + 1]. */
  beginsAt: Int32Array;
  /** What each rule needs beside its first term. */
  needsOfRule: Rows;
  atomsOfTerm: Rows;
  /** Terms of which an atom is one way to say it, without those that are exceptions alone. */
  termsOfAtom: Rows;
  /** Those among them that begin a rule. */
  firstsOfAtom: Rows;
}

/** @throws {Error} an unknown class or an empty term */
export function readRules(
  lists: readonly (readonly string[])[],
  classes: Readonly<Record<string, string>>,
  vocabulary: Vocabulary,
): Rules {
  const terms = new Map<string, number>();
  const atoms: (readonly number[])[] = [];
  const needed = new Set<number>();
  const atomsOfClass = new Map<string, readonly number[]>();

  const atomsOf = (text: string): number[] => {
    const list: number[] = [];
    for (const part of text.split('|')) {
      const written = part.trim();
      if (written.startsWith('@')) list.push(...classNamed(written));
      else list.push(vocabulary.atom(written));
    }
    return list;
  };
  const classNamed = (name: string): readonly number[] => {
    const known = atomsOfClass.get(name);
    if (known !== undefined) return known;
    const written = classes[name.slice(1)];
    if (written === undefined) throw new Error(`there is no class ${name}`);
    const list = atomsOf(written);
    atomsOfClass.set(name, list);
    return list;
  };
  const termOf = (text: string): number => {
    const known = terms.get(text);
    if (known !== undefined) return known;
    const term = terms.size;
    terms.set(text, term);
    atoms.push(atomsOf(text));
    return term;
  };
  const need = (text: string): number => {
    const term = termOf(text);
    needed.add(term);
    return term;
  };

  const rules: Rule[] = [];
  for (const [hazard, list] of lists.entries()) {
    for (const written of list) {
      const [wanted = '', exceptions] = written.split(' - ');
      const [together = '', ...anywhere] = wanted.split(' & ');
      const [first = '', ...near] = together.split(/ [+~] /);
      const joints = together.match(/ [+~] /g) ?? [];
      rules.push({
        hazard,
        first: need(first),
        near: near.map((text, k) => ({
          term: need(text),
          window: joints[k] === ' ~ ' ? TIGHT_WINDOW : WINDOW,
        })),
        anywhere: anywhere.map(need),
        except: exceptions === undefined ? undefined : termOf(exceptions),
      });
    }
  }
  const firsts = new Set(rules.map((rule) => rule.first));
  rules.sort((a, b) => a.first - b.first);
  return {
    rules,
    beginsAt: rowsWith(
      rules.map((rule) => [rule.first]),
      terms.size,
      () => true,
    ).starts,
    needsOfRule: rowsOf(rules.map((rule) => [...rule.near.map(({ term }) => term), ...rule.anywhere])),
    atomsOfTerm: rowsOf(atoms),
    termsOfAtom: rowsWith(atoms, vocabulary.atomCount, (term) => needed.has(term)),
    firstsOfAtom: rowsWith(atoms, vocabulary.atomCount, (term) => firsts.has(term)),
  };
}
