/**
 * Every link inside the site goes through here, so that the site works at a domain's root and below a sub-path alike.
 */
const BASE = import.meta.env.BASE_URL.replace(/\/+$/, '');

/**
 * A page's or file's address with the site's base path before it. Pages end in a slash, as `trailingSlash: 'always'` asks.
 * @example at('/chapters/first-start/#bleed-the-tank') // "/van/chapters/first-start/#bleed-the-tank" below /van
 */
export function at(path: `/${string}`): string {
  return `${BASE}${path}`;
}

export const atChapter = (chapter: { slug: string }, anchor?: string): string =>
  at(`/chapters/${chapter.slug}/${anchor === undefined ? '' : `#${anchor}`}`);

export const atFault = (fault: { id: string }): string => at(`/faults/${fault.id}/`);

/** A part's row in the list of parts. */
export const atPart = (part: { id: string }): string => at(`/parts/#part-${part.id}`);

/** A value's row on the machine's data sheet: "engine-bore". */
export const machineAnchor = (value: { path: string }): string => value.path.replaceAll('.', '-');
export const atMachineValue = (value: { path: string }): string => at(`/machine/#${machineAnchor(value)}`);
