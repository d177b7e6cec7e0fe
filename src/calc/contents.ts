/** The calculators, one line each; their order here is their order on the site. */

export { gearing } from './gearing.ts';
export { hills } from './hills.ts';
export { premix } from './premix.ts';
export { timing } from './timing.ts';
