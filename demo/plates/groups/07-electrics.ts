/** Twelve volts: the charging circuit, an earth that lasts, the fuse box, the dynamo's brushes. */
import { along, box, HEAVY, MEDIUM, type Point, polar, ring, Sheet, THIN } from '../pen.ts';
import { breakLine, nutSide, thread } from '../shapes.ts';

function earth(s: Sheet, x: number, y: number): void {
  s.line(x, y, x, y + 34, MEDIUM);
  for (const [i, half] of [36, 24, 11].entries())
    s.line(x - half, y + 34 + i * 13, x + half, y + 34 + i * 13, MEDIUM);
}
const node = (s: Sheet, x: number, y: number) => s.circle(x, y, 9, { fill: 'ink', w: 0 });

function chargingCircuit(): Sheet {
  const s = new Sheet('landscape');
  const wire = (...points: Point[]) => s.path(along(points), { w: MEDIUM });
  // Dynamo: armature and field.
  wire([260, 330], [260, 420]);
  s.circle(260, 500, 82, { fill: 'paper', w: HEAVY });
  s.letter('G', 260, 494, 60).line(232, 544, 288, 544, MEDIUM);
  wire([260, 582], [260, 900]);
  earth(s, 260, 900);
  // Field: coil of four bumps beside the armature.
  wire([430, 330], [430, 420]);
  s.path('M430 420a24 24 0 0 1 0 48a24 24 0 0 1 0 48a24 24 0 0 1 0 48a24 24 0 0 1 0 48', { w: HEAVY });
  wire([430, 612], [430, 760], [260, 760]);
  node(s, 260, 760);
  s.circle(260, 330, 11, { fill: 'paper' }).circle(430, 330, 11, { fill: 'paper' });
  s.letter('D', 206, 330).letter('F', 376, 330);
  // Regulator: two relays in one box, the voltage coil across the supply, cut-out contact in the line.
  s.path(box(520, 130, 400, 480, 10), { w: THIN, dash: '26 10' });
  wire([260, 319], [260, 200], [600, 200]);
  wire([430, 319], [430, 260], [560, 260], [560, 330]);
  // Regulating contact between field and line, resistance across it.
  wire([560, 330], [560, 356]);
  s.line(560, 420, 584, 362, HEAVY);
  wire([560, 420], [560, 470], [640, 470], [640, 200]);
  s.circle(560, 420, 8, { fill: 'paper' });
  node(s, 640, 200);
  // Voltage coil with its core.
  wire([740, 200], [740, 330]);
  s.box(712, 330, 56, 92, { fill: 'paper', w: HEAVY }).line(712, 422, 768, 330, THIN);
  wire([740, 422], [740, 660]);
  earth(s, 740, 660);
  node(s, 740, 200);
  s.line(704, 376, 600, 392, THIN, '14 9');
  wire([600, 200], [800, 200]);
  s.circle(800, 200, 8, { fill: 'paper' })
    .line(806, 196, 862, 164, HEAVY)
    .circle(870, 200, 8, { fill: 'paper' });
  s.line(740, 322, 836, 184, THIN, '14 9');
  // Ammeter, battery.
  wire([878, 200], [1010, 200]);
  s.circle(1062, 200, 52, { fill: 'paper', w: HEAVY }).letter('A', 1062, 200, 52);
  wire([1114, 200], [1180, 200]);
  node(s, 1180, 200);
  wire([1180, 200], [1180, 640]);
  for (let i = 0; i < 3; i += 1)
    s.line(1130, 640 + i * 56, 1230, 640 + i * 56, MEDIUM).line(1152, 668 + i * 56, 1208, 668 + i * 56, 11);
  s.path('M1180 780V900', { w: MEDIUM });
  earth(s, 1180, 900);
  s.letter('B', 1080, 710);
  s.line(1242, 618, 1270, 618, MEDIUM).line(1256, 604, 1256, 632, MEDIUM);
  // Switch and fuses.
  wire([1180, 330], [1260, 330]);
  node(s, 1180, 330);
  s.circle(1268, 330, 8, { fill: 'paper' })
    .line(1274, 326, 1330, 296, HEAVY)
    .circle(1340, 330, 8, { fill: 'paper' });
  s.letter('S', 1304, 250);
  wire([1348, 330], [1420, 330], [1420, 760]);
  for (let i = 0; i < 4; i += 1) {
    const y = 430 + i * 110;
    wire([1420, y], [1550, y]);
    node(s, 1420, y);
    s.box(1444, y - 15, 74, 30, { fill: 'paper', w: HEAVY });
    s.line(1444, y, 1518, y, THIN);
    s.letter(String(i + 1), 1480, y - 46, 38);
  }
  s.letter('R', 560, 90);
  // Frame: earth points belong together.
  s.line(150, 1020, 1300, 1020, THIN, '34 9 7 9');
  return s;
}

