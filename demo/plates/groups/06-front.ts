/** Front leg, hub, drum and shoes. */
import { box, HEAVY, MEDIUM, PAPER, type Point, polar, Sheet, THIN } from '../pen.ts';
import { ballRow, hexagon, nutSide, spring, thread } from '../shapes.ts';

function frontLeg(): Sheet {
  const s = new Sheet('portrait');
  // The wheel, only hinted at.
  const ax = 380;
  const ay = 1150;
  s.circle(ax, ay, 300, { w: THIN, dash: '22 12' }).circle(ax, ay, 172, { w: THIN, dash: '22 12' });
  // Steering head with the king pin in it, leaning back eight degrees.
  s.placed(700, 520, 8, () => {
    s.cut('M-46 -300H-96V290H-46Z', { gap: 12 });
    s.cut('M46 -300H96V290H46Z', { gap: 12, angle: -45 });
    s.cut('M96 -210H250V-150H96Z', { gap: 12, angle: -45 }).cut('M96 130H250V190H96Z', {
      gap: 12,
      angle: -45,
    });
    s.line(250, -230, 250, 210, MEDIUM);
    for (const y of [-300, 150]) {
      s.cut(`M-46 ${y}H-30V${y + 140}H-46Z`, { gap: 7 }).cut(`M46 ${y}H30V${y + 140}H46Z`, {
        gap: 7,
        angle: -45,
      });
    }
    s.box(-30, -330, 60, 700, { fill: 'paper', w: HEAVY });
    for (const d of [14, 20, 25]) s.line(d, -320, d, 360, 1.4);
    // Steering lever and nut on top, thrust washers and yoke below.
    s.path('M-70 -372H70V-330H-70Z', { fill: 'paper' })
      .path('M70 -366H220A18 18 0 0 1 220 -334H70', { fill: 'paper' })
      .circle(220, -350, 8, { w: THIN });
    thread(s, 0, -440, -372, 40);
    nutSide(s, 0, -410, 92, 38);
    s.box(-74, 292, 148, 12, { fill: 'paper' }).box(-74, 306, 148, 12, { fill: 'paper' });
    s.path('M-110 320H110V384Q110 400 90 400H-90Q-110 400 -110 384Z', { fill: 'paper', w: HEAVY });
    s.box(-40, 340, 80, 22, { fill: 'paper', w: THIN });
    // Grease nipples.
    for (const y of [-230, 220])
      s.path(`M-96 ${y - 12}H-120V${y + 12}H-96M-120 ${y - 7}H-136A7 7 0 0 0 -136 ${y + 7}H-120`, {
        fill: 'paper',
      });
    s.centre(0, -480, 0, 470);
  });
  // Yoke's foot carries the arm's pivot and the upper end of the spring.
  const pivot: Point = [760, 1060];
  s.path('M530 870L752 902L826 1040A70 70 0 0 1 704 1098L650 976L516 956Z', { fill: 'paper', w: HEAVY });
  s.path('M560 934L690 952L752 1020', { w: THIN });
  const upper: Point = [462, 800];
  s.path('M540 872L500 772A46 46 0 0 0 420 790L440 950L516 956Z', { fill: 'paper', w: HEAVY });
  // Leading arm to the stub axle.
  s.path(
    `M${pivot[0] + 14} ${pivot[1] + 50}L${ax + 40} ${ay + 52}A66 66 0 0 1 ${ax - 20} ${ay - 62}L${pivot[0] - 30} ${pivot[1] - 44}A56 56 0 0 1 ${pivot[0] + 14} ${pivot[1] + 50}Z`,
    { fill: 'paper', w: HEAVY },
  );
  s.circle(pivot[0], pivot[1], 36, { fill: 'paper' }).circle(pivot[0], pivot[1], 18, { w: THIN });
  hexagon(s, pivot[0], pivot[1], 24, 10);
  // Spring with the damper inside it.
  const lower: Point = [490, 1098];
  s.box(upper[0] - 4, upper[1], 26, 320, { fill: 'paper', w: THIN });
  spring(s, [upper[0] + 10, upper[1] + 40], [lower[0] - 6, lower[1] - 40], 112, 7, 17);
  s.placed(upper[0] + 8, upper[1] + 26, -4, () => s.box(-72, -12, 144, 24, { fill: 'paper', r: 6 }));
  s.placed(lower[0] - 6, lower[1] - 28, -4, () => s.box(-72, -12, 144, 24, { fill: 'paper', r: 6 }));
  s.circle(upper[0] + 6, upper[1] - 6, 24, { fill: 'paper' }).circle(upper[0] + 6, upper[1] - 6, 10, {
    w: THIN,
  });
  s.circle(lower[0], lower[1] + 10, 24, { fill: 'paper' }).circle(lower[0], lower[1] + 10, 10, { w: THIN });
  // Stub axle, seen end on through the arm.
  s.circle(ax, ay, 46, { fill: 'paper', w: HEAVY }).circle(ax, ay, 26).circle(ax, ay, 8, { w: THIN });
  s.centre(ax - 340, ay, ax + 340, ay).centre(ax, ay - 340, ax, ay + 340);
  s.leader('A', [698, 500], [1090, 470]);
  s.leader('B', [700 + 76, 300], [1090, 250]);
  s.leader('B', [700 + 6, 740], [1090, 690]);
  s.leader('C', [620, 1120], [700, 1310]);
  s.leader('D', [ax, ay + 20], [230, 1330]);
  s.leader('E', [440, 960], [250, 820]);
  s.leader('F', [590, 272], [430, 220]);
  s.leader('F', [534, 722], [380, 660]);
  s.leader('G', [720, 832], [1090, 840]);
  return s;
}

