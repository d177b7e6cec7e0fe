/** Finding top dead centre and setting the contact breaker. The engine turns clockwise as these plates see it. */
import { box, HEAVY, MEDIUM, type Point, polar, Sheet, sweep, THIN } from '../pen.ts';
import { breakLine, hexagon, nutSide, thread } from '../shapes.ts';

/** Cylinder and head cut open, 7.6 units a millimetre; the piston's crown at `crown`. */
function cutCylinder(s: Sheet, cx: number, deck: number, crown: number, foot: number): void {
  const half = 205;
  // Head: a shallow dome round the plug hole (14 mm).
  s.cut(
    `M${cx - 330} ${deck}V${deck - 150}Q${cx - 330} ${deck - 180} ${cx - 300} ${deck - 180}H${cx - 110}V${deck - 230}H${cx - 53}V${deck - 106}Q${cx - 150} ${deck - 84} ${cx - 190} ${deck}Z`,
    { gap: 12 },
  );
  s.cut(
    `M${cx + 330} ${deck}V${deck - 150}Q${cx + 330} ${deck - 180} ${cx + 300} ${deck - 180}H${cx + 110}V${deck - 230}H${cx + 53}V${deck - 106}Q${cx + 150} ${deck - 84} ${cx + 190} ${deck}Z`,
    { gap: 12, angle: -45 },
  );
  for (const way of [-1, 1]) {
    const X = (d: number) => cx + way * d;
    s.path(
      `M${X(140)} ${deck - 150}H${X(290)}V${deck - 40}H${X(220)}Q${X(190)} ${deck - 110} ${X(140)} ${deck - 128}Z`,
      { fill: 'paper', w: THIN },
    );
    s.box(Math.min(X(190), X(330)), deck, 140, 7, { fill: 'ink', w: 0 });
    s.cut(`M${X(half)} ${deck + 7}H${X(half + 46)}V${foot}H${X(half)}Z`, { gap: 12, angle: way * 45 });
    s.cut(
      `M${X(half + 46)} ${deck + 7}H${X(330)}V${deck + 330}H${X(half + 46)}V${deck + 300}H${X(300)}V${deck + 40}H${X(half + 46)}Z`,
      { gap: 12, angle: way * 45 },
    );
  }
  // Piston, pin and the top of the rod.
  const p = half - 3;
  s.path(`M${cx - 26} ${crown + 220}L${cx - 62} ${foot + 60}H${cx + 14}L${cx + 30} ${crown + 220}Z`, {
    fill: 'paper',
  });
  breakLine(s, [cx - 66, foot + 60], [cx + 18, foot + 60]);
  s.path(
    `M${cx - p} ${crown + 430}V${crown + 8}Q${cx - p} ${crown} ${cx - p + 8} ${crown}H${cx + p - 8}Q${cx + p} ${crown} ${cx + p} ${crown + 8}V${crown + 430}Z`,
    { fill: 'paper', w: HEAVY },
  );
  for (const y of [34, 78]) s.box(cx - p, crown + y, 2 * p, 15, { w: MEDIUM, fill: '#e4e2dc' });
  s.circle(cx, crown + 210, 70, { fill: 'paper' })
    .circle(cx, crown + 210, 60, { w: THIN })
    .circle(cx, crown + 210, 38, { w: THIN });
  for (const d of [16, 28, 38]) s.line(cx + p - d, crown + 110, cx + p - d, crown + 420, 1.4);
}

