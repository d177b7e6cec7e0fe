import type { Field, FigureField, Values } from './contract.ts';
import { figureOf, textOf } from './field-values.ts';
import { nominalRoll, type Tyre, tyreOf } from './tyre.ts';
import type { UnitId } from './units.ts';

/** The forward gears by the names of their fields. */
export const GEARS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const;

const ROLL: readonly UnitId[] = ['mm', 'm', 'in', 'ft'];

const ratio = (name: string, label: string, help?: string): FigureField => {
  const field: FigureField = {
    kind: 'figure',
    name,
    label,
    group: 'Gears',
    quantity: 'ratio',
    units: [':1'],
    min: 0.2,
    max: 50,
    optional: true,
  };
  return help ? { ...field, help } : field;
};

const teeth = (name: string, label: string, machine: string | undefined, group: string): FigureField => {
  const field: FigureField = {
    kind: 'figure',
    name,
    label,
    group,
    quantity: 'count',
    units: ['n'],
    min: 5,
    max: 200,
    whole: true,
    optional: true,
  };
  return machine ? { ...field, machine } : field;
};

const circumference = (name: string, label: string, group: string): FigureField => ({
  kind: 'figure',
  name,
  label,
  help: 'Loaded and inflated, one turn of the wheel along the floor; measured, it counts before the marking.',
  group,
  quantity: 'length',
  units: ROLL,
  min: 0.4,
  max: 4,
  takesPm: true,
  optional: true,
});

/** Gearbox, final drive and tyre: fields that gearing and hills have in common. */
export const driveLineFields = (tyre: { start?: string } = {}): readonly Field[] => [
  ...GEARS.map((name, i): FigureField => {
    const label = `${name[0]?.toUpperCase()}${name.slice(1)} gear`;
    const field = ratio(
      name,
      label,
      i ? undefined : 'A ratio such as 3.2, or tooth counts, driven by driving: 35/11, 35/11 x 28/15.',
    );
    return { ...field, machine: `gearbox.${name}` };
  }),
  {
    ...ratio('primary', 'Primary drive', 'Engine to gearbox; 1 or empty where there is none.'),
    machine: 'drive.primary',
  },
  {
    ...ratio(
      'final',
      'Final drive',
      'A ratio or tooth counts, such as 34/15; empty where the sprockets below say it.',
    ),
    machine: 'drive.final',
  },
  teeth('sprocket', 'Sprocket on the gearbox', 'drive.gearbox_sprocket', 'Gears'),
  teeth('axle', 'Sprocket on the axle', 'drive.axle_sprocket', 'Gears'),
  {
    kind: 'text',
    name: 'tyre',
    label: 'Tyre, as marked',
    group: 'Tyre',
    machine: 'tyres.rear',
    sample: '4.00-8',
    optional: true,
    ...tyre,
  },
  {
    ...circumference('circumference', 'Rolling circumference, measured', 'Tyre'),
    machine: 'tyres.rolling_circumference',
  },
];

/** The second set-up of a comparison; what is left empty is as in the first. */
export const otherSetUpFields: readonly Field[] = [
  { ...ratio('final2', 'Other final drive'), group: 'The other set-up' },
  teeth('sprocket2', 'Other sprocket on the gearbox', undefined, 'The other set-up'),
  teeth('axle2', 'Other sprocket on the axle', undefined, 'The other set-up'),
  {
    kind: 'text',
    name: 'tyre2',
    label: 'Other tyre, as marked',
    group: 'The other set-up',
    sample: '4.50-8',
    optional: true,
  },
  circumference('circumference2', 'Its rolling circumference, measured', 'The other set-up'),
];

/** A marking read into the values, so that its doubt travels like any other: `tyre` adds `diameter` and what it rolls. */
export function withTyre(values: Values, suffix = ''): { values: Values; tyre?: Tyre; wrong?: string } {
  const marking = textOf(values, `tyre${suffix}`);
  if (marking === undefined) return { values };
  const tyre = tyreOf(marking);
  if (typeof tyre === 'string') return { values, wrong: tyre };
  return { values: { ...values, [`diameter${suffix}`]: { si: tyre.diameter_m, pm: tyre.pm_m } }, tyre };
}

/** What the wheel rolls in a turn: measured, else from the marking; undefined without either. */
export function rollOf(values: Values, tyre: Tyre | undefined, suffix = ''): number | undefined {
  const measured = figureOf(values, `circumference${suffix}`);
  const diameter_m = figureOf(values, `diameter${suffix}`);
  return measured ?? (tyre && diameter_m !== undefined ? nominalRoll({ ...tyre, diameter_m }) : undefined);
}

/** Turns of the gearbox's output for one of the wheel, by ratio or by sprockets; 1 without either. */
export function finalOf(values: Values, suffix = ''): number {
  const get = (name: string) => figureOf(values, name + suffix) ?? figureOf(values, name);
  const other =
    suffix && (figureOf(values, `sprocket${suffix}`) ?? figureOf(values, `axle${suffix}`)) !== undefined;
  const [driving, driven] = [get('sprocket'), get('axle')];
  const stated = other ? undefined : get('final');
  return stated ?? (driving && driven ? driven / driving : 1);
}

export interface Gear {
  name: string;
  /** Turns of the engine for one of the wheel. */
  overall: number;
}

/** The gears that have a ratio, lowest speed first; without any, the drive itself is the one gear. */
export function gearsOf(values: Values, suffix = ''): Gear[] {
  const rest = (figureOf(values, 'primary') ?? 1) * finalOf(values, suffix);
  const gears = GEARS.flatMap((name) => {
    const i = figureOf(values, name);
    return i === undefined ? [] : [{ name, overall: i * rest }];
  });
  return gears.length ? gears.sort((a, b) => b.overall - a.overall) : [{ name: 'direct', overall: rest }];
}

/** Sentences about gears and tyre that are missing or contradict each other, by field. */
export function driveLineFaults(values: Values, tyre: Tyre | undefined): Record<string, string | false> {
  const get = (name: string) => figureOf(values, name);
  const [driving, driven, stated] = [get('sprocket'), get('axle'), get('final')];
  const sprockets = driving && driven ? driven / driving : undefined;
  const one = (a: string, b: string) => get(a) !== undefined && get(b) === undefined;
  return {
    tyre:
      tyre === undefined &&
      get('circumference') === undefined &&
      'A tyre marking such as 4.00-8 is needed, or what the wheel rolls in a turn.',
    axle: one('sprocket', 'axle') && 'The teeth of the sprocket on the axle are needed as well.',
    sprocket: one('axle', 'sprocket') && 'The teeth of the sprocket on the gearbox are needed as well.',
    final:
      stated !== undefined &&
      sprockets !== undefined &&
      Math.abs(stated / sprockets - 1) > 0.01 &&
      `The sprockets give ${sprockets.toFixed(3)}:1, which is not this ratio: leave one of the two empty.`,
  };
}
