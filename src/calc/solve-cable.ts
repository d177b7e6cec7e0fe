import { type Curve, chart } from './chart.ts';
import type { Answer, AnswerTable, Drawing, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { reader, refusal, textOf } from './field-values.ts';
import { printer } from './print-figure.ts';
import { type Computed, spread } from './uncertainty.ts';
import { add, line, minus, num, over, sign, times } from './working.ts';

/** Annealed copper at 20 °C, Ω·m, and its rise per kelvin. */
const COPPER = 1 / 58e6;
const RISE = 0.00393;
const AT = 293.15;
/** Light follows voltage with about this power in a filament lamp. */
const LIGHT = 3.4;

/** mm², then the largest resistance permitted at 20 °C in Ω/km: solid or coarse strands, fine strands. */
const SIZES = [
  [0.5, 36, 39],
  [0.75, 24.5, 26],
  [1, 18.1, 19.5],
  [1.5, 12.1, 13.3],
  [2.5, 7.41, 7.98],
  [4, 4.61, 4.95],
  [6, 3.08, 3.3],
  [10, 1.83, 1.91],
  [16, 1.15, 1.21],
  [25, 0.727, 0.78],
  [35, 0.524, 0.554],
] as const;

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
const volts = printer('voltage', 'V');
const percent = printer('share', '%');
const amps = printer('current', 'A');

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

function table(values: Values): AnswerTable {
  const lamp = textOf(values, 'kind') !== 'other';
  const heads = ['Section, mm²', 'AWG', 'Drop, V', 'Drop, %', 'Lost, W', ...(lamp ? ['Light left, %'] : [])];
  return {
    name: 'sizes',
    caption: 'The same run in other sections',
    columns: heads.map((label) => ({ label, numeric: true })),
    rows: SIZES.map(([mm2]) => {
      const at = compute(values, mm2 * 1e-6);
      return [
        String(mm2),
        printer('section', 'AWG', 2, true)(mm2 * 1e-6),
        printer('voltage', 'V', 3, true)(at['drop']),
        printer('share', '%', 2, true)(at['share']),
        printer('power', 'W', 2, true)(at['lost']),
        ...(lamp ? [printer('share', '%', 2, true)(at['light'])] : []),
      ];
    }),
  };
}

function working(values: Values, out: Record<string, Output>): WorkingLine[] {
  const v = reader(values);
  const [U, I] = [sign('U', v('supply'), 'voltage', 'V'), sign('I', currentOf(values), 'current', 'A')];
  const R = sign('R', out['resistance']?.si ?? 0, 'resistance', 'ohm');
  const r = { ...sign('r', 0, 'count', 'n'), si: perMetre(v('section'), conductorOf(values)) };
  r.figure = `${(r.si * 1e3).toPrecision(3)}\u00a0Ω/km`;
  const t = v('temperature', AT) - AT;
  const L = sign('L', v('length'), 'length', 'm');
  const w = add(1, times(num(RISE), num(t, `${t.toFixed(0)}\u00a0K`)));
  const way = framed(values) ? times(L, r, w) : times(2, L, r, w);
  const drop = sign('D', out['drop']?.si ?? 0, 'voltage', 'V');
  const joints = sign('J', v('joints', 0), 'voltage', 'mV');
  return [
    ...(v('load') > 0 ? [line('Current', I, over(sign('P', v('load'), 'power', 'W'), U))] : []),
    line(framed(values) ? 'Resistance, out' : 'Resistance, out and back', R, way),
    line('Voltage lost', drop, joints.si ? add(times(I, R), joints) : times(I, R)),
    line('Left at the load', sign('U_L', U.si - drop.si, 'voltage', 'V'), minus(U, drop)),
  ];
}

function notes(values: Values, out: Record<string, Output>): string[] {
  const v = reader(values);
  const least = leastOf(values);
  const limit = percent(v('limit'));
  const none = Number.isNaN(v('joints'));
  const said = [
    v('limit') > 0 &&
      (least
        ? `For ${limit} the smallest section of the series is ${printer('section', 'mm2', 2)(least)}. What the insulation bears may ask for more.`
        : `No section up to 35 mm² keeps to ${limit}: shorten the run, carry the load by a relay near the battery, or mend the joints.`),
    framed(values) && none
      ? 'The frame is counted as nothing. Rust and paint under an earth tag often lose more than the cable: measure from the lamp’s body to the battery with the load on.'
      : none && 'Joints and switches are counted as nothing: measure across them with the load on.',
    textOf(values, 'kind') !== 'other' &&
      `A filament lamp left with ${volts(out['atLoad'])} of ${volts(v('supply'))} gives about ${percent(out['light'])} of its light.`,
    v('load') > 0 && 'The current is taken as at full voltage; a lamp on less draws a little less.',
    `A fuse guards the cable: near the battery, above ${amps(out['current'])}, below what the cable and its insulation bear. A dead short at the far end would draw at most ${amps(out['short'])}; the fuse must blow well below that.`,
  ];
  return said.filter((note) => typeof note === 'string');
}

function picture(values: Values, out: Record<string, Output>): Drawing {
  const v = reader(values);
  const now = v('section') * 1e6;
  const most = Math.max(6, now * 1.5);
  const share = (mm2: number) => (compute({ ...values, conductor: 'ideal' }, mm2 * 1e-6)['share'] ?? 0) * 100;
  const here = (out['share']?.si ?? 0) * 100;
  const top = Math.max(here * 1.6, v('limit', 0) * 150);
  const xs = Array.from({ length: 80 }, (_, i) => (most * (i + 1)) / 80).filter((x) => share(x) <= top);
  const limit: Curve[] =
    v('limit') > 0
      ? [
          {
            points: [
              [0, v('limit') * 100],
              [most, v('limit') * 100],
            ],
            label: 'limit',
            dash: '5 3',
          },
        ]
      : [];
  return chart({
    name: 'drop',
    title: 'Voltage lost against section',
    desc: `The thicker the cable, the less is lost: ${percent(out['share'])} at ${now.toPrecision(2)} mm². The line is pure copper, the point the conductor chosen.`,
    x: { label: 'section, mm²', max: most },
    y: { label: 'lost, %', max: top },
    curves: [{ points: xs.map((x) => [x, share(x)] as const) }, ...limit],
    marks: [{ at: [now, here], label: percent(here / 100) }],
  });
}

/**
 * Voltage, watts and light lost in a cable, and the smallest section for a limit.
 * @returns refusals in plain words; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const v = reader(values);
  const lacks = (name: string) => !(v(name) > 0) && 'A figure is needed here.';
  const field = textOf(values, 'known') === 'current' ? 'current' : 'load';
  const drop = compute(values)['drop'] ?? 0;
  const refused = refusal({
    supply: lacks('supply'),
    length: lacks('length'),
    section: lacks('section'),
    [field]:
      lacks(field) ||
      (drop >= v('supply') &&
        `The cable alone would lose ${volts(drop)} of ${volts(v('supply'))}: check the length, the section and whether the load is in watts or amperes.`),
  });
  if (refused) return refused;
  const outputs = spread((moved) => compute(moved), values);
  const least = leastOf(values);
  if (least) outputs['least'] = { si: least };
  return {
    ok: true,
    outputs,
    working: working(values, outputs),
    tables: [table(values)],
    notes: notes(values, outputs),
    drawings: [picture(values, outputs)],
  };
}
