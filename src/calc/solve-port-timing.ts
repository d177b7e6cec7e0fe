import type { Answer, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import { angleAt, pistonStroke, type SliderCrank, travelAt, upstroke } from './slider-crank.ts';
import { circle, drawing, lettering, type Point, path, polyline, r1 } from './svg.ts';
import { type Computed, spread } from './uncertainty.ts';
import { add, arccosine, line, minus, num, over, power, sign, times } from './working.ts';

const TURN = 2 * Math.PI;
const TENTH = 1e-4;
const mm = printer('length', 'mm');
const deg = printer('angle', 'deg', 4);

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
  const geometry = refusal({
    stroke: !(r > 0) && 'The stroke is needed: twice the crank radius.',
    rod: !(l > r) && 'The rod must be longer than half the stroke.',
    offset: l > r && Math.abs(e) >= l - r && 'The offset must be smaller than the rod less half the stroke.',
  });
  if (geometry) return geometry;
  const whole = pistonStroke(engine);
  const wrong: Record<string, string | false> = {};
  for (const port of PORTS) {
    const x = travelOf(values, port, engine);
    if (port === 'inlet' && x <= 0)
      wrong['skirt'] = 'The skirt does not reach the port: it would never shut.';
    else if (x <= 0) wrong[fieldOf(values, port)] = 'The port must lie below the crown at top dead centre.';
    else if (x > whole * (1 + 1e-9))
      wrong[fieldOf(values, port)] =
        port === 'inlet'
          ? `The skirt would leave it open always: the piston travels only ${mm(whole)}.`
          : `The piston travels only ${mm(whole)}: it would never open this port.`;
  }
  const bottom = upstroke(mirrored(engine));
  if (knownOf(values) === 'angles')
    for (const port of PORTS)
      if (v(`${port}Angle`) > bottom)
        wrong[`${port}Angle`] = `Bottom dead centre lies ${deg(bottom)} from the top.`;
  const {
    blowdown = 0,
    inletDuration = 0,
    discCut = 1,
    exhaustTravel,
    transferTravel,
    inletOpens,
  } = compute(values);
  wrong[fieldOf(values, 'transfer')] ||=
    blowdown < 0 && 'The transfer would open before the exhaust: fresh mixture would meet full pressure.';
  wrong['discCloses'] ||= inletDuration >= TURN && 'The disc would never shut.';
  wrong['discPort'] ||= discCut <= 0 && 'Wider than the inlet is open: the disc would have no cut-out.';
  const none = [exhaustTravel, transferTravel, inletOpens].every((x) => !Number.isFinite(x));
  wrong[fieldOf(values, 'exhaust')] ||= none && 'Give at least one port.';
  return refusal(wrong);
}

function notes(values: Values, out: Record<string, Output>): string[] {
  const said = [
    out['perTenth'] &&
      `0.1 mm higher opens the exhaust ${deg(out['perTenth'].si)} longer: a gasket’s thickness counts.`,
    out['trappedStroke'] &&
      `The charge is trapped over ${mm(out['trappedStroke'])} of the stroke: use it for the trapped compression ratio.`,
    crankOf(values).offset_m && 'With the pin offset, ports open and shut at unlike angles from the top.',
    out['discCut'] &&
      `A disc cut-out of ${deg(out['discCut'])} sweeps over the port’s own width, and so opens for ${deg(out['inletDuration'])}.`,
    kindOf(values) === 'reed' && 'Reeds open by pressure: they have no timing of their own to set.',
    'Measure to the top edge of the window itself, not to its chamfer; feel for it with a thin strip.',
  ];
  return said.filter((note) => typeof note === 'string');
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const v = reader(values);
  const engine = crankOf(values);
  if (engine.offset_m) return [];
  const r = sign('r', engine.radius_m, 'length', 'mm');
  const l = sign('l', engine.rod_m, 'length', 'mm');
  const angle = (name: string, si: number) => sign(name, si, 'angle', 'deg');
  const lines: WorkingLine[] = [];
  for (const [name, letter, from] of [
    ['exhaust', 'E', 'after'],
    ['transfer', 'T', 'after'],
    ['inlet', 'I', 'before'],
  ] as const) {
    const [x, at] = [out[`${name}Travel`]?.si, out[`${name}Opens`]?.si];
    if (x === undefined || at === undefined) continue;
    const d = sign(`d_${letter}`, engine.rod_m + engine.radius_m - x, 'length', 'mm', 5);
    const X = sign(`x_${letter}`, x, 'length', 'mm');
    const a = angle(`α_${letter}`, at);
    const long = angle(`D_${letter}`, out[`${name}Duration`]?.si ?? 0);
    lines.push(
      line(`Pin above the crank’s axis, ${name}`, d, minus(add(l, r), X)),
      line(
        `Opens ${from} the top`,
        a,
        arccosine(over(minus(add(power(r, 2), power(d, 2)), power(l, 2)), times(2, r, d))),
      ),
      line('Open for', long, name === 'inlet' ? times(2, a) : minus(num(TURN, '360°'), times(2, a))),
    );
  }
  const [E, T] = [out['exhaustOpens']?.si, out['transferOpens']?.si];
  if (E !== undefined && T !== undefined && out['blowdown'])
    lines.push(line('Blowdown', angle('B', out['blowdown'].si), minus(angle('α_T', T), angle('α_E', E))));
  return Number.isNaN(v('stroke')) ? [] : lines;
}

