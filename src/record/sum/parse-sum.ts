import { nearest } from '../text/nearest.ts';
import { shown } from '../text/words.ts';
import { NONE, type SumUnit, times, UNIT_NAMES, unitByName } from './dimensions.ts';

export type Operator = '+' | '-' | '*' | '/' | '^';
export type FunctionName = 'sqrt' | 'sin' | 'cos' | 'tan' | 'asin' | 'acos' | 'atan';

/** A sum as a tree. `at` is the offset of the node in the author's text. */
export type SumNode =
  | { k: 'figure'; text: string; unitText: string; unit: SumUnit; at: number }
  | { k: 'machine'; path: string; at: number }
  | { k: 'pi'; at: number }
  | { k: 'negative'; of: SumNode; at: number }
  | { k: 'operator'; operator: Operator; left: SumNode; right: SumNode; at: number }
  | { k: 'function'; name: FunctionName; of: SumNode; at: number };

/** What is wrong with a sum, and where in its text. Thrown inside this folder only. */
export class SumProblem extends Error {
  readonly at: number;
  constructor(message: string, at: number) {
    super(message);
    this.at = at;
  }
}

export const BARE: SumUnit = { name: '', size: 1, dimensions: NONE };

const FUNCTIONS: readonly FunctionName[] = ['sqrt', 'sin', 'cos', 'tan', 'asin', 'acos', 'atan'];
const MOST_CHARACTERS = 400;
const DEEPEST = 40;

interface Token {
  kind: 'number' | 'name' | 'sign' | 'end';
  text: string;
  at: number;
}

const TOKEN = /\s*(?:(\d+(?:\.\d+)?)|(machine(?:\.[A-Za-z0-9_-]+)+|[A-Za-zµΩ°%]+[23]?)|([-−+*×·/^()]))/y;

function tokens(text: string): Token[] {
  const list: Token[] = [];
  const end = text.trimEnd().length;
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < end) {
    const start = TOKEN.lastIndex;
    const found = TOKEN.exec(text);
    const at = start + (/^\s*/.exec(text.slice(start))?.[0].length ?? 0);
    if (!found) {
      const wrong = text[at] ?? '';
      if (wrong === ',')
        throw new SumProblem('A comma cannot stand here. Write decimals with a point, such as 3.4.', at);
      throw new SumProblem(
        `${shown(wrong)} cannot stand in a sum. Write figures with units, + - * / ^, brackets and machine.section.key.`,
        at,
      );
    }
    const [, number, name, sign] = found;
    if (number !== undefined) list.push({ kind: 'number', text: number, at });
    else if (name !== undefined) list.push({ kind: 'name', text: name, at });
    else
      list.push({
        kind: 'sign',
        text: sign === '−' ? '-' : sign === '×' || sign === '·' ? '*' : (sign ?? ''),
        at,
      });
  }
  list.push({ kind: 'end', text: '', at: end });
  return list;
}

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
  return new Parser(tokens(text)).whole();
}

class Parser {
  readonly #tokens: readonly Token[];
  #next = 0;
  #depth = 0;

  constructor(list: readonly Token[]) {
    this.#tokens = list;
  }

  whole(): SumNode {
    const node = this.#sum();
    const rest = this.#peek();
    if (rest.kind !== 'end') throw this.#unexpected(rest);
    return node;
  }

