/** "seal was four ninety", "5,90 post", "eighteen for freight": a sum without its currency, where the words pay for something. */
import { type Candidate, known } from './figure.ts';
import type { Leaning } from './leaning.ts';
import { isSum } from './sum-evidence.ts';
import { around, at, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

/** A sum takes the currency of the sum beside it, else that of the text. What is settled late tells what stands before it. */
export function settleSums(tokens: readonly Token[], all: readonly Candidate[], leaning: Leaning): void {
  const bare: number[] = [];
  for (let i = 0; i < all.length; i++) {
    const one = all[i];
    if (one?.unit === '' && !one.fraction && one.value > 0 && one.part === undefined) bare.push(i);
  }
  const near = new Set<number>();
  for (const one of all) if (MONEY.has(one.unit)) near.add(one.from >> BLOCK);
  // First what has a currency beside it, then what only the text gives one; backwards for what that tells of sums before it
  for (const money of leaning.money === '' ? [''] : ['', leaning.money])
    if (settleAll(tokens, all, bare, money, leaning, near))
      settleAll(tokens, all, bare.toReversed(), money, leaning, near);
}

/** Sums are looked for in the same block of 32 words, or the next. */
const BLOCK = 5;

function settleAll(
  tokens: readonly Token[],
  all: readonly Candidate[],
  bare: readonly number[],
  money: string,
  leaning: Leaning,
  near: Set<number>,
): boolean {
  let any = false;
  for (const i of bare) {
    const one = all[i];
    if (one?.unit !== '') continue;
    const block = one.from >> BLOCK;
    const beside =
      near.has(block) || near.has(block - 1) || near.has(block + 1) ? neighbour(all, i) : undefined;
    if (!beside && one.word && !one.pair && one.value < 5) continue;
    const named = namedBehind(tokens, one);
    const currency = named || (beside?.unit ?? money);
    if (!currency || !isSum(tokens, all, i, { beside, named: named !== '', leaning })) continue;
    any = true;
    near.add(block);
    one.unit = currency;
    one.shared = true;
    one.carried = true;
    if (one.pair && currency !== 'JPY') {
      one.value = one.pair.high + one.pair.low / 100;
      one.digits = one.value.toFixed(2);
      one.decimal = true;
    }
  }
  return any;
}

/** "31.20 to the mount people in pounds", "96.00 + crate 18.00, all GBP". */
function namedBehind(tokens: readonly Token[], one: Candidate): string {
  if (!nearIn(tokens, one.to)) return '';
  const near = around(tokens, one.to, one.to + 8);
  const found = IN_CURRENCY.exec(near)?.[1] ?? CURRENCY_LAST.exec(near)?.[1] ?? '';
  return found === '' ? '' : (IN_WORDS[found] ?? found.toUpperCase());
}

const CURRENCY = 'pounds|sterling|euros|dollars|crowns|yen|czech crowns|gbp|eur|usd|czk|jpy|kč';
const IN_CURRENCY = new RegExp(` (?:in|all) (${CURRENCY}) `);
/** "5.60 plus 2 for the envelope, euros." */
const CURRENCY_LAST = new RegExp(` , (${CURRENCY}) [.,;!?)]`);

const nearIn = (tokens: readonly Token[], from: number): boolean => {
  for (let k = from; k < from + 7; k++) if (/^(?:in|all|,)$/.test(at(tokens, k))) return true;
  return false;
};

const IN_WORDS: Readonly<Record<string, string>> = {
  pounds: 'GBP',
  sterling: 'GBP',
  euros: 'EUR',
  dollars: 'USD',
  crowns: 'CZK',
  'czech crowns': 'CZK',
  kč: 'CZK',
  yen: 'JPY',
};

function neighbour(all: readonly Candidate[], i: number): Candidate | undefined {
  const one = all[i];
  let best: { far: number; one: Candidate } | undefined;
  for (const way of [-1, 1])
    for (let k = i + way, seen = 0; one && seen < 4; k += way, seen++) {
      const other = all[k];
      if (!other) break;
      const far = way < 0 ? one.from - other.to : other.from - one.to + 4;
      if (far > 24) break;
      if (!known(other) || !MONEY.has(other.unit)) continue;
      if (!best || far < best.far) best = { far, one: other };
      break;
    }
  return best?.one;
}
