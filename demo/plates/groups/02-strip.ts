/** Taking the engine down: on its stand, the top end apart, the order of the head nuts. */
import { box, HEAVY, MEDIUM, polar, Sheet, THIN } from '../pen.ts';
import { hexagon, nutSide, thread } from '../shapes.ts';

function onTheStand(): Sheet {
  const s = new Sheet('portrait');
  const cx = 480;
  const cy = 960;
  // Beam and strap.
  s.box(120, 50, 960, 64, { fill: 'paper', w: HEAVY });
  for (let i = 0; i < 3; i += 1)
    s.path(`M140 ${64 + i * 17}C400 ${56 + i * 17} 700 ${74 + i * 17} 1060 ${62 + i * 17}`, { w: 1.4 });
  // Gearbox behind, bell housing.
  s.path(
    `M${cx + 60} ${cy - 150}H800Q960 ${cy - 140} 990 ${cy - 10}V${cy + 120}Q980 ${cy + 170} 900 ${cy + 176}H${cx}Z`,
    { fill: 'paper', w: HEAVY },
  );
  s.path(`M690 ${cy - 150}V${cy + 176}M720 ${cy - 150}V${cy + 176}`, { w: THIN });
  s.circle(880, cy + 30, 62)
    .circle(880, cy + 30, 44, { w: THIN })
    .circle(880, cy + 30, 14);
  for (const [x, y] of [
    [742, -120],
    [742, 146],
    [956, 120],
    [860, -118],
  ] as const)
    s.circle(x, cy + y, 11, { w: THIN });
  s.path(`M780 ${cy - 150}V${cy - 196}H830V${cy - 146}`, { fill: 'paper' }).path(
    `M798 ${cy - 196}L842 ${cy - 330}L860 ${cy - 324}L816 ${cy - 196}`,
    { fill: 'paper' },
  );
  s.circle(852, cy - 338, 22, { fill: 'paper' });
  // Crankcase and lugs.
  s.path(
    `M${cx - 120} ${cy - 220}H${cx + 120}L${cx + 196} ${cy - 60}V${cy + 120}L${cx + 130} ${cy + 206}H${cx - 130}L${cx - 196} ${cy + 120}V${cy - 60}Z`,
    { fill: 'paper', w: HEAVY },
  );
  // Barrel, carburettor stub, exhaust stub.
  s.path(`M${cx - 118} ${cy - 420}H${cx - 196}L${cx - 230} ${cy - 350}H${cx - 118}Z`, { fill: 'paper' });
  s.box(cx - 252, cy - 356, 60, 16, { fill: 'paper', w: MEDIUM });
  s.path(box(cx - 118, cy - 590, 236, 340, 6), { fill: 'paper', w: HEAVY });
  s.path(box(cx - 150, cy - 250, 300, 30, 4), { fill: 'paper', w: HEAVY });
  for (const x of [-132, 132]) nutSide(s, cx + x, cy - 274, 26, 24);
  s.path(box(cx - 90, cy - 556, 180, 240, 30), { w: THIN });
  s.circle(cx - 60, cy - 290, 14).line(cx - 66, cy - 290, cx - 54, cy - 290, THIN);
  s.path(`M${cx + 118} ${cy - 410}H${cx + 190}V${cy - 330}H${cx + 118}`, { fill: 'paper' });
  s.box(cx + 190, cy - 424, 16, 108, { fill: 'paper' });
  s.path(box(cx + 206, cy - 430, 84, 130, 12), { fill: 'paper' })
    .box(cx + 226, cy - 500, 44, 70, { fill: 'paper' })
    .path(box(cx + 214, cy - 300, 68, 84, 16), { fill: 'paper' });
  // Head, plug, water outlet.
  s.path(box(cx - 128, cy - 700, 256, 110, 16), { fill: 'paper', w: HEAVY });
  s.line(cx - 128, cy - 614, cx + 128, cy - 614, THIN);
  for (const x of [-96, 0, 96]) nutSide(s, cx + x, cy - 722, 30, 22);
  s.path(`M${cx - 128} ${cy - 680}H${cx - 190}V${cy - 630}H${cx - 128}`, { fill: 'paper' });
  s.box(cx - 204, cy - 690, 14, 70, { fill: 'paper' });
  s.box(cx + 40, cy - 790, 26, 68, { fill: 'paper' })
    .box(cx + 32, cy - 756, 42, 26, { fill: 'paper' })
    .box(cx + 46, cy - 816, 14, 26, { fill: 'paper' });
  // Strap: over the beam, down both sides, round the barrel under the head.
  s.box(cx - 128, cy - 588, 256, 26, { fill: 'paper' });
  for (const way of [-1, 1])
    s.poly(
      [
        [cx + way * 2, 114],
        [cx + way * 24, 114],
        [cx + way * 144, cy - 562],
        [cx + way * 122, cy - 562],
      ],
      { fill: 'paper' },
    );
  s.box(cx - 26, 40, 52, 82, { fill: 'paper' });
  // Flywheel.
  s.circle(cx, cy, 168, { fill: 'paper', w: HEAVY })
    .circle(cx, cy, 150, { w: THIN })
    .circle(cx, cy, 66)
    .circle(cx, cy, 30);
  hexagon(s, cx, cy, 26, 12);
  for (let i = 0; i < 3; i += 1) {
    const at = polar(cx, cy, 108, -90 + i * 120);
    s.circle(at[0], at[1], 26).circle(at[0], at[1], 21, { w: THIN });
  }
  for (let i = 0; i < 3; i += 1) {
    const at = polar(cx, cy, 48, -30 + i * 120);
    s.circle(at[0], at[1], 7, { w: THIN });
  }
  const mark = [polar(cx, cy, 150, -90), polar(cx, cy, 168, -90)] as const;
  s.line(mark[0][0], mark[0][1], mark[1][0], mark[1][1], MEDIUM);
  // Lugs, bolts, trestle.
  for (const x of [cx - 130, cx + 130]) {
    s.path(box(x - 44, cy + 200, 88, 44, 6), { fill: 'paper' });
    thread(s, x, cy + 320, cy + 372, 20);
    nutSide(s, x, cy + 178, 40, 24);
    nutSide(s, x, cy + 320, 40, 26);
  }
  s.box(220, cy + 244, 700, 76, { fill: 'paper', w: HEAVY });
  for (let i = 0; i < 3; i += 1)
    s.path(
      `M236 ${cy + 262 + i * 20}C420 ${cy + 256 + i * 20} 640 ${cy + 272 + i * 20} 906 ${cy + 260 + i * 20}`,
      { w: 1.4 },
    );
  for (const x of [cx - 130, cx + 130]) nutSide(s, x, cy + 320, 40, 26);
  s.poly(
    [
      [270, cy + 320],
      [330, cy + 320],
      [250, 1530],
      [190, 1530],
    ],
    { fill: 'paper', w: HEAVY },
  );
  s.poly(
    [
      [810, cy + 320],
      [870, cy + 320],
      [950, 1530],
      [890, 1530],
    ],
    { fill: 'paper', w: HEAVY },
  );
  s.poly(
    [
      [244, 1416],
      [896, 1416],
      [906, 1466],
      [232, 1466],
    ],
    { fill: 'paper', w: MEDIUM },
  );
  s.line(100, 1530, 1100, 1530, MEDIUM);
  s.leader('A', [cx + 104, cy - 610], [880, 330]);
  s.leader('B', [cx - 60, cy - 400], [140, 440]);
  s.leader('C', [cx - 176, cy + 60], [130, 880]);
  s.leader('D', [cx - 60, cy + 128], [150, 1110]);
  s.leader('E', [930, cy + 80], [1090, 900]);
  s.leader('F', [cx + 130, cy + 334], [700, 1370]);
  s.leader('G', [cx - 92, cy - 700], [210, 210]);
  return s;
}

