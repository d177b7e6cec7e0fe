/** The table of units, ready to be looked up by its first word. */
import { type Token, tokensOf } from './tokens.ts';
import { UNIT_WORDS } from './unit-words.ts';

export interface Form {
  unit: string;
  words: readonly string[];
  /** Which of them touch the one before: the 2 of mm2. */
  glued: readonly boolean[];
  /** Only behind digits. */
  digits: boolean;
  /** Only where it touches the digits. */
  touching: boolean;
  /** In these capitals alone. */
  exact?: string;
}

let byFirst: Map<string, Form[]> | undefined;

/** Forms that begin with a word, the longest first. */
export function formsOf(first: string): readonly Form[] {
  byFirst ??= compiled();
  return byFirst.get(first) ?? [];
}

function compiled(): Map<string, Form[]> {
  const out = new Map<string, Form[]>();
  for (const [unit, forms] of Object.entries(UNIT_WORDS))
    for (const form of forms.split(', ').flatMap(spelled)) {
      const written = form.replace(/^[#=]?!?/, '');
      const tokens = tokensOf(written);
      const words = tokens.map(({ text }: Token) => text);
      const one: Form = {
        unit,
        words,
        glued: tokens.map(({ kind, gap }, place) => place > 0 && kind === 'number' && gap === 0),
        digits: /^[#=]/.test(form),
        touching: form.startsWith('='),
        ...(/^[#=]?!/.test(form) ? { exact: written } : {}),
      };
      const first = words[0] ?? '';
      out.set(first, [...(out.get(first) ?? []), one]);
    }
  for (const forms of out.values()) forms.sort((a, b) => b.words.length - a.words.length);
  return out;
}

/** "amp~ hour~" stands for four spellings. */
function spelled(form: string): string[] {
  const cut = form.indexOf('~');
  if (cut < 0) return [form];
  return spelled(form.slice(cut + 1)).flatMap((rest) => [
    form.slice(0, cut) + rest,
    `${form.slice(0, cut)}s${rest}`,
  ]);
}