function positiveStop(): Sheet {
  const s = new Sheet('portrait');
  const cx = 560;
  const deck = 700;
  const crown = 800;
  cutCylinder(s, cx, deck, crown, 1420);
  s.line(cx - 270, deck + 12, cx + 380, deck + 12, THIN, '24 8 6 8');
  // The stop: a hollow body in the plug's thread, a round-ended bolt locked in it.
  thread(s, cx, 180, crown - 20, 46);
  s.path(`M${cx - 23} ${crown - 26}V${crown - 20}A23 20 0 0 0 ${cx + 23} ${crown - 20}V${crown - 26}Z`, {
    fill: 'paper',
  });
  s.cut(`M${cx - 53} ${deck - 106}V${deck - 300}H${cx - 23}V${deck - 106}Z`, { gap: 9, angle: -45 });
  s.cut(`M${cx + 53} ${deck - 106}V${deck - 300}H${cx + 23}V${deck - 106}Z`, { gap: 9 });
  for (let y = deck - 222; y < deck - 108; y += 12)
    s.line(cx - 58, y + 4, cx - 48, y - 2, THIN).line(cx + 48, y + 4, cx + 58, y - 2, THIN);
  nutSide(s, cx, deck - 330, 150, 90);
  nutSide(s, cx, deck - 372, 96, 40);
  nutSide(s, cx, 150, 80, 50);
  s.dim('d', [cx + 205, deck + 12], [cx + 205, crown], -200);
  s.centre(cx, 90, cx, 1560);
  s.leader('A', [cx + 10, 270], [cx + 250, 220]);
  s.leader('B', [cx - 56, deck - 160], [cx - 420, deck - 260]);
  s.leader('C', [cx - 130, crown + 320], [cx - 420, crown + 330]);
  return s;
}

/** Flywheel, 160 mm across at 5.4 units a millimetre: 24° is 33.5 mm of rim. */
function rimLines(): Sheet {
  const s = new Sheet('landscape');
  const cx = 800;
  const cy = 690;
  const r = 432;
  s.circle(cx, cy, r, { w: HEAVY, fill: 'paper' }).circle(cx, cy, r - 56, { w: MEDIUM });
  s.circle(cx, cy, 190, { w: THIN }).circle(cx, cy, 120).circle(cx, cy, 64, { w: THIN });
  hexagon(s, cx, cy, 52, 8);
  for (let i = 0; i < 3; i += 1) {
    const [x, y] = polar(cx, cy, 280, 90 + i * 120);
    s.circle(x, y, 58).circle(x, y, 50, { w: THIN });
    const [bx, by] = polar(cx, cy, 92, 30 + i * 120);
    s.circle(bx, by, 11, { w: THIN });
  }
  const top = -90;
  const mark = (deg: number, w: number) => {
    const a = polar(cx, cy, r - 56, top + deg);
    const b = polar(cx, cy, r, top + deg);
    s.line(a[0], a[1], b[0], b[1], w);
  };
  const name = (char: string, deg: number, at: number) => {
    const [x, y] = polar(cx, cy, at, top + deg);
    s.letter(char, x, y);
  };
  mark(46, HEAVY);
  mark(-46, HEAVY);
  mark(0, HEAVY);
  mark(24, HEAVY);
  name('A', 46, r + 50);
  name('B', -46, r + 50);
  name('T', -7, r - 104);
  name('F', 24, r + 50);
  // Equal arcs, and the 24 degrees, inside the rim.
  const arc = (from: number, to: number, radius: number) => {
    s.path(sweep(cx, cy, radius, top + from + 1.6, top + to - 1.6), { w: THIN });
    const a = polar(cx, cy, radius, top + from);
    const b = polar(cx, cy, radius, top + to);
    s.head(a[0], a[1], top + from - 90 + 2).head(b[0], b[1], top + to + 90 - 2);
  };
  const ray = (deg: number, inner: number) => {
    const a = polar(cx, cy, inner, top + deg);
    const b = polar(cx, cy, r - 64, top + deg);
    s.line(a[0], a[1], b[0], b[1], THIN);
  };
  ray(46, 214);
  ray(-46, 214);
  ray(0, 214);
  ray(24, 260);
  arc(-46, 0, 230);
  arc(0, 46, 230);
  arc(0, 24, 284);
  // Fixed pointer on the case.
  s.poly(
    [
      [cx, cy - r - 10],
      [cx - 26, cy - r - 96],
      [cx + 26, cy - r - 96],
    ],
    { fill: 'paper', w: MEDIUM },
  );
  s.cut(box(cx - 90, cy - r - 150, 180, 54), { gap: 12 });
  for (const x of [-56, 56]) s.circle(cx + x, cy - r - 123, 13, { fill: 'paper', w: THIN });
  s.leader('P', [cx - 4, cy - r - 50], [cx - 190, cy - r - 90]);
  s.turn(cx, cy, r + 74, 20, 62, MEDIUM);
  name('R', 90 + 40, r + 128);
  return s;
}

