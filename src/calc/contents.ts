/** The calculators, one line each; their order here is their order on the site. */

export { premix } from './premix.ts';
export { timing } from './timing.ts';
