/**
 * Writes the demo's runs into content/road-tests/: coast-downs there and back, and a round of the lane as GPX. The van's
 * figures come from content/machine.yaml; wind, slope, the noise of the receiver and a small bias are added here.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { BaseBuilder, buildGPX } from 'gpx-builder';
import { parse } from 'yaml';
import { airDensity } from '../../src/calc/road-load.ts';
import { type Coasting, speedAfter } from '../../src/record/road-tests/coasting.ts';

const { Point, Segment, Track } = BaseBuilder.MODELS;
const content = new URL('../../content/', import.meta.url);
const out = new URL('road-tests/', content);
const { chassis } = parse(readFileSync(fileURLToPath(new URL('machine.yaml', content)), 'utf8'));
const figure = (key: string) => Number.parseFloat(chassis[key].as_built);

let state = 1957;
function draw(): number {
  state = (state + 0x6d2b79f5) >>> 0;
  let t = Math.imul(state ^ (state >>> 15), state | 1);
  t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
  return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
}
const normal = () => Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());

/** Of the lane, as the road tests and the jets' sheet have it. */
const ALTITUDE_m = 340;

const van: Coasting = {
  mass_kg: figure('test_mass'),
  rotating_kg: 18,
  drag_m2: figure('drag_area') * 1.03,
  rolling: figure('rolling_resistance') * 0.97,
  density_kgpm3: airDensity(ALTITUDE_m, 288.15),
  wind_mps: 0.7,
  slope: 0.0015,
};
const BIAS = 1.006;

function coastDown(way: 1 | -1): string {
  const one = { ...van, wind_mps: way * (van.wind_mps + 0.15 * normal()), slope: way * van.slope };
  const start = 12.2 + 0.4 * draw();
  const rows = ['time (s),speed (km/h)'];
  for (let time = 0; time < 90; time += 0.5) {
    const speed = speedAfter(one, start, time);
    if (speed < 2.2) break;
    rows.push(`${time.toFixed(1)},${((speed * BIAS + 0.08 * normal()) * 3.6).toFixed(1)}`);
  }
  return `${rows.join('\n')}\n`;
}

/** A round of 4.25 km with a hill, walked through second by second; the loop is a bent circle in open sea. */
function lane(): string {
  const LENGTH = 4250;
  const radius = LENGTH / (2 * Math.PI);
  const height = (s: number) =>
    26 * Math.exp(-(((s - 2500) / 180) ** 2)) + 4 * Math.sin((s / LENGTH) * 2 * Math.PI);
  const points: InstanceType<typeof Point>[] = [];
  let along = 0;
  let speed = 2;
  let drift = 0;
  for (let time = 0; along < LENGTH; time++) {
    const slope = (height(along + 10) - height(along - 10)) / 20;
    const wanted = Math.min(11.5, Math.max(4.7, 10.5 - 60 * Math.max(0, slope) - 40 * Math.max(0, -slope)));
    const stop = LENGTH - along < 60 ? 3 : wanted;
    speed += Math.max(-0.9, Math.min(0.5, (stop - speed) * 0.3));
    along += speed;
    drift = 0.98 * drift + 0.1 * normal();
    const angle = (along / LENGTH) * 2 * Math.PI;
    const r = radius + 60 * Math.sin(3 * angle) * 0.2 + drift;
    const lat = 47.5 + (r * Math.cos(angle)) / 111_200;
    const lon = -31.25 + (r * Math.sin(angle)) / (111_320 * Math.cos((47.5 * Math.PI) / 180));
    points.push(
      new Point(Number(lat.toFixed(7)), Number(lon.toFixed(7)), {
        ele: Number((ALTITUDE_m - 4 + height(along) + 0.3 * normal()).toFixed(1)),
        time: new Date(Date.UTC(2026, 8, 19, 7, 30, time)),
      }),
    );
  }
  const file = new BaseBuilder();
  file.setTracks([new Track([new Segment(points)], { name: 'Round the three farms' })]);
  const whole = file.toObject();
  return `${buildGPX({ ...whole, attributes: { ...whole.attributes, creator: 'demo' } })}\n`;
}

mkdirSync(out, { recursive: true });
for (const [at, way] of ([1, -1, 1, -1, 1, -1] as const).entries())
  writeFileSync(
    new URL(`${way === 1 ? 'there' : 'back'}-${Math.floor(at / 2) + 1}.csv`, out),
    coastDown(way),
  );
writeFileSync(new URL('round-the-lane.gpx', out), lane());
