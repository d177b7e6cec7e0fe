import { describe, expect, test } from 'vitest';
import { hazard } from '../../src/record/hazards/catalogue.ts';
import { rank, SIGNALS } from '../../src/record/hazards/hazard.ts';
import { KIT } from '../../src/record/hazards/kit.ts';
import { SYMBOLS } from '../../src/record/hazards/symbols.ts';

/** Facts and figures of the published sources, each with title, edition, locator and mark (found, derived, memory). */

const figuresOf = (id: string) => hazard(id)?.figures ?? [];
const words = (id: string) => {
  const entry = hazard(id);
  return [entry?.harm, ...(entry?.avoid ?? []), ...(entry?.ifItHappens ?? [])].join(' ');
};

describe('Signal words (ANSI Z535.4-2007, 4.14.1 to 4.14.4, memory; ISO 3864-2:2004, memory)', () => {
  test('run from DANGER over WARNING and CAUTION to NOTICE, which ISO 3864-2 does not have', () => {
    expect(SIGNALS).toEqual(['DANGER', 'WARNING', 'CAUTION', 'NOTICE']);
    expect(rank('DANGER')).toBeLessThan(rank('WARNING'));
  });

  test('DANGER is kept for what will kill or maim; lesser injury is CAUTION', () => {
    for (const id of [
      'under-raised-vehicle',
      'engine-indoors',
      'petrol-vapour',
      'welding-near-tank',
      'cranking-fuel-mist',
    ])
      expect(hazard(id)?.signal).toBe('DANGER');
    for (const id of ['brake-fluid', 'used-oil', 'noise', 'drilling', 'manual-lifting'])
      expect(hazard(id)?.signal).toBe('CAUTION');
    expect(hazard('wrong-polarity')?.signal).toBe('NOTICE');
  });
});

describe('Carbon monoxide', () => {
  const CO: [string, string, string][] = [
    // EH40/2005, 4th ed. 2020, Table 1, HSE (memory)
    ['8-hour limit', '20 ppm', 'HSE'],
    ['15-minute limit', '100 ppm (117 mg/m³)', 'HSE'],
    // IDLH documentation, carbon monoxide, May 1994, limit list, NIOSH (found)
    ['8-hour limit', '25 ppm', 'ACGIH'],
    ['Recommended working-day limit', '35 ppm (40 mg/m³)', 'NIOSH'],
    ['8-hour limit', '50 ppm (55 mg/m³)', 'OSHA'],
    ['Never to be passed', '200 ppm (229 mg/m³)', 'NIOSH'],
    // Revised IDLH, NIOSH 1994 (memory)
    ['Immediately dangerous to life', '1,200 ppm', 'NIOSH'],
    // Carbon monoxide questions and answers, CPSC, reproduced by the City of Greer (found)
    ['Headache', 'above 70 ppm', 'CPSC'],
    ['unconsciousness, death possible', 'above 150 to 200 ppm', 'CPSC'],
    // Effects of CO levels, AIHA, reproduced at docest.com (found)
    ['collapse and death in 1 hour', '1,600 ppm', 'AIHA'],
    ['death in 1 to 3 minutes', '12,800 ppm', 'AIHA'],
  ];
  test.each(CO)('%s: %s (%s)', (what, figure, body) => {
    const row = figuresOf('engine-indoors').find(
      (one) => one.what.includes(what) && one.figure.startsWith(figure) && one.body.includes(body),
    );
    expect(row).toBeDefined();
  });

  test('35 ppm are 40 mg/m³ at 25 °C and 1 atm (28.01 g/mol, 24.45 L/mol; derived)', () => {
    expect((35 * 28.01) / 24.45).toBeCloseTo(40.1, 1);
  });

  test('the most careful 8-hour limit stands first, and none is given as permission', () => {
    const limits = figuresOf('engine-indoors')
      .filter((row) => row.what === '8-hour limit')
      .map((row) => Number.parseFloat(row.figure));
    expect(limits).toEqual([...limits].sort((a, b) => a - b));
    expect(hazard('engine-indoors')?.defersTo).toContain(
      'no figure here says that a time or a level is safe',
    );
  });
});

