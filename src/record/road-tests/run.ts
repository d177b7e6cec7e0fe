/** One moment of a run. Time and height count from its first sample: neither the hour nor the place is kept. */
export interface Sample {
  time_s: number;
  speed_mps: number;
  height_m?: number;
}

/** A run as its file tells it, whole; only `shownStretch` of it is ever published. */
export interface RunText {
  samples: Sample[];
  /** From positions and times; otherwise from a column of speeds. */
  from: 'positions' | 'speeds';
  /** The speeds were read off the vehicle's own instrument. */
  indicated: boolean;
}

/** Distance run at each sample, metres, by the mean of neighbouring speeds. */
export function distances(samples: readonly Sample[]): number[] {
  let sum = 0;
  return samples.map((now, at) => {
    const before = samples[at - 1];
    if (before) sum += ((now.speed_mps + before.speed_mps) / 2) * (now.time_s - before.time_s);
    return sum;
  });
}