function topEndApart(): Sheet {
  const s = new Sheet('portrait');
  const x1 = 400;
  const x2 = 720;
  const studs = [250, 540, 580, 870];
  s.centre(x1, 60, x1, 1560).centre(x2, 60, x2, 1560);
  for (const x of studs) s.line(x, 86, x, 1240, THIN, '20 8 5 8');
  for (const x of studs) {
    nutSide(s, x, 84, 38, 30);
    s.box(x - 24, 118, 48, 8, { fill: 'paper' });
  }
  // Head with two plugs' bosses.
  s.path(
    `M214 300V220Q216 200 240 198H330L346 168H454L470 198H650L666 168H774L790 198H880Q904 200 906 220V300Z`,
    { fill: 'paper', w: HEAVY },
  );
  s.line(214, 280, 906, 280, THIN);
  for (const x of [x1, x2]) s.box(x - 22, 150, 44, 18, { fill: 'paper' });
  for (const x of studs) s.box(x - 17, 186, 34, 12, { fill: 'paper' });
  s.path('M540 198V176H580V198', { fill: 'paper' });
  // Gasket.
  s.box(214, 350, 692, 12, { fill: 'paper' });
  // Barrel block: two bores as hidden lines, water space, ports.
  s.path(box(224, 410, 672, 300, 6), { fill: 'paper', w: HEAVY });
  s.path(box(200, 690, 720, 32, 4), { fill: 'paper', w: HEAVY });
  for (const x of [x1, x2]) {
    s.line(x - 81, 410, x - 81, 722, THIN, '14 8').line(x + 81, 410, x + 81, 722, THIN, '14 8');
    s.path(box(x - 46, 540, 92, 64, 14), { fill: 'paper' }).path(box(x - 34, 550, 68, 44, 10), { w: THIN });
    for (const dx of [-62, 62]) s.circle(x + dx, 572, 8, { w: THIN });
  }
  // Pistons with rings and gudgeon pins.
  for (const x of [x1, x2]) {
    s.path(
      `M${x - 80} 920V788Q${x - 80} 776 ${x - 68} 776H${x + 68}Q${x + 80} 776 ${x + 80} 788V920Q${x} 936 ${x - 80} 920Z`,
      { fill: 'paper', w: HEAVY },
    );
    for (const y of [794, 814]) s.box(x - 84, y, 168, 9, { fill: 'paper', w: MEDIUM });
    s.circle(x, 862, 24).circle(x, 862, 15, { w: THIN });
  }
  // Rings beside the left-hand piston, pin beside the right-hand one.
  for (const y of [770, 812]) {
    s.path(`M120 ${y}A82 22 0 1 0 262 ${y - 4}L254 ${y - 2}A74 15 0 1 1 128 ${y + 2}Z`, {
      fill: 'paper',
      w: THIN,
    });
  }
  s.path('M880 842H1000V878H880Z', { fill: 'paper' })
    .path('M1000 842A9 18 0 0 1 1000 878A9 18 0 0 1 1000 842', { fill: 'paper' })
    .path('M1000 850A5 10 0 0 1 1000 870A5 10 0 0 1 1000 850', { w: THIN });
  s.line(744, 862, 880, 862, THIN, '20 8 5 8');
  // Base gasket.
  s.box(200, 1000, 720, 8, { fill: 'paper' });
  // Rods: cranks half a turn apart, so one stands 58 mm above the other.
  const rod = (x: number, top: number) => {
    s.path(`M${x - 16} ${top + 30}L${x - 22} 1400H${x + 22}L${x + 16} ${top + 30}Z`, { fill: 'paper' });
    s.circle(x, top, 34, { fill: 'paper', w: HEAVY }).circle(x, top, 19);
    s.line(x, top + 50, x, 1380, THIN);
  };
  rod(x1, 1086);
  rod(x2, 1256);
  // Crankcase with studs.
  for (const x of studs) thread(s, x, 1170, 1310, 18);
  s.path(
    'M190 1306H300L314 1306V1330H486V1306H634V1330H806V1306H930V1340L960 1400V1520Q960 1540 930 1540H190Q160 1540 160 1520V1400L190 1340Z',
    { fill: 'paper', w: HEAVY },
  );
  s.line(160, 1432, 960, 1432, THIN);
  s.path('M960 1440H1060V1490H960M160 1440H100V1490H160', { fill: 'paper' });
  for (const x of [230, 560, 890]) s.circle(x, 1484, 12, { w: THIN });
  s.leader('A', [870, 100], [1030, 120]);
  s.leader('B', [880, 240], [1030, 260]);
  s.leader('C', [880, 356], [1030, 390]);
  s.leader('D', [860, 500], [1030, 530]);
  s.leader('E', [780, 800], [1030, 720]);
  s.leader('F', [880, 1004], [1030, 1020]);
  s.leader('G', [736, 1300], [1030, 1200]);
  return s;
}