  #peek(): Token {
    return this.#tokens[this.#next] ?? { kind: 'end', text: '', at: 0 };
  }

  #isSign(...signs: string[]): boolean {
    const token = this.#peek();
    return token.kind === 'sign' && signs.includes(token.text);
  }

  #sum(): SumNode {
    if (++this.#depth > DEEPEST)
      throw new SumProblem('The brackets are too deep. Part the sum into steps.', this.#peek().at);
    let left = this.#product();
    while (this.#isSign('+', '-')) left = this.#operator(left, () => this.#product());
    this.#depth--;
    return left;
  }

  #product(): SumNode {
    let left = this.#signed();
    while (this.#isSign('*', '/')) left = this.#operator(left, () => this.#signed());
    return left;
  }

  #operator(left: SumNode, right: () => SumNode): SumNode {
    const { text, at } = this.#peek();
    this.#next++;
    return { k: 'operator', operator: text as Operator, left, right: right(), at };
  }

  #signed(): SumNode {
    if (!this.#isSign('-')) return this.#power();
    const { at } = this.#peek();
    this.#next++;
    if (++this.#depth > DEEPEST) throw new SumProblem('There are too many signs. Write one.', at);
    const of = this.#signed();
    this.#depth--;
    return { k: 'negative', of, at };
  }

  #power(): SumNode {
    const base = this.#atom();
    if (!this.#isSign('^')) return base;
    return this.#operator(base, () => this.#signed());
  }

  #atom(): SumNode {
    const token = this.#peek();
    this.#next++;
    if (token.kind === 'number') return this.#figure(token);
    if (token.kind === 'sign' && token.text === '(') return this.#bracket();
    if (token.kind !== 'name') throw this.#unexpected(token);
    const { text, at } = token;
    if (text === 'pi') return { k: 'pi', at };
    if (text.startsWith('machine.')) return { k: 'machine', path: text.slice('machine.'.length), at };
    const name = FUNCTIONS.find((one) => one === text);
    if (name) {
      if (!this.#isSign('(')) throw new SumProblem(`"${text}" needs brackets. Write ${text}(…).`, at);
      this.#next++;
      return { k: 'function', name, of: this.#bracket(), at };
    }
    const unit = unitByName(text);
    if (unit) {
      this.#next--;
      return this.#figure({ kind: 'number', text: '1', at });
    }
    throw unknownName(text, at);
  }

  #bracket(): SumNode {
    const node = this.#sum();
    if (!this.#isSign(')')) {
      const token = this.#peek();
      throw new SumProblem('A bracket is not closed. Write ")" where it ends.', token.at);
    }
    this.#next++;
    return node;
  }

  /** A number and the units that stand right behind it. */
  #figure(number: Token): SumNode {
    let unit = BARE;
    let unitText = '';
    for (;;) {
      const token = this.#peek();
      const next = token.kind === 'name' ? unitByName(token.text) : undefined;
      if (!next) break;
      this.#next++;
      const power = this.#unitPower();
      unit = {
        name: '',
        size: unit.size * next.size ** power,
        dimensions: times(unit.dimensions, next.dimensions, power),
      };
      unitText += `${unitText === '' ? '' : ' '}${token.text}${power === 1 ? '' : power === 2 ? '²' : power === 3 ? '³' : `^${power}`}`;
    }
    const figure: SumNode = { k: 'figure', text: number.text, unitText, unit, at: number.at };
    const after = this.#peek();
    const joined =
      unitText === '' && after.kind === 'name' && (after.text === 'pi' || after.text.startsWith('machine.'));
    if (!joined) return figure;
    return { k: 'operator', operator: '*', left: figure, right: this.#power(), at: after.at };
  }

  #unitPower(): number {
    if (!this.#isSign('^')) return 1;
    const power = this.#tokens[this.#next + 1];
    if (power?.kind !== 'number' || !/^[1-6]$/.test(power.text)) return 1;
    this.#next += 2;
    return Number(power.text);
  }

  #unexpected({ kind, text, at }: Token): SumProblem {
    if (kind === 'name') return unknownName(text, at);
    if (kind === 'end') return new SumProblem('The sum ends too early. Write what is missing.', at);
    return new SumProblem(
      `${shown(text)} cannot stand here. A sum needs a sign between two values: + - * or /.`,
      at,
    );
  }
}

function unknownName(text: string, at: number): SumProblem {
  if (
    text === 'pi' ||
    text.startsWith('machine.') ||
    FUNCTIONS.some((one) => one === text) ||
    unitByName(text)
  )
    return new SumProblem(
      `${shown(text)} cannot stand here. A sum needs a sign between two values: + - * or /.`,
      at,
    );
  const near = nearest(text, [...UNIT_NAMES, ...FUNCTIONS, 'pi', 'machine']);
  const write = near ? `The nearest is "${near}".` : 'A machine value is written machine.section.key.';
  return new SumProblem(`${shown(text)} is no unit, function or machine value. ${write}`, at);
}
