import type { Answer, AnswerTable, Output, Refusal, Values, WorkingLine } from './contract.ts';
import { figureOf, refusal, rowsOf, textOf } from './field-values.ts';
import { printFigure } from './print-figure.ts';
import {
  angleAt,
  pistonStroke,
  positiveStop,
  type SliderCrank,
  topAngle,
  travelAt,
  upstroke,
} from './slider-crank.ts';
import { advanceChart, crankDrawing, travelChart } from './timing-drawings.ts';
import { timingWorking } from './timing-working.ts';
import { type Computed, spread } from './uncertainty.ts';
import type { Quantity, UnitId } from './units.ts';

const TURN = 2 * Math.PI;
/** The step that the question "how closely" is asked with. */
const TENTH = 1e-4;
/** What a hundredths dial and its fixing are good for at best, near the top. */
const DIAL_DOUBT = 2e-5;

const print = (o: Output | undefined, quantity: Quantity, unit: UnitId, figures = 3) =>
  o ? printFigure(o, quantity, unit, figures) : '—';
const mm = (o: Output | undefined) => print(o, 'length', 'mm');
const deg = (o: Output | undefined) => print(o, 'angle', 'deg');

export function crankOf(values: Values): SliderCrank {
  const offset = figureOf(values, 'offset') ?? 0;
  return {
    radius_m: (figureOf(values, 'stroke') ?? Number.NaN) / 2,
    rod_m: figureOf(values, 'rod') ?? Number.NaN,
    offset_m: textOf(values, 'side') === 'thrust' ? -offset : offset,
  };
}

/** Travel of the piston where that is what is known: as such, or from the dial of a gauge that may stand at a slant. */
function knownTravel(values: Values): number {
  const get = (name: string) => figureOf(values, name);
  if (textOf(values, 'known') === 'travel') return get('travel') ?? Number.NaN;
  const gauge = (get('turns') ?? 0) * (get('dial') ?? 0) + (get('reading') ?? 0);
  return gauge * Math.cos(get('slant') ?? 0);
}

/** Crank angle before top dead centre, from whichever is known. */
function knownAngle(values: Values, engine: SliderCrank): number {
  const get = (name: string) => figureOf(values, name);
  const known = textOf(values, 'known') ?? 'advance';
  if (known === 'travel' || known === 'turns') return angleAt(engine, knownTravel(values));
  if (known === 'arc') return (2 * (get('arc') ?? Number.NaN)) / (get('rim') ?? Number.NaN);
  return get('advance') ?? Number.NaN;
}

/** Errors that cylinders after the first fire early by; the first is the one that is set. */
const phasesOf = (values: Values): number[] => {
  const others = (figureOf(values, 'cylinders') ?? 1) - 1;
  return others > 0 ? rowsOf(values, 'phase').map(([early = 0]) => early) : [];
};

/** Every figure of the answer from SI values; run again for each ± (uncertainty.ts). */
export function computeTiming(values: Values): Computed {
  const engine = crankOf(values);
  const angle = knownAngle(values, engine);
  const travel = travelAt(engine, angle);
  const [rim, dial, speed] = [figureOf(values, 'rim'), figureOf(values, 'dial'), figureOf(values, 'speed')];
  const gauge = travel / Math.cos(figureOf(values, 'slant') ?? 0);
  const arc = (a: number | undefined) => (rim === undefined || a === undefined ? undefined : (a * rim) / 2);
  const marks = figureOf(values, 'marks');
  const between = figureOf(values, 'disc') ?? (marks !== undefined && rim ? (2 * marks) / rim : undefined);
  const stop = between === undefined ? undefined : positiveStop(engine, between);
  const first = stop && between !== undefined ? between / 2 + stop.shift_rad : undefined;
  const phases = phasesOf(values);
  const lead = Math.max(0, ...phases);
  const reset = phases.length ? angle - lead : undefined;
  const each: Record<string, number> = {};
  phases.forEach((early, i) => {
    each[`angle${i + 2}`] = angle + early;
    each[`travel${i + 2}`] = travelAt(engine, angle + early);
    each[`reset${i + 2}`] = angle + early - lead;
    each[`resetTravel${i + 2}`] = travelAt(engine, angle + early - lead);
  });
  const low = Math.max(0, travel - TENTH / 2);
  return {
    advance: angle,
    travel,
    arc: arc(angle),
    chord: rim && angle <= Math.PI ? rim * Math.sin(angle / 2) : undefined,
    gauge,
    dialTurns: dial ? gauge / dial : undefined,
    perTenth: angleAt(engine, low + TENTH) - angleAt(engine, low),
    nearTop: angleAt(engine, DIAL_DOUBT),
    time: speed ? angle / speed : undefined,
    stroke: pistonStroke(engine),
    topAngle: topAngle(engine),
    half: arc(between === undefined ? undefined : between / 2),
    halfAngle: between === undefined ? undefined : between / 2,
    stopDepth: stop?.depth_m,
    stopShift: stop?.shift_rad,
    fromFirst: arc(first),
    fromFirstAngle: first,
    fireFromFirst: arc(first === undefined ? undefined : first - angle),
    reset,
    resetTravel: reset === undefined ? undefined : travelAt(engine, reset),
    resetArc: arc(reset),
    lead: phases.length ? lead : undefined,
    ...each,
  };
}

