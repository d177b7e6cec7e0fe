/** Every figure of a text: digits and words, with the unit that it was said in. Nothing is converted and no unit is guessed between two that differ. */
import { settleAnchored } from './anchors.ts';
import { candidatesOf } from './candidates.ts';
import { carryUnits } from './carried.ts';
import { settleColumns } from './columns.ts';
import { writesComma } from './digits.ts';
import { type Candidate, type Figure, type Habits, known } from './figure.ts';
import { type Leaning, Tally } from './leaning.ts';
import { settleLists } from './lists.ts';
import { mannerOf } from './manner.ts';
import { inWholeMoney } from './money.ts';
import { splitPairs } from './pairs.ts';
import { settleParts } from './parts.ts';
import { joinRatios } from './ratios.ts';
import { settleReckoned } from './reckoned.ts';
import { shareAlong, shareForward, shareUnits } from './rows.ts';
import { settleSizes } from './sizes.ts';
import { settleSums } from './sums.ts';
import { type Token, tokensOf } from './tokens.ts';
import { settleTopics } from './topics.ts';
import { whichDegrees, whichMil, whichPounds } from './which-unit.ts';

export type { Figure, Habits } from './figure.ts';

/** Without one of these a text holds no figure, and no time is spent on it. */
const NUMBERISH =
  /\d|[½¼¾⅓⅔⅛⅜⅝⅞⅕]|\b(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty|thirty|fou?rty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|half|quarter|point|couple|inch|another)\b/i;

/** Long texts are read in pieces that end at a line's end. */
const PIECE = 100_000;

/** What a text leans to is told by its first megabyte; no notes are longer, and no recording is. */
const TELLING = 10;

/** Figures in the order of the text. A whole text is best given at once: what it says in one place tells what it means in another. */
export function findFigures(text: string, habits: Habits = {}): Figure[] {
  const comma = writesComma(text.slice(0, PIECE * TELLING));
  const written = ({ start, end }: Token): string => text.slice(start, end);
  const tally = new Tally();
  const waiting: Piece[] = [];
  const out: Figure[] = [];
  let leaning: Leaning | undefined;
  const settle = ({ tokens, all }: Piece, by: Leaning): void => {
    for (const one of settled(tokens, all, by)) out.push(figureOf(one, habits));
  };
  for (let from = 0, count = 1; from < text.length; count++) {
    const to = pieceEnd(text, from);
    const words = text.slice(from, to);
    if (NUMBERISH.test(words)) {
      const tokens = tokensOf(words, from);
      const all = joinRatios(tokens, candidatesOf(tokens, written, comma));
      shareUnits(tokens, all);
      if (leaning) settle({ tokens, all }, leaning);
      else {
        tally.add(all);
        tally.name(tokens);
        waiting.push({ tokens, all });
      }
    }
    from = to;
    if (leaning || (count < TELLING && from < text.length)) continue;
    leaning = tally.leaning(habits);
    for (const piece of waiting.splice(0)) settle(piece, leaning);
  }
  return out;
}

interface Piece {
  tokens: readonly Token[];
  all: Candidate[];
}

function pieceEnd(text: string, from: number): number {
  if (text.length - from <= PIECE) return text.length;
  const line = text.lastIndexOf('\n', from + PIECE);
  if (line > from) return line + 1;
  const blank = text.lastIndexOf(' ', from + PIECE);
  return blank > from ? blank + 1 : from + PIECE;
}

function settled(tokens: readonly Token[], found: readonly Candidate[], leaning: Leaning): Candidate[] {
  const all = found.map((one): Candidate => {
    if (!one.unit.endsWith('?')) return one;
    // "a tenner" is said of any money
    if (one.unit === 'note?') return { ...one, unit: leaning.money || 'GBP' };
    if (one.unit === 'mil?') return { ...one, unit: whichMil(tokens, one) };
    if (one.unit === 'deg?') return { ...one, unit: whichDegrees(tokens, one, leaning) || 'none' };
    if (one.unit === 'pounds?') return { ...one, unit: whichPounds(tokens, one, leaning.psi) || 'none' };
    return inWholeMoney(one, leaning.cent);
  });
  shareForward(tokens, all);
  settleColumns(tokens, all);
  settleLists(tokens, all, leaning);
  settleSums(tokens, all, leaning);
  settleSizes(tokens, all, leaning);
  settleParts(tokens, all, leaning);
  const single = splitPairs(tokens, all);
  settleTopics(tokens, single, leaning, true);
  settleReckoned(tokens, single);
  const manner = mannerOf(tokens);
  settleAnchored(tokens, single, manner.speech);
  carryUnits(tokens, single, manner);
  // What a topic told may be set against a bare number in its turn.
  if (settleTopics(tokens, single, leaning, false)) carryUnits(tokens, single, manner);
  settleReckoned(tokens, single);
  shareAlong(tokens, single);
  return single.filter((one) => known(one) && !one.unit.endsWith('?'));
}

const GALLONS = /^(?:gal|pt|qt|fl oz|mpg)$/;

function figureOf(one: Candidate, { gallon }: Habits): Figure {
  const { start, end, value, digits, limit, about, shared, carried } = one;
  const unit = gallon && GALLONS.test(one.unit) ? `${gallon === 'US' ? 'US' : 'imp'} ${one.unit}` : one.unit;
  return {
    start,
    end,
    value,
    unit,
    digits,
    ...(limit ? { limit } : {}),
    ...(about ? { about } : {}),
    ...(shared ? { shared } : {}),
    ...(carried ? { carried } : {}),
  };
}
