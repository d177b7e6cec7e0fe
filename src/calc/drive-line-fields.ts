import type { Field, FigureField } from './contract.ts';
import { GEARS } from './drive-line.ts';
import type { UnitId } from './units.ts';

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