function refuse(values: Values): Refusal | undefined {
  const get = (name: string) => figureOf(values, name);
  const engine = crankOf(values);
  const { radius_m: r, rod_m: l, offset_m: e } = engine;
  const known = textOf(values, 'known') ?? 'advance';
  const slanted = (get('slant') ?? 0) > 0;
  const rim = get('rim');
  const phases = rowsOf(values, 'phase').length;
  const others = (get('cylinders') ?? 1) - 1;
  const geometry = refusal({
    stroke: !(r > 0) && 'The stroke is needed: twice the crank radius.',
    rod: !(l > r) && 'The rod must be longer than half the stroke.',
    offset:
      Math.abs(e) >= l - r &&
      l > r &&
      'The offset must be smaller than what the rod is longer than half the stroke.',
    crown:
      slanted &&
      textOf(values, 'crown') === 'domed' &&
      'On a domed crown a slanted gauge does not tell the travel: its tip moves over the dome. Measure straight down the bore, or use a degree disc.',
    rim:
      rim === undefined &&
      (known === 'arc' || get('marks') !== undefined) &&
      'The diameter of the rim is needed to turn a distance along it into degrees.',
    dial:
      known === 'turns' && !get('dial') && 'The travel of one dial turn is needed, such as 0.1 in or 1 mm.',
    disc:
      get('marks') !== undefined &&
      get('disc') !== undefined &&
      'Give the marks along the rim or in degrees, not both.',
    phase:
      others > 0 &&
      phases > 0 &&
      phases !== others &&
      `Give one error for each cylinder after the first: ${others}, not ${phases}.`,
  });
  if (geometry) return geometry;
  const whole = pistonStroke(engine);
  const bottom = upstroke(engine);
  const between = get('disc') ?? (rim ? (2 * (get('marks') ?? 0)) / rim : 0);
  const early = Math.max(0, ...phasesOf(values));
  return refusal({
    [known === 'turns' ? 'reading' : known]:
      known === 'travel' || known === 'turns'
        ? knownTravel(values) > whole && `The piston travels only ${mm({ si: whole })} in all.`
        : knownAngle(values, engine) + early > bottom &&
          `That is past bottom dead centre, which lies ${deg({ si: bottom })} before the top.`,
    [get('disc') === undefined ? 'marks' : 'disc']:
      between >= Math.PI &&
      'The two marks must be less than half a turn apart: the stop stands near the top.',
  });
}

const speeds = (values: Values) => rowsOf(values, 'curve').sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0));

