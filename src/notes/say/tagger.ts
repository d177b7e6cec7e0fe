/** Parts of speech of running words: each has its usual one, and the rules of the tagger's model change it by its neighbours. */
import model from 'wink-eng-lite-web-model';
import type { WinkModel } from './inside-wink.ts';
import { Rules } from './rules.ts';
import { type Entry, Tables } from './tables.ts';

export interface Tagger {
  /** A text's words and marks in order, each with its place: parallel lists, since this runs over every word of a long recording. */
  tag(text: string): { entries: Entry[]; starts: number[]; tags: number[] };
  /** The part of speech that a number stands for. */
  nameOf(tag: number): string;
}

export function newTagger(): Tagger {
  const tables = new Tables();
  const rules = (model as unknown as WinkModel).pos().machines.map((machine) => new Rules(machine));
  /** By rule and part of speech, and by rule and hint, the column of what the rule sees. */
  const tagColumns = rules.map((rule) => tables.names.map((_, tag) => rule.column(tag)));
  const hintColumns = rules.map(() => new Map<number, number>([[0, -1]]));
  const columnOf = (rule: number, { hint }: Entry, tag: number): number => {
    const known = hintColumns[rule];
    let column = known?.get(hint);
    if (column === undefined) {
      column = rules[rule]?.column(hint) ?? 0;
      known?.set(hint, column);
    }
    return column >= 0 ? column : (tagColumns[rule]?.[tag] ?? 0);
  };
  return {
    nameOf: (tag) => tables.names[tag] ?? '',
    tag(text) {
      const { entries, starts } = placed(text, tables);
      const tags = entries.map(({ usual }) => usual);
      for (let rule = 0; rule < rules.length; rule++) {
        const seen: number[] = [];
        for (let i = 0; i < entries.length; i++) seen.push(columnOf(rule, entries[i] as Entry, tags[i] ?? 0));
        const changes: number[] = [];
        rules[rule]?.apply(seen, (at, pos) => changes.push(at, pos));
        for (let k = 0; k < changes.length; k += 2) {
          const [at = 0, pos = 0] = [changes[k], changes[k + 1]];
          const entry = entries[at];
          if (pos < 0) tags[at] = -pos;
          else if (entry?.canBe(pos)) tags[at] = pos;
        }
      }
      for (let i = 0; i < tags.length; i++) tags[i] = entries[i]?.fixed || tags[i] || 0;
      return { entries, starts, tags };
    },
  };
}

/** Every piece of a text with its place. */
function placed(text: string, tables: Tables): { entries: Entry[]; starts: number[] } {
  const entries: Entry[] = [];
  const starts: number[] = [];
  let at = 0;
  let from = 0;
  /** Every piece so far stands in the text as it is. */
  let plain = true;
  // A line's end is a blank like any other.
  for (const written of text.replace(/\s/g, ' ').split(' ')) {
    if (written !== '') {
      const read = tables.read(written);
      plain &&= read.whole && from - at <= REACH;
      if (plain) at = from;
      for (const entry of read.entries) {
        const found = plain ? at : text.indexOf(entry.value, at);
        // The tagger may change a quote or a dash: such a word has the place of what follows the one before it.
        const start = found < 0 || found > at + REACH ? at : found;
        at = start + entry.value.length;
        entries.push(entry);
        starts.push(start);
      }
    }
    from += written.length + 1;
  }
  return { entries, starts };
}

/** A word is looked for so many characters on. */
const REACH = 400;
