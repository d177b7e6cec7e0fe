import { lines, type Symbols } from './says.ts';

const symbols: Symbols = {
  r: ['radius', 'length', 'mm'],
  l: ['rod', 'length', 'mm'],
  e: ['e', 'length', 'mm'],
  x: ['travel', 'length', 'mm'],
  d: ['rim', 'length', 'mm'],
  g: ['gauge', 'length', 'mm'],
  p: ['dial', 'length', 'mm'],
  s: ['arc', 'length', 'mm'],
  z: ['reading', 'length', 'mm'],
  h: ['height', 'length', 'mm', 6],
  D: ['line', 'length', 'mm', 6],
  α: ['advance', 'angle', 'deg'],
  β: ['slant', 'angle', 'deg'],
  θ: ['crank', 'angle', 'deg'],
  θ_0: ['topAngle', 'angle', 'deg'],
  φ: ['fromLine', 'angle', 'deg'],
  δ: ['lean', 'angle', 'deg'],
  τ: ['stopShift', 'angle', 'deg', 3],
  ε: ['lead', 'angle', 'deg'],
  α_1: ['reset', 'angle', 'deg'],
  n: ['dialTurns', 'count', 'n'],
  t: ['time', 'time', 'ms'],
  N: ['speed', 'rotation', 'rpm'],
};

const TOP = ['Crank at true top dead centre', 'θ_0 = arcsin(e / (r + l))'] as const;
/** The travel is worked out from the crank angle, or the angle from the travel; without pin offset in fewer steps. */
const [BY_ANGLE, BY_TRAVEL] = ['{?by=angle}', '{?by=travel}'];

/** The formulas of the answer, in the order in which they are worked. */
export const timingLines = [
  ...lines({ ...symbols, n: ['turns', 'count', 'n'] }, [
    ['Gauge travel from the dial', 'g = n p + z', '{?known=turns}'],
    ['Piston travel from the slanted gauge', 'x = g cos(β)', '{?known=turns}{?slant}'],
  ]),
  ...lines(symbols, [
    ['Degrees from the rim', 'α = (360° s) / (π d)', '{?known=arc}'],
    [...TOP, `${BY_ANGLE}{?e}`],
    ['Crank from the bore axis', 'θ = θ_0 - α', `${BY_ANGLE}{?e}`],
    ['Piston travel', 'x = √((r + l)^2 - e^2) - r cos(θ) - √(l^2 - (r sin(θ) - e)^2)', `${BY_ANGLE}{?e}`],
    ['Piston travel', 'x = r + l - r cos(α) - √(l^2 - (r sin(α))^2)', `${BY_ANGLE}{?!e}`],
    ['Height of the gudgeon pin', 'h = √((r + l)^2 - e^2) - x', `${BY_TRAVEL}{?e}`],
    ['Crank centre to gudgeon pin', 'D = √(h^2 + e^2)', `${BY_TRAVEL}{?e}`],
    ['Crank centre to gudgeon pin', 'D = r + l - x', `${BY_TRAVEL}{?!e}`],
    ['Crank from that line', 'φ = arccos((r^2 + D^2 - l^2) / (2 r D))', `${BY_TRAVEL}{?e}`],
    ['Crank from that line', 'α = arccos((r^2 + D^2 - l^2) / (2 r D))', `${BY_TRAVEL}{?!e}`],
    ['That line from the bore axis', 'δ = arctan(e / h)', `${BY_TRAVEL}{?e}`],
    [...TOP, `${BY_TRAVEL}{?e}`],
    ['Crank angle', 'α = φ + θ_0 - δ', `${BY_TRAVEL}{?e}`],
    ['Distance along the rim', 's = (π d α) / 360°', '{?!known=arc}'],
    ['Gauge travel in the slanted hole', 'g = x / cos(β)', '{?!known=turns}{?slant}'],
    ['Dial turns', 'n = g / p', '{?!known=turns}{?slant}'],
    ['Dial turns', 'n = x / p', '{?!known=turns}{?!slant}'],
    ['Time before the top', 't = α / N'],
  ]),
  ...lines(
    {
      ...symbols,
      h: ['half', 'length', 'mm'],
      g: ['marksApart', 'length', 'mm'],
      u: ['fromFirst', 'length', 'mm'],
    },
    [
      ['Half-way between the stop marks', 'h = g / 2'],
      ['True top dead centre from the mark made coming up', 'u = h + (π d τ) / 360°', '{?e}'],
      ['Setting for cylinder 1', 'α_1 = α - ε', '{?lead}{?advances}'],
    ],
  ),
];