function earthStrap(): Sheet {
  const s = new Sheet('landscape');
  const cx = 640;
  const top = 720;
  // Frame plate with a hole.
  s.cut(`M120 ${top}H${cx - 48}V${top + 110}H120Z`, { gap: 15 });
  s.cut(`M1420 ${top}H${cx + 48}V${top + 110}H1420Z`, { gap: 15 });
  breakLine(s, [120, top], [120, top + 110]);
  breakLine(s, [1420, top], [1420, top + 110]);
  // Paint, kept back from the lug; grease over the edge.
  for (const [a, b] of [
    [120, cx - 300],
    [cx + 300, 1420],
  ] as const)
    s.box(a, top - 16, b - a, 16, { fill: 'ink', w: 0 });
  s.box(120, top + 110, 1300, 14, { fill: 'ink', w: 0 });
  s.path(
    `M${cx - 330} ${top - 16}Q${cx - 280} ${top - 40} ${cx - 200} ${top - 6}L${cx - 200} ${top}H${cx - 300}V${top - 16}Z`,
    { fill: '#dcd9cf', w: THIN },
  );
  s.path(
    `M${cx + 330} ${top - 16}Q${cx + 280} ${top - 40} ${cx + 200} ${top - 6}L${cx + 200} ${top}H${cx + 300}V${top - 16}Z`,
    { fill: '#dcd9cf', w: THIN },
  );
  // Bolt from below, toothed washer, lug, plain washer, nut.
  s.box(cx - 44, top - 210, 88, 340, { fill: 'paper', w: MEDIUM });
  thread(s, cx, top - 330, top - 90, 84, 13);
  const washer = (y: number, half: number, h: number) =>
    s.box(cx - half, y, half * 2, h, { fill: 'paper', w: MEDIUM });
  s.poly(
    [
      ...Array.from({ length: 15 }, (_, i): Point => [cx - 126 + i * 18, top - (i % 2 === 0 ? 30 : 6)]),
      [cx + 126, top],
      [cx - 126, top],
    ],
    { fill: '#e4e2dc', w: MEDIUM },
  );
  s.cut(`M${cx - 170} ${top - 70}H${cx - 46}V${top - 32}H${cx - 170}Z`, { gap: 10 });
  s.cut(
    `M${cx + 46} ${top - 70}H${cx + 230}L${cx + 300} ${top - 120}H${cx + 520}V${top - 96}H${cx + 330}L${cx + 250} ${top - 32}H${cx + 46}Z`,
    { gap: 10 },
  );
  s.cut(`M${cx + 300} ${top - 218}H${cx + 520}V${top - 194}H${cx + 300}Z`, { gap: 10 });
  s.path(`M${cx + 300} ${top - 218}V${top - 120}`, { w: MEDIUM });
  // Braided strap crimped in the lug.
  s.path(
    `M${cx + 300} ${top - 194}H${cx + 620}Q${cx + 760} ${top - 200} ${cx + 800} ${top - 330}L${cx + 890} ${top - 306}Q${cx + 830} ${top - 108} ${cx + 640} ${top - 120}H${cx + 300}Z`,
    { fill: 'paper', w: MEDIUM },
  );
  for (let i = 0; i < 14; i += 1) {
    s.line(cx + 312 + i * 22, top - 192, cx + 340 + i * 22, top - 122, 1.5).line(
      cx + 340 + i * 22,
      top - 192,
      cx + 312 + i * 22,
      top - 122,
      1.5,
    );
  }
  for (let i = 0; i < 6; i += 1) {
    const a = i * 12;
    s.path(`M${cx + 650 + a * 2} ${top - 190 - a * 1.4}L${cx + 700 + a * 2.2} ${top - 128 - a * 1.8}`, {
      w: 1.5,
    });
    s.path(`M${cx + 690 + a * 2} ${top - 196 - a * 1.6}L${cx + 672 + a * 2.4} ${top - 120 - a * 1.2}`, {
      w: 1.5,
    });
  }
  washer(top - 92, 130, 22);
  nutSide(s, cx, top - 188, 200, 96);
  nutSide(s, cx, top + 124, 200, 84);
  s.centre(cx, top - 400, cx, top + 280);
  s.leader('A', [cx - 220, top + 8], [cx - 420, top - 190]);
  s.leader('B', [cx - 108, top - 10], [cx - 260, top - 330]);
  s.leader('C', [cx + 130, top - 50], [cx + 230, top - 360]);
  s.leader('D', [cx + 660, top - 150], [cx + 640, top - 380]);
  s.leader('E', [cx + 310, top - 22], [cx + 480, top + 260]);
  return s;
}

