import { hole, lines, type Says } from './says.ts';
import { circle, lettering, type Point, path, polyline, r1 } from './svg.ts';

const mm = hole('length', 'mm');
const deg = hole('angle', 'deg', 4);
const plain = hole('angle', 'deg', 4, 'plain');

export const wrong = {
  stroke: 'The stroke is needed: twice the crank radius.',
  rod: 'The rod must be longer than half the stroke.',
  offset: 'The offset must be smaller than the rod less half the stroke.',
  skirt: 'The skirt does not reach the port: it would never shut.',
  above: 'The port must lie below the crown at top dead centre.',
  skirtOpen: `The skirt would leave it open always: the piston travels only ${mm('whole')}.`,
  never: `The piston travels only ${mm('whole')}: it would never open this port.`,
  bottom: `Bottom dead centre lies ${deg('bottom')} from the top.`,
  blowdown: 'The transfer would open before the exhaust: fresh mixture would meet full pressure.',
  discShut: 'The disc would never shut.',
  discPort: 'Wider than the inlet is open: the disc would have no cut-out.',
  none: 'Give at least one port.',
};

/** One port's lines; without pin offset both sides of the top are alike. */
const port = (name: string, letter: string, from: string, opening: string) =>
  lines(
    {
      r: ['radius', 'length', 'mm'],
      l: ['rod', 'length', 'mm'],
      [`d_${letter}`]: [`${name}Height`, 'length', 'mm', 5],
      [`x_${letter}`]: [`${name}Travel`, 'length', 'mm'],
      [`α_${letter}`]: [`${name}Opens`, 'angle', 'deg'],
      [`D_${letter}`]: [`${name}Duration`, 'angle', 'deg'],
    },
    [
      [`Pin above the crank’s axis, ${name}`, `d_${letter} = l + r - x_${letter}`, '{?!offset}'],
      [
        `Opens ${from} the top`,
        `α_${letter} = arccos((r^2 + d_${letter}^2 - l^2) / (2 r d_${letter}))`,
        '{?!offset}',
      ],
      ['Open for', `D_${letter} = ${opening}`, `{?!offset}{?${name}Height}`],
    ],
  );

const [CX, CY] = [170, 152];
const on = (radius: number, at: number): Point => [CX + radius * Math.sin(at), CY - radius * Math.cos(at)];

const at = (radius: number, angle: number) => on(radius, angle).map(r1).join(' ');

/** A port's opening: a thick arc with a stroke across each end, the angle where it opens, and how long it is open. */
const opening = [
  path('M{x} {y}A{radius} {radius} 0 {large} 1 {toX} {toY}', 'stroke-width="4" stroke-dasharray="{dash}"'),
  path('{ends}'),
  lettering('{wordX}', '{wordY}', plain('opens'), '{anchor}'),
  lettering(CX, '{line}', `{port} ${plain('long')}`, 'middle'),
];

export const portTimingSays: Says = {
  wrong,
  lists: {
    open: `{port} ${plain('long')}`,
  },
  notes: [
    `0.1 mm higher opens the exhaust ${plain('perTenth')} longer: a gasket’s thickness counts.`,
    `The charge is trapped over ${mm('trappedStroke')} of the stroke: use it for the trapped compression ratio.`,
    '{?offset}With the pin offset, ports open and shut at unlike angles from the top.',
    `A disc cut-out of ${deg('discCut')} sweeps over the port’s own width, and so opens for ${deg('inletDuration')}.`,
    '{?inletBy=reed}Reeds open by pressure: they have no timing of their own to set.',
    'Measure to the top edge of the window itself, not to its chamfer; feel for it with a thin strip.',
  ],
  lines: [
    ...port('exhaust', 'E', 'after', '360° - 2 α_E'),
    ...port('transfer', 'T', 'after', '360° - 2 α_T'),
    ...port('inlet', 'I', 'before', '2 α_I'),
    ...lines(
      {
        B: ['blowdown', 'angle', 'deg'],
        α_T: ['transferOpens', 'angle', 'deg'],
        α_E: ['exhaustOpens', 'angle', 'deg'],
      },
      [['Blowdown', 'B = α_T - α_E', '{?!offset}']],
    ),
  ],
  drawings: [
    {
      name: 'circle',
      height: 300,
      title: 'When each port is open',
      desc: 'Clockwise from top dead centre: {open}.',
      parts: [
        circle(CX, CY, 112),
        path(
          `M${CX} ${CY - 122}V${CY + 122}M${CX - 118} ${CY}H${CX + 118}`,
          'stroke-opacity=".4" stroke-dasharray="10 3 2 3"',
        ),
        lettering(CX, CY - 126, 'top dead centre', 'middle'),
        lettering(CX, CY + 134, 'bottom dead centre', 'middle'),
        // The way it turns.
        path(`M${at(54, 1.1)}A54 54 0 1 1 ${at(54, 5.2)}`, 'stroke-opacity=".7"'),
        polyline([
          [on(54, 5.2)[0] - 6, on(54, 5.2)[1] + 1],
          on(54, 5.2),
          [on(54, 5.2)[0] - 1, on(54, 5.2)[1] + 7],
        ]),
      ],
      each: opening,
    },
  ],
};
