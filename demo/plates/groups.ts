/** The plates by chapter, in the order in which they were "taken". */
import { chassisPlan } from './groups/01-chassis-plan.ts';
import { vanFromTheSide } from './groups/01-van-side.ts';
import { threeQuarter } from './groups/01-van-three-quarter.ts';
import { takingItDown } from './groups/02-strip.ts';
import { boresAndRings } from './groups/03-bores.ts';
import { whereTheSparkBelongs } from './groups/04-spark.ts';
import { twentyFiveToOne } from './groups/05-fuel.ts';
import { frontHubAndBrakes } from './groups/06-front.ts';
import { twelveVolts } from './groups/07-electrics.ts';
import { gearbox, rearAxle } from './groups/08-axle-and-gearbox.ts';
import { chainSag, sprocketTeeth } from './groups/08-chain.ts';
import { firstStart } from './groups/09-start.ts';
import { roundTheLane, theSecondCoat } from './groups/10-road.ts';
import type { Sheet } from './pen.ts';

export interface Group {
  chapter: string;
  day: string;
  plates: Record<string, () => Sheet>;
}
export const GROUPS: Group[] = [
  {
    chapter: '01-what-came-home',
    day: '2026-01-17',
    plates: { 'van-side': vanFromTheSide, 'van-three-quarter': threeQuarter, 'chassis-plan': chassisPlan },
  },
  { chapter: '02-taking-it-down', day: '2026-02-07', plates: takingItDown },
  { chapter: '03-bores-and-rings', day: '2026-03-07', plates: boresAndRings },
  { chapter: '04-where-the-spark-belongs', day: '2026-03-28', plates: whereTheSparkBelongs },
  { chapter: '05-twenty-five-to-one', day: '2026-04-18', plates: twentyFiveToOne },
  { chapter: '06-front-hub-and-brakes', day: '2026-05-16', plates: frontHubAndBrakes },
  { chapter: '07-twelve-volts', day: '2026-06-13', plates: twelveVolts },
  {
    chapter: '08-chain-and-sprockets',
    day: '2026-07-11',
    plates: { 'chain-sag': chainSag, 'sprocket-teeth': sprocketTeeth, 'rear-axle': rearAxle, gearbox },
  },
  { chapter: '09-first-start', day: '2026-08-15', plates: firstStart },
  { chapter: '10-round-the-lane', day: '2026-09-19', plates: roundTheLane },
  { chapter: '11-the-second-coat', day: '2026-10-24', plates: theSecondCoat },
];
