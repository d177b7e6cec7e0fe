import { distances, type RunText, type Sample } from './run.ts';

/** Cut from each end of a track: where a run begins and ends is often somebody's gate. */
const ENDS_m = 150;
const ENDS_SHARE = 0.05;
/** More of a road than this may be known again by its bends and hills. */
const LONGEST_m = 1000;
const MOST_POINTS = 240;

/**
 * What readers may see of a run: its middle, without either end, of at most a kilometre unless the author shows the whole;
 * time, distance and height counted from where the stretch begins, rounded to what a chart shows.
 */
export function shownStretch({ samples, from }: RunText, whole: boolean): Sample[] {
  const along = distances(samples);
  const length = along.at(-1) ?? 0;
  const end = Math.max(ENDS_SHARE * length, from === 'positions' ? ENDS_m : 0);
  const middle = length / 2;
  const half = Math.min(middle - end, whole ? Number.POSITIVE_INFINITY : LONGEST_m / 2);
  const kept = samples.filter((_, at) => Math.abs((along[at] ?? 0) - middle) <= half);
  const first = kept[0];
  if (!first) return [];
  const height = kept.find((one) => one.height_m !== undefined)?.height_m;
  const every = Math.ceil(kept.length / MOST_POINTS);
  return kept
    .filter((_, at) => at % every === 0)
    .map(({ time_s, speed_mps, height_m }) => ({
      time_s: rounded(time_s - first.time_s, 10),
      speed_mps: rounded(speed_mps, 100),
      ...(height_m === undefined || height === undefined ? {} : { height_m: rounded(height_m - height, 1) }),
    }));
}

const rounded = (x: number, parts: number) => Math.round(x * parts) / parts || 0;
