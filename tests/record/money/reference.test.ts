import { describe, expect, test } from 'vitest';
import { minorDigits } from '../../../src/record/money/currencies.ts';
import { exchanged, exchangeOn } from '../../../src/record/money/exchange.ts';
import { money, plainAmount } from '../../../src/record/money/money.ts';
import { newestRate, rateTable } from '../../../src/record/money/rates.ts';
import { split } from '../../../src/record/money/split.ts';
import { rate } from './a-series.ts';

/** How a value came to us: found in the source, derived from it by exact arithmetic, or remembered. */
type Mark = 'found' | 'derived' | 'memory';

const ISO_4217 = 'ISO 4217 currency codes, list one; data set of the maintenance agency’s table, 1 Feb 2026';
const ECB =
  'Euro foreign exchange reference rates, history file 4 Jan 1999 to 12 May 2023, European Central Bank';

describe(`minor units (${ISO_4217}; found)`, () => {
  test.each([
    ['EUR', 2],
    ['HUF', 2],
    ['CZK', 2],
    ['PLN', 2],
    ['JPY', 0],
    ['VND', 0],
    ['CLP', 0],
    ['KWD', 3],
    ['BHD', 3],
    ['TND', 3],
    ['IQD', 3],
    ['UYW', 4],
    ['MGA', 2],
  ])('%s is counted with %i digits after the mark', (currency, digits) => {
    expect(minorDigits(currency)).toBe(digits);
  });
});

interface Apportionment {
  what: string;
  source: string;
  mark: Mark;
  total: bigint;
  weights: Record<string, bigint>;
  shares: Record<string, bigint>;
}

const APPORTIONMENTS: Apportionment[] = [
  {
    what: '60 seats over the fifteen states of 1790',
    source: 'Hamilton method, 1790 census example, electowiki revision 9372',
    mark: 'found',
    total: 60n,
    weights: {
      VA: 630560n,
      MA: 475327n,
      PA: 432879n,
      NC: 353523n,
      NY: 331589n,
      MD: 278514n,
      CT: 236841n,
      SC: 206236n,
      NJ: 179570n,
      NH: 141822n,
      VT: 85533n,
      GA: 70835n,
      KY: 68705n,
      RI: 68446n,
      DE: 55540n,
    },
    shares: {
      VA: 11n,
      MA: 8n,
      PA: 7n,
      NC: 6n,
      NY: 6n,
      MD: 5n,
      CT: 4n,
      SC: 3n,
      NJ: 3n,
      NH: 2n,
      VT: 1n,
      GA: 1n,
      KY: 1n,
      RI: 1n,
      DE: 1n,
    },
  },
  {
    what: 'a season of 51 won, 18 lost, 11 tied in percent, which rounded one by one would sum to 101',
    source: 'Apportionment schemes (MATH 490), season record example, D. Villarreal 2009',
    mark: 'derived',
    total: 100n,
    weights: { won: 51n, lost: 18n, tied: 11n },
    shares: { won: 64n, lost: 22n, tied: 14n },
  },
  {
    what: '41 seats over the three counties of Delaware',
    source: 'Math in Society, D. Lippman, 2nd ed., Hamilton example',
    mark: 'memory',
    total: 41n,
    weights: { Kent: 162310n, NewCastle: 538479n, Sussex: 197145n },
    shares: { Kent: 7n, NewCastle: 25n, Sussex: 9n },
  },
  {
    what: '99.99 over weights 5, 3 and 2',
    source: 'exact arithmetic',
    mark: 'derived',
    total: 9999n,
    weights: { p: 5n, q: 3n, r: 2n },
    shares: { p: 4999n, q: 3000n, r: 2000n },
  },
];

describe('shares by the largest remainder', () => {
  test.each(APPORTIONMENTS)('$what ($source; $mark)', ({ total, weights, shares }) => {
    expect(split(total, Object.values(weights))).toEqual(Object.values(shares));
  });
});

/** Units of the currency for 1 EUR. */
const REFERENCE_RATES = [
  rate('1999-01-04', 'EUR', 'CZK', '35.107'),
  rate('1999-01-04', 'EUR', 'PLN', '4.0712'),
  rate('2004-05-03', 'EUR', 'USD', '1.1953'),
  rate('2004-05-03', 'EUR', 'CZK', '32.55'),
  rate('2004-05-03', 'EUR', 'PLN', '4.7919'),
  rate('2010-01-04', 'EUR', 'USD', '1.4389'),
  rate('2010-01-04', 'EUR', 'HUF', '269.85'),
  rate('2010-01-04', 'EUR', 'CZK', '26.285'),
  rate('2015-02-12', 'EUR', 'GBP', '0.7376'),
  rate('2015-02-12', 'EUR', 'CZK', '27.702'),
  rate('2020-01-02', 'EUR', 'GBP', '0.84828'),
  rate('2022-09-28', 'EUR', 'USD', '0.9565'),
  rate('2022-09-28', 'EUR', 'GBP', '0.90268'),
];

function inHome(minor: bigint, from: string, home: string, day: string, rates = REFERENCE_RATES): string {
  const by = exchangeOn(day, from, home, rateTable(rates), 10);
  return by.ok ? plainAmount(exchanged(money(minor, from), home, by.value)) : by.message;
}

describe(`rates of exchange (${ECB}; rates found, results derived by exact division)`, () => {
  test('100.00 USD on 28 Sep 2022, when 1 EUR was 0.9565 USD, are 104.55 EUR', () => {
    expect(inHome(10000n, 'USD', 'EUR', '2022-09-28')).toBe('104.55');
  });
  test('1 000.00 CZK on 4 Jan 2010 at 26.285 are 38.04 EUR', () => {
    expect(inHome(100000n, 'CZK', 'EUR', '2010-01-04')).toBe('38.04');
  });
  test('49.90 GBP on 2 Jan 2020 at 0.84828 are 58.82 EUR', () => {
    expect(inHome(4990n, 'GBP', 'EUR', '2020-01-02')).toBe('58.82');
  });
  test('100.00 USD on 4 Jan 2010 are 18 753.91 HUF across the euro, with one rounding', () => {
    expect(inHome(10000n, 'USD', 'HUF', '2010-01-04')).toBe('18753.91');
  });
  test('a million crowns at 26.285 are 38 044.51 EUR, where an inverse rounded first would lose 44.51 of them', () => {
    // 1/26.285 = 0.038044512…; rounded to 0.0380 a million crowns would be 38 000.00 EUR.
    expect(inHome(100_000_000n, 'CZK', 'EUR', '2010-01-04')).toBe('38044.51');
  });
  test('on Saturday 2 Jan 2010, which has no rate, the last one before holds: 31 Dec 2009', () => {
    const table = rateTable([rate('2009-12-31', 'EUR', 'USD', '1.4406'), ...REFERENCE_RATES]);
    expect(newestRate(table, 'EUR', 'USD', '2010-01-02')?.date).toBe('2009-12-31');
  });
});
