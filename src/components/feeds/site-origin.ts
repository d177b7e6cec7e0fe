import type { Series } from '../../record/types.ts';

/**
 * Where the site will stand, for addresses that must be whole: from the build's own setting, else from series.yaml. Nothing
 * where neither says so; what needs whole addresses is then left out.
 */
export function siteOrigin(series: Series, site: URL | string | undefined): URL | undefined {
  const known = site ?? series.address;
  return known === undefined ? undefined : new URL(known);
}