function hubApart(): Sheet {
  const s = new Sheet('landscape');
  const y = 590;
  s.centre(60, y, 1550, y);
  // Backplate and stub axle.
  s.cut(`M150 ${y - 300}H172V${y - 60}H150Z`, { gap: 9 }).cut(`M150 ${y + 300}H172V${y + 60}H150Z`, {
    gap: 9,
    angle: -45,
  });
  s.path(`M172 ${y - 300}H214V${y - 286}H172M172 ${y + 300}H214V${y + 286}H172`, { fill: 'paper' });
  s.path(
    `M90 ${y - 66}H196V${y - 44}H220V${y - 40}H330V${y - 28}H420V${y - 18}H480V${y + 18}H420V${y + 28}H330V${y + 40}H220V${y + 44}H196V${y + 66}H90Z`,
    { fill: 'paper', w: HEAVY },
  );
  for (const [x, h] of [
    [196, 66],
    [220, 44],
    [330, 40],
    [420, 28],
  ] as const)
    s.line(x, y - h, x, y + h, THIN);
  for (let x = 424; x < 478; x += 10) s.line(x, y - 18, x + 4, y + 18, THIN);
  s.circle(462, y, 5, { w: THIN });
  // Seal.
  s.cut(`M520 ${y - 96}H556V${y - 84}H532V${y - 60}L548 ${y - 46}H520Z`, { gap: 7 }).cut(
    `M520 ${y + 96}H556V${y + 84}H532V${y + 60}L548 ${y + 46}H520Z`,
    { gap: 7, angle: -45 },
  );
  s.line(520, y - 46, 520, y + 46, THIN).line(556, y - 84, 556, y + 84, THIN);
  const bearing = (x: number, outer: number, inner: number, width: number) => {
    ballRow(s, x, y - (outer + inner) / 2, width, outer - inner);
    ballRow(s, x, y + (outer + inner) / 2, width, outer - inner);
    s.line(x - width / 2, y - inner, x - width / 2, y + inner, MEDIUM).line(
      x + width / 2,
      y - inner,
      x + width / 2,
      y + inner,
      MEDIUM,
    );
  };
  bearing(624, 96, 40, 52);
  // Drum and hub in section.
  const half = (way: number): void => {
    const Y = (d: number) => y + way * d;
    s.cut(
      `M700 ${Y(96)}H752V${Y(84)}H862V${Y(72)}H940V${Y(112)}H900V${Y(130)}H884V${Y(270)}H862V${Y(286)}H716V${Y(310)}H704V${Y(256)}H840V${Y(150)}L826 ${Y(128)}H700Z`,
      { gap: 11, angle: way * 45 },
    );
    s.path(`M884 ${Y(170)}H944V${Y(196)}H884M944 ${Y(170)}V${Y(196)}`, { fill: 'paper' });
    for (let x = 900; x < 942; x += 9) s.line(x, Y(170), x + 3, Y(196), 1.5);
  };
  half(-1);
  half(1);
  s.line(700, y - 96, 700, y + 96, MEDIUM)
    .line(940, y - 72, 940, y + 72, MEDIUM)
    .line(752, y - 84, 752, y + 84, THIN)
    .line(862, y - 72, 862, y + 72, THIN)
    .line(704, y - 256, 704, y + 256, THIN);
  bearing(1010, 72, 28, 44);
  // Washer, castle nut, split pin, cap.
  s.box(1072, y - 60, 16, 120, { fill: 'paper' })
    .line(1072, y - 20, 1088, y - 20, THIN)
    .line(1072, y + 20, 1088, y + 20, THIN);
  s.box(1134, y - 48, 44, 96, { fill: 'paper' }).path(
    `M1178 ${y - 40}H1206V${y - 24}H1178M1178 ${y - 9}H1206V${y + 9}H1178M1178 ${y + 24}H1206V${y + 40}H1178M1178 ${y - 40}V${y + 40}`,
    { fill: 'paper' },
  );
  s.line(1134, y - 24, 1178, y - 24, THIN).line(1134, y + 24, 1178, y + 24, THIN);
  s.circle(1278, y - 78, 18).path(
    `M1271 ${y - 62}V${y + 62}M1285 ${y - 62}V${y + 44}M1278 ${y - 60}V${y + 50}`,
    { w: MEDIUM },
  );
  s.path(
    `M1360 ${y - 76}H1388V${y - 66}H1420Q1486 ${y - 60} 1490 ${y}Q1486 ${y + 60} 1420 ${y + 66}H1388V${y + 76}H1360Z`,
    { fill: 'paper', w: HEAVY },
  );
  s.line(1388, y - 66, 1388, y + 66, THIN);
  const under = y + 430;
  s.leader('A', [130, y + 50], [120, under]);
  s.leader('B', [528, y + 90], [510, under]);
  s.leader('C', [624, y + 92], [620, under]);
  s.leader('D', [780, y + 272], [790, under]);
  s.leader('E', [1010, y + 68], [990, under]);
  s.leader('F', [1080, y + 50], [1090, under]);
  s.leader('G', [1156, y + 36], [1180, under]);
  s.leader('H', [1278, y + 40], [1290, under]);
  s.leader('J', [1420, y + 50], [1430, under]);
  return s;
}

