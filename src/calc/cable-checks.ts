import type { PublishedCheck } from './contract.ts';
import { published } from './declare.ts';

const IEC = 'IEC 60228:2004, largest resistance at 20 °C';
const ONE = { supply: '12 V', current: '1 A', length: '10 m', back: 'frame' };

/** What the calculator's page prints under "checked against" and the tests run. */
export const cableChecks: readonly PublishedCheck[] = [
  published(
    'iec-1.5-solid',
    '1.5 mm², solid: 12.1 Ω/km, over 10 m',
    { ...ONE, section: '1.5 mm2', conductor: 'coarse' },
    'resistance',
    [0.121, 'ohm', 0.00005],
    `${IEC}, table 1`,
    'found',
  ),
  published(
    'iec-4-solid',
    '4 mm², solid: 4.61 Ω/km, over 10 m',
    { ...ONE, section: '4 mm2', conductor: 'coarse' },
    'resistance',
    [0.0461, 'ohm', 0.00005],
    `${IEC}, table 1`,
    'found',
  ),
  published(
    'iec-2.5-fine',
    '2.5 mm², fine strands: 7.98 Ω/km, over 10 m',
    { ...ONE, section: '2.5 mm2', conductor: 'flexible' },
    'resistance',
    [0.0798, 'ohm', 0.00005],
    `${IEC}, table 3`,
    'found',
  ),
  published(
    'iec-0.75-fine',
    '0.75 mm², fine strands: 26.0 Ω/km, over 10 m',
    { ...ONE, section: '0.75 mm2', conductor: 'flexible' },
    'resistance',
    [0.26, 'ohm', 0.00005],
    `${IEC}, table 3, from memory`,
    'memory',
  ),
  published(
    'pure-2.5',
    '2.5 mm² of pure copper: 6.896 Ω/km, over 10 m',
    { ...ONE, section: '2.5 mm2', conductor: 'ideal' },
    'resistance',
    [0.06896, 'ohm', 0.00001],
    'IEC 60028:1925, 1/58 Ω·mm²/m',
  ),
  published(
    'warm-50',
    '2.5 mm² of pure copper at 50 °C: 1/0.893 of that at 20 °C',
    { ...ONE, section: '2.5 mm2', conductor: 'ideal', temperature: '50 degC' },
    'resistance',
    [0.0772, 'ohm', 0.0002],
    'IEC 60228:2004, temperature factors; rounded from 0.004 per kelvin, hence 0.2 % apart',
    'found',
  ),
  published(
    'awg-14',
    '14 AWG (2.081 mm²) of pure copper, 10 m',
    { ...ONE, section: '14 AWG', conductor: 'ideal' },
    'resistance',
    [0.08285, 'ohm', 0.00005],
    'ASTM B258-02, definition of the gauge; copper of IEC 60028',
  ),
  published(
    'six-volts',
    '21 W at 6 V, 3 m out and back in 2.5 mm²: 0.168 V',
    { supply: '6 V', load: '21 W', length: '3 m', section: '2.5 mm2' },
    'drop',
    [0.16758, 'V', 0.0001],
    `${IEC}, class 5; answer by arithmetic`,
  ),
  published(
    'lamp-current',
    'A lamp of 5 W at 12 V draws 0.417 A',
    { supply: '12 V', load: '5 W', length: '1 m', section: '1 mm2' },
    'current',
    [0.4167, 'A', 0.00005],
    'Power is voltage times current: definition',
  ),
];
