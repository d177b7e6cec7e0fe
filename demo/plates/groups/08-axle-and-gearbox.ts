/** The solid rear axle and the gearbox. */
import { box, HEAVY, MEDIUM, Sheet, THIN } from '../pen.ts';
import { ballRow, nutSide } from '../shapes.ts';

export function rearAxle(): Sheet {
  const s = new Sheet('landscape');
  const y = 560;
  s.centre(60, y, 1540, y);
  // Frame rails in plan, behind.
  for (const x of [372, 1180])
    s.box(x, y - 330, 50, 700, { fill: 'paper', w: MEDIUM }).line(x + 10, y - 330, x + 10, y + 370, THIN);
  // Axle with its steps and tapers.
  s.path(
    `M140 ${y - 14}H190V${y - 18}L300 ${y - 30}V${y - 34}H1300V${y - 30}L1410 ${y - 18}V${y - 14}H1460V${y + 14}H1410V${y + 18}L1300 ${y + 30}V${y + 34}H300V${y + 30}L190 ${y + 18}V${y + 14}H140Z`,
    { fill: 'paper', w: HEAVY },
  );
  for (const d of [14, 21, 27]) s.line(440, y + d, 1170, y + d, 1.4);
  // Hubs on their tapers, with keys, castle nuts and wheels hinted.
  for (const way of [-1, 1]) {
    const X = (d: number) => 800 + way * d;
    s.cut(
      `M${X(504)} ${y - 29}L${X(606)} ${y - 19}V${y - 70}H${X(560)}V${y - 170}H${X(536)}V${y - 84}H${X(504)}Z`,
      { gap: 10, angle: way * 45 },
    );
    s.cut(
      `M${X(504)} ${y + 29}L${X(606)} ${y + 19}V${y + 70}H${X(560)}V${y + 170}H${X(536)}V${y + 84}H${X(504)}Z`,
      { gap: 10, angle: -way * 45 },
    );
    s.path(`M${X(520)} ${y - 36}L${X(590)} ${y - 28}L${X(590)} ${y - 14}L${X(520)} ${y - 20}Z`, {
      fill: '#cfccc3',
      w: THIN,
    });
    const left = Math.min(X(610), X(648));
    s.box(left, y - 42, 38, 84, { fill: 'paper', w: MEDIUM })
      .line(left, y - 18, left + 38, y - 18, THIN)
      .line(left, y + 18, left + 38, y + 18, THIN);
    s.path(box(Math.min(X(536), X(690)), y - 280, 154, 110, 30), { w: THIN, dash: '20 10' }).path(
      box(Math.min(X(536), X(690)), y + 170, 154, 110, 30),
      { w: THIN, dash: '20 10' },
    );
  }
  // Bearings in housings with their draw-bolts.
  for (const x of [397, 1205]) {
    s.path(box(x - 62, y - 120, 124, 240, 12), { fill: 'paper', w: HEAVY });
    s.cut(box(x - 62, y - 120, 124, 34), { gap: 9 }).cut(box(x - 62, y + 86, 124, 34), {
      gap: 9,
      angle: -45,
    });
    ballRow(s, x, y - 60, 70, 50);
    ballRow(s, x, y + 60, 70, 50);
    s.box(x - 62, y - 34, 124, 68, { fill: 'paper', w: MEDIUM });
    s.box(x - 13, y + 120, 26, 210, { fill: 'paper', w: MEDIUM });
    for (let i = 0; i < 18; i += 1) s.line(x - 13, y + 134 + i * 11, x + 13, y + 129 + i * 11, 1.4);
    s.box(x - 70, y + 220, 140, 22, { fill: 'paper', w: MEDIUM });
    s.box(x - 34, y + 246, 68, 30, { fill: 'paper', w: MEDIUM, r: 4 }).box(x - 34, y + 280, 68, 22, {
      fill: 'paper',
      w: MEDIUM,
      r: 4,
    });
  }
  // Sprocket on its carrier, edge on, chain running forward (up).
  s.box(964, y - 70, 60, 140, { fill: 'paper', w: MEDIUM });
  s.box(1024, y - 206, 18, 412, { fill: 'paper', w: HEAVY });
  s.box(990, y - 110, 34, 220, { fill: 'paper', w: MEDIUM });
  for (const d of [-88, 88])
    s.box(976, y + d - 12, 14, 24, { fill: 'paper', w: THIN }).box(1042, y + d - 12, 14, 24, {
      fill: 'paper',
      w: THIN,
    });
  for (let i = 0; i < 13; i += 1) {
    s.box(1016, y - 206 - 30 * (i + 1) + 12, 34, 18, { fill: 'paper', w: THIN });
  }
  s.leader('A', [720, y - 10], [660, y - 220]);
  s.leader('B', [397, y - 62], [560, y - 300]);
  s.leader('C', [1032, y + 170], [940, y + 330]);
  s.leader('D', [800 - 548, y + 130], [150, y + 400]);
  s.leader('E', [397, y + 292], [560, y + 420]);
  s.leader('E', [1205, y + 292], [1060, y + 420]);
  return s;
}

