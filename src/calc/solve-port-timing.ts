import type { Found, FoundRows, Output, Refusal, Values } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import type { Figures } from './holes.ts';
import type { wrong as says } from './port-timing-says.ts';
import { angleAt, pistonStroke, type SliderCrank, travelAt, upstroke } from './slider-crank.ts';
import { type Point, polyPath } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';

type Wrong = keyof typeof says;

const TURN = 2 * Math.PI;
const TENTH = 1e-4;

/** Seen before the top; the other side of the offset is the engine seen after it. */
function crankOf(values: Values): SliderCrank {
  const v = reader(values);
  const offset = v('offset', 0);
  const offset_m = textOf(values, 'side') === 'thrust' ? -offset : offset;
  return { radius_m: v('stroke') / 2, rod_m: v('rod'), offset_m };
}

const mirrored = (engine: SliderCrank): SliderCrank => ({ ...engine, offset_m: -engine.offset_m });

/** Before and after the top: the crank angles at which the piston stands so far below it. */
const bothSides = (engine: SliderCrank, travel: number): readonly [number, number] => [
  angleAt(engine, travel),
  angleAt(mirrored(engine), travel),
];

/** The travel at which the angle between both sides is as wanted: the piston's place is found by halving. */
function travelFor(engine: SliderCrank, between: number): number {
  if (!engine.offset_m || Number.isNaN(between)) return travelAt(engine, between / 2);
  let [low, high] = [0, pistonStroke(engine)];
  for (let i = 0; i < 60; i++) {
    const mid = (low + high) / 2;
    const [a, b] = bothSides(engine, mid);
    if (a + b < between) low = mid;
    else high = mid;
  }
  return (low + high) / 2;
}

const PORTS = ['exhaust', 'transfer', 'inlet'] as const;
type Port = (typeof PORTS)[number];

const knownOf = (values: Values) => textOf(values, 'known') ?? 'heights';
const kindOf = (values: Values) => textOf(values, 'inletBy') ?? 'none';

/** How far the piston stands below the top as a port opens; not a number where it is not given. */
function travelOf(values: Values, port: Port, engine: SliderCrank): number {
  const v = reader(values);
  const known = knownOf(values);
  const skirt = port === 'inlet';
  if (skirt && kindOf(values) !== 'piston') return Number.NaN;
  if (known === 'heights')
    return skirt ? v('inletFloor') - v('skirt') - v('deck', 0) : v(port) - v('deck', 0);
  if (known === 'angles') return travelAt(skirt ? engine : mirrored(engine), v(`${port}Angle`));
  const duration = v(`${port}Duration`);
  return travelFor(engine, skirt ? duration : TURN - duration);
}

function compute(values: Values): Computed {
  const v = reader(values);
  const engine = crankOf(values);
  const [exhaust, transfer, inlet] = PORTS.map((port) => {
    const travel = travelOf(values, port, engine);
    const [before, after] = bothSides(engine, travel);
    return { travel, before, after, shut: before + after };
  });
  const disc = kindOf(values) === 'disc';
  const opens = disc ? v('discOpens') : (inlet?.before ?? Number.NaN);
  const closes = disc ? v('discCloses') : (inlet?.after ?? Number.NaN);
  const blowdown = (transfer?.after ?? 0) - (exhaust?.after ?? 0);
  const nearer = bothSides(engine, (exhaust?.travel ?? 0) - TENTH);
  return {
    exhaustOpens: exhaust?.after,
    exhaustDuration: TURN - (exhaust?.shut ?? Number.NaN),
    exhaustTravel: exhaust?.travel,
    transferOpens: transfer?.after,
    transferDuration: TURN - (transfer?.shut ?? Number.NaN),
    transferTravel: transfer?.travel,
    blowdown,
    blowdownTime: blowdown / v('speed'),
    inletOpens: opens,
    inletCloses: closes,
    inletDuration: opens + closes,
    inletTravel: inlet?.travel,
    discCut: disc ? opens + closes - v('discPort') : undefined,
    trappedStroke: exhaust?.travel,
    perTenth: (exhaust?.shut ?? Number.NaN) - nearer[0] - nearer[1],
  };
}

/** The field that a port's place was read from. */
function fieldOf(values: Values, port: Port): string {
  const known = knownOf(values);
  if (known === 'heights') return port === 'inlet' ? 'inletFloor' : port;
  return port + (known === 'angles' ? 'Angle' : 'Duration');
}

