import type { Place } from '../problem.ts';
import type { Report } from '../report-to.ts';
import { count, shown } from '../text/words.ts';
import type { Sample } from './run.ts';

/** A sample with the place of its time and its speed, and the speed as written with its unit. */
export interface PlacedSample extends Sample {
  at: { time: Place; speed: Place };
  written: string;
}

const LEAST = 10;
/** 150 km/h: more than a vehicle of this kind does. */
const FASTEST_mps = 150 / 3.6;
/** Harder than any brake or engine of this kind; common practice, no source. */
const HARDEST_mps2 = 15;

/** A jump by one of these factors is a change of unit within the column. */
const CHANGES: readonly (readonly [factor: number, units: string])[] = [
  [3.6, 'km/h and m/s'],
  [2.23694, 'miles an hour and m/s'],
  [1.609344, 'km/h and miles an hour'],
];

/**
 * Whether samples can be a run: enough of them, time that goes on, speeds and changes that a small old vehicle is capable of.
 * Tells the first problem of each sort.
 */
export function checkSamples(samples: readonly PlacedSample[], file: string, report: Report): boolean {
  if (samples.length < LEAST) {
    const has = samples.length === 1 ? '1 point' : `${samples.length} points`;
    report.add(
      'road-tests/short',
      { file },
      `The run has ${has} that can be used; ${LEAST} are needed. Take the whole recording; or add a column "slope" (level, uphill, downhill, or empty), and they are shown as single points.`,
    );
    return false;
  }
  let good = true;
  const back = samples.findIndex((one, at) => at > 0 && one.time_s <= (samples[at - 1]?.time_s ?? 0));
  const backwards = samples[back];
  if (backwards) {
    good = false;
    const before = samples[back - 1];
    const still = backwards.time_s === before?.time_s;
    report.add(
      'road-tests/backwards',
      backwards.at.time,
      still
        ? 'Time stands still here: this point has the time of the one before. Take one of the two out.'
        : `Time runs backwards here, by ${seconds((before?.time_s ?? 0) - backwards.time_s)}. Look whether two runs were joined; each needs its own file.`,
    );
  }
  const fast = samples.find((one) => Math.abs(one.speed_mps) > FASTEST_mps);
  if (fast) {
    good = false;
    report.add(
      'road-tests/speed',
      fast.at.speed,
      `${shown(fast.written)} is faster than 150 km/h, and so not a speed of a small old vehicle. ${adviceFor(fast.written)}`,
    );
    return good;
  }
  for (const [at, now] of samples.entries()) {
    const before = samples[at - 1];
    const time = before ? now.time_s - before.time_s : 0;
    if (!before || time <= 0) continue;
    const change = Math.abs(now.speed_mps - before.speed_mps);
    if (change < HARDEST_mps2 * Math.max(time, 0.2)) continue;
    report.add(
      'road-tests/speed',
      now.at.speed,
      `From ${shown(before.written)} to ${shown(now.written)} in ${seconds(time)} is more than any brake or engine of such a vehicle can do.${mixed(before.speed_mps, now.speed_mps)}`,
    );
    return false;
  }
  return good;
}

function adviceFor(written: string): string {
  if (written.includes('by positions'))
    return 'The position leaps here. Take the point out, or the part of the track before or after it.';
  const other = / (m\/s|mph|ft\/s)$/.exec(written)?.[1];
  return other === undefined
    ? 'Look at the figure and at the unit of its column.'
    : `If the column is in km/h and not in ${other}, write "speed (km/h)" in the heading; else look at the figure.`;
}

function mixed(before: number, now: number): string {
  const factor = Math.max(before, now) / Math.min(before, now);
  const units = CHANGES.find(([one]) => Math.abs(factor / one - 1) < 0.08)?.[1];
  return units === undefined
    ? ' Look at both figures.'
    : ` One is about ${factor.toFixed(1)} times the other: ${units} seem to be mixed in one column. Write one unit.`;
}

/** Tells holes: gaps much longer than the usual step between points. */
export function tellHoles(samples: readonly PlacedSample[], report: Report): void {
  const steps = samples.slice(1).map((one, at) => one.time_s - (samples[at]?.time_s ?? 0));
  const usual = [...steps].sort((a, b) => a - b)[Math.floor(steps.length / 2)] ?? 0;
  const at = steps.findIndex((step) => step > Math.max(5 * usual, 3));
  const after = samples[at + 1];
  if (at >= 0 && after)
    report.add(
      'road-tests/hole',
      after.at.time,
      `Before this point ${seconds(steps[at] ?? 0)} are missing, where points are otherwise ${seconds(usual)} apart. The curve goes straight across, and what is worked out across it is a guess. Split the run in two if both parts matter.`,
    );
}

const seconds = (time: number) => count(Number(time.toPrecision(3)), 'second');
