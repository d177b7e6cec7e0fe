/** The van whole: side, three-quarter view, frame from above. One unit is about 2.2 mm. */
import { along, box, HEAVY, MEDIUM, type Point, polar, Sheet, THIN } from '../pen.ts';
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

function vanFromTheSide(): Sheet {
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

/** Length runs right and up a little, width left and up; millimetres of the van. */
function threeQuarter(): Sheet {
  const s = new Sheet('landscape');
  // x back along the van, y across to the far side, z up; seen from the front left corner.
  const o: Point = [520, 1078];
  const at = (x: number, y: number, z: number): Point => [
    o[0] + x * 0.3 - y * 0.264,
    o[1] - x * 0.1 - y * 0.11 - z * 0.386,
  ];
  const face = (points: [number, number, number][], w = MEDIUM, fill: string = 'paper') =>
    s.poly(
      points.map(([x, y, z]) => at(x, y, z)),
      { w, fill },
    );
  const curve = (points: [number, number, number][], w = THIN) =>
    s.path(along(points.map(([x, y, z]) => at(x, y, z))), { w });
  // A wheel lies in a plane of constant y.
  const disc = (x: number, y: number, z: number, r: number): Point[] =>
    Array.from({ length: 48 }, (_, i) =>
      at(x + r * Math.cos((i * Math.PI) / 24), y, z + r * Math.sin((i * Math.PI) / 24)),
    );
  const tyre = (x: number, y: number, width: number) => {
    const near = disc(x, y, 203, 203);
    const far = disc(x, y + width, 203, 203);
    s.poly(far, { w: HEAVY, fill: 'paper' });
    for (let i = 0; i < 48; i += 1) {
      const [a, b] = [near[i], far[i]];
      if (a && b) s.line(a[0], a[1], b[0], b[1], 1.4);
    }
    s.poly(near, { w: HEAVY, fill: 'paper' })
      .poly(disc(x, y, 203, 186), { w: THIN })
      .poly(disc(x, y, 203, 112))
      .poly(disc(x, y, 203, 40));
    for (let i = 0; i < 4; i += 1)
      s.poly(disc(x + 74 * Math.cos(i * 1.571 + 0.785), y, 203 + 74 * Math.sin(i * 1.571 + 0.785), 11), {
        w: THIN,
      });
  };
  // Shadow strokes on the ground.
  for (let i = 0; i < 30; i += 1) {
    const a = at(120 + i * 90, -40, 0);
    const b = at(60 + i * 90, -170, 0);
    s.line(a[0], a[1], b[0], b[1], 1.4);
  }
  tyre(250, 560, 105);
  // Under-frame in shade, then body.
  const W = 1220;
  face(
    [
      [460, 0, 250],
      [2560, 0, 250],
      [2560, 0, 190],
      [460, 0, 190],
    ],
    THIN,
  );
  tyre(2080, 20, 105);
  // Box: front above the cab, near side with arch, roof.
  const H = 1700;
  const arch: [number, number, number][] = Array.from({ length: 17 }, (_, i) => [
    2080 + 262 * Math.cos(Math.PI - (i * Math.PI) / 16),
    0,
    250 + 235 * Math.sin((i * Math.PI) / 16),
  ]);
  face(
    [
      [1000, 0, H],
      [2620, 0, H],
      [2620, W, H],
      [1000, W, H],
    ],
    HEAVY,
  );
  face(
    [
      [1000, 0, 250],
      [1000, 0, H],
      [1000, W, H],
      [1000, W, 250],
    ],
    HEAVY,
  );
  const near = [[1000, 0, 250], ...arch, [2620, 0, 250], [2620, 0, H], [1000, 0, H]] as [
    number,
    number,
    number,
  ][];
  s.poly(
    near.map((p) => at(...p)),
    { w: HEAVY, fill: 'paper' },
  );
  // The wheel shows through the arch.
  {
    const clip = along([...arch.map((p) => at(...p)), at(2345, 0, 0), at(1800, 0, -10)], true);
    s.within(clip, () => tyre(2080, 20, 105));
    const below = along([at(1800, 0, 252), at(2345, 0, 252), at(2345, 0, -40), at(1800, 0, -40)], true);
    s.within(below, () => tyre(2080, 20, 105));
    s.path(along(arch.map((p) => at(...p))), { w: HEAVY });
  }
  for (const z of [1640, 1622, 480, 460]) {
    if (z > 1000)
      curve([
        [1000, 0, z],
        [2620, 0, z],
      ]);
    else
      curve([
        [1000, 0, z],
        [1790, 0, z],
      ]).path(along([at(2370, 0, z), at(2620, 0, z)]), { w: THIN });
  }
  for (const x of [1400, 1800, 2210]) {
    curve([
      [x, 0, 1622],
      [x, 0, x === 1400 ? 480 : 500],
    ]);
    curve([
      [x + 18, 0, 1622],
      [x + 18, 0, x === 1400 ? 480 : 500],
    ]);
  }
  for (let i = 0; i < 6; i += 1)
    face(
      [
        [1050 + i * 44, 0, 440],
        [1072 + i * 44, 0, 440],
        [1072 + i * 44, 0, 300],
        [1050 + i * 44, 0, 300],
      ],
      THIN,
    );
  // Cab, narrower than the box: near side, front, windscreen, roof.
  const c0 = 70;
  const c1 = 1150;
  const side: [number, number, number][] = [
    [1000, c0, 250],
    [470, c0, 250],
    [440, c0, 400],
    [330, c0, 470],
    [180, c0, 480],
    [70, c0, 440],
    [40, c0, 620],
    [70, c0, 850],
    [230, c0, 980],
    [420, c0, 1560],
    [520, c0, 1620],
    [1000, c0, 1640],
  ];
  const front: [number, number, number][] = [
    [40, c0, 620],
    [70, c0, 440],
    [-40, c0 + 180, 400],
    [-40, c1 - 180, 400],
    [70, c1, 440],
    [40, c1, 620],
    [70, c1, 850],
    [-30, c1 - 180, 880],
    [-30, c0 + 180, 880],
    [70, c0, 850],
  ];
  face(
    [
      [420, c0, 1560],
      [520, c0, 1620],
      [1000, c0, 1640],
      [1000, c1, 1640],
      [520, c1, 1620],
      [420, c1, 1560],
      [370, c1 - 150, 1570],
      [370, c0 + 150, 1570],
    ],
    HEAVY,
  );
  face(front, HEAVY);
  face(
    [
      [70, c0, 850],
      [-30, c0 + 180, 880],
      [-30, c1 - 180, 880],
      [70, c1, 850],
      [230, c1, 980],
      [150, c1 - 160, 1000],
      [150, c0 + 160, 1000],
      [230, c0, 980],
    ],
    MEDIUM,
  );
  face(
    [
      [230, c0, 980],
      [150, c0 + 160, 1000],
      [150, c1 - 160, 1000],
      [230, c1, 980],
      [420, c1, 1560],
      [370, c1 - 150, 1570],
      [370, c0 + 150, 1570],
      [420, c0, 1560],
    ],
    HEAVY,
  );
  // Split windscreen.
  const glass = (y0: number, y1: number) =>
    face(
      [
        [178, y0, 1040],
        [178, y1, 1040],
        [362, y1, 1520],
        [362, y0, 1520],
      ],
      MEDIUM,
    );
  glass(c0 + 190, 585);
  glass(635, c1 - 190);
  curve(
    [
      [200, 300, 1060],
      [330, 380, 1480],
    ],
    1.4,
  );
  curve(
    [
      [200, 340, 1060],
      [330, 420, 1480],
    ],
    1.4,
  );
  curve(
    [
      [200, 760, 1060],
      [330, 840, 1480],
    ],
    1.4,
  );
  // Wipers.
  curve(
    [
      [165, 470, 1020],
      [300, 330, 1330],
    ],
    MEDIUM,
  );
  curve(
    [
      [165, 890, 1020],
      [300, 750, 1330],
    ],
    MEDIUM,
  );
  face(side, HEAVY);
  // Door, window, handle.
  face(
    [
      [470, c0, 400],
      [470, c0, 1000],
      [590, c0, 1540],
      [930, c0, 1560],
      [930, c0, 300],
      [500, c0, 300],
    ],
    MEDIUM,
  );
  face(
    [
      [510, c0, 1010],
      [618, c0, 1490],
      [890, c0, 1505],
      [890, c0, 1010],
    ],
    MEDIUM,
  );
  curve(
    [
      [640, c0, 1020],
      [720, c0, 1480],
    ],
    1.4,
  );
  curve(
    [
      [690, c0, 1020],
      [770, c0, 1480],
    ],
    1.4,
  );
  face(
    [
      [800, c0, 915],
      [900, c0, 915],
      [900, c0, 885],
      [800, c0, 885],
    ],
    MEDIUM,
  );
  // Headlamp, number board left empty, grille slots.
  const lamp = (r: number, x: number): Point[] =>
    Array.from({ length: 40 }, (_, i) =>
      at(x, 610 + r * Math.cos((i * Math.PI) / 20), 700 + r * Math.sin((i * Math.PI) / 20)),
    );
  s.poly(lamp(135, -40), { w: MEDIUM, fill: 'paper' })
    .poly(lamp(130, -80), { w: HEAVY, fill: 'paper' })
    .poly(lamp(108, -84), { w: THIN });
  const [lx, ly] = at(-84, 610, 700);
  s.line(lx - 18, ly - 24, lx + 2, ly - 34, 1.6).line(lx - 20, ly - 10, lx + 10, ly - 26, 1.6);
  face(
    [
      [-44, 470, 520],
      [-44, 750, 520],
      [-44, 750, 430],
      [-44, 470, 430],
    ],
    MEDIUM,
  );
  for (let i = 0; i < 3; i += 1) {
    curve(
      [
        [-20, 300, 560 + i * 40],
        [-38, 410, 558 + i * 40],
      ],
      MEDIUM,
    );
    curve(
      [
        [-38, 810, 558 + i * 40],
        [-20, 920, 560 + i * 40],
      ],
      MEDIUM,
    );
  }
  return s;
}

function chassisPlan(): Sheet {
  const s = new Sheet('landscape');
  const mid = 600;
  s.centre(60, mid, 1540, mid);
  // Side members, narrowing to the steering head.
  for (const way of [-1, 1]) {
    const p = (x: number, half: number): Point => [x, mid + way * half];
    s.poly(
      [p(420, 26), p(520, 44), p(640, 170), p(1500, 170), p(1500, 196), p(628, 196), p(500, 70), p(420, 50)],
      { fill: 'paper', w: MEDIUM },
    );
  }
  for (const x of [650, 1010, 1330, 1478]) s.box(x, mid - 172, 24, 344, { fill: 'paper', w: MEDIUM });
  // Steering head and front wheel (tyre from above).
  s.box(230, mid - 48, 186, 96, { r: 44, fill: 'paper', w: HEAVY });
  for (let i = 0; i < 9; i += 1) s.line(250 + i * 18, mid - 46, 246 + i * 18, mid + 46, 1.4);
  s.line(238, mid - 16, 408, mid - 16, THIN).line(238, mid + 16, 408, mid + 16, THIN);
  s.path(
    `M323 ${mid + 48}V${mid + 78}H398Q440 ${mid + 70} 440 ${mid + 26}H418Q416 ${mid + 58} 386 ${mid + 58}H343V${mid + 48}`,
    { fill: 'paper', w: MEDIUM },
  );
  s.circle(432, mid, 38, { fill: 'paper', w: HEAVY }).circle(432, mid, 17).circle(432, mid, 7, { w: THIN });
  s.path(`M420 ${mid - 36}L404 ${mid - 130}A12 12 0 0 1 426 ${mid - 134}L444 ${mid - 36}`, { fill: 'paper' });
  s.circle(415, mid - 131, 8, { w: THIN });
  s.path(`M418 ${mid - 131}L640 ${mid - 250}`, { w: MEDIUM }).path(`M414 ${mid - 141}L636 ${mid - 260}`, {
    w: MEDIUM,
  });
  // Radiator with fins.
  s.box(690, mid - 136, 44, 272, { fill: 'paper', w: HEAVY });
  for (let y = mid - 126; y < mid + 132; y += 12) s.line(696, y, 728, y, 1.4);
  // Engine: crankcase, two barrels across the frame, flywheel on the right-hand side (below), gearbox behind.
  s.path(box(780, mid - 120, 190, 250, 18), { fill: 'paper', w: HEAVY });
  for (const y of [mid - 56, mid + 62]) {
    s.circle(872, y, 56, { fill: 'paper', w: MEDIUM }).circle(872, y, 42, { w: THIN }).circle(872, y, 11);
    for (let i = 0; i < 6; i += 1) {
      const [bx, by] = polar(872, y, 49, 30 + i * 60);
      s.circle(bx, by, 5, { w: THIN });
    }
  }
  s.box(800, mid + 130, 144, 34, { fill: 'paper', w: MEDIUM, r: 5 }).line(
    800,
    mid + 147,
    944,
    mid + 147,
    THIN,
  );
  s.path(box(970, mid - 96, 150, 176, 14), { fill: 'paper', w: HEAVY });
  s.line(970, mid - 60, 1120, mid - 60, THIN).line(970, mid + 44, 1120, mid + 44, THIN);
  for (const [x, y] of [
    [984, -82],
    [1106, -82],
    [984, 66],
    [1106, 66],
  ] as const)
    s.circle(x, mid + y, 6, { w: THIN });
  // Tank above, chain line.
  s.path(box(752, mid - 168, 380, 150, 40), { w: THIN, dash: '30 10 6 10' });
  // Gearbox sprocket, chain, axle.
  s.box(1046, mid - 128, 64, 20, { fill: 'paper' });
  s.box(1214, mid - 330, 30, 690, { fill: 'paper', w: HEAVY });
  s.box(1146, mid - 128, 166, 20, { fill: 'paper', w: MEDIUM });
  s.box(1060, mid - 124, 238, 12, { fill: 'paper', w: THIN });
  for (let i = 0; i < 17; i += 1) s.line(1066 + i * 14, mid - 124, 1066 + i * 14, mid - 112, THIN);
  for (const y of [mid - 183, mid + 183]) {
    s.box(1186, y - 24, 86, 48, { fill: 'paper', w: HEAVY, r: 6 });
    s.circle(1197, y, 6, { w: THIN }).circle(1261, y, 6, { w: THIN });
  }
  for (const way of [-1, 1]) {
    const y = mid + way * 330;
    s.box(1136, y - 48, 186, 96, { r: 44, fill: 'paper', w: HEAVY });
    for (let i = 0; i < 9; i += 1) s.line(1156 + i * 18, y - 46, 1152 + i * 18, y + 46, 1.4);
    s.line(1144, y - 16, 1314, y - 16, THIN).line(1144, y + 16, 1314, y + 16, THIN);
    s.box(1206, y + (way > 0 ? -76 : 46), 46, 30, { fill: 'paper', w: MEDIUM });
  }
  // Battery.
  s.box(1370, mid + 34, 92, 122, { fill: 'paper', w: HEAVY });
  for (let i = 0; i < 6; i += 1)
    s.circle(1395 + (i % 2) * 42, mid + 62 + Math.floor(i / 2) * 34, 10, { w: THIN });
  s.leader('A', [320, mid - 30], [220, mid - 190]);
  s.leader('B', [712, mid + 110], [640, mid + 330]);
  s.leader('C', [850, mid + 100], [800, mid + 330]);
  s.leader('D', [1040, mid + 30], [990, mid + 330]);
  s.leader('E', [1176, mid - 118], [1040, mid - 330]);
  s.leader('F', [1229, mid + 90], [1110, mid + 250]);
  s.leader('G', [1440, mid + 140], [1500, mid + 320]);
  s.leader('H', [800, mid - 150], [740, mid - 330]);
  s.arrow(180, mid + 330, 70, mid + 330, MEDIUM);
  return s;
}

export const whatCameHome = {
  'van-side': vanFromTheSide,
  'van-three-quarter': threeQuarter,
  'chassis-plan': chassisPlan,
};
