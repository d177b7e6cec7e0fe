/** The van from the side. One unit is about 2.2 mm. */
import { HEAVY, Sheet, THIN } from '../pen.ts';
import { ground, wheel } from '../shapes.ts';

/** The van from its left side, front to the left; used again where it stands on its stands. */
export function vanSide(s: Sheet, groundY: number): void {
  const y = (up: number) => groundY - up;
  const front = 330;
  const rear = 1181;
  const r = 93;
  // Box body: ash frame, plywood, three battens, drip rail.
  s.path(
    `M700 ${y(120)}V${y(772)}Q700 ${y(784)} 714 ${y(784)}H1452Q1470 ${y(784)} 1470 ${y(766)}V${y(176)}H1300A122 122 0 0 0 1062 ${y(176)}H700Z`,
    { w: HEAVY, fill: 'paper' },
  );
  s.line(700, y(752), 1470, y(752), THIN).line(700, y(744), 1470, y(744), THIN);
  for (const x of [892, 1084, 1276])
    s.line(x - 4, y(744), x - 4, y(232), THIN).line(x + 4, y(744), x + 4, y(232), THIN);
  s.line(700, y(232), 1470, y(232), THIN).line(700, y(222), 1470, y(222), THIN);
  s.line(1448, y(744), 1448, y(232), THIN);
  // Cab.
  s.path(
    `M246 ${y(196)}C226 ${y(300)} 232 ${y(400)} 318 ${y(446)}L372 ${y(462)}L452 ${y(718)}Q460 ${y(742)} 488 ${y(746)}L700 ${y(756)}V${y(120)}H470A140 140 0 0 0 196 ${y(132)}`,
    { w: HEAVY, fill: 'paper' },
  );
  s.path(`M196 ${y(132)}Q192 ${y(196)} 246 ${y(196)}`, { w: HEAVY });
  s.path(`M246 ${y(196)}Q330 ${y(250)} 424 ${y(196)}Q462 ${y(170)} 470 ${y(120)}`, { w: THIN });
  // Windscreen edge, door, window, handle, hinges.
  s.path(`M384 ${y(468)}L458 ${y(706)}`, { w: THIN });
  s.path(`M446 ${y(216)}L446 ${y(470)}L508 ${y(706)}H668V${y(160)}H478Q470 ${y(196)} 446 ${y(216)}Z`);
  s.path(`M466 ${y(476)}L520 ${y(686)}H650V${y(476)}Z`);
  s.path(`M476 ${y(486)}L527 ${y(676)}H640V${y(486)}Z`, { w: THIN });
  s.line(560, y(486), 588, y(676), 1.4).line(582, y(486), 610, y(676), 1.4);
  s.box(606, y(430), 48, 12, { r: 5, fill: 'paper' });
  s.box(440, y(420), 14, 30, { fill: 'paper', w: THIN }).box(440, y(270), 14, 30, { fill: 'paper', w: THIN });
  // Headlamp in the nose, side lamp, air louvres of the engine bay.
  s.path(`M252 ${y(372)}Q214 ${y(366)} 214 ${y(338)}Q214 ${y(310)} 246 ${y(306)}Z`, { fill: 'paper' });
  s.line(240, y(370), 236, y(307), THIN);
  s.circle(368, y(420), 13, { fill: 'paper' }).circle(368, y(420), 6, { w: THIN });
  for (let i = 0; i < 7; i += 1) s.box(730 + i * 20, y(216), 9, 70, { r: 4, w: THIN, fill: 'paper' });
  // Tail lamp, bumper bar, exhaust.
  s.box(1470, y(330), 14, 34, { w: THIN, fill: 'paper', r: 4 });
  s.path(
    `M760 ${y(112)}H1010Q1036 ${y(112)} 1040 ${y(104)}H1370V${y(90)}H1040Q1030 ${y(80)} 1010 ${y(80)}H760Q740 ${y(96)} 760 ${y(112)}Z`,
    { fill: 'paper' },
  );
  // Frame edge.
  s.line(470, y(132), 1060, y(132), THIN);
  wheel(s, rear, y(r), r);
  wheel(s, front, y(r), r);
  // Leading arm: from the king pin's foot forward and down to the stub axle.
  s.path(
    `M398 ${y(196)}Q404 ${y(176)} 392 ${y(168)}L346 ${y(84)}Q330 ${y(74)} 318 ${y(90)}L366 ${y(184)}Q378 ${y(204)} 398 ${y(196)}Z`,
    { fill: 'paper' },
  );
  s.circle(front, y(r), 15, { fill: 'paper' }).circle(front, y(r), 6, { w: THIN });
}

export function vanFromTheSide(): Sheet {
  const s = new Sheet('landscape');
  const floor = 950;
  ground(s, 60, 1560, floor);
  vanSide(s, floor);
  s.centre(330, floor - 230, 330, floor + 116).centre(1181, floor - 230, 1181, floor + 116);
  s.dim('A', [330, floor + 24], [1181, floor + 24], 70);
  s.dim('B', [204, floor + 24], [1484, floor + 24], 170);
  s.dim('C', [1484, floor - 784], [1484, floor], -66);
  s.leader('D', [286, floor - 40], [130, floor - 190]);
  return s;
}