function fuseBox(): Sheet {
  const s = new Sheet('landscape');
  s.path(box(250, 190, 1100, 720, 34), { fill: 'paper', w: HEAVY }).path(box(276, 216, 1048, 668, 24), {
    w: THIN,
  });
  for (const [x, y] of [
    [306, 246],
    [1294, 246],
    [306, 854],
    [1294, 854],
  ] as const)
    s.circle(x, y, 20, { fill: 'paper' }).line(x - 13, y - 8, x + 13, y + 8, MEDIUM);
  // Common bar on the left, fuses, terminals on the right.
  s.box(390, 280, 54, 540, { fill: '#e4e2dc', w: MEDIUM });
  for (let i = 0; i < 4; i += 1) {
    const y = 330 + i * 146;
    const clip = (x: number, way: number) => {
      s.path(
        `M${x} ${y - 46}H${x + way * 84}Q${x + way * 96} ${y - 46} ${x + way * 96} ${y - 36}V${y + 36}Q${x + way * 96} ${y + 46} ${x + way * 84} ${y + 46}H${x}Z`,
        { fill: 'paper', w: MEDIUM },
      );
      s.line(x + way * 40, y - 46, x + way * 40, y + 46, THIN);
    };
    clip(470, 1);
    clip(1030, -1);
    s.line(444, y, 470, y, HEAVY);
    if (i !== 3) {
      s.path(box(540, y - 34, 420, 68, 16), { fill: 'paper', w: HEAVY });
      s.box(540, y - 34, 78, 68, { fill: '#e4e2dc', r: 14 }).box(882, y - 34, 78, 68, {
        fill: '#e4e2dc',
        r: 14,
      });
      s.line(618, y, 882, y, MEDIUM).line(630, y - 20, 860, y - 20, 1.5);
    }
    s.line(1030, y, 1100, y, HEAVY);
    s.box(1100, y - 34, 108, 68, { fill: 'paper', r: 6 })
      .circle(1154, y, 24)
      .line(1138, y - 12, 1170, y + 12, HEAVY);
    s.path(
      `M1208 ${y - 12}H1430Q1470 ${y - 12} 1470 ${y + 40}V1100M1208 ${y + 12}H1420Q1446 ${y + 14} 1446 ${y + 50}V1100`
        .replaceAll('1470', String(1530 - i * 44))
        .replaceAll('1446', String(1510 - i * 44)),
      { w: MEDIUM },
    );
    s.letter(String(i + 1), 750, y - 66, 40);
  }
  // Corroded clip: speckled.
  for (let i = 0; i < 46; i += 1)
    s.circle(940 + ((i * 37) % 84), 584 + ((i * 53) % 80), 2.4 + (i % 3), { fill: 'ink', w: 0 });
  s.path('M390 420H120Q90 420 90 460V1100M390 444H130Q114 446 114 470V1100', { w: MEDIUM });
  s.leader('A', [200, 432], [180, 250]);
  s.leader('B', [990, 640], [1060, 1020]);
  return s;
}

