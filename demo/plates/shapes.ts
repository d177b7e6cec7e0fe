/** Things that come back on many plates: nuts, threads, springs, wheels, chains, ground. */
import { along, HEAVY, MEDIUM, type Point, polar, type Sheet, sweep, THIN } from './pen.ts';

/** Nut seen from above. */
export function hexagon(s: Sheet, cx: number, cy: number, r: number, turn = 0): void {
  const corners = [0, 60, 120, 180, 240, 300].map((deg) => polar(cx, cy, r, deg + turn));
  s.poly(corners, { fill: 'paper' })
    .circle(cx, cy, r * 0.86, { w: THIN })
    .circle(cx, cy, r * 0.5, { w: MEDIUM });
}
/** Nut or bolt head from the side, its axis along y, `across` wide. */
export function nutSide(s: Sheet, cx: number, y: number, across: number, height: number): void {
  s.box(cx - across / 2, y, across, height, { fill: 'paper', r: 4 });
  s.line(cx - across / 4.4, y + 2, cx - across / 4.4, y + height - 2, THIN);
  s.line(cx + across / 4.4, y + 2, cx + across / 4.4, y + height - 2, THIN);
}
/** Threaded rod from the side, axis along y. */
export function thread(s: Sheet, cx: number, y0: number, y1: number, dia: number, pitch = 11): void {
  s.box(cx - dia / 2, y0, dia, y1 - y0, { fill: 'paper' });
  for (let y = y0 + pitch / 2; y < y1 - 2; y += pitch)
    s.line(cx - dia / 2, y + pitch / 5, cx + dia / 2, y - pitch / 5, THIN);
}
/** Coil spring between two points, `dia` across, with `turns` turns. */
export function coil(s: Sheet, a: Point, b: Point, dia: number, turns: number, w = MEDIUM): void {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const deg = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
  s.placed(a[0], a[1], deg, () => {
    const step = length / turns;
    for (let i = 0; i < turns; i += 1) {
      s.line(i * step, -dia / 2, (i + 0.5) * step, dia / 2, w);
      s.line((i + 0.5) * step, dia / 2, (i + 1) * step, -dia / 2, w * 0.5);
    }
  });
}
/** Compression spring drawn as overlapping wires, front halves only on top. */
export function spring(s: Sheet, a: Point, b: Point, dia: number, turns: number, wire = 12): void {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const deg = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
  s.placed(a[0], a[1], deg, () => {
    const step = length / turns;
    for (let i = 0; i <= turns; i += 1) {
      const x = i * step;
      if (i < turns)
        s.poly(
          [
            [x + step / 2 - wire / 2, dia / 2],
            [x + step / 2 + wire / 2, dia / 2],
            [x + step + wire / 2, -dia / 2],
            [x + step - wire / 2, -dia / 2],
          ],
          { fill: 'paper', w: THIN },
        );
    }
    for (let i = 0; i < turns; i += 1) {
      const x = i * step;
      s.poly(
        [
          [x - wire / 2, -dia / 2],
          [x + wire / 2, -dia / 2],
          [x + step / 2 + wire / 2, dia / 2],
          [x + step / 2 - wire / 2, dia / 2],
        ],
        { fill: 'paper', w: MEDIUM },
      );
    }
  });
}
/** Wheel with tyre, seen along its axle. */
export function wheel(s: Sheet, cx: number, cy: number, r: number): void {
  s.circle(cx, cy, r, { w: HEAVY, fill: 'paper' });
  s.circle(cx, cy, r * 0.93, { w: THIN });
  s.circle(cx, cy, r * 0.58, { w: MEDIUM }).circle(cx, cy, r * 0.53, { w: THIN });
  s.circle(cx, cy, r * 0.2, { w: MEDIUM });
  for (let i = 0; i < 4; i += 1) {
    const [x, y] = polar(cx, cy, r * 0.36, 45 + i * 90);
    s.circle(x, y, r * 0.055, { w: THIN });
  }
  for (let i = 0; i < 48; i += 1) {
    const a = polar(cx, cy, r * 0.93, i * 7.5);
    const b = polar(cx, cy, r * 0.985, i * 7.5 + 2);
    s.line(a[0], a[1], b[0], b[1], THIN);
  }
}
/** Ground line with short strokes below it. */
export function ground(s: Sheet, x0: number, x1: number, y: number): void {
  s.line(x0, y, x1, y, MEDIUM);
  for (let x = x0 + 16; x < x1 - 10; x += 26) s.line(x, y + 3, x - 14, y + 20, THIN);
}
/** Break line across something that goes on. */
export function breakLine(s: Sheet, a: Point, b: Point, wave = 10): void {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const points: Point[] = [];
  for (let i = 0; i <= 24; i += 1) {
    const t = (length * i) / 24;
    const o = Math.sin((i / 24) * Math.PI * 4) * wave;
    points.push([a[0] + ux * t - uy * o, a[1] + uy * t + ux * o]);
  }
  s.path(along(points), { w: MEDIUM });
}
/**
 * Outline of a roller-chain sprocket: roller seats of radius 0.53 rollers on the pitch circle, straight flanks, round tips.
 * Pitch circle diameter is pitch / sin(180° / teeth). Tooth form simplified for drawing.
 */
export function sprocketPath(
  cx: number,
  cy: number,
  teeth: number,
  pitch: number,
  roller: number,
  phase = 0,
): string {
  const rp = pitch / 2 / Math.sin(Math.PI / teeth);
  const seat = roller * 0.53;
  const tip = rp + roller * 0.38;
  const step = 360 / teeth;
  const half = ((Math.asin(seat / rp) * 180) / Math.PI) * 0.94;
  let d = '';
  for (let i = 0; i < teeth; i += 1) {
    const mid = phase + i * step;
    const p = (r: number, deg: number) =>
      polar(cx, cy, r, deg)
        .map((v) => v.toFixed(2))
        .join(' ');
    d += `${i === 0 ? 'M' : 'L'}${p(rp + seat * 0.2, mid - half)}A${seat} ${seat} 0 0 0 ${p(rp + seat * 0.2, mid + half)}`;
    d += `L${p(tip, mid + step / 2 - step * 0.1)}A${roller * 0.25} ${roller * 0.25} 0 0 1 ${p(tip, mid + step / 2 + step * 0.1)}`;
  }
  return `${d}Z`;
}
/** Ball in a bearing cut along its axis: both races and the ball, centred on (cx, cy), axis along x. */
export function ballRow(s: Sheet, cx: number, cy: number, width: number, height: number): void {
  s.cut(`M${cx - width / 2} ${cy - height / 2}h${width}v${height * 0.3}h${-width}Z`, { angle: 45, gap: 9 });
  s.cut(`M${cx - width / 2} ${cy + height * 0.2}h${width}v${height * 0.3}h${-width}Z`, { angle: 45, gap: 9 });
  s.circle(cx, cy, height * 0.27, { fill: 'paper' });
}
/** Round end shading: a few lines closing up towards the edge of a cylinder whose axis lies along x. */
export function shade(s: Sheet, x0: number, x1: number, top: number, bottom: number): void {
  const h = bottom - top;
  for (const t of [0.7, 0.8, 0.87, 0.92, 0.96]) s.line(x0 + 6, top + h * t, x1 - 6, top + h * t, 1.6);
}
export { sweep };
