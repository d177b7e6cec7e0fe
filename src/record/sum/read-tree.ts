import { shown } from '../text/words.ts';
import { type SumUnit, times, unitByName } from './dimensions.ts';
import type { ParsedNode } from './expression-parser.ts';
import { BARE, FUNCTIONS, type Operator, type SumNode, SumProblem } from './sum-node.ts';
import { notInSums, signMissing, unknownName } from './sum-words.ts';

const OPERATORS: readonly string[] = ['+', '-', '*', '/', '^'];
const NUMBER = /(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;

/**
 * The parser's tree as a sum: what is not on the lists of node types, operators, functions and names is refused.
 * `spelling` is the text that was parsed, as long as the author's, character for character.
 * @throws {SumProblem}
 */
export function readTree(tree: ParsedNode, text: string, spelling: string): SumNode {
  return new Reading(text, spelling).node(tree);
}

/**
 * One walk. The parser keeps no places and no digits ("54.10" is 54.1 to it), but names, figures and signs come in the
 * order in which they are written: each is looked up from where the last one ended.
 */
class Reading {
  readonly #text: string;
  readonly #spelling: string;
  #from = 0;

  constructor(text: string, spelling: string) {
    this.#text = text;
    this.#spelling = spelling;
  }

  node(node: ParsedNode): SumNode {
    switch (node.type) {
      case 'ConstantNode':
        return { k: 'figure', unitText: '', unit: BARE, ...this.#number(node) };
      case 'SymbolNode':
        return this.#symbol(node);
      case 'AccessorNode':
        return this.#machine(node);
      case 'ParenthesisNode':
        return this.node(inner(node.content));
      case 'OperatorNode':
        return this.#operator(node);
      case 'FunctionNode':
        return this.#function(node);
      default:
        throw notInSums(node.type, this.#ahead());
    }
  }

  /** Offset of the next thing that is written. */
  #ahead(): number {
    return this.#from + (/^\s*/.exec(this.#spelling.slice(this.#from))?.[0].length ?? 0);
  }

  /** Goes past what is written next, and says where it stood and how the author spelt it. */
  #take(word: string): { at: number; written: string } {
    const at = Math.max(this.#from, this.#spelling.indexOf(word, this.#from));
    this.#from = at + word.length;
    return { at, written: this.#text.slice(at, this.#from) };
  }

  #number({ value }: ParsedNode): { text: string; at: number } {
    const at = this.#from + Math.max(0, this.#spelling.slice(this.#from).search(/[^\s()]/));
    NUMBER.lastIndex = at;
    const text = NUMBER.exec(this.#spelling)?.[0] ?? '';
    if (typeof value !== 'number') throw notInSums('', at);
    if (Number(text) !== value || !/^\d+(\.\d+)?$/.test(text)) {
      const written = /^[\w.+-]+/.exec(this.#text.slice(at))?.[0] ?? text;
      throw new SumProblem(`${shown(written)} is no plain figure. Write one such as 0.5 or 1200.`, at);
    }
    this.#from = at + text.length;
    return { text, at };
  }

  #symbol({ name = '' }: ParsedNode): SumNode {
    const { at, written } = this.#take(name);
    if (written === 'pi') return { k: 'pi', at };
    const unit = unitByName(written);
    if (unit) return { k: 'figure', text: '1', unitText: written, unit, at };
    throw unknownName(written, at);
  }

  #machine(node: ParsedNode): SumNode {
    const keys: string[] = [];
    let object: ParsedNode | undefined = node;
    while (object?.type === 'AccessorNode' && object.index?.dotNotation) {
      keys.unshift(object.name ?? '');
      object = object.object;
    }
    if (object?.type !== 'SymbolNode') throw notInSums('', this.#ahead());
    const { at, written } = this.#take(object.name ?? '');
    const path = keys.map((key) => this.#take(key).written).join('.');
    if (written !== 'machine') throw unknownName(`${written}.${path}`, at);
    return { k: 'machine', path, at };
  }

  #operator({ op = '', implicit, args = [] }: ParsedNode): SumNode {
    const [left, right] = args;
    if (!left) throw notInSums('', this.#ahead());
    if (implicit) return this.#figure(left, [inner(right)]);
    if (!right && op === '-') {
      const { at } = this.#take(op);
      return { k: 'negative', of: this.node(left), at };
    }
    if (!right || !OPERATORS.includes(op)) {
      const at = Math.max(0, this.#spelling.indexOf(op, this.#from));
      throw signMissing(op, at);
    }
    if (op === '^' && this.#isUnit(left) && wholePower(right) !== undefined)
      return this.#figure(left, [], right);
    const of = this.node(left);
    const { at } = this.#take(op);
    return { k: 'operator', operator: op as Operator, left: of, right: this.node(right), at };
  }

  /** A figure and the units right behind it, which the parser multiplies from the left: ((22 N) m). */
  #figure(first: ParsedNode, behind: readonly ParsedNode[], power?: ParsedNode): SumNode {
    if (first.type === 'OperatorNode') {
      const [left, right] = first.args ?? [];
      if (left && first.implicit) return this.#figure(left, [inner(right), ...behind]);
      if (left && first.op === '-' && !right) {
        const { at } = this.#take('-');
        return { k: 'negative', of: this.#figure(left, behind), at };
      }
      // The parser halves before it multiplies: "1 / 2 mm" comes as (1 / 2) mm.
      if (left && right && first.op === '/') {
        const over = this.node(left);
        const { at } = this.#take('/');
        return { k: 'operator', operator: '/', left: over, right: this.#figure(right, behind), at };
      }
    }
    const figure = power ? this.#unitTimes({ text: '1' }, first, power) : this.node(first);
    return behind.reduce((so, next) => this.#joined(so, next), figure);
  }

  #joined(figure: SumNode, next: ParsedNode): SumNode {
    const [base, power] = next.type === 'OperatorNode' && next.op === '^' ? (next.args ?? []) : [next];
    const at = this.#ahead();
    if (figure.k === 'figure' && base && this.#isUnit(base)) return this.#unitTimes(figure, base, power);
    if (figure.k === 'figure' && figure.unitText === '' && base && isValue(base))
      return { k: 'operator', operator: '*', left: figure, right: this.node(next), at };
    // A name that is not known is the likelier slip than a sign that is missing.
    if (base?.type === 'SymbolNode' || base?.type === 'FunctionNode') this.node(base);
    throw signMissing(/^(?:[\w.]+|.)/u.exec(this.#text.slice(at))?.[0] ?? '', at);
  }

  #unitTimes(
    figure: { text: string; unitText?: string; unit?: SumUnit; at?: number },
    base: ParsedNode,
    power?: ParsedNode,
  ): SumNode {
    const { at, written } = this.#take(base.name ?? '');
    const unit = unitByName(written);
    if (!unit) throw unknownName(written, at);
    const raised = power ? wholePower(power) : 1;
    if (raised === undefined)
      throw new SumProblem(
        'The power of a unit is a whole number from 1 to 6. Write "/" before a unit that divides.',
        at,
      );
    if (power) {
      this.#take('^');
      this.#number(power);
    }
    const before = figure.unit ?? BARE;
    const sign = raised === 1 ? '' : raised === 2 ? '²' : raised === 3 ? '³' : `^${raised}`;
    return {
      k: 'figure',
      text: figure.text,
      unitText: `${figure.unitText ? `${figure.unitText} ` : ''}${written}${sign}`,
      unit: {
        name: '',
        size: before.size * unit.size ** raised,
        dimensions: times(before.dimensions, unit.dimensions, raised),
      },
      at: figure.at ?? at,
    };
  }

  /** Whether this is the name of a unit; reads nothing away. */
  #isUnit({ type, name = '' }: ParsedNode): boolean {
    if (type !== 'SymbolNode') return false;
    const at = this.#spelling.indexOf(name, this.#from);
    return unitByName(this.#text.slice(at, at + name.length)) !== undefined;
  }

  #function({ fn, args = [] }: ParsedNode): SumNode {
    const called = typeof fn === 'object' && fn.type === 'SymbolNode' ? (fn.name ?? '') : '';
    const name = FUNCTIONS.find((one) => one === called);
    const { at, written } = this.#take(called);
    if (!name) {
      if (called === '' || written === 'pi' || unitByName(written))
        throw signMissing('(', this.#text.indexOf('(', at));
      throw unknownName(written, at);
    }
    const [of] = args;
    if (!of || args.length > 1)
      throw new SumProblem(
        `${name} works on one value and gets ${args.length || 'none'}. Decimals have a point, such as 3.4.`,
        at,
      );
    return { k: 'function', name, of: this.node(of), at };
  }
}

/** The whole number from 1 to 6 that a unit may be raised to. */
function wholePower({ type, value }: ParsedNode): number | undefined {
  return type === 'ConstantNode' && typeof value === 'number' && /^[1-6]$/.test(String(value))
    ? value
    : undefined;
}

/** What may stand right behind a bare figure: "2 pi", "3 machine.engine.stroke". */
const isValue = ({ type, name }: ParsedNode): boolean =>
  type === 'AccessorNode' || (type === 'SymbolNode' && name === 'pi');

function inner(node: ParsedNode | undefined): ParsedNode {
  if (!node) throw notInSums('', 0);
  return node;
}
