/** The van from its front left corner. */
import { along, HEAVY, MEDIUM, type Point, Sheet, THIN } from '../pen.ts';

/** Length runs right and up a little, width left and up; millimetres of the van. */
export function threeQuarter(): Sheet {
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
