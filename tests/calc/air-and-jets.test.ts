import { describe, expect, test } from 'vitest';
import { airAndJets } from '../../src/calc/air-and-jets.ts';
import { vapourPressure } from '../../src/calc/moist-air.ts';
import { asked } from './answers.ts';

const { notes, output, refusals, typed } = asked(airAndJets);
const AT_SEA = { altitudeThen: '0 m', temperatureThen: '15 degC', temperature: '15 degC' };

describe('air and jets', () => {
  test('1500 m at the same temperature: 0.8346 of the pressure, area as its root, bore as the fourth root (by hand)', () => {
    const given = { ...AT_SEA, altitude: '1500 m', jet: '95' };
    const share = output(given, 'pressure', 'hPa') / 1013.25;
    expect(share).toBeCloseTo(0.8346, 3);
    expect(output(given, 'area', '1')).toBeCloseTo(Math.sqrt(share), 9);
    expect(output(given, 'jet', 'n')).toBeCloseTo(95 * share ** 0.25, 9);
    expect(output({ ...given, marking: 'flow' }, 'jet', 'n')).toBeCloseTo(95 * share ** 0.5, 9);
  });

  test('up is richer, down and cold is leaner and says what lean does', () => {
    expect(output({ ...AT_SEA, altitude: '1500 m' }, 'richer', '%')).toBeGreaterThan(0);
    const down = {
      altitudeThen: '1500 m',
      temperatureThen: '25 degC',
      altitude: '0 m',
      temperature: '0 degC',
    };
    expect(output(down, 'richer', '%')).toBeLessThan(0);
    expect(notes(down)).toContain('leaner here. A lean two-stroke runs hot');
    expect(notes({ ...AT_SEA, altitude: '0 m' })).toContain('leave the jet');
  });

  test('there and back again is the same jet', () => {
    const up = output({ ...AT_SEA, altitude: '2000 m', jet: '95' }, 'jet', 'n');
    const back = {
      altitudeThen: '2000 m',
      temperatureThen: '15 degC',
      altitude: '0 m',
      temperature: '15 degC',
    };
    expect(output({ ...back, jet: up.toFixed(9) }, 'jet', 'n')).toBeCloseTo(95, 6);
  });

  test('damp air is lighter, and holds still less oxygen', () => {
    const damp = {
      ...AT_SEA,
      altitude: '0 m',
      temperatureThen: '30 degC',
      temperature: '30 degC',
      humidity: '100 %',
    };
    expect(output(damp, 'change', '%')).toBeLessThan(-1);
    expect(output(damp, 'dry', '%')).toBeLessThan(output(damp, 'change', '%'));
  });

  test('water boils where its vapour pressure is that of the air: 2 % off at 100 °C, beyond its range', () =>
    expect(Math.abs(vapourPressure(373.15) / 101325 - 1)).toBeLessThan(0.03));

  test('a measured pressure counts before the height', () =>
    expect(output({ ...AT_SEA, altitude: '1500 m', pressure: '1013.25 hPa' }, 'change', '%')).toBeCloseTo(
      0,
      6,
    ));

  test('what is missing or mistyped is said', () => {
    expect(refusals({ temperatureThen: '15 degC', temperature: '15 degC' })).toEqual([
      'altitudeThen: Height or air pressure is needed.',
      'altitude: Height or air pressure is needed.',
    ]);
    expect(typed({ pressure: '760 hPa', temperature: '70 degC' })[0]).toMatch(
      /^temperature: 70 °C\? .*is likelier/,
    );
    expect(typed({ pressure: '29.92 hPa' })[0]).toMatch(/^pressure: /);
  });
});
