/** What a whole text says of its units: its currencies, and the one unit that it uses of a kind. */
import { type Candidate, type Habits, known } from './figure.ts';
import { around, at, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

export interface Leaning {
  /** Currency of a sum that names none: the text's only one, else the series' own, else none. */
  money: string;
  /** What a cent is of. */
  cent: string;
  /** Numbers with two decimals are sums in this text, and hardly anything else. */
  prices: boolean;
  fahrenheit: boolean;
  /** The text gives angles as well. */
  angles: boolean;
  /** Small lengths are in millimetres, or in inches and thous; both where neither outweighs the other. */
  metric: boolean;
  inches: boolean;
  /** Decimals below one are of millimetres alone. */
  fine: boolean;
  psi: boolean;
  volts: boolean;
  amps: boolean;
  ohms: boolean;
  /** The only unit of its kind in the text; empty where there are two or none. */
  speed: string;
  /** Speeds are given. */
  driven: boolean;
  torque: string;
  pressure: string;
  heat: string;
}

const KINDS = {
  speed: ['km/h', 'mph'],
  torque: ['N m', 'lbf ft', 'lbf in', 'kgf m'],
  pressure: ['bar', 'psi', 'kPa'],
  heat: ['degC', 'degF'],
} as const;

const NAMED: ReadonlyMap<string, string> = new Map([
  ['mph', 'mph'],
  ['kph', 'km/h'],
  ['kmh', 'km/h'],
  ['fahrenheit', 'degF'],
  ['celsius', 'degC'],
  ['centigrade', 'degC'],
  ['psi', 'psi'],
]);

const SAID_ALONE: ReadonlyMap<string, string> = new Map([
  ['pounds', 'GBP'],
  ['quid', 'GBP'],
  ['euros', 'EUR'],
  ['dollars', 'USD'],
  ['crowns', 'CZK'],
  ['yen', 'JPY'],
]);

export class Tally {
  readonly #seen = new Map<string, number>();
  readonly #fine = { mm: 0, others: 0 };
  readonly #twoPlaces = { sums: 0, others: 0 };

  add(all: readonly Candidate[]): void {
    for (const one of all) {
      if (!known(one)) continue;
      if (/^\d+\.\d\d$/.test(one.digits) && !one.word)
        this.#twoPlaces[MONEY.has(one.unit) ? 'sums' : 'others'] += 1;
      if (one.value < 1 && /^(?:mm|mil\?)$/.test(one.unit)) this.#fine.mm += 1;
      else if (/^0\.\d\d?$/.test(one.digits) && !one.fraction && /^(?:thou|in|cm)$/.test(one.unit))
        this.#fine.others += 1;
      const unit = one.unit === 'in' && !one.decimal ? 'in, whole' : one.unit;
      this.#seen.set(unit, (this.#seen.get(unit) ?? 0) + 1);
    }
  }

  /** Units named without a number: "miles an hour, obviously", "that's kilometres". */
  name(tokens: readonly Token[]): void {
    for (let i = 0; i < tokens.length; i++) {
      const word = at(tokens, i);
      const spoken =
        /^(?:kilometres|kilometers|miles|km)$/.test(word) &&
        (at(tokens, i + 1) === 'an' || /^(?:that's|it's|in|reads|shows)$/.test(at(tokens, i - 1))) &&
        (at(tokens, i + 1) === 'an' ||
          (tokens[i + 1]?.kind !== 'word' &&
            / (?:clock|speedo|needle|speedometer) /.test(around(tokens, i - 12, i + 8))));
      if (
        word === 'km' &&
        at(tokens, i + 1) === '/' &&
        at(tokens, i + 2) === 'h' &&
        tokens[i - 1]?.kind !== 'number'
      )
        this.#seen.set('km/h', Math.max(1, this.#seen.get('km/h') ?? 0));
      // "Pounds?" "Pounds."
      const sum = SAID_ALONE.get(word);
      if (
        sum &&
        /^[.,?!]$/.test(at(tokens, i + 1)) &&
        (/^[.?!]?$/.test(at(tokens, i - 1)) || (tokens[i]?.gap ?? 3) >= 2)
      )
        this.#seen.set(sum, (this.#seen.get(sum) ?? 0) + 1);
      const unit = NAMED.get(word) ?? (spoken ? (word === 'miles' ? 'mph' : 'km/h') : undefined);
      if (unit && tokens[i - 1]?.kind !== 'number')
        this.#seen.set(unit, Math.max(1, this.#seen.get(unit) ?? 0));
    }
  }

  leaning(habits: Habits): Leaning {
    const has = (unit: string): boolean => this.#seen.has(unit);
    const only = (units: readonly string[]): string => {
      const found = units.filter(has);
      return found.length === 1 ? (found[0] ?? '') : '';
    };
    const pounds = has('pence?') || has('pounds?');
    const times = (...units: string[]): number =>
      units.reduce((sum, unit) => sum + (this.#seen.get(unit) ?? 0), 0);
    const metric = times('mm', 'cm', 'mil?');
    const inches = times('in', 'thou');
    const sums = new Set([...this.#seen.keys()].filter((unit) => MONEY.has(unit)));
    if (pounds) sums.add('GBP');
    const weight = (unit: string): number => times(unit) + (unit === 'GBP' ? times('pence?', 'pounds?') : 0);
    const [first = '', second = ''] = [...sums].sort((a, b) => weight(b) - weight(a));
    const said = first !== '' && (second === '' || weight(first) > weight(second)) ? first : '';
    return {
      money: said || habits.money || '',
      cent:
        sums.has('EUR') && !sums.has('USD')
          ? 'EUR'
          : sums.has('USD') && !sums.has('EUR')
            ? 'USD'
            : habits.money === 'USD'
              ? 'USD'
              : 'EUR',
      prices: this.#twoPlaces.sums >= 4 && this.#twoPlaces.sums > 4 * this.#twoPlaces.others,
      fahrenheit: has('degF'),
      angles: has('deg'),
      metric: metric > 0 && metric * 4 >= inches,
      inches: inches > 0 && inches * 4 > metric,
      fine: this.#fine.mm > 0 && this.#fine.others === 0,
      psi: has('psi'),
      volts: has('V'),
      amps: has('A'),
      ohms: has('ohm'),
      speed:
        only(KINDS.speed) ||
        habits.speed ||
        (has('km') && !has('mi') && !has('mph') && !has('km/h') ? 'km/h' : ''),
      driven: times('km/h', 'mph') > 0,
      torque: only(KINDS.torque),
      pressure: only(KINDS.pressure),
      // Who measures in millimetres and drives in kilometres reads Celsius.
      heat:
        only(KINDS.heat) ||
        (!has('degF') && !has('mph') && (has('km/h') || has('km') || (metric > 0 && inches === 0))
          ? 'degC'
          : ''),
    };
  }
}
