/** The calculators, one line each; they are listed by name. */
export { airAndJets } from './air-and-jets.ts';
export { boltTension } from './bolt-tension.ts';
export { brakeDrum } from './brake-drum.ts';
export { cable } from './cable.ts';
export { compressionRatio } from './compression-ratio.ts';
export { compressionTest } from './compression-test.ts';
export { firingSpeed } from './firing-speed.ts';
export { fits } from './fits.ts';
export { fuelUse } from './fuel-use.ts';
export { gearing } from './gearing.ts';
export { hills } from './hills.ts';
export { portTiming } from './port-timing.ts';
export { premix } from './premix.ts';
export { shake } from './shake.ts';
export { speedCheck } from './speed-check.ts';
export { timing } from './timing.ts';
