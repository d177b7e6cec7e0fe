/** Ids of the hazard catalogue with their rank, worst first; undefined where there is no catalogue to check against. */
export function hazardOrder(): ReadonlyMap<string, number> | undefined {
  return undefined;
}