function dialGauge(): Sheet {
  const s = new Sheet('portrait');
  const cx = 560;
  const deck = 980;
  const crown = 1010;
  cutCylinder(s, cx, deck, crown, 1500);
  // Plunger through the adaptor.
  s.box(cx - 11, 620, 22, crown - 642, { fill: 'paper' });
  s.path(`M${cx - 11} ${crown - 22}L${cx} ${crown - 1}L${cx + 11} ${crown - 22}Z`, { fill: 'paper' });
  s.cut(`M${cx - 53} ${deck - 106}V${deck - 300}H${cx - 13}V${deck - 106}Z`, { gap: 9, angle: -45 });
  s.cut(`M${cx + 53} ${deck - 106}V${deck - 300}H${cx + 13}V${deck - 106}Z`, { gap: 9 });
  nutSide(s, cx, deck - 330, 140, 90);
  s.box(cx - 26, 560, 52, 92, { fill: 'paper' });
  s.box(cx + 26, deck - 362, 40, 22, { fill: 'paper' }).box(cx - 30, deck - 372, 60, 44, { fill: 'paper' });
  s.box(cx + 60, deck - 374, 18, 46, { fill: 'paper', r: 5 });
  // The clock.
  const gy = 330;
  s.box(cx - 14, 66, 28, 60, { fill: 'paper' });
  s.circle(cx, gy, 240, { fill: 'paper', w: HEAVY }).circle(cx, gy, 214, { w: MEDIUM });
  for (let i = 0; i < 100; i += 1) {
    const long = i % 10 === 0;
    const a = polar(cx, gy, long ? 168 : i % 5 === 0 ? 184 : 194, i * 3.6 - 90);
    const b = polar(cx, gy, 208, i * 3.6 - 90);
    s.line(a[0], a[1], b[0], b[1], long ? MEDIUM : 1.5);
  }
  s.circle(cx, gy + 84, 52, { w: THIN });
  for (let i = 0; i < 10; i += 1) {
    const a = polar(cx, gy + 84, 40, i * 36 - 90);
    const b = polar(cx, gy + 84, 49, i * 36 - 90);
    s.line(a[0], a[1], b[0], b[1], 1.6);
  }
  const small = polar(cx, gy + 84, 36, 1.575 * 36 - 90);
  s.line(cx, gy + 84, small[0], small[1], MEDIUM).circle(cx, gy + 84, 6, { fill: 'ink', w: 0 });
  const hand = 57.5 * 3.6 - 90;
  const tip = polar(cx, gy, 186, hand);
  const l = polar(cx, gy, 12, hand + 90);
  const m = polar(cx, gy, 12, hand - 90);
  const tail = polar(cx, gy, 50, hand + 180);
  s.poly([tip, l, tail, m], { fill: 'ink', w: 0 }).circle(cx, gy, 16, { fill: 'paper' });
  s.leader('A', [cx + 40, deck - 270], [cx + 330, deck - 330]);
  s.leader('B', [cx + 4, crown - 60], [cx + 400, crown - 90]);
  s.leader('C', [small[0], small[1]], [cx + 340, gy + 240]);
  s.leader('D', [polar(cx, gy, 120, hand)[0], polar(cx, gy, 120, hand)[1]], [cx - 340, gy + 190]);
  return s;
}

