/**
 * Speeds that were read off the vehicle's own instrument one by one, said aloud or written down. They are points and no
 * run: nothing is known of what lies between two of them.
 */
import type { Place } from '../problem.ts';

export type SpeedUnit = 'km/h' | 'mph';
export const SLOPES = ['level', 'uphill', 'downhill'] as const;
export type Slope = (typeof SLOPES)[number];

/** A point as readers see it: no words, no place, no hour. */
export interface SpeedPoint {
  /** From the first point of its row; left out where no time was noted. */
  time_s?: number;
  /** As the instrument showed it, in its own unit. */
  value: number;
  unit: SpeedUnit;
  /** What was said of the road; left out where nothing was. */
  slope?: Slope;
}

/** A point as its file has it. */
export interface ReadPoint {
  /** Of the recording, or of the table's first row. */
  time_s?: number;
  value: number;
  /** Left out where it was not said. */
  unit?: SpeedUnit;
  slope?: Slope;
  words: string;
  at: Place;
}

/** What a file of points holds; never published as it is. */
export interface PointsText {
  points: readonly ReadPoint[];
  /** From the words of a recording; otherwise from a table. */
  aloud: boolean;
}

export const isPoints = (text: object): text is PointsText => 'points' in text;

/** The points of one row of the table. */
export interface PointRun {
  direction?: 'there' | 'back';
  aloud: boolean;
  points: SpeedPoint[];
}

/** Why a coast-down of points has no answer. */
export const NO_COASTING =
  'The speeds are single points that were read off the instrument. Nothing is recorded between them, each was read a second or two before it was said, and the instrument’s own error goes into every one. It takes recordings of whole runs, both ways.';
/** Why there are no times between speeds. */
export const NO_TIMES =
  'A round speed is passed between two points, and nobody knows when. Times between points are times of reading, not of the vehicle.';
