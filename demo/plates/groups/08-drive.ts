/** Chain, sprockets, axle, gearbox. Chain pitch 15.875 mm, rollers 10.16 mm (ISO 606, 10B). */
import { along, box, HEAVY, MEDIUM, type Point, polar, ring, Sheet, THIN } from '../pen.ts';
import { ballRow, hexagon, nutSide, sprocketPath } from '../shapes.ts';

const PITCH_mm = 15.875;
const ROLLER_mm = 10.16;
const pitchRadius = (teeth: number, pitch: number) => pitch / 2 / Math.sin(Math.PI / teeth);

/** One link plate between two pins. */
function link(s: Sheet, a: Point, b: Point, k: number, outer: boolean): void {
  const deg = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  s.placed(a[0], a[1], deg, () => {
    const r = 6.4 * k;
    const waist = outer ? 3.6 * k : 4.4 * k;
    s.path(
      `M0 ${-r}Q${length / 2} ${-waist} ${length} ${-r}A${r} ${r} 0 0 1 ${length} ${r}Q${length / 2} ${waist} 0 ${r}A${r} ${r} 0 0 1 0 ${-r}Z`,
      { fill: 'paper', w: outer ? MEDIUM : THIN },
    );
    s.circle(0, 0, 2.4 * k, { w: THIN }).circle(length, 0, 2.4 * k, { w: THIN });
  });
}

function chainSag(): Sheet {
  const s = new Sheet('landscape');
  const k = 2.3;
  const p = PITCH_mm * k;
  const small: Point = [330, 560];
  const big: Point = [1220, 600];
  const r1 = pitchRadius(16, p);
  const r2 = pitchRadius(34, p);
  s.path(sprocketPath(big[0], big[1], 34, p, ROLLER_mm * k, -94), { fill: 'paper', w: MEDIUM });
  s.path(sprocketPath(small[0], small[1], 16, p, ROLLER_mm * k, -94), { fill: 'paper', w: MEDIUM });
  s.circle(big[0], big[1], 62, { fill: 'paper' })
    .circle(big[0], big[1], 40, { fill: 'paper', w: HEAVY })
    .circle(big[0], big[1], 118, { w: THIN });
  for (let i = 0; i < 6; i += 1) {
    const [x, y] = polar(big[0], big[1], 92, i * 60);
    hexagon(s, x, y, 17, i * 9);
  }
  s.circle(small[0], small[1], 30, { fill: 'paper', w: HEAVY });
  hexagon(s, small[0], small[1], 24, 10);
  // Path of the pins: round the big one, along the tight upper run, round the small one, back along the sagging run.
  const dist = Math.hypot(big[0] - small[0], big[1] - small[1]);
  const lean = (Math.atan2(big[1] - small[1], big[0] - small[0]) * 180) / Math.PI;
  const open = (Math.asin((r2 - r1) / dist) * 180) / Math.PI;
  const upper = lean - 90 - open;
  const lower = lean + 90 + open;
  const route: Point[] = [];
  const arc = (c: Point, r: number, from: number, to: number) => {
    const steps = 120;
    for (let i = 0; i <= steps; i += 1) route.push(polar(c[0], c[1], r, from + ((to - from) * i) / steps));
  };
  arc(big, r2, upper, lower);
  const from = polar(big[0], big[1], r2, lower);
  const to = polar(small[0], small[1], r1, lower);
  const sag = 92;
  for (let i = 1; i < 160; i += 1) {
    const t = i / 160;
    route.push([from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t + 4 * sag * t * (1 - t)]);
  }
  arc(small, r1, lower, upper + 360);
  const a = polar(small[0], small[1], r1, upper);
  const b = polar(big[0], big[1], r2, upper);
  for (let i = 1; i < 160; i += 1)
    route.push([a[0] + ((b[0] - a[0]) * i) / 160, a[1] + ((b[1] - a[1]) * i) / 160]);
  // Pins at equal steps along it, links between.
  const first = route[0];
  if (first === undefined) return s;
  route.push(first);
  let length = 0;
  for (let i = 1; i < route.length; i += 1)
    length += Math.hypot(
      (route[i]?.[0] ?? 0) - (route[i - 1]?.[0] ?? 0),
      (route[i]?.[1] ?? 0) - (route[i - 1]?.[1] ?? 0),
    );
  const count = 2 * Math.round(length / p / 2);
  const step = length / count;
  const pins: Point[] = [];
  let walked = 0;
  let next = 0;
  for (let i = 1; i < route.length && pins.length < count; i += 1) {
    const q = route[i] ?? first;
    const o = route[i - 1] ?? first;
    const part = Math.hypot(q[0] - o[0], q[1] - o[1]);
    while (next <= walked + part && pins.length < count) {
      const t = part === 0 ? 0 : (next - walked) / part;
      pins.push([o[0] + (q[0] - o[0]) * t, o[1] + (q[1] - o[1]) * t]);
      next += step;
    }
    walked += part;
  }
  for (const outer of [false, true])
    for (let i = outer ? 1 : 0; i < pins.length; i += 2) {
      const m = pins[i];
      const n = pins[(i + 1) % pins.length];
      if (m && n) link(s, m, n, k, outer);
    }
  s.line(from[0], from[1], to[0], to[1], THIN, '34 9 7 9');
  const mid: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  s.dim('s', [mid[0], mid[1]], [mid[0], mid[1] + sag], -30);
  s.centre(small[0], small[1] - 200, small[0], 1010).centre(big[0], big[1] - 290, big[0], 1010);
  s.dim('c', [small[0], 960], [big[0], 960], 60);
  s.leader('A', [small[0] - 40, small[1] + 30], [150, 760]);
  s.leader('B', [big[0] + 110, big[1] + 60], [1500, 880]);
  s.turn(big[0], big[1], 340, -22, -50);
  return s;
}