function contactBreaker(): Sheet {
  const s = new Sheet('landscape');
  const cx = 640;
  const cy = 610;
  const plate = 500;
  s.circle(cx, cy, plate, { w: HEAVY, fill: 'paper' }).circle(cx, cy, plate - 14, { w: THIN });
  // Slots that let the plate turn.
  for (const mid of [160, 250]) {
    const half = 11;
    const o = sweep(cx, cy, plate - 50, mid - half, mid + half);
    const i = sweep(cx, cy, plate - 90, mid + half, mid - half).replace(/^M/, 'L');
    s.path(`${o}${i}Z`, { fill: 'paper', w: MEDIUM });
    const [x, y] = polar(cx, cy, plate - 70, mid + 2);
    s.circle(x, y, 34, { fill: 'paper' }).line(x - 24, y - 12, x + 24, y + 12, HEAVY);
  }
  // Cam with two lobes, half a turn apart.
  const cam: Point[] = Array.from({ length: 180 }, (_, i) => {
    const t = (i * 2 * Math.PI) / 180;
    const near = Math.abs(Math.cos(t));
    const rise = near < 0.62 ? 0 : (near - 0.62) / 0.38;
    const r = 118 + 26 * (rise * rise * (3 - 2 * rise));
    return [cx + r * Math.cos(t), cy + r * Math.sin(t)];
  });
  s.poly(cam, { fill: '#e4e2dc', w: HEAVY })
    .circle(cx, cy, 62, { fill: 'paper' })
    .circle(cx, cy, 40, { w: THIN });
  s.box(cx - 11, cy - 68, 22, 18, { fill: 'paper' });
  s.centre(cx - 210, cy, cx + 180, cy).centre(cx, cy - 200, cx, cy + 200);
  // Moving arm: pivot below, heel on the lobe, contact above.
  const px = 890;
  const py = 900;
  s.path(
    `M${px - 30} ${py}L${px - 66} ${cy + 30}L${cx + 146} ${cy + 22}Q${cx + 138} ${cy} ${cx + 148} ${cy - 24}L${px - 66} ${cy - 34}L${px - 44} ${cy - 260}H${px - 4}L${px + 2} ${cy}L${px + 30} ${py}A30 30 0 0 1 ${px - 30} ${py}Z`,
    { fill: 'paper', w: HEAVY },
  );
  s.line(px - 66, cy + 30, px - 66, cy - 34, MEDIUM);
  s.circle(px, py, 24, { fill: 'paper' }).circle(px, py, 11, { w: THIN });
  // Leaf spring from the terminal to the arm.
  s.path(`M1080 ${py - 70}Q1000 ${cy + 40} ${px} ${cy - 120}`, { w: HEAVY });
  s.box(1066, py - 92, 46, 60, { fill: 'paper' }).circle(1089, py - 62, 13, { w: THIN });
  // Contacts.
  const gy = cy - 236;
  s.box(px - 62, gy - 24, 22, 48, { fill: '#c9c6be', w: MEDIUM });
  s.box(px - 106, gy - 24, 22, 48, { fill: '#c9c6be', w: MEDIUM });
  s.path(
    `M${px - 106} ${gy - 36}H${px - 300}Q${px - 330} ${gy - 36} ${px - 330} ${gy - 6}V${gy + 44}Q${px - 330} ${gy + 74} ${px - 300} ${gy + 74}H${px - 180}V${gy + 36}H${px - 106}Z`,
    { fill: 'paper', w: HEAVY },
  );
  s.path(box(px - 296, gy - 4, 76, 34, 17), { fill: 'paper' });
  s.circle(px - 258, gy + 13, 30, { fill: 'paper' }).line(px - 276, gy - 6, px - 240, gy + 32, HEAVY);
  // Condenser with its lead.
  s.path(box(440, 900, 260, 96, 20), { fill: 'paper', w: HEAVY }).line(468, 902, 468, 994, THIN);
  s.path(`M540 896V910H600V896`, { w: THIN });
  s.path(`M700 948C860 1000 1010 980 1080 ${py - 40}`, { w: HEAVY }).path(
    `M700 948C860 1000 1010 980 1080 ${py - 40}`,
    { w: 2, fill: 'none' },
  );
  s.turn(cx, cy, 206, 150, 205, MEDIUM);
  s.leader('A', [cx - 132, cy + 10], [cx - 250, cy + 130]);
  s.leader('B', [cx + 162, cy], [cx + 590, cy - 70]);
  s.leader('C', [px - 73, gy], [px + 110, gy - 220]);
  s.leader('D', [px - 258, gy + 13], [px - 440, gy - 40]);
  s.leader('E', [polar(cx, cy, plate - 70, 168)[0], polar(cx, cy, plate - 70, 168)[1]], [80, cy + 330]);
  s.leader('F', [600, 960], [520, 1150]);
  return s;
}

export const whereTheSparkBelongs: Record<string, () => Sheet> = {
  'positive-stop': positiveStop,
  'rim-lines': rimLines,
  'dial-gauge': dialGauge,
  'contact-breaker': contactBreaker,
};
