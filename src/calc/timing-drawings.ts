import { hole, type SaidChart, type SaidPicture } from './says.ts';
import { circle, lettering, type Point, path, polyline, r1, solid } from './svg.ts';

const deg = hole('angle', 'deg', 3, 'plain');
const mm = hole('length', 'mm', 3, 'plain');

/** Middle of the crank, radius of the rim, half the bore. */
const [CX, CY, RIM, WALL] = [86, 222, 66, 34];

/** A place on a circle about the crank; the angle counts clockwise from the top. */
const on = (radius: number, at: number): Point => [CX + radius * Math.sin(at), CY - radius * Math.cos(at)];

const [ax, ay] = on(50, 3);
const [fx, fy] = on(RIM - 15, 0.17);
const beside = (y: number | string, text: string) => lettering(168, y, text);

/**
 * Bore, piston, rod, crank and rim seen so that the crank turns clockwise, the crank at the angle of the answer.
 * Rod and crank keep their true ratio; an offset is drawn larger than it is.
 */
const crank: SaidPicture = {
  name: 'crank',
  height: 300,
  title: 'Crank, piston and rim at the firing point',
  desc: `Crank turning clockwise, ${deg('advance')} before top dead centre; the crown stands ${mm('travel')} below its highest place. The thrust side is on the left.`,
  parts: [
    path(`M${CX - WALL} 16V128M${CX + WALL} 16V128`, 'stroke-width="2"'),
    path(`M${CX - WALL} {top}H164M${CX + WALL} {crown}H164`, 'stroke-dasharray="3 3"'),
    path(`M${CX - WALL + 3} {crown}h62v44h-62z`, 'stroke-width="1.6"'),
    path(`M${CX} 8V294`, 'stroke-opacity=".45" stroke-dasharray="10 3 2 3"'),
    circle('{gx}', '{gy}', 4),
    circle(CX, CY, RIM),
    path(`M{gx} {gy}L{px} {py}L${CX} ${CY}`, 'stroke-width="3.5" stroke-linejoin="round"'),
    circle('{px}', '{py}', 4, 'currentColor'),
    circle(CX, CY, 3, 'currentColor'),
    solid(`M${CX} ${CY - RIM}l-5 -11h10z`),
    path('{mark}', 'stroke-width="2"'),
    lettering('{tx}', '{ty}', 'T', 'middle'),
    polyline([on(RIM - 8, 0), on(RIM, 0)], 'stroke-width="2"'),
    lettering(fx, fy + 4, 'F', 'middle'),
    path(`M${on(50, 1.9).map(r1).join(' ')}A50 50 0 0 1 ${r1(ax)} ${r1(ay)}`),
    solid(`M${r1(ax - 4)} ${r1(ay)}l8 -5l1 8z`),
    lettering(4, 70, 'thrust'),
    lettering(4, 84, 'side'),
    beside('{topWords}', 'crown at top dead centre'),
    beside('{nowWords}', `now ${mm('travel')} below it`),
    beside(92, `{?e}pin offset ${mm('offset')} to the`),
    beside(106, '{?e}{?toThrust}thrust side'),
    beside(106, '{?e}{?!toThrust}side away from thrust'),
    beside(168, `T comes ${deg('advance')} later`),
    beside(182, `${mm('arc')} along the rim`),
    beside(208, 'F under the pointer: fire'),
    beside(222, 'T top dead centre'),
    beside(274, 'running direction'),
  ],
};

/** Travel against degrees: flat near the top, which is why the last degrees cannot be set by travel. */
const travel: SaidChart = {
  name: 'travel',
  title: 'Piston travel before top dead centre',
  desc: `At ${deg('advance')} the piston is ${mm('travel')} below the top. The curve is flat near the top.`,
  x: 'degrees before top dead centre',
  y: 'mm below the top',
  mark: `${deg('advance')}, ${mm('travel')}`,
};

/** The advance curve as drawn through the rows given. */
const curve: SaidChart = {
  name: 'curve',
  title: 'Advance against engine speed',
  desc: 'Straight lines through {rows}.',
  x: 'rev/min',
  y: 'degrees before top dead centre',
};

export const timingDrawings = [crank, travel, curve];