const [CX, CY] = [170, 152];
const on = (radius: number, at: number): Point => [CX + radius * Math.sin(at), CY - radius * Math.cos(at)];

/** Each port's opening as an arc; the crank turns clockwise from the top. */
function circleDrawing(out: Record<string, Output>): Drawing {
  const si = (name: string) => out[name]?.si;
  const bow = (radius: number, from: number, to: number, dash: string) => {
    const n = Math.max(2, Math.ceil((to - from) / 0.1));
    const points = Array.from({ length: n + 1 }, (_, i) => on(radius, from + ((to - from) * i) / n));
    const ends = [from, to].map((at) => polyline([on(radius - 6, at), on(radius + 6, at)]));
    return polyline(points, `stroke-width="4" ${dash}`) + ends.join('');
  };
  const words: string[] = [];
  const arcs: string[] = [];
  const shown = (name: string, radius: number, from: number, long: number, dash: string) => {
    arcs.push(bow(radius, from, from + long, dash));
    words.push(`${name} ${deg(long)}`);
  };
  const [E, T, I] = [si('exhaustOpens'), si('transferOpens'), si('inletOpens')];
  if (E !== undefined) shown('exhaust', 104, E, si('exhaustDuration') ?? 0, '');
  if (T !== undefined) shown('transfer', 86, T, si('transferDuration') ?? 0, 'stroke-dasharray="9 3"');
  if (I !== undefined) shown('inlet', 68, -I, si('inletDuration') ?? 0, 'stroke-dasharray="2 2"');
  const place = (radius: number, at: number, text: string) => {
    const [x, y] = on(radius, at);
    return lettering(x, y + 4, text, x > CX + 2 ? 'start' : x < CX - 2 ? 'end' : 'middle');
  };
  const [ax, ay] = on(54, 5.2);
  const desc = `Clockwise from top dead centre: ${words.join(', ')}.`;
  return drawing('circle', 300, 'When each port is open', desc, [
    circle(CX, CY, 112),
    path(
      `M${CX} ${CY - 122}V${CY + 122}M${CX - 118} ${CY}H${CX + 118}`,
      'stroke-opacity=".4" stroke-dasharray="10 3 2 3"',
    ),
    ...arcs,
    lettering(CX, CY - 126, 'top dead centre', 'middle'),
    lettering(CX, CY + 134, 'bottom dead centre', 'middle'),
    E === undefined ? '' : place(118, E, `${deg(E)}`),
    T === undefined ? '' : place(118, T + (E !== undefined && T - E < 0.12 ? 0.12 : 0), deg(T)),
    I === undefined ? '' : place(118, -I, deg(I)),
    path(`M${on(54, 1.1).map(r1).join(' ')}A54 54 0 1 1 ${r1(ax)} ${r1(ay)}`, 'stroke-opacity=".7"'),
    path(`M${r1(ax - 6)} ${r1(ay + 1)}L${r1(ax)} ${r1(ay)}L${r1(ax - 1)} ${r1(ay + 7)}`),
    ...words.map((text, i) => lettering(CX, CY + 4 + (i - (words.length - 1) / 2) * 15, text, 'middle')),
  ]);
}

/**
 * When the ports of a two-stroke open and for how long, from heights, angles or durations, and back.
 * @returns refusals in plain words for what the geometry does not allow; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const outputs = spread(compute, values);
  return {
    ok: true,
    outputs,
    working: working(values, outputs),
    tables: [],
    notes: notes(values, outputs),
    drawings: [circleDrawing(outputs)],
  };
}
