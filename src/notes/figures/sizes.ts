/** "a plate 60 by 90", "a hole 15 x 40": two lengths. Three numbers are the name of a seal or a bearing and measure nothing until a unit is said. */
import { type Candidate, NONE } from './figure.ts';
import type { Leaning } from './leaning.ts';
import { around, at, type Token } from './tokens.ts';

const NAMED =
  / (?:seal|seals|bearing|bearings|o-ring|ring|rings|tyre|tyres|belt|bolt|bolts|screw|screws|m|stud|studs|bush) /;

export function settleSizes(
  tokens: readonly Token[],
  all: readonly Candidate[],
  { metric, inches }: Leaning,
): void {
  for (let i = 0; i < all.length; ) {
    let end = i + 1;
    while (end < all.length && isTimes(tokens, all[end - 1], all[end])) end += 1;
    const chain = all.slice(i, end);
    i = end;
    if (chain.length < 2) continue;
    const [first, last] = [chain[0], chain.at(-1)];
    const named = NAMED.test(around(tokens, lineStart(tokens, first?.from ?? 0), (last?.to ?? 0) + 4));
    const size = chain.length === 2 && !named && chain.every(({ value }) => value >= 5 && value <= 3000);
    if (size && !(metric && !inches)) continue;
    for (const one of chain) {
      one.unit = size ? 'mm' : NONE;
      if (size) one.shared = one.carried = true;
    }
  }
}

/** Up to six words before, on the same line. */
function lineStart(tokens: readonly Token[], from: number): number {
  let k = from;
  while (k > from - 6 && k > 0 && (tokens[k]?.gap ?? 3) < 2) k -= 1;
  return k;
}

const isTimes = (tokens: readonly Token[], a: Candidate | undefined, b: Candidate | undefined): boolean =>
  a?.unit === '' && b?.unit === '' && b.from === a.to + 1 && /^(?:x|×|by)$/.test(at(tokens, a.to));
