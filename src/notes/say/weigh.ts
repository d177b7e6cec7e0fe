/** A statement's features weighed: how likely it says a thing, and the words that told it most. */
import type { Feature } from './features.ts';
import type { TaggedWord } from './words.ts';

export interface Weights {
  /** What a statement without any feature would weigh; log odds. */
  bias: number;
  /** Log odds at and above which the thing is held to be said. */
  from: number;
  words: Readonly<Record<string, number>>;
}

/** Lone words count less in a long statement, where much else is said beside. */
export const share = (count: number): number => (count > 12 ? Math.sqrt(12 / count) : 1);

export function weigh(features: readonly Feature[], { bias, words }: Weights, count = 0): number {
  let sum = bias;
  let lone = 0;
  for (const { name } of features) {
    const weight = words[name];
    if (weight === undefined) continue;
    if (name.startsWith('[')) sum += weight;
    else lone += weight;
  }
  return sum + lone * share(count);
}

/** The words of the source that weigh most for the finding, as they stand there. */
export function toldBy(
  features: readonly Feature[],
  { words: known }: Weights,
  words: readonly TaggedWord[],
): { text: string; start: number } | undefined {
  let best: { rank: number; text: string; start: number } | undefined;
  for (const { name, at, length } of features) {
    const weight = known[name] ?? 0;
    // A class of the vocabulary tells more than a lone word, whatever each weighs.
    const rank = weight + (weight > 0 && name.startsWith('[') ? 10 : 0);
    if (at === undefined || length === undefined || rank <= (best?.rank ?? 0)) continue;
    const text = words
      .slice(at, at + length)
      .map((word, i) => (i > 0 && (words[at + i - 1]?.end ?? 0) < word.start ? ` ${word.text}` : word.text))
      .join('')
      .trim();
    if (/[a-z]{2}/.test(text)) best = { rank, text, start: words[at]?.start ?? 0 };
  }
  return best;
}
