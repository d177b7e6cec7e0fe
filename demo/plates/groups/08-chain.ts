/** Chain and sprockets. Chain pitch 15.875 mm, rollers 10.16 mm (ISO 606, 10B; memory). */
import { along, box, HEAVY, MEDIUM, type Point, polar, ring, Sheet, THIN } from '../pen.ts';
import { hexagon, sprocketPath } from '../shapes.ts';

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

export function chainSag(): Sheet {
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
export function sprocketTeeth(): Sheet {
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