describe('Petrol', () => {
  test('flashes at −45 °F, which is −43 °C (NIOSH Pocket Guide, gasoline, memory; conversion derived)', () => {
    expect(((-45 - 32) * 5) / 9).toBeCloseTo(-42.78, 2);
    expect(figuresOf('petrol-vapour')[0]?.figure).toContain('−43 °C (−45 °F)');
  });

  test('burns between 1.4 and 7.6 % by volume (NIOSH, memory), with the more careful lower limit beside it', () => {
    const rows = figuresOf('petrol-vapour')
      .map((row) => row.figure)
      .join(' ');
    expect(rows).toContain('1.4 and 7.6 %');
    expect(rows).toContain('1.2 % by volume: the more careful value');
  });

  test('is an extremely flammable liquid and vapour, signal word Danger (CLP Annex I, Table 2.6.2, H224, found)', () => {
    expect(hazard('petrol-vapour')?.signal).toBe('DANGER');
    expect(hazard('petrol-vapour')?.sources.some((one) => one.title.includes('H224'))).toBe(true);
  });

  test('may be fatal if swallowed and enters airways, so nobody is made to vomit (GHS H304, memory)', () => {
    expect(words('petrol-vapour')).toContain('do not make anybody vomit');
    expect(words('petrol-vapour')).toContain('Never syphon by mouth');
  });

  test('in an emptied tank still explodes: a teaspoon is enough (INDG314 rev. 1, 2013, HSE, found)', () => {
    expect(words('welding-near-tank')).toMatch(/teaspoon/);
    expect(words('petrol-vapour')).toContain('emptied tank still holds enough to explode');
  });
});

describe('Other published values', () => {
  test('sulphuric acid burns severely from 15 % (CLP Annex VI, Table 3, index 016-020-00-8, memory)', () => {
    expect(hazard('battery-acid')?.harm).toContain('15 %');
  });

  test('air for cleaning stays below 30 psi, 2.07 bar (29 CFR 1910.242(b), found; conversion derived)', () => {
    expect(30 * 0.0689476).toBeCloseTo(2.07, 2);
    expect(words('compressed-air')).toContain('less than 2 bar (30 psi)');
  });

  test('noise: 85 dB(A) and 3 dB for half the time (NIOSH, found), 90 (OSHA, found), 80 first (UK 2005, memory)', () => {
    const rows = figuresOf('noise').map((row) => row.figure);
    expect(rows[0]).toMatch(/^80 dB\(A\).*more careful/);
    expect(rows[1]).toMatch(/^85 dB\(A\), halving the time for every 3 dB/);
    expect(rows[2]).toBe('90 dB(A)');
  });

  test('heat guns on lead paint stay below 1,100 °F, 593 °C (EPA renovation rule, found; rounded down)', () => {
    expect(((1100 - 32) * 5) / 9).toBeCloseTo(593.3, 1);
    expect(words('lead-paint')).toContain('590 °C (1,100 °F)');
  });

  test('under vehicles: never on jacks alone, stands with their own pins, wheels chocked (HSE, found)', () => {
    const text = words('under-raised-vehicle');
    expect(text).toMatch(/while a jack alone holds it/);
    expect(text).toMatch(/rated stands with their own pins/);
    expect(text).toMatch(/chock the wheels that stay down/);
    expect(text).toMatch(/maker’s points/);
  });

  test('two-pack paint is not sprayed behind a filter mask (HSE guidance on isocyanates, found)', () => {
    expect(words('isocyanate-paint')).toContain('no filter mask stops it reliably');
    expect(hazard('isocyanate-paint')?.wear).toContain('air-fed-mask');
  });

  test('brake dust is wetted and wiped, never blown or brushed dry (EPA 2007 and OSHA SHIB 07-26-2006, found)', () => {
    expect(words('brake-dust')).toMatch(/Never blow, brush, sand or grind it dry\. Wet it/);
  });

  test('split rims are let down before anything is undone (HSE, multipiece wheels, found)', () => {
    expect(words('tyres-rims')).toMatch(/Let all air out, valve core removed, before/);
  });
});

test('the pictures follow ISO 7010 titles (list of the 2019 numbering, lbize/iso-7010, found): wear signs are discs', () => {
  // M003 ear, M004 eye, M008 footwear, M009 gloves, M010 clothing, M013 face shield, M017 respiratory protection
  const wear = ['ears', 'eyes', 'feet', 'hands', 'clothes', 'face', 'breath'] as const;
  for (const id of wear) expect(SYMBOLS[id].shape).toBe('wear');
  for (const kit of Object.values(KIT)) expect(SYMBOLS[kit.symbol].shape).toBe('wear');
  // W001 general, W012 electricity, W015 overhead load, W016 toxic, W017 hot, W019 crushing, W021 flammable, W023 corrosive
  for (const id of ['alert', 'bolt', 'load', 'poison', 'heat', 'crush', 'flame', 'corrosive'] as const)
    expect(SYMBOLS[id].shape).toBe('warning');
});
