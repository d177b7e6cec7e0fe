import { type ParsedNode, parseExpression } from './expression-parser.ts';
import { readTree } from './read-tree.ts';
import { spelt } from './spelling.ts';
import { type SumNode, SumProblem } from './sum-node.ts';
import { endsEarly, noCharacter, signMissing } from './sum-words.ts';

const MOST_CHARACTERS = 400;
const DEEPEST = 40;

/** Characters that a sum may hold or that the parser reads as something to be named; "#" would hide what follows it. */
const STRANGE = /[^\x20-\x7e\s−×·µΩ°]|#/;

/** Sums are few and stand often: π/4 · d² in every chapter. */
const known = new Map<string, SumNode>();

/**
 * Reads a sum: figures with units, machine values, pi, + - * / ^, brackets and seven functions; nothing else exists in it.
 * A figure and its unit belong together before any sign: "1 L / 100 km" is one litre for each hundred kilometres.
 * @throws {SumProblem} with the place in the text
 */
export function parseSum(text: string): SumNode {
  if (text.length > MOST_CHARACTERS)
    throw new SumProblem(
      `The sum has ${text.length} characters; ${MOST_CHARACTERS} are read at most. Part it into steps.`,
      0,
    );
  let tree = known.get(text);
  if (!tree) {
    tree = parsed(text);
    if (known.size >= 1000) known.clear();
    known.set(text, tree);
  }
  return tree;
}

function parsed(text: string): SumNode {
  const strange = STRANGE.exec(text);
  if (strange) throw noCharacter(strange[0], strange.index);
  const end = text.trimEnd().length;
  if (end === 0) throw endsEarly(0);
  refuseDepth(text);
  const spelling = spelt(text);
  let tree: ParsedNode;
  try {
    tree = parseExpression(spelling);
  } catch (error) {
    if (!(error instanceof Error) || !('char' in error) || typeof error.char !== 'number') throw error;
    throw syntaxProblem(text, error.char - 1, end, error.message);
  }
  return readTree(tree, text, spelling);
}

/** Brackets and signs are counted before parsing: a parser goes one call deeper for each. */
function refuseDepth(text: string): void {
  let depth = 0;
  for (const [at, character] of [...text].entries()) {
    if ('([{'.includes(character) && ++depth > DEEPEST)
      throw new SumProblem('The brackets are too deep. Part the sum into steps.', at);
    if (')]}'.includes(character)) depth--;
  }
  const signs = /(?:[-−+]\s*){6}|(?:\^[^-+*/()]*){6}/.exec(text);
  if (signs) throw new SumProblem('There are too many signs. Write one.', signs.index);
}

function syntaxProblem(text: string, at: number, end: number, message: string): SumProblem {
  if (message.startsWith('Parenthesis )'))
    return new SumProblem('A bracket is not closed. Write ")" where it ends.', Math.min(at, end));
  if (at >= end) return endsEarly(end);
  const character = text[at] ?? '';
  if (/[^\w\s.+*/^()−×·-]/.test(character)) return noCharacter(character, at);
  const word = /^(?:[\w.]+|.)/.exec(text.slice(at))?.[0] ?? character;
  return signMissing(word, at);
}
