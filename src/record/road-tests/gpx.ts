import type { Report } from '../report-to.ts';
import type { Lines } from '../text/lines.ts';
import { shown } from '../text/words.ts';
import { checkSamples, type PlacedSample, tellHoles } from './check-samples.ts';
import type { RunText } from './run.ts';
import { fromStart } from './speed-table.ts';
import { readXml, type XmlElement, XmlError } from './xml.ts';

const MAX_CHARACTERS = 20_000_000;
/** WGS 84: equatorial radius and first eccentricity squared. Source: NIMA TR8350.2. */
const EQUATOR_m = 6378137;
const ECCENTRICITY2 = 6.69437999014e-3;

interface Fix {
  lat: number;
  lon: number;
  ele: number | undefined;
  time_s: number;
  at: number;
}

/**
 * Reads the tracks of a GPX 1.1 file as one run: speed from positions and times, height where there is one. Names, places,
 * the hour and the day are dropped here; what comes back holds none of them.
 * Source: GPX 1.1 schema, topografix.com/GPX/1/1.
 */
export function readGpx(lines: Lines, report: Report): RunText | undefined {
  const { text, file } = lines;
  const wrong = (at: number, message: string): undefined =>
    report.add('road-tests/gpx', lines.at(at), message);
  if (text.length > MAX_CHARACTERS)
    return wrong(0, `The file has ${text.length} characters; ${MAX_CHARACTERS} are read at most. Split it.`);
  let root: XmlElement;
  try {
    root = readXml(text);
  } catch (error) {
    if (error instanceof XmlError)
      return wrong(error.at, `The file is no well-formed GPX. ${error.message} Export it again.`);
    throw error;
  }
  const version = root.attributes.get('version') ?? '';
  if (root.name !== 'gpx' || version !== '1.1')
    return wrong(
      root.at,
      root.name === 'gpx'
        ? `The file is GPX ${shown(version)}. Export it as GPX 1.1.`
        : `The file holds <${root.name}> and not <gpx>. Export it as GPX 1.1.`,
    );
  const points = named(named(named([root], 'trk'), 'trkseg'), 'trkpt');
  if (points.length === 0)
    return wrong(root.at, 'The file has no track. Export the recorded track, not a planned route.');
  const fixes: Fix[] = [];
  for (const point of points) {
    const [lat, lon] = [degrees(point, 'lat', 90), degrees(point, 'lon', 180)];
    if (lat === undefined || lon === undefined)
      return wrong(point.at, 'A point of the track has no "lat" and "lon" in degrees. Export it again.');
    const written = child(point, 'time');
    const time = written === undefined ? Number.NaN : utc(written);
    if (Number.isNaN(time))
      return wrong(
        point.at,
        written === undefined
          ? 'A point of the track has no time, so there is no speed. Export it with times.'
          : `${shown(written)} is no time of GPX, such as 2026-05-02T09:30:00Z. Export it again.`,
      );
    const ele = Number(child(point, 'ele') ?? Number.NaN);
    fixes.push({ lat, lon, ele: Number.isFinite(ele) ? ele : undefined, time_s: time, at: point.at });
  }
  const samples = fixes.map((fix, i): PlacedSample => {
    const place = lines.at(fix.at);
    const speed = speedAt(fixes, i);
    return {
      time_s: fix.time_s,
      speed_mps: speed,
      at: { time: place, speed: place },
      written: `${Math.round(speed * 3.6)} km/h by positions`,
      ...(fix.ele === undefined ? {} : { height_m: fix.ele }),
    };
  });
  if (!checkSamples(samples, file, report)) return undefined;
  tellHoles(samples, report);
  return { samples: fromStart(samples), from: 'positions', indicated: false };
}

const named = (of: readonly XmlElement[], name: string) =>
  of.flatMap((one) => one.children.filter((inner) => inner.name === name));

const child = (of: XmlElement, name: string) => of.children.find((inner) => inner.name === name)?.text.trim();

function degrees(point: XmlElement, name: string, most: number): number | undefined {
  const text = point.attributes.get(name)?.trim() ?? '';
  return /^[-+]?\d{1,3}(?:\.\d+)?$/.test(text) && Math.abs(Number(text)) <= most ? Number(text) : undefined;
}

const TIME = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?(?:Z|[-+]\d\d:\d\d)?$/;
const utc = (text: string) =>
  TIME.test(text) ? Date.parse(/Z$|[-+]\d\d:\d\d$/.test(text) ? text : `${text}Z`) / 1000 : Number.NaN;

/** Over the stretch from the point before to the point after, which halves the jitter of single fixes. */
function speedAt(fixes: readonly Fix[], i: number): number {
  const [first, last] = [Math.max(0, i - 1), Math.min(fixes.length - 1, i + 1)];
  const [a, here, b] = [fixes[first], fixes[i], fixes[last]];
  if (!a || !here || !b) return 0;
  const time = b.time_s - a.time_s;
  return time > 0 ? (between(a, here) + between(here, b)) / time : 0;
}

/**
 * Metres between two near points on the ellipsoid, by its radii of curvature there.
 * Source: local radii M and N of WGS 84 (NIMA TR8350.2); good to a millimetre between fixes of one run.
 */
export function between(a: { lat: number; lon: number }, b: { lat: number; lon: number }): number {
  const middle = ((a.lat + b.lat) / 2) * (Math.PI / 180);
  const w = 1 - ECCENTRICITY2 * Math.sin(middle) ** 2;
  const north = ((EQUATOR_m * (1 - ECCENTRICITY2)) / w ** 1.5) * (b.lat - a.lat) * (Math.PI / 180);
  const turn = ((b.lon - a.lon + 540) % 360) - 180;
  const east = (EQUATOR_m / Math.sqrt(w)) * Math.cos(middle) * turn * (Math.PI / 180);
  return Math.hypot(north, east);
}
