/** The calculators, one line each; their order here is their order on the site. */
export { timing } from './timing.ts';
