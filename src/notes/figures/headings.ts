/** Units that head a column or a list without a number: "all in mm:", "| found (mm) |". */
import { at, type Token } from './tokens.ts';

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
]);

export const unitNameOf = (word: string): string | undefined => NAMES.get(word);

export function headingUnits(tokens: readonly Token[]): NamedUnit[] {
  const out: NamedUnit[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const unit = NAMES.get(at(tokens, i));
    if (!unit || tokens[i - 1]?.kind === 'number') continue;
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
