import type { wrong } from './cable-says.ts';
import { SIZES } from './conductor-table.ts';
import type { Found, FoundChart, Output, Refusal, Values } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import type { Figures } from './holes.ts';
import { type Computed, spread } from './uncertainty.ts';

/** Annealed copper at 20 °C, Ω·m, and its rise per kelvin. */
const COPPER = 1 / 58e6;
const RISE = 0.00393;
const AT = 293.15;
/** Light follows voltage with about this power in a filament lamp. */
const LIGHT = 3.4;

type Conductor = 'ideal' | 'coarse' | 'flexible';

/** What sections outside the table count more than pure copper: the worst of the table. */
const WORST = { ideal: 1, coarse: 1.07, flexible: 1.16 } as const;

/**
 * Resistance of one metre of copper conductor at 20 °C: the largest that IEC 60228 permits where the section is in its
 * table, pure copper times a margin elsewhere; Ω/m.
 * @example
 * perMetre(2.5e-6, 'flexible') // => 0.00798 Ω/m
 */
export function perMetre(section_m2: number, conductor: Conductor): number {
  const row = SIZES.find(([mm2]) => Math.abs(section_m2 * 1e6 - mm2) < 1e-6);
  if (row && conductor !== 'ideal') return (conductor === 'coarse' ? row[1] : row[2]) / 1e3;
  return (WORST[conductor] * COPPER) / section_m2;
}

const conductorOf = (values: Values) => (textOf(values, 'conductor') ?? 'flexible') as Conductor;
const framed = (values: Values) => textOf(values, 'back') === 'frame';
function currentOf(values: Values): number {
  const v = reader(values);
  return v('current', v('load') / v('supply'));
}

/** Metres of conductor that the current runs through. */
const runOf = (values: Values) => reader(values)('length') * (framed(values) ? 1 : 2);

const warm = (values: Values) => 1 + RISE * (reader(values)('temperature', AT) - AT);

function compute(values: Values, section = reader(values)('section')): Computed {
  const v = reader(values);
  const I = currentOf(values);
  const conductor = conductorOf(values);
  const resistance = runOf(values) * perMetre(section, conductor) * warm(values);
  const drop = I * resistance + v('joints', 0);
  const atLoad = v('supply') - drop;
  const allowed = v('limit') * v('supply') - v('joints', 0);
  return {
    current: I,
    resistance,
    drop,
    share: drop / v('supply'),
    atLoad,
    lost: I * drop,
    light: atLoad > 0 ? (atLoad / v('supply')) ** LIGHT : undefined,
    needed:
      allowed > 0 ? (I * runOf(values) * WORST[conductor] * COPPER * warm(values)) / allowed : undefined,
    short: v('supply') / resistance,
  };
}

/** The smallest size of the series that stays within the limit. */
function leastOf(values: Values): number | undefined {
  const limit = reader(values)('limit');
  return SIZES.map(([mm2]) => mm2 * 1e-6).find((size) => (compute(values, size)['share'] ?? 1) <= limit);
}

const sizes = (values: Values): Figures[] =>
  SIZES.map(([mm2]) => {
    const { drop, share, lost, light } = compute(values, mm2 * 1e-6);
    return { mm2: String(mm2), section: mm2 * 1e-6, drop, share, lost, light };
  });

/** Loss against section for pure copper, and the conductor chosen as a point. */
function picture(values: Values, out: Record<string, Output>): FoundChart {
  const limit = reader(values)('limit', 0) * 100;
  const now = reader(values)('section') * 1e6;
  const most = Math.max(6, now * 1.5);
  const share = (mm2: number) => (compute({ ...values, conductor: 'ideal' }, mm2 * 1e-6)['share'] ?? 0) * 100;
  const here = out['share']?.si ?? 0;
  const top = Math.max(here * 160, limit * 1.5);
  const xs = Array.from({ length: 80 }, (_, i) => (most * (i + 1)) / 80).filter((x) => share(x) <= top);
  const level = {
    points: [
      [0, limit],
      [most, limit],
    ] as const,
    label: 'limit',
    dash: '5 3',
  };
  return {
    x: { max: most },
    y: { max: top },
    curves: [{ points: xs.map((x) => [x, share(x)] as const) }, ...(limit > 0 ? [level] : [])],
    marks: [{ at: [now, here * 100], here }],
  };
}

/**
 * Voltage, watts and light lost in a cable, and the smallest section for a limit.
 * @returns refusals; ± carried to every output
 */
export function solve(values: Values): Found | Refusal {
  const v = reader(values);
  const lacks = (name: string) => !(v(name) > 0) && 'needed';
  const field = textOf(values, 'known') === 'current' ? 'current' : 'load';
  const { drop = 0 } = compute(values);
  const refused = refusal<keyof typeof wrong>(
    {
      supply: lacks('supply'),
      length: lacks('length'),
      section: lacks('section'),
      [field]: lacks(field) || (drop >= v('supply') && 'drop'),
    },
    { drop },
  );
  if (refused) return refused;
  const outputs = spread((moved) => compute(moved), values);
  const least = leastOf(values);
  if (least) outputs['least'] = { si: least };
  const perMetre_ohm = perMetre(v('section'), conductorOf(values));
  const warmer = v('temperature', AT) - AT;
  return {
    ok: true,
    outputs,
    figures: {
      back: framed(values) ? 'frame' : 'wire',
      lamp: Number(textOf(values, 'kind') !== 'other'),
      perfect: Number.isNaN(v('joints')),
      left: v('supply') - (outputs['drop']?.si ?? 0),
      perMetre: perMetre_ohm,
      perKilometre: perMetre_ohm * 1e3,
      warmer,
      now: (v('section') * 1e6).toPrecision(2),
    },
    shown: { sizes: { rows: sizes(values) }, drop: picture(values, outputs) },
  };
}
