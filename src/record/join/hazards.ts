import { hazardIds } from '../hazards/catalogue.ts';

/** Ids of the hazard catalogue with their rank, worst first. */
export const HAZARD_RANK: ReadonlyMap<string, number> = new Map(hazardIds.map((id, rank) => [id, rank]));
