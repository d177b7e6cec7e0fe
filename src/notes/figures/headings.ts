/** Units that head a column or a list without a number: "all in mm:", "| found (mm) |". */
import { at, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

export interface NamedUnit {
  unit: string;
  token: number;
}

const NAMES: ReadonlyMap<string, string> = new Map([
  ...(['mm', 'cm', 'thou', 'bar', 'psi', 'rpm'] as const).map((unit): [string, string] => [unit, unit]),
  ['millimetres', 'mm'],
  ['millimeters', 'mm'],
  ['volts', 'V'],
  ['v', 'V'],
  ['inches', 'in'],
  ['nm', 'N m'],
  ['ohm', 'ohm'],
  ['ohms', 'ohm'],
  ['amps', 'A'],
  ['kg', 'kg'],
  ['km/h', 'km/h'],
  ['mph', 'mph'],
  ...(['eur', 'gbp', 'usd', 'czk', 'jpy'] as const).map((code): [string, string] => [
    code,
    code.toUpperCase(),
  ]),
  ['€', 'EUR'],
  ['£', 'GBP'],
  ['$', 'USD'],
  ['¥', 'JPY'],
  ['kč', 'CZK'],
  ['euro', 'EUR'],
  ['euros', 'EUR'],
  ['pounds', 'GBP'],
  ['dollars', 'USD'],
  ['crowns', 'CZK'],
  ['yen', 'JPY'],
]);

export const unitNameOf = (word: string): string | undefined => NAMES.get(word);

export function headingUnits(tokens: readonly Token[]): NamedUnit[] {
  const out: NamedUnit[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const unit = NAMES.get(at(tokens, i));
    if (!unit || MONEY.has(unit) || tokens[i - 1]?.kind === 'number') continue;
    // A table's head is for its own column alone
    if (inTable(tokens, i)) continue;
    const [before, after] = [at(tokens, i - 1), at(tokens, i + 1)];
    const closed = /^(?:[)\]:,.;|]|)$/.test(after) || (tokens[i + 1]?.gap ?? 3) >= 2;
    if (
      (closed &&
        /^(?:in|all|readings|figures|\(|\[|,|found|limit|new|size|left|min|max|measured)$/.test(before)) ||
      (before === 'in' && /^(?:all|everything|figures|readings)$/.test(at(tokens, i - 2)))
    )
      out.push({ unit, token: i });
  }
  return out;
}

function inTable(tokens: readonly Token[], i: number): boolean {
  let k = i;
  while (k > 0 && (tokens[k]?.gap ?? 3) < 2) k -= 1;
  return at(tokens, k) === '|';
}
