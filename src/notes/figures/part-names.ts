/** The name of a part of one, singular or plural. */
import { PARTS } from './number-names.ts';
import { at, next, type Token } from './tokens.ts';

export interface Part {
  size: number;
  to: number;
}

/** The name of a part: "half", "eighths", "thirty-seconds". */
export function partNameAt(tokens: readonly Token[], i: number): Part | undefined {
  const word = at(tokens, i);
  const size = PARTS.get(word);
  if (size !== undefined) return { size, to: i + 1 };
  if (word !== 'thirty' && word !== 'sixty') return undefined;
  const k = next(tokens, i + 1);
  const small = k < 0 ? '' : at(tokens, k);
  const seconds = word === 'thirty' && (small === 'seconds' || (small === 'second' && k > i + 1));
  // "three thirty seconds of an inch", never "thirty seconds"
  if (seconds && (k > i + 1 || /^(?:of|inch)$/.test(at(tokens, k + 1)))) return { size: 32, to: k + 1 };
  return word === 'sixty' && /^fourths?$/.test(small) ? { size: 64, to: k + 1 } : undefined;
}