function drumPositions(): Sheet {
  const s = new Sheet('landscape');
  const cx = 530;
  const cy = 600;
  const r = 380;
  s.circle(cx, cy, r + 44, { w: HEAVY, fill: 'paper' }).circle(cx, cy, r, { w: HEAVY });
  s.circle(cx, cy, 132, { fill: 'paper' }).circle(cx, cy, 60);
  for (let i = 0; i < 4; i += 1) {
    const [x, y] = polar(cx, cy, 98, 22 + i * 90);
    s.circle(x, y, 15).circle(x, y, 9, { w: THIN });
  }
  for (const [i, deg] of [-90, -45, 0, 45].entries()) {
    const a = polar(cx, cy, r, deg);
    const b = polar(cx, cy, r, deg + 180);
    const ai = polar(cx, cy, 140, deg);
    const bi = polar(cx, cy, 140, deg + 180);
    s.line(ai[0], ai[1], a[0], a[1], THIN).line(bi[0], bi[1], b[0], b[1], THIN);
    s.head(a[0], a[1], deg).head(b[0], b[1], deg + 180);
    const at = polar(cx, cy, r - 110, deg + 9);
    s.letter(String(i + 1), at[0], at[1]);
  }
  // Section to the right, with a worn track and the lip it leaves.
  const x = 1180;
  const half = (way: number): void => {
    const Y = (d: number) => cy + way * d;
    s.cut(
      `M${x - 100} ${Y(r + 44)}H${x + 170}V${Y(r + 10)}Q${x + 172} ${Y(150)} ${x + 172} ${Y(130)}H${x + 210}V${Y(52)}H${x + 90}V${Y(130)}H${x + 132}V${Y(r - 20)}H${x + 110}V${Y(r)}H${x + 96}V${Y(r + 9)}H${x - 76}V${Y(r)}H${x - 100}Z`,
      { gap: 12, angle: way * 45 },
    );
  };
  half(-1);
  half(1);
  for (const [char, dx] of [
    ['A', -40],
    ['B', 62],
  ] as const) {
    s.line(x + dx, cy - r - 2, x + dx, cy - 44, THIN).line(x + dx, cy + 44, x + dx, cy + r + 2, THIN);
    s.head(x + dx, cy - r - 8, -90)
      .head(x + dx, cy + r + 8, 90)
      .letter(char, x + dx, cy);
  }
  s.line(x - 100, cy - r, x - 100, cy + r, MEDIUM).line(x + 110, cy - r, x + 110, cy + r, THIN);
  s.centre(cx - r - 90, cy, cx - 150, cy).centre(x + 60, cy, x + 290, cy);
  s.leader('L', [x - 88, cy - r - 3], [x - 160, cy - r + 110]);
  return s;
}

