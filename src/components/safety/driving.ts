import type { Chapter, FaultState } from '../../record/types.ts';

const ON_THE_ROAD = ['road-test', 'slow-vehicle', 'filming-driving', 'oil-starved-overrun'];

/** Whether the vehicle is driven in this chapter: declared as the first drive, or a step carries a hazard of the road. */
export const drives = (chapter: Chapter): boolean =>
  chapter.firstDrive || chapter.hazards.some((id) => ON_THE_ROAD.includes(id));

/** Whether an open fault forbids driving or asks for care. */
export const limitsDriving = (state: FaultState): boolean => state.open && state.severity !== 'nuisance';