function dynamoBrushes(): Sheet {
  const s = new Sheet('landscape');
  const cx = 560;
  const cy = 600;
  s.circle(cx, cy, 470, { w: HEAVY, fill: 'paper' }).circle(cx, cy, 440, { w: THIN });
  for (const deg of [45, 225]) {
    const [x, y] = polar(cx, cy, 400, deg);
    s.circle(x, y, 26, { fill: 'paper' }).line(x - 18, y + 10, x + 18, y - 10, MEDIUM);
  }
  // Commutator: 24 bars.
  s.circle(cx, cy, 200, { fill: 'paper', w: HEAVY }).circle(cx, cy, 122);
  for (let i = 0; i < 24; i += 1) {
    const a = polar(cx, cy, 122, i * 15);
    const b = polar(cx, cy, 200, i * 15);
    s.line(a[0], a[1], b[0], b[1], 5);
  }
  s.circle(cx, cy, 62, { fill: '#e4e2dc' }).circle(cx, cy, 20, { w: THIN });
  // Brushes with holders and springs.
  for (const way of [-1, 1]) {
    const X = (d: number) => cx + way * d;
    s.path(`M${X(236)} ${cy - 66}H${X(400)}V${cy - 44}H${X(236)}Z`, { fill: 'paper' }).path(
      `M${X(236)} ${cy + 66}H${X(400)}V${cy + 44}H${X(236)}Z`,
      { fill: 'paper' },
    );
    s.path(`M${X(196)} ${cy - 42}Q${X(204)} ${cy} ${X(196)} ${cy + 42}H${X(352)}V${cy - 42}Z`, {
      fill: '#d6d3ca',
      w: MEDIUM,
    });
    const hub = [X(330), cy - 190] as const;
    const spiral: Point[] = Array.from({ length: 70 }, (_, i) => {
      const [dx, dy] = polar(0, 0, 14 + i * 0.72, i * 15.5);
      return [hub[0] + way * dx, hub[1] + dy];
    });
    s.path(along(spiral), { w: MEDIUM });
    const last = spiral.at(-1);
    if (last)
      s.path(`M${last[0]} ${last[1]}Q${X(410)} ${cy - 100} ${X(372)} ${cy - 6}L${X(354)} ${cy}`, {
        w: MEDIUM,
      });
    s.circle(hub[0], hub[1], 12, { fill: 'paper' });
    s.path(`M${X(340)} ${cy + 20}C${X(420)} ${cy + 80} ${X(380)} ${cy + 160} ${X(300)} ${cy + 230}`, {
      w: HEAVY,
    });
    s.circle(X(294), cy + 238, 18, { fill: 'paper' });
  }
  s.turn(cx, cy, 230, 240, 300);
  // Enlarged: mica cut below the copper.
  const dx = 1290;
  const dy = 610;
  const loop = ring(dx, dy, 220);
  s.path(loop, { fill: 'paper', w: THIN });
  s.within(loop, () => {
    for (const x of [-300, -130, 40, 210]) {
      s.cut(`M${dx + x} ${dy - 60}H${dx + x + 136}V${dy + 240}H${dx + x}Z`, { gap: 14, angle: 45 });
      s.box(dx + x + 136, dy - 6, 34, 250, { fill: 'ink', w: 0 });
    }
  });
  s.path(loop, { w: MEDIUM });
  s.circle(cx + 190, cy - 90, 44, { w: THIN });
  s.line(cx + 232, cy - 104, dx - 208, dy - 72, THIN);
  s.leader('A', [cx - 60, cy + 150], [cx - 130, cy + 300]);
  s.leader('B', [cx - 280, cy - 24], [cx - 130, cy - 340]);
  s.leader('C', [cx + 340, cy - 230], [cx + 500, cy - 400]);
  s.leader('D', [dx + 24, dy + 30], [dx + 90, dy + 310]);
  return s;
}

export const twelveVolts: Record<string, () => Sheet> = {
  'charging-circuit': chargingCircuit,
  'earth-strap': earthStrap,
  'fuse-box': fuseBox,
  'dynamo-brushes': dynamoBrushes,
};