export function gearbox(): Sheet {
  const s = new Sheet('landscape');
  const y1 = 430;
  const y2 = 730;
  s.cut(`M230 160H1390V1040H230ZM290 220V980H1330V220Z`, { gap: 15 });
  s.path(box(290, 220, 1040, 760), { fill: 'paper', w: MEDIUM });
  const shaft = (y: number, from: number, to: number) => {
    s.box(from, y - 30, to - from, 60, { fill: 'paper', w: HEAVY });
    for (const d of [14, 20, 25]) s.line(from + 4, y + d, to - 4, y + d, 1.3);
    for (const x of [260, 1360]) {
      ballRow(s, x, y - 62, 60, 62);
      ballRow(s, x, y + 62, 60, 62);
    }
  };
  shaft(y1, 90, 1392);
  shaft(y2, 228, 1520);
  for (let i = 0; i < 5; i += 1) s.line(96, y1 - 24 + i * 12, 190, y1 - 24 + i * 12, 1.5);
  // Wheel pairs: 3.20, 1.75 and 1.00 to one; radii add up to the distance of the shafts.
  const wheel = (x: number, y: number, r: number, w: number) => {
    s.box(x - w / 2, y - r, w, 2 * r, { fill: 'paper', w: HEAVY });
    s.line(x - w / 2, y - r + 18, x + w / 2, y - r + 18, THIN).line(
      x - w / 2,
      y + r - 18,
      x + w / 2,
      y + r - 18,
      THIN,
    );
    for (const side of [-1, 1])
      s.line(x - w / 2 + 4, y + side * (r - 9), x + w / 2 - 4, y + side * (r - 9), 1.3);
    s.line(x - w / 2, y - 30, x + w / 2, y - 30, THIN).line(x - w / 2, y + 30, x + w / 2, y + 30, THIN);
  };
  const distance = y2 - y1;
  const pairs: [string, number, number, number][] = [
    ['1', 700, 71, 70],
    ['2', 900, 109, 70],
    ['3', 1150, 150, 70],
  ];
  for (const [figure, x, r, w] of pairs) {
    wheel(x, y1, r + 9, w);
    wheel(x, y2, distance - r + 9 - 18, w);
    s.letter(figure, x, 110, 52).line(x, 146, x, y1 - r - 14, THIN);
  }
  // Reverse: two wheels that do not meet, and the idler between them, drawn aside.
  wheel(450, y1, 66, 70);
  wheel(450, y2, 130, 70);
  s.box(330, (y1 + y2) / 2 - 70, 62, 140, { fill: 'paper', w: HEAVY });
  s.line(330, (y1 + y2) / 2 - 56, 392, (y1 + y2) / 2 - 56, THIN).line(
    330,
    (y1 + y2) / 2 + 56,
    392,
    (y1 + y2) / 2 + 56,
    THIN,
  );
  s.box(292, (y1 + y2) / 2 - 18, 250, 36, { fill: 'paper', w: MEDIUM });
  s.box(330, (y1 + y2) / 2 - 70, 62, 140, { fill: 'none', w: HEAVY });
  s.letter('R', 450, 110, 52).line(450, 146, 450, y1 - 84, THIN);
  // Sliding dogs on the output shaft.
  for (const x of [590, 1025]) {
    s.path(
      `M${x - 52} ${y2 - 62}H${x - 14}V${y2 - 82}H${x - 8}V${y2 - 62}H${x + 8}V${y2 - 82}H${x + 14}V${y2 - 62}H${x + 52}V${y2 + 62}H${x - 52}Z`,
      { fill: 'paper', w: MEDIUM },
    );
    s.box(x - 66, y2 - 50, 14, 24, { fill: 'paper', w: THIN })
      .box(x + 52, y2 - 50, 14, 24, { fill: 'paper', w: THIN })
      .box(x - 66, y2 + 26, 14, 24, { fill: 'paper', w: THIN })
      .box(x + 52, y2 + 26, 14, 24, { fill: 'paper', w: THIN });
    for (const d of [-40, -20, 0, 20, 40]) s.line(x - 50, y2 + d, x + 50, y2 + d, 1.3);
  }
  // Output sprocket.
  s.box(1440, y2 - 112, 22, 224, { fill: 'paper', w: HEAVY }).box(1408, y2 - 56, 32, 112, {
    fill: 'paper',
    w: MEDIUM,
  });
  nutSide(s, 1486, y2 - 40, 34, 80);
  s.centre(50, y1, 1440, y1).centre(180, y2, 1560, y2);
  s.leader('A', [150, y1 + 10], [120, 560]);
  s.leader('B', [1395, y2 - 20], [1490, 560]);
  s.leader('C', [1025, y2 + 52], [960, 1110]);
  s.leader('C', [590, y2 + 52], [620, 1110]);
  s.leader('D', [1451, y2 + 96], [1500, 1080]);
  return s;
}
