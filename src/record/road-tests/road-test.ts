import type { Place } from '../problem.ts';
import type { Between, BySlope } from './between-speeds.ts';
import type { CoastAnswer, CoastConditions } from './coast-down.ts';
import type { PointRun } from './points.ts';
import type { Sample } from './run.ts';
import type { SpeedometerError } from './speedometer.ts';

export type RoadTestKind = 'coast-down' | 'acceleration' | 'hill' | 'cruise';

/** A run as readers may see it. */
export interface RoadRun {
  direction?: 'there' | 'back';
  from: 'positions' | 'speeds';
  indicated: boolean;
  /** The stretch that is shown; empty where the run is too short to cut its ends off. */
  stretch: Sample[];
  top_mps: number;
  between: Between[];
  bySlope: BySlope[];
}

/** Runs that belong together, of one chapter. */
export interface RoadTest {
  id: string;
  title: string;
  chapter: string;
  kind: RoadTestKind;
  notes: string[];
  /** Recordings of whole runs; none where the test is made of points. */
  runs: RoadRun[];
  /** Speeds that were read off the instrument one by one; none where runs were recorded. */
  points: PointRun[];
  /** Of points: how far the instrument is off, where the machine's sheet has it as measured. */
  speedometer?: SpeedometerError;
  /** Of a coast-down: the figures, or why there are none. */
  coasting?: { answer: CoastAnswer; conditions?: CoastConditions };
  place: Place;
}
