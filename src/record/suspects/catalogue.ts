/** Every starter list of suspects, by symptom: what a fault's search begins with, and nothing more than that. */
import { engineLists } from './engine-symptoms.ts';
import { runningLists } from './running-symptoms.ts';
import type { StarterList } from './starter-list.ts';

export const starterLists: readonly StarterList[] = [...engineLists, ...runningLists];

const byId = new Map(starterLists.map((one) => [one.id, one]));

/** The list of that symptom, or undefined where there is none. */
export const starterList = (id: string): StarterList | undefined => byId.get(id);
