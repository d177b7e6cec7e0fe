/** The test lane, the cooling circuit, and the held chapter's paint. */
import { along, box, HEAVY, MEDIUM, type Point, polar, Sheet, THIN } from '../pen.ts';

/** 0.56 units a metre along, heights ten times that: one in eight draws as five in four. */
function laneProfile(): Sheet {
  const s = new Sheet('landscape');
  const base = 960;
  const metre = 0.56;
  const up = metre * 10;
  const ground: [number, number][] = [
    [0, 60],
    [200, 52],
    [420, 34],
    [560, 26],
    [640, 26],
    [760, 32],
    [900, 44],
    [1000, 54],
    [1100, 66.5],
    [1180, 76.5],
    [1300, 86],
    [1500, 95],
    [1750, 104],
    [2000, 110],
    [2350, 112],
  ];
  const at = (x: number, h: number): Point => [130 + x * metre, base - h * up];
  // Smooth curve through the heights.
  const points = ground.map(([x, h]) => at(x, h));
  let d = `M${points[0]?.join(' ')}`;
  for (let i = 0; i < points.length - 1; i += 1) {
    const p0 = points[Math.max(0, i - 1)] ?? [0, 0];
    const p1 = points[i] ?? [0, 0];
    const p2 = points[i + 1] ?? [0, 0];
    const p3 = points[Math.min(points.length - 1, i + 2)] ?? [0, 0];
    d += `C${(p1[0] + (p2[0] - p0[0]) / 6).toFixed(1)} ${(p1[1] + (p2[1] - p0[1]) / 6).toFixed(1)} ${(p2[0] - (p3[0] - p1[0]) / 6).toFixed(1)} ${(p2[1] - (p3[1] - p1[1]) / 6).toFixed(1)} ${p2[0]} ${p2[1]}`;
  }
  const end = at(2350, 112);
  s.within(`${d}V${base}H130Z`, () => {
    const a = at(1000, 0);
    const b = at(1180, 0);
    s.cut(box(a[0], 300, b[0] - a[0], base - 300), { gap: 13, w: 0 });
  });
  for (const x of [1000, 1180]) {
    const h = x === 1000 ? 54 : 76.5;
    const [px, py] = at(x, h);
    s.line(px, py, px, base, THIN);
  }
  s.path(d, { w: HEAVY });
  s.line(130, base, end[0], base, MEDIUM);
  for (let x = 0; x <= 2300; x += 100) {
    const [px] = at(x, 0);
    s.line(px, base, px, base + (x % 500 === 0 ? 30 : 16), x % 500 === 0 ? MEDIUM : THIN);
  }
  for (let h = 0; h <= 120; h += 20) s.line(114, base - h * up, 130, base - h * up, THIN);
  s.line(130, base, 130, base - 120 * up, MEDIUM);
  // Gate, bridge, barn.
  const gate = at(40, 59);
  for (let i = 0; i < 4; i += 1)
    s.line(gate[0] - 24, gate[1] - 14 - i * 14, gate[0] + 40, gate[1] - 10 - i * 14, THIN);
  s.line(gate[0] - 24, gate[1] + 4, gate[0] - 24, gate[1] - 70, HEAVY).line(
    gate[0] + 40,
    gate[1] + 4,
    gate[0] + 40,
    gate[1] - 66,
    HEAVY,
  );
  const bridge = at(600, 26);
  s.path(`M${bridge[0] - 44} ${bridge[1]}V${bridge[1] - 26}H${bridge[0] + 44}V${bridge[1]}`, {
    w: MEDIUM,
  }).path(`M${bridge[0] - 26} ${bridge[1] + 40}A26 30 0 0 1 ${bridge[0] + 26} ${bridge[1] + 40}Z`, {
    fill: 'paper',
    w: MEDIUM,
  });
  const barn = at(2300, 112);
  s.path(
    `M${barn[0] - 70} ${barn[1]}V${barn[1] - 70}L${barn[0] - 10} ${barn[1] - 120}L${barn[0] + 50} ${barn[1] - 70}V${barn[1] - 2}`,
    { fill: 'paper', w: HEAVY },
  ).box(barn[0] - 32, barn[1] - 48, 44, 46, { w: MEDIUM });
  s.letter('A', gate[0] + 10, gate[1] - 120);
  s.letter('B', bridge[0], bridge[1] - 90);
  const hill = at(1060, 62);
  s.leader('C', hill, [hill[0] - 60, hill[1] - 170]);
  s.letter('D', barn[0] - 10, barn[1] - 170);
  // The slope as a triangle: eight along, one up.
  s.poly(
    [
      [1000, 860],
      [1080, 860],
      [1080, 760],
    ],
    { w: MEDIUM },
  );
  s.letter('8', 1040, 896, 40).letter('1', 1112, 812, 40);
  return s;
}

