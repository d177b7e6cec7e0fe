/**
 * The catalogue of hazards: the one place an entry is listed, worst first within the whole. Add a hazard by adding an entry
 * to the area it belongs to; note, page, kit list and gate follow from it.
 */
import { brakeHazards } from './brakes.ts';
import { electricHazards } from './electrics.ts';
import { engineHazards } from './engine.ts';
import { fuelHazards } from './fuel.ts';
import type { Hazard } from './hazard.ts';
import { rank } from './hazard.ts';
import { liftingHazards } from './lifting.ts';
import { roadHazards } from './road.ts';
import { substanceHazards } from './substances.ts';
import { workshopHazards } from './workshop.ts';

export const hazards: readonly Hazard[] = [
  ...fuelHazards,
  ...engineHazards,
  ...liftingHazards,
  ...electricHazards,
  ...workshopHazards,
  ...brakeHazards,
  ...roadHazards,
  ...substanceHazards,
].sort((a, b) => rank(a.signal) - rank(b.signal));

const byId = new Map(hazards.map((entry) => [entry.id, entry]));

/** Every id, worst first. */
export const hazardIds: readonly string[] = hazards.map((entry) => entry.id);

/** The entry with this id, or undefined where the catalogue has none. */
export const hazard = (id: string): Hazard | undefined => byId.get(id);