function refuse(values: Values): Refusal | undefined {
  const v = reader(values);
  const engine = crankOf(values);
  const { radius_m: r, rod_m: l, offset_m: e } = engine;
  const geometry = refusal<Wrong>({
    stroke: !(r > 0) && 'stroke',
    rod: !(l > r) && 'rod',
    offset: l > r && Math.abs(e) >= l - r && 'offset',
  });
  if (geometry) return geometry;
  const [whole, bottom] = [pistonStroke(engine), upstroke(mirrored(engine))];
  const wrong: Record<string, Wrong | false> = {};
  for (const port of PORTS) {
    const x = travelOf(values, port, engine);
    const inlet = port === 'inlet';
    if (x <= 0) wrong[inlet ? 'skirt' : fieldOf(values, port)] = inlet ? 'skirt' : 'above';
    else if (x > whole * (1 + 1e-9)) wrong[fieldOf(values, port)] = inlet ? 'skirtOpen' : 'never';
    if (knownOf(values) === 'angles' && v(`${port}Angle`) > bottom) wrong[`${port}Angle`] = 'bottom';
  }
  const {
    blowdown = 0,
    inletDuration = 0,
    discCut = 1,
    exhaustTravel,
    transferTravel,
    inletOpens,
  } = compute(values);
  wrong[fieldOf(values, 'transfer')] ||= blowdown < 0 && 'blowdown';
  wrong['discCloses'] ||= inletDuration >= TURN && 'discShut';
  wrong['discPort'] ||= discCut <= 0 && 'discPort';
  const none = [exhaustTravel, transferTravel, inletOpens].every((x) => !Number.isFinite(x));
  wrong[fieldOf(values, 'exhaust')] ||= none && 'none';
  return refusal(wrong, { whole, bottom });
}

const [CX, CY] = [170, 152];
const on = (radius: number, at: number): Point => [CX + radius * Math.sin(at), CY - radius * Math.cos(at)];

const DRAWN = [
  ['exhaust', 104, 'none'],
  ['transfer', 86, '9 3'],
  ['inlet', 68, '2 2'],
] as const;

/** Each port's opening as an arc; the crank turns clockwise from the top. */
function openings(out: Record<string, Output>): Figures[] {
  const si = (name: string) => out[name]?.si ?? Number.NaN;
  const shown = DRAWN.filter(([port]) => out[`${port}Opens`]);
  const close = si('transferOpens') - si('exhaustOpens') < 0.12;
  return shown.map(([port, radius, dash], i) => {
    const [opens, long] = [si(`${port}Opens`), si(`${port}Duration`)];
    const from = port === 'inlet' ? -opens : opens;
    const to = from + long;
    const [[x, y], [toX, toY]] = [on(radius, from), on(radius, to)];
    const [wordX, wordY] = on(118, port === 'transfer' && close ? from + 0.12 : from);
    return {
      port,
      opens,
      long,
      radius,
      dash,
      x,
      y,
      toX,
      toY,
      large: Number(long > Math.PI),
      ends: [from, to].map((at) => polyPath([on(radius - 6, at), on(radius + 6, at)])).join(''),
      wordX,
      wordY: wordY + 4,
      anchor: wordX > CX + 2 ? 'start' : wordX < CX - 2 ? 'end' : 'middle',
      line: CY + 4 + (i - (shown.length - 1) / 2) * 15,
    };
  });
}

/** How high the gudgeon pin stands above the crank's axis as each port opens. */
function heights(engine: SliderCrank, out: Record<string, Output>): Figures {
  const high = engine.radius_m + engine.rod_m;
  const pairs = PORTS.map((port) => [`${port}Height`, high - (out[`${port}Travel`]?.si ?? Number.NaN)]);
  return Object.fromEntries(pairs);
}

/**
 * When the ports of a two-stroke open and for how long, from heights, angles or durations, and back.
 * @returns refusals for what the geometry does not allow; ± carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const outputs = spread(compute, values);
  const engine = crankOf(values);
  const open = openings(outputs);
  const circle: FoundRows = { at: {}, rows: open };
  return {
    ok: true,
    outputs,
    figures: { ...heights(engine, outputs), radius: engine.radius_m, offset: engine.offset_m },
    lists: { open },
    shown: { circle },
  };
}
