/** The frame from above. One unit is about 2.2 mm. */
import { box, HEAVY, MEDIUM, type Point, polar, Sheet, THIN } from '../pen.ts';

export function chassisPlan(): Sheet {
  const s = new Sheet('landscape');
  const mid = 600;
  s.centre(60, mid, 1540, mid);
  // Side members, narrowing to the steering head.
  for (const way of [-1, 1]) {
    const p = (x: number, half: number): Point => [x, mid + way * half];
    s.poly(
      [p(420, 26), p(520, 44), p(640, 170), p(1500, 170), p(1500, 196), p(628, 196), p(500, 70), p(420, 50)],
      { fill: 'paper', w: MEDIUM },
    );
  }
  for (const x of [650, 1010, 1330, 1478]) s.box(x, mid - 172, 24, 344, { fill: 'paper', w: MEDIUM });
  // Steering head and front wheel (tyre from above).
  s.box(230, mid - 48, 186, 96, { r: 44, fill: 'paper', w: HEAVY });
  for (let i = 0; i < 9; i += 1) s.line(250 + i * 18, mid - 46, 246 + i * 18, mid + 46, 1.4);
  s.line(238, mid - 16, 408, mid - 16, THIN).line(238, mid + 16, 408, mid + 16, THIN);
  s.path(
    `M323 ${mid + 48}V${mid + 78}H398Q440 ${mid + 70} 440 ${mid + 26}H418Q416 ${mid + 58} 386 ${mid + 58}H343V${mid + 48}`,
    { fill: 'paper', w: MEDIUM },
  );
  s.circle(432, mid, 38, { fill: 'paper', w: HEAVY }).circle(432, mid, 17).circle(432, mid, 7, { w: THIN });
  s.path(`M420 ${mid - 36}L404 ${mid - 130}A12 12 0 0 1 426 ${mid - 134}L444 ${mid - 36}`, { fill: 'paper' });
  s.circle(415, mid - 131, 8, { w: THIN });
  s.path(`M418 ${mid - 131}L640 ${mid - 250}`, { w: MEDIUM }).path(`M414 ${mid - 141}L636 ${mid - 260}`, {
    w: MEDIUM,
  });
  // Radiator with fins.
  s.box(690, mid - 136, 44, 272, { fill: 'paper', w: HEAVY });
  for (let y = mid - 126; y < mid + 132; y += 12) s.line(696, y, 728, y, 1.4);
  // Engine: crankcase, two barrels across the frame, flywheel on the right-hand side (below), gearbox behind.
  s.path(box(780, mid - 120, 190, 250, 18), { fill: 'paper', w: HEAVY });
  for (const y of [mid - 56, mid + 62]) {
    s.circle(872, y, 56, { fill: 'paper', w: MEDIUM }).circle(872, y, 42, { w: THIN }).circle(872, y, 11);
    for (let i = 0; i < 6; i += 1) {
      const [bx, by] = polar(872, y, 49, 30 + i * 60);
      s.circle(bx, by, 5, { w: THIN });
    }
  }
  s.box(800, mid + 130, 144, 34, { fill: 'paper', w: MEDIUM, r: 5 }).line(
    800,
    mid + 147,
    944,
    mid + 147,
    THIN,
  );
  s.path(box(970, mid - 96, 150, 176, 14), { fill: 'paper', w: HEAVY });
  s.line(970, mid - 60, 1120, mid - 60, THIN).line(970, mid + 44, 1120, mid + 44, THIN);
  for (const [x, y] of [
    [984, -82],
    [1106, -82],
    [984, 66],
    [1106, 66],
  ] as const)
    s.circle(x, mid + y, 6, { w: THIN });
  // Tank above, chain line.
  s.path(box(752, mid - 168, 380, 150, 40), { w: THIN, dash: '30 10 6 10' });
  // Gearbox sprocket, chain, axle.
  s.box(1046, mid - 128, 64, 20, { fill: 'paper' });
  s.box(1214, mid - 330, 30, 690, { fill: 'paper', w: HEAVY });
  s.box(1146, mid - 128, 166, 20, { fill: 'paper', w: MEDIUM });
  s.box(1060, mid - 124, 238, 12, { fill: 'paper', w: THIN });
  for (let i = 0; i < 17; i += 1) s.line(1066 + i * 14, mid - 124, 1066 + i * 14, mid - 112, THIN);
  for (const y of [mid - 183, mid + 183]) {
    s.box(1186, y - 24, 86, 48, { fill: 'paper', w: HEAVY, r: 6 });
    s.circle(1197, y, 6, { w: THIN }).circle(1261, y, 6, { w: THIN });
  }
  for (const way of [-1, 1]) {
    const y = mid + way * 330;
    s.box(1136, y - 48, 186, 96, { r: 44, fill: 'paper', w: HEAVY });
    for (let i = 0; i < 9; i += 1) s.line(1156 + i * 18, y - 46, 1152 + i * 18, y + 46, 1.4);
    s.line(1144, y - 16, 1314, y - 16, THIN).line(1144, y + 16, 1314, y + 16, THIN);
    s.box(1206, y + (way > 0 ? -76 : 46), 46, 30, { fill: 'paper', w: MEDIUM });
  }
  // Battery.
  s.box(1370, mid + 34, 92, 122, { fill: 'paper', w: HEAVY });
  for (let i = 0; i < 6; i += 1)
    s.circle(1395 + (i % 2) * 42, mid + 62 + Math.floor(i / 2) * 34, 10, { w: THIN });
  s.leader('A', [320, mid - 30], [220, mid - 190]);
  s.leader('B', [712, mid + 110], [640, mid + 330]);
  s.leader('C', [850, mid + 100], [800, mid + 330]);
  s.leader('D', [1040, mid + 30], [990, mid + 330]);
  s.leader('E', [1176, mid - 118], [1040, mid - 330]);
  s.leader('F', [1229, mid + 90], [1110, mid + 250]);
  s.leader('G', [1440, mid + 140], [1500, mid + 320]);
  s.leader('H', [800, mid - 150], [740, mid - 330]);
  s.arrow(180, mid + 330, 70, mid + 330, MEDIUM);
  return s;
}
