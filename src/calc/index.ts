/**
 * The calculators: one line each. Their order here is their order on the site.
 * A browser does not load this file but `loadSolve` (load-solve.ts), so that labels, sources and checks stay on the server.
 */
export { timing } from './timing.ts';
