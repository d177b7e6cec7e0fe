import { driveLineWrong, eachGear } from './drive-line-says.ts';
import { hole, lines, type Says } from './says.ts';

const percent = hole('slope', '%', 2);
const kmh = hole('speed', 'km/h');
const bareKmh = hole('speed', 'km/h', 3, 'bare');

export const wrong = {
  ...driveLineWrong,
  mass: 'The mass is needed, with driver and load.',
  oneRow: 'Two rows are needed at least: a speed and what the engine gives at it.',
  twice: 'Each engine speed may stand in one row only.',
  to: 'The upper speed must be above the lower.',
};

export const hillsSays: Says = {
  wrong,
  notes: [
    ...eachGear(
      (g) =>
        `On slopes of more than ${percent(`changeSlope_${g}`)} {gear_${g}} is the faster gear, on less {gear_${g + 1}}; it turns at ${kmh(`change_${g}`)}.`,
    ),
    '{?never}The upper speed is never reached on that slope, so there is no time to it.',
    '{?!end_0}For speeds and slopes give the engine, the gears and the tyre as well.',
    '{?end_0}Full throttle; torque straight between the rows and in proportion to air density; below the first row the clutch slips. Grip of the tyres is not looked at.',
  ],
  lines: lines(
    {
      F_r: ['rollingForce', 'force', 'N'],
      F_d: ['dragForce', 'force', 'N'],
      F_s: ['climbForce', 'force', 'N'],
      β: ['steepness', 'angle', 'deg', 3],
      m: ['mass', 'mass', 'kg'],
      g: [9.80665, 'acceleration', 'm/s2'],
      v: ['road', 'speed', 'm/s'],
      w: ['wind', 'speed', 'm/s', 3],
      c: ['rolling', 'count', 'n', 3],
      A: ['drag', 'area', 'm2', 3],
      ρ: ['density', 'density', 'kg/m3'],
      P: ['wheelPower', 'power', 'kW'],
      '#s': ['slope', 'slope', '%', 2],
    },
    [
      ['Slope as an angle', 'β = arctan(#s)', '{?steepness}'],
      ['Rolling resistance', 'F_r = m g c cos(β)', '{?steepness}'],
      ['Rolling resistance', 'F_r = m g c', '{?!steepness}'],
      ['Drag of the air', 'F_d = 1/2 ρ A (v + w)^2', '{?blows}{?wind}'],
      ['Drag of the air', 'F_d = 1/2 ρ A v^2', '{?blows}{?!wind}'],
      ['Climbing', 'F_s = m g sin(β)', '{?steepness}'],
      ['Power at the wheels', 'P = (F_r + F_d + F_s) v', '{?steepness}'],
      ['Power at the wheels', 'P = (F_r + F_d) v', '{?!steepness}'],
    ],
  ),
  tables: [
    {
      name: 'slopes',
      caption: 'Highest steady speed, km/h (— cannot hold it; * the engine ends there, not the hill)',
      columns: [
        ['Slope', percent('steep_#'), 'words'],
        ...eachGear((g) => [`{gear_${g}}`, `${bareKmh(`top_${g}_#`)}{ends_${g}_#}`] as const),
        ['fastest in', ['{fastest_#}', '{?!fastest_#}no gear']],
      ],
    },
    {
      name: 'gears',
      caption: 'Each gear',
      columns: [
        ['Gear', '{gear_#}', 'words'],
        ['Steepest slope held', percent('steepest_#')],
        ['Next gear pulls more above, km/h', bareKmh('change_#')],
        ['and is faster on less than', percent('changeSlope_#')],
      ],
    },
  ],
  drawings: [
    {
      name: 'pull',
      title: 'Driving force in each gear against the resistance of each slope',
      desc: 'Full lines are the gears, numbered; dashed lines are what each slope takes. Where they cross, the speed holds.',
      x: 'km/h',
      y: 'N at the wheels',
      curve: percent('steep'),
    },
  ],
};
