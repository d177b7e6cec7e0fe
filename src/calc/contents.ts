/** The calculators, one line each; they are listed by name. */
export { compressionRatio } from './compression-ratio.ts';
export { gearing } from './gearing.ts';
export { hills } from './hills.ts';
export { premix } from './premix.ts';
export { timing } from './timing.ts';
