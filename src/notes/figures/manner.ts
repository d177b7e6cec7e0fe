/** How a text is written: in sentences, in captions, in lists of short lines. */
import { headingUnits, type NamedUnit } from './headings.ts';
import { at, type Token } from './tokens.ts';

export interface Manner {
  speech: boolean;
  named: readonly NamedUnit[];
  /** How many words a line's end counts for: more in lists of short lines than in wrapped text. */
  lineEnd: number;
}

export const mannerOf = (tokens: readonly Token[]): Manner => ({
  speech: unstopped(tokens),
  named: headingUnits(tokens),
  lineEnd: isList(tokens) ? 5 : 2,
});

/** Lines of under fourteen words, and few empty ones between: items, not captions. */
function isList(tokens: readonly Token[]): boolean {
  let [ends, empty] = [0, 0];
  for (let i = 0; i < tokens.length; i++) {
    const gap = tokens[i]?.gap;
    if (gap === 2) ends += 1;
    else if (gap === 3) empty += 1;
  }
  return ends > 4 && empty < 0.4 * ends && tokens.length < 14 * (ends + empty);
}

/** Fewer than one stop to thirty words: nobody wrote stops. */
function unstopped(tokens: readonly Token[]): boolean {
  let stops = 0;
  for (let i = 0; i < tokens.length; i++)
    if (tokens[i]?.kind === 'sign' && '.,;!?'.includes(at(tokens, i))) stops += 1;
  return stops * 30 < tokens.length;
}