function headNuts(): Sheet {
  const s = new Sheet('landscape');
  const my = 600;
  const bores = [510, 1090];
  s.path(box(170, 280, 1260, 640, 120), { fill: 'paper', w: HEAVY });
  s.path(box(196, 306, 1208, 588, 100), { w: THIN });
  s.centre(90, my, 1510, my);
  for (const x of bores) {
    s.centre(x, 220, x, 980);
    s.circle(x, my, 216, { w: THIN, dash: '18 10' });
    s.circle(x, my, 82, { fill: 'paper' }).circle(x, my, 66, { w: THIN });
    hexagon(s, x, my, 46, 15);
  }
  s.path(`M740 280V210H860V280`, { fill: 'paper' }).box(716, 186, 168, 24, { fill: 'paper' });
  const nuts: [string, number, number, number][] = [
    ['1', 700, 390, -1],
    ['2', 900, 810, 1],
    ['3', 900, 390, -1],
    ['4', 700, 810, 1],
    ['5', 300, 390, -1],
    ['6', 1300, 810, 1],
    ['7', 1300, 390, -1],
    ['8', 300, 810, 1],
  ];
  for (const [figure, x, y, way] of nuts) {
    s.circle(x, y, 66, { fill: 'paper', w: THIN });
    hexagon(s, x, y, 54, Number(figure) * 13);
    const outside = way < 0 ? 150 : 1050;
    const to: [number, number] = [x + (x < 800 ? -70 : 70) * (Math.abs(x - 800) < 200 ? 0.4 : 0.6), outside];
    s.line(x, y + way * 56, to[0], to[1] - way * 38, THIN).letter(figure, to[0], to[1], 62);
  }
  return s;
}

export const takingItDown = {
  'engine-on-stand': onTheStand,
  'engine-apart': topEndApart,
  'head-nuts': headNuts,
};