function lanePlan(): Sheet {
  const s = new Sheet('landscape');
  const lane =
    'M300 860C180 760 210 560 330 450C430 360 520 300 640 330C780 366 800 250 940 220C1120 184 1320 260 1360 420C1400 580 1300 640 1290 740C1280 860 1160 940 1000 920C860 902 800 800 680 830C560 862 420 950 300 860Z';
  s.path(lane, { w: 46 }).path(lane, { w: 38, ink: '#fbfaf6' });
  s.path(
    'M80 560C260 600 360 560 470 560C640 560 700 660 860 640C1040 620 1080 520 1240 520C1360 520 1440 560 1540 540',
    { w: MEDIUM },
  ).path(
    'M80 578C260 618 360 578 470 578C640 578 700 678 860 658C1040 638 1080 538 1240 538C1360 538 1440 578 1540 558',
    { w: THIN },
  );
  // Bridges: parapets where the stream passes.
  for (const [x, y, deg] of [
    [256, 590, -68],
    [1352, 532, 84],
  ] as const) {
    s.placed(x, y, deg, () => {
      s.box(-50, -23, 100, 46, { fill: 'paper', w: 0 });
      s.line(-50, -25, 50, -25, HEAVY).line(-50, 25, 50, 25, HEAVY);
      s.line(-50, -25, -62, -38, HEAVY)
        .line(50, -25, 62, -38, HEAVY)
        .line(-50, 25, -62, 38, HEAVY)
        .line(50, 25, 62, 38, HEAVY);
    });
  }
  // House with its lean-to, barn, trees.
  s.box(330, 930, 130, 80, { fill: 'paper', w: HEAVY })
    .line(330, 970, 460, 970, THIN)
    .box(460, 944, 60, 66, { fill: 'paper', w: MEDIUM });
  for (let i = 0; i < 5; i += 1) s.line(466 + i * 11, 946, 466 + i * 11, 1008, 1.4);
  s.placed(1440, 300, 20, () =>
    s.box(-56, -40, 112, 80, { fill: 'paper', w: HEAVY }).line(-56, 0, 56, 0, THIN),
  );
  const tree = (x: number, y: number, r: number) => {
    const points: Point[] = Array.from({ length: 40 }, (_, i) =>
      polar(x, y, r * (1 + 0.14 * Math.sin(i * 2.4)), i * 9),
    );
    s.path(along(points, true), { w: THIN, fill: 'paper' }).circle(x, y, 4, { fill: 'ink', w: 0 });
  };
  for (const [x, y, r] of [
    [560, 460, 34],
    [620, 500, 26],
    [1040, 400, 40],
    [1110, 430, 28],
    [980, 740, 34],
    [1050, 780, 26],
    [170, 330, 40],
    [1480, 800, 44],
    [820, 1040, 34],
    [890, 1060, 24],
    [700, 180, 34],
  ] as const)
    tree(x, y, r);
  const stop = (figure: string, x: number, y: number, tx: number, ty: number) =>
    s.leader(figure, [x, y], [tx, ty]);
  s.leader('S', [360, 888], [250, 1010]);
  stop('1', 252, 540, 120, 450);
  stop('2', 640, 330, 600, 220);
  stop('3', 1040, 212, 1060, 100);
  stop('4', 1304, 690, 1430, 690);
  stop('5', 740, 822, 720, 950);
  s.turn(800, 560, 130, 200, 300, MEDIUM);
  // North point.
  s.poly(
    [
      [120, 90],
      [96, 190],
      [120, 170],
      [144, 190],
    ],
    { fill: 'paper', w: MEDIUM },
  ).poly(
    [
      [120, 90],
      [96, 190],
      [120, 170],
    ],
    { fill: 'ink', w: 0 },
  );
  return s;
}