/** Three teeth at 15 units a millimetre; the sprocket drives, so its leading flanks wear. */
function sprocketTeeth(): Sheet {
  const s = new Sheet('landscape');
  const k = 15;
  const p = PITCH_mm * k;
  const r = pitchRadius(16, p);
  const draw = (cx: number, worn: boolean): void => {
    const cy = 560 + r;
    const window = box(cx - 320, 180, 640, 780);
    s.within(window, () => {
      if (!worn) {
        s.cut(sprocketPath(cx, cy, 16, p, ROLLER_mm * k, -90), { gap: 17 });
      } else {
        s.path(sprocketPath(cx, cy, 16, p, ROLLER_mm * k, -90), { w: THIN, dash: '16 10' });
        const points: Point[] = [];
        for (let i = -2; i <= 2; i += 1) {
          const mid = -90 + i * 22.5;
          const seat = ROLLER_mm * k * 0.5;
          for (let j = 0; j <= 20; j += 1) {
            const t = (j / 20) * Math.PI;
            const c = polar(cx, cy, r + 4, mid);
            const along_ = Math.cos(Math.PI - t) * seat * (t > Math.PI / 2 ? 1.34 : 1.04);
            const down = Math.sin(t) * seat * 1.12;
            const rad = (mid * Math.PI) / 180;
            points.push([
              c[0] - Math.sin(rad) * along_ - Math.cos(rad) * down,
              c[1] + Math.cos(rad) * along_ - Math.sin(rad) * down,
            ]);
          }
          const tipA = polar(cx, cy, r + ROLLER_mm * k * 0.2, mid + 8.4);
          const tipB = polar(cx, cy, r + ROLLER_mm * k * 0.36, mid + 10.2);
          const tipC = polar(cx, cy, r + ROLLER_mm * k * 0.3, mid + 12.6);
          points.push(tipA, tipB, tipC);
        }
        const end: Point = [cx + 640, cy];
        const start: Point = [cx - 640, cy];
        s.cut(along([...points, end, start], true), { gap: 17 });
      }
      s.path(ring(cx, cy, r), { w: THIN, dash: '34 9 7 9' });
      for (const i of [-1, 0, 1]) {
        const [x, y] = polar(cx, cy, r + (worn ? 6 : 0), -90 + i * 22.5);
        s.circle(x + (worn ? 10 : 0), y, (ROLLER_mm * k) / 2, { fill: 'paper', w: HEAVY }).circle(
          x + (worn ? 10 : 0),
          y,
          ROLLER_mm * k * 0.25,
          { w: THIN },
        );
      }
    });
  };
  draw(420, false);
  draw(1190, true);
  const cy = 560 + r;
  const a = polar(420, cy, r, -90 - 22.5);
  const b = polar(420, cy, r, -90);
  s.dim('p', a, b, -190);
  s.letter('A', 420, 1050, 56).letter('B', 1190, 1050, 56);
  s.arrow(1300, 240, 1080, 240, MEDIUM).arrow(700, 240, 500, 240, MEDIUM);
  return s;
}

function rearAxle(): Sheet {
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

function gearbox(): Sheet {
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

export const chainAndSprockets: Record<string, () => Sheet> = {
  'chain-sag': chainSag,
  'sprocket-teeth': sprocketTeeth,
  'rear-axle': rearAxle,
  gearbox,
};
