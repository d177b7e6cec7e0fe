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

export function weigh(features: readonly Feature[], { bias, words }: Weights): number {
  let sum = bias;
  for (const { name } of features) sum += words[name] ?? 0;
  return sum;
}

/** The words of the source that weigh most for the finding, as they stand there. */
export function toldBy(
  features: readonly Feature[],
  { words: known }: Weights,
  words: readonly TaggedWord[],
): string | undefined {
  let best: { weight: number; text: string } | undefined;
  for (const { name, at, length } of features) {
    const weight = known[name] ?? 0;
    if (at === undefined || length === undefined || weight <= (best?.weight ?? 0)) continue;
    const text = words
      .slice(at, at + length)
      .map((word, i) => (i > 0 && (words[at + i - 1]?.end ?? 0) < word.start ? ` ${word.text}` : word.text))
      .join('')
      .trim();
    if (/[a-z]{2}/.test(text)) best = { weight, text };
  }
  return best?.text;
}
