import type { PublishedCheck } from './contract.ts';
import { published } from './declare.ts';

const ISO = 'ISO 898-1:2009 and 2013, proof loads, coarse thread';
const SHIGLEY = 'Shigley, Mechanical Engineering Design, eqs 8-27 and 8-30, with the proof load of ISO 898-1';

const proof = (thread: string, grade: string, expected: number): PublishedCheck =>
  published(
    `proof-${thread}-${grade}`.toLowerCase(),
    `Proof load of ${thread}, class ${grade}`,
    { thread, grade, state: 'dry', share: '50 %' },
    'proof',
    [expected, 'N', 0.5],
    ISO,
    'found',
  );

const aimed = (thread: string, grade: string, state: string, expected: number): PublishedCheck =>
  published(
    `torque-${thread}-${grade}-${state}`.toLowerCase(),
    `${thread} of class ${grade}, ${state}: torque for 75 % of the proof load`,
    { thread, grade, state, share: '75 %' },
    'torque',
    [expected, 'Nm', 0.005],
    SHIGLEY,
  );

/** What the calculator's page prints under "checked against" and the tests run. */
export const boltTensionChecks: readonly PublishedCheck[] = [
  proof('M5', '4.6', 3200),
  proof('M6', '5.6', 5630),
  proof('M8', '4.6', 8240),
  proof('M10', '8.8', 33700),
  proof('M12', '8.8', 48900),
  proof('M14', '10.9', 95500),
  published(
    'area-m12-fine',
    'Stress area of M12×1.25',
    { thread: 'M12x1.25', grade: '8.8', state: 'dry', share: '50 %' },
    'area',
    [92.1, 'mm2', 0.06],
    'ISO 898-1:2013, fine thread, from memory',
    'memory',
  ),
  aimed('M8', '8.8', 'dry', 25.44),
  aimed('M8', '8.8', 'oiled', 19.08),
  aimed('M6', '8.8', 'oiled', 7.83),
  aimed('M10', '10.9', 'dry', 72.15),
  published(
    'tension-m8',
    '25 N·m on a dry M8',
    { thread: 'M8', grade: '8.8', state: 'dry', torque: '25 Nm' },
    'tension',
    [15625, 'N', 0.5],
    'Shigley, Mechanical Engineering Design, eq. 8-27',
  ),
  published(
    'kgf-m',
    '2.5 kgf·m is 24.52 N·m',
    { thread: 'M8', grade: '8.8', state: 'oiled', torque: '2.5 kgf m' },
    'torque',
    [24.517, 'Nm', 0.0005],
    'NIST SP 811 (2008), App. B.8',
  ),
];