function brakeShoes(): Sheet {
  const s = new Sheet('landscape');
  const cx = 800;
  const cy = 610;
  const r = 470;
  s.circle(cx, cy, r, { w: HEAVY, fill: 'paper' })
    .circle(cx, cy, r - 16, { w: THIN })
    .circle(cx, cy, 110)
    .circle(cx, cy, 76, { w: THIN });
  for (let i = 0; i < 4; i += 1) {
    const [x, y] = polar(cx, cy, 150, 45 + i * 90);
    hexagon(s, x, y, 22, i * 17);
  }
  const shoe = (way: number): void => {
    const at = (radius: number, deg: number): Point => {
      const [x, y] = polar(0, 0, radius, deg);
      return [cx + way * x, cy + y];
    };
    const sweepFlag = way > 0 ? 1 : 0;
    const band = (outer: number, inner: number, from: number, to: number) =>
      `M${at(outer, from).join(' ')}A${outer} ${outer} 0 0 ${sweepFlag} ${at(outer, to).join(' ')}L${at(inner, to).join(' ')}A${inner} ${inner} 0 0 ${1 - sweepFlag} ${at(inner, from).join(' ')}Z`;
    s.path(band(388, 300, -68, 70), { fill: 'paper', w: HEAVY });
    s.path(band(400, 378, -66, 68), { fill: 'paper', w: MEDIUM });
    s.cut(band(428, 400, -56, 58), { gap: 9, angle: way * 30 });
    for (const deg of [-20, 22]) {
      const [x, y] = at(344, deg);
      s.circle(x, y, 14, { w: THIN });
    }
    const hold = at(344, 0);
    s.circle(hold[0], hold[1], 20, { fill: 'paper' }).line(
      hold[0] - 13,
      hold[1],
      hold[0] + 13,
      hold[1],
      MEDIUM,
    );
  };
  shoe(1);
  shoe(-1);
  // Pull-off springs.
  spring(s, [cx - 150, cy - 248], [cx + 150, cy - 248], 34, 13, 7);
  spring(s, [cx - 150, cy + 254], [cx + 150, cy + 254], 34, 13, 7);
  for (const y of [-248, 254])
    for (const x of [-158, 158]) s.circle(cx + x, cy + y, 9, { fill: 'paper', w: MEDIUM });
  // Wheel cylinder with both pistons.
  s.path(box(cx - 100, cy - 372, 200, 76, 14), { fill: 'paper', w: HEAVY });
  for (const way of [-1, 1])
    s.path(
      `M${cx + way * 100} ${cy - 358}H${cx + way * 116}V${cy - 348}H${cx + way * 142}V${cy - 318}H${cx + way * 116}V${cy - 308}H${cx + way * 100}Z`,
      { fill: 'paper' },
    );
  s.line(cx - 70, cy - 372, cx - 70, cy - 296, THIN).line(cx + 70, cy - 372, cx + 70, cy - 296, THIN);
  s.circle(cx, cy - 334, 16, { w: THIN });
  // Adjuster and anchor.
  s.path(box(cx - 96, cy + 304, 192, 70, 10), { fill: 'paper', w: HEAVY })
    .box(cx - 118, cy + 318, 22, 42, { fill: 'paper' })
    .box(cx + 96, cy + 318, 22, 42, { fill: 'paper' });
  hexagon(s, cx, cy + 339, 28, 5);
  // Hose at the back of the plate, bleed nipple.
  s.path(
    `M${cx + 20} ${cy - r - 4}V${cy - r - 40}Q${cx + 24} ${cy - r - 76} ${cx + 90} ${cy - r - 80}H${cx + 330}`,
    { w: 26 },
  ).path(
    `M${cx + 20} ${cy - r - 4}V${cy - r - 40}Q${cx + 24} ${cy - r - 76} ${cx + 90} ${cy - r - 80}H${cx + 330}`,
    { w: 18, ink: PAPER },
  );
  s.turn(cx, cy, r + 60, -32, 4);
  s.letter('R', cx + r + 112, cy - 150);
  s.leader('A', [cx + 346, cy + 80], [cx + 640, cy + 180]);
  s.leader('B', [cx - 346, cy + 80], [cx - 640, cy + 180]);
  s.leader('C', [cx - 40, cy - 310], [cx - 60, cy - 170]);
  s.leader('D', [cx - 70, cy + 350], [cx - 560, cy + 420]);
  s.leader('E', [cx + 90, cy + 254], [cx + 100, cy + 170]);
  s.leader('F', [cx + 250, cy - r - 80], [cx + 480, cy - r - 20]);
  return s;
}

export const frontHubAndBrakes: Record<string, () => Sheet> = {
  'front-leg': frontLeg,
  'hub-apart': hubApart,
  'drum-positions': drumPositions,
  'brake-shoes': brakeShoes,
};
