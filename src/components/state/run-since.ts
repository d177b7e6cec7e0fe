import type { OdometerReading, Series } from '../../record/types.ts';

/** From the first to the newest reading of each instrument, up to the series' day: "34 km", "2.8 h". */
export function runInWords({ odometer, asOf }: Pick<Series, 'odometer' | 'asOf'>): string[] {
  const known = odometer.filter((one) => one.date <= asOf);
  return (['km', 'mi', 'h'] satisfies OdometerReading['unit'][]).flatMap((unit) => {
    const readings = known
      .filter((one) => one.unit === unit)
      .map((one) => ({ date: one.date, at: Number(one.reading) }))
      .sort((a, b) => a.date.localeCompare(b.date) || a.at - b.at);
    const [first, last] = [readings[0], readings.at(-1)];
    if (!first || !last || first === last) return [];
    // One decimal more than an instrument shows is nobody's reading.
    return [`${Number((last.at - first.at).toFixed(1))} ${unit}`];
  });
}