function coolingCircuit(): Sheet {
  const s = new Sheet('landscape');
  const water = '#dfe6e8';
  // Radiator ahead (left): header, core, bottom tank; level in the header.
  const hose = (d: string) => s.path(d, { w: 64 }).path(d, { w: 54, ink: water });
  hose('M1215 380V330Q1215 274 1150 270L500 236');
  hose('M500 806H760Q860 806 900 780L1050 704');
  s.path(box(190, 150, 330, 130, 24), { fill: 'paper', w: HEAVY });
  s.within(box(190, 150, 330, 130, 24), () => s.box(190, 190, 330, 100, { fill: water, w: 0 }));
  s.path(box(190, 150, 330, 130, 24), { w: HEAVY }).line(190, 190, 520, 190, THIN);
  s.box(300, 110, 90, 40, { fill: 'paper', w: HEAVY }).box(284, 88, 122, 26, {
    fill: 'paper',
    w: HEAVY,
    r: 6,
  });
  s.box(210, 280, 290, 480, { fill: 'paper', w: HEAVY });
  for (let i = 0; i < 12; i += 1) s.box(222 + i * 24, 280, 9, 480, { fill: water, w: THIN });
  for (let i = 0; i < 29; i += 1) s.line(212, 296 + i * 16, 498, 296 + i * 16, 1.1);
  s.path(box(190, 760, 330, 90, 24), { fill: water, w: HEAVY });
  // Engine: head and barrel jackets in section.
  const x = 1040;
  s.path(`M${x} 470H${x + 360}V800H${x}Z`, { fill: water, w: 0 });
  s.path(`M${x + 10} 360H${x + 350}V450H${x + 10}Z`, { fill: water, w: 0 });
  s.cut(`M${x - 30} 470H${x + 390}V830H${x - 30}ZM${x} 480V800H${x + 360}V480Z`, { gap: 12 });
  s.cut(`M${x - 30} 330H${x + 390}V462H${x - 30}ZM${x + 10} 360V430H${x + 350}V360Z`, {
    gap: 12,
    angle: -45,
  });
  for (const cx of [x + 95, x + 265]) {
    s.cut(`M${cx - 66} 470H${cx - 46}V860H${cx - 66}Z`, { gap: 8 }).cut(
      `M${cx + 66} 470H${cx + 46}V860H${cx + 66}Z`,
      { gap: 8, angle: -45 },
    );
    s.box(cx - 46, 470, 92, 390, { fill: 'paper', w: MEDIUM });
    s.path(`M${cx - 44} 620V560H${cx + 44}V700H${cx - 44}Z`, { fill: 'paper', w: MEDIUM }).circle(
      cx,
      650,
      16,
      { w: THIN },
    );
  }
  for (const gx of [x + 14, x + 170, x + 326]) s.box(gx, 426, 22, 60, { fill: water, w: THIN });
  s.path(`M${x - 70} 860H${x + 430}L${x + 450} 1000H${x - 90}Z`, { fill: 'paper', w: HEAVY });
  // Clips and stubs of the hoses; the upper one rises all the way.
  s.box(1180, 300, 70, 34, { fill: 'paper', w: MEDIUM });
  for (const [hx, hy, deg] of [
    [566, 240, 3],
    [560, 806, 0],
    [974, 742, -27],
  ] as const)
    s.placed(hx, hy, deg, () =>
      s.box(-14, -40, 28, 80, { fill: 'paper', w: MEDIUM }).box(-8, -56, 16, 16, { fill: 'paper', w: THIN }),
    );
  s.arrow(980, 261, 800, 251, MEDIUM).arrow(640, 806, 780, 806, MEDIUM).arrow(355, 400, 355, 690, MEDIUM);
  s.line(150, 216, 560, 216, THIN, '24 8 6 8');
  s.leader('A', [1100, 266], [1060, 120]);
  s.leader('B', [470, 170], [620, 100]);
  s.leader('C', [440, 560], [640, 560]);
  s.leader('D', [840, 800], [800, 950]);
  s.leader('E', [160, 216], [90, 350]);
  return s;
}

function paintEdge(): Sheet {
  const s = new Sheet('landscape');
  const y = 760;
  s.cut(`M90 ${y}H1510V1000H90Z`, { gap: 18, w: HEAVY });
  // Each coat feathered out, thickest at the left.
  const coat = (
    lower: (x: number) => number,
    upper: (x: number) => number,
    from: number,
    to: number,
    fill: string,
  ) => {
    const a: Point[] = [];
    for (let x = from; x <= to; x += 10) a.push([x, upper(x)]);
    const b: Point[] = [];
    for (let x = to; x >= from; x -= 10) b.push([x, lower(x)]);
    s.poly([...a, ...b], { fill, w: MEDIUM });
  };
  const ease = (x: number, from: number, to: number) => {
    const t = Math.min(1, Math.max(0, (x - from) / (to - from)));
    return 1 - t * t * (3 - 2 * t);
  };
  const primer = (x: number) => y - 90 * ease(x, 620, 980);
  const first = (x: number) => primer(x) - 120 * ease(x, 380, 820);
  const second = (x: number) => Math.min(first(x), y - 26) - 110;
  coat(() => y, primer, 90, 980, '#bdbab0');
  coat(primer, first, 90, 820, '#e4e2dc');
  s.path(
    along(Array.from({ length: 143 }, (_, i): Point => [90 + i * 10, Math.min(first(90 + i * 10), y)])),
    { w: 1.4 },
  );
  coat(
    (x) => Math.min(first(x), y),
    (x) => second(x),
    90,
    1510,
    '#fbfaf6',
  );
  for (let i = 0; i < 46; i += 1)
    s.circle(110 + i * 30, second(110 + i * 30) + 40 + ((i * 23) % 40), 2.4, { fill: 'ink', w: 0 });
  s.dim('E', [380, y - 420], [980, y - 420], 0.1);
  s.line(380, y - 440, 380, y - 220, THIN).line(980, y - 440, 980, y - 20, THIN);
  s.leader('A', [1200, y + 120], [1380, y + 350]);
  s.leader('B', [260, y - 40], [180, y + 350]);
  s.leader('C', [240, y - 150], [150, y - 470]);
  s.leader('D', [1180, y - 80], [1260, y - 330]);
  return s;
}

export const roundTheLane: Record<string, () => Sheet> = {
  'lane-profile': laneProfile,
  'lane-plan': lanePlan,
  'cooling-circuit': coolingCircuit,
};
export const theSecondCoat: Record<string, () => Sheet> = { 'paint-edge': paintEdge };