function tables(values: Values, out: Record<string, Output>): AnswerTable[] {
  const engine = crankOf(values);
  const rim = figureOf(values, 'rim');
  const found: AnswerTable[] = [];
  const curve = speeds(values);
  if (curve.length)
    found.push({
      name: 'curve',
      caption: 'Advance at each speed',
      columns: ['Speed', 'Advance', 'Travel', ...(rim ? ['Along the rim'] : []), 'Time before the top'].map(
        (label) => ({ label, numeric: true }),
      ),
      rows: curve.map(([speed = 0, a = 0]) => [
        print({ si: speed }, 'rotation', 'rpm', 4),
        deg({ si: a }),
        mm({ si: travelAt(engine, a) }),
        ...(rim ? [mm({ si: (a * rim) / 2 })] : []),
        print({ si: a / speed }, 'time', 'ms'),
      ]),
    });
  const phases = phasesOf(values);
  if (phases.length) {
    const interval = firingInterval(values);
    const rows = ['', ...phases.map((_, i) => String(i + 2))].map((n, i) => [
      n || '1',
      deg({ si: i * interval }),
      deg(out[n ? `angle${n}` : 'advance']),
      mm(out[n ? `travel${n}` : 'travel']),
      deg(out[`reset${n}`]),
      mm(out[`resetTravel${n}`]),
    ]);
    const labels = ['Cylinder', 'Even firing at', 'Fires now at', 'travel', 'After resetting', 'travel'];
    found.push({
      name: 'cylinders',
      caption: 'Each cylinder, before its own top dead centre',
      columns: labels.map((label) => ({ label, numeric: true })),
      rows,
    });
  }
  return found;
}

const firingInterval = (values: Values): number =>
  ((textOf(values, 'strokes') === '4' ? 2 : 1) * TURN) / (figureOf(values, 'cylinders') ?? 1);

function notes(values: Values, out: Record<string, Output>): string[] {
  const said = [
    'Turn the engine in its running direction up to every mark. Gone past it, go back a quarter of a turn and come up again, so that the play is taken up the same way.',
    `How closely: 0.1 mm of travel is ${deg(out['perTenth'])} here. Near the top the piston hardly moves: 0.02 mm below it, the least that a dial shows for sure, is already ${deg(out['nearTop'])}, so the last degrees, and top dead centre itself, cannot be set by travel. Use a positive stop.`,
  ];
  const rim = figureOf(values, 'rim');
  if (rim) said.push(`1 mm along the rim is ${deg({ si: 2e-3 / rim })}.`);
  const shift = out['stopShift'];
  if (shift && out['halfAngle']) {
    const way = shift.si < 0 ? 'first' : 'second';
    said.push(
      figureOf(values, 'offset')
        ? `With the pin offset, true top dead centre lies ${deg({ si: Math.abs(shift.si) })} from half-way, towards the ${way} mark reached in the running direction.`
        : 'Without pin offset true top dead centre lies half-way between the two marks.',
    );
  }
  const cylinders = figureOf(values, 'cylinders') ?? 1;
  if (cylinders > 1)
    said.push(
      `${cylinders} cylinders fire every ${deg({ si: firingInterval(values) })} of crank if evenly spaced; one fixed setting puts the others off by their phase error.`,
    );
  if (phasesOf(values).length)
    said.push(
      `Set cylinder 1 to ${deg(out['reset'])}, ${mm(out['resetTravel'])} of travel: then no cylinder fires earlier than the figure.`,
    );
  if (figureOf(values, 'slant'))
    said.push(
      'The slanted gauge is worked out for a flat crown; valve pockets and steps are not allowed for.',
    );
  return said;
}

/** The same doubt about a figure that lies a known step away. */
function moveBy(output: Output, step: number): Output {
  const { si, pm, interval } = output;
  const moved: Output = pm === undefined ? { si: si + step } : { si: si + step, pm };
  if (interval) moved.interval = { low: interval.low + step, high: interval.high + step };
  return moved;
}

/**
 * Spark timing from any one of travel, degrees, rim distance or dial turns to all the others.
 * @returns refusals in plain words for what the geometry does not allow; ± carried to every output
 */
export function solve(values: Values): Answer | Refusal {
  const refused = refuse(values);
  if (refused) return refused;
  const outputs = spread(computeTiming, values);
  const [turns, dial] = [outputs['dialTurns']?.si, figureOf(values, 'dial')];
  const gauge = outputs['gauge'];
  // The whole turns are counted, so the doubt is all in the reading left over.
  if (turns !== undefined && dial && gauge)
    outputs['leftOver'] = moveBy(gauge, -Math.floor(turns + 1e-9) * dial);
  const working: readonly WorkingLine[] = timingWorking(values, crankOf(values), outputs);
  const drawings = [crankDrawing(values, outputs), travelChart(crankOf(values), outputs)];
  const curve = speeds(values);
  if (curve.length > 1) drawings.push(advanceChart(curve));
  return {
    ok: true,
    outputs,
    working,
    tables: tables(values, outputs),
    notes: notes(values, outputs),
    drawings,
  };
}
