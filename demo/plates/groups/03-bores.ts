/** Bores, rings and pistons. The bore is 54 mm; units a millimetre stand beside each drawing. */
import { box, HEAVY, MEDIUM, polar, ring, Sheet, sweep, THIN } from '../pen.ts';

/** 8 units a millimetre across, 7 down. */
function borePositions(): Sheet {
  const s = new Sheet('portrait');
  const cx = 600;
  const half = 216;
  const top = 600;
  const foot = 1510;
  // Plan above.
  const py = 300;
  s.path(box(cx - 330, py - 230, 660, 460, 60), { fill: 'paper', w: MEDIUM });
  s.cut(`${ring(cx, py, 176)}${ring(cx, py, 150)}`, { gap: 10 });
  s.arrow(cx, py, cx, py - 146, MEDIUM).arrow(cx, py, cx, py + 146, MEDIUM);
  s.arrow(cx, py, cx - 146, py, MEDIUM).arrow(cx, py, cx + 146, py, MEDIUM);
  s.letter('1', cx + 34, py - 80).letter('2', cx + 84, py + 40);
  s.centre(cx, py - 260, cx, py + 260).centre(cx - 380, py, cx + 380, py);
  s.box(cx - 410, py - 50, 80, 100, { fill: 'paper' })
    .line(cx - 430, py - 66, cx - 430, py + 66, MEDIUM)
    .line(cx - 410, py - 66, cx - 410, py + 66, MEDIUM);
  s.path(`M${cx - 430} ${py - 66}H${cx - 410}M${cx - 430} ${py + 66}H${cx - 410}`);
  // Section: exhaust to the left, inlet to the right, both walls with water space above the ports.
  const wall = (way: number, ports: [number, number][]): void => {
    const X = (d: number) => cx + way * d;
    let y = top;
    const inner = half;
    const outer = half + 40;
    for (const [from, to] of [...ports, [foot, foot] as [number, number]]) {
      s.cut(`M${X(inner)} ${y}H${X(outer)}V${from}H${X(inner)}Z`, { angle: way * 45, gap: 11 });
      y = to;
    }
    // Outer jacket and its water.
    s.cut(
      `M${X(outer)} ${top}H${X(outer + 130)}V${top + 330}H${X(outer)}V${top + 300}H${X(outer + 104)}V${top + 34}H${X(outer)}Z`,
      { angle: way * 45, gap: 11 },
    );
    for (let i = 0; i < 5; i += 1)
      s.line(X(outer + 18), top + 90 + i * 40, X(outer + 86), top + 90 + i * 40, 1.6, '16 10');
  };
  const exhaust: [number, number] = [top + 330, top + 450];
  const inlet: [number, number] = [top + 560, top + 690];
  wall(-1, [exhaust]);
  wall(1, [inlet]);
  // Ducts.
  s.cut(`M${cx - half - 40} ${exhaust[0] - 26}H${cx - half - 200}V${exhaust[0]}H${cx - half - 40}Z`, {
    gap: 11,
  });
  s.cut(`M${cx - half - 40} ${exhaust[1]}H${cx - half - 200}V${exhaust[1] + 26}H${cx - half - 40}Z`, {
    gap: 11,
  });
  s.cut(`M${cx + half + 40} ${inlet[0] - 26}H${cx + half + 190}V${inlet[0]}H${cx + half + 40}Z`, {
    gap: 11,
    angle: -45,
  });
  s.cut(`M${cx + half + 40} ${inlet[1]}H${cx + half + 190}V${inlet[1] + 26}H${cx + half + 40}Z`, {
    gap: 11,
    angle: -45,
  });
  // Flange at the foot.
  s.cut(`M${cx - half - 40} ${foot - 150}H${cx - half - 150}V${foot - 110}H${cx - half - 40}Z`, { gap: 11 });
  s.cut(`M${cx + half + 40} ${foot - 150}H${cx + half + 150}V${foot - 110}H${cx + half + 40}Z`, {
    gap: 11,
    angle: -45,
  });
  // Edges seen behind: transfer ports in the far wall.
  s.line(cx - half, top, cx + half, top, HEAVY).line(cx - half, foot, cx + half, foot, HEAVY);
  s.path(box(cx - 150, top + 400, 76, 60, 10), { w: THIN }).path(box(cx + 74, top + 400, 76, 60, 10), {
    w: THIN,
  });
  s.centre(cx, top - 60, cx, foot + 60);
  for (const [char, y] of [
    ['A', top + 76],
    ['B', top + 290],
    ['C', top + 738],
    ['D', foot - 40],
  ] as const) {
    s.line(cx - half + 20, y, cx + half - 20, y, MEDIUM);
    s.head(cx - half + 2, y, 180).head(cx + half - 2, y, 0);
    s.letter(char, cx - 40, y - 32);
  }
  return s;
}

/** 11 units a millimetre in plan, 7 in section. */
function ringGap(): Sheet {
  const s = new Sheet('landscape');
  // Section: bore, ring lying square, piston crown that pushed it down.
  const cx = 390;
  const half = 200;
  s.cut(`M${cx - half} 200H${cx - half - 70}V1060H${cx - half}Z`, { gap: 12 });
  s.cut(`M${cx + half} 200H${cx + half + 70}V1060H${cx + half}Z`, { gap: 12, angle: -45 });
  s.path(
    `M${cx - half + 3} 590V110H${cx + half - 3}V590Q${cx + half - 3} 604 ${cx + half - 16} 604H${cx - half + 16}Q${cx - half + 3} 604 ${cx - half + 3} 590Z`,
    { fill: 'paper', w: HEAVY },
  );
  for (const y of [560, 520]) s.box(cx - half + 3, y - 14, 2 * half - 6, 14, { w: THIN });
  s.circle(cx, 290, 60).circle(cx, 290, 46, { w: THIN });
  s.path(`M${cx - half} 110Q${cx} 70 ${cx + half} 110`, { w: THIN, dash: '14 8' });
  s.arrow(cx, 400, cx, 480);
  for (const x of [cx - half, cx + half - 26]) s.box(x, 606, 26, 20, { fill: 'ink', w: 0 });
  s.line(cx - half + 26, 607, cx + half - 26, 607, THIN).line(cx - half + 26, 625, cx + half - 26, 625, THIN);
  s.line(cx - half, 1060, cx + half, 1060, HEAVY);
  s.centre(cx, 60, cx, 1110);
  s.leader('A', [cx + 110, 616], [cx + 130, 770]);
  s.leader('B', [cx - 130, 596], [cx - 120, 440]);
  // Plan: ring in the bore, feeler in its gap.
  const px = 1110;
  const py = 560;
  const R = 300;
  s.cut(`${ring(px, py, R + 70)}${ring(px, py, R)}`, { gap: 12 });
  const gap = 3.4;
  const from = 90 + gap;
  const to = 90 - gap + 360;
  const [ax, ay] = polar(px, py, R - 30, to);
  s.path(
    `${sweep(px, py, R - 1, from, to)}L${ax.toFixed(1)} ${ay.toFixed(1)}${sweep(px, py, R - 30, to, from).replace(/^M[^A]*/, '')}L${polar(
      px,
      py,
      R - 1,
      from,
    )
      .map((v) => v.toFixed(1))
      .join(' ')}Z`,
    { fill: '#e4e2dc', w: MEDIUM },
  );
  // Feeler blade, seen on edge, standing in the gap and reaching into the bore.
  s.box(px - 15, py + 60, 30, R - 62, { fill: 'paper', w: MEDIUM, r: 12 });
  s.line(px - 8, py + 90, px - 8, py + R - 20, 1.4);
  s.centre(px - R - 110, py, px + R + 110, py).centre(px, py - R - 110, px, py + R + 110);
  s.leader('C', [px, py + 150], [px + 130, py + 90]);
  s.leader('A', [polar(px, py, R - 15, 215)[0], polar(px, py, R - 15, 215)[1]], [px - 110, py - 90]);
  return s;
}

/** 10 units a millimetre. */
function pistonPegs(): Sheet {
  const s = new Sheet('portrait');
  const cx = 560;
  const r = 270;
  const py = 350;
  s.circle(cx, py, r, { w: HEAVY, fill: 'paper' }).circle(cx, py, r - 14, { w: THIN });
  s.centre(cx - r - 50, py, cx + r + 50, py).centre(cx, py - r - 50, cx, py + r + 50);
  // Arrow cast in the crown.
  s.poly(
    [
      [cx - 20, py - 22],
      [cx - 100, py - 22],
      [cx - 100, py - 58],
      [cx - 190, py],
      [cx - 100, py + 58],
      [cx - 100, py + 22],
      [cx - 20, py + 22],
    ],
    { fill: 'paper', w: MEDIUM },
  );
  const peg = (deg: number) => {
    const at = polar(cx, py, r - 7, deg);
    s.circle(at[0], at[1], 9, { fill: 'ink', w: 0 });
  };
  peg(52);
  peg(-52);
  s.leader('B', [cx - 60, py], [cx - 110, py + 150]);
  s.leader('A', [polar(cx, py, r - 7, -52)[0], polar(cx, py, r - 7, -52)[1]], [cx + 320, py - 250]);
  // Elevation, seen from the inlet side: crown at the top.
  const top = 760;
  const foot = 1370;
  s.path(
    `M${cx - r} ${foot - 20}V${top + 20}Q${cx - r} ${top} ${cx - r + 20} ${top}H${cx + r - 20}Q${cx + r} ${top} ${cx + r} ${top + 20}V${foot - 20}Q${cx + r} ${foot} ${cx + r - 16} ${foot}H${cx + 140}Q${cx} ${foot - 60} ${cx - 140} ${foot}H${cx - r + 16}Q${cx - r} ${foot} ${cx - r} ${foot - 20}Z`,
    { fill: 'paper', w: HEAVY },
  );
  const rings: [number, number][] = [
    [top + 62, cx - 205],
    [top + 140, cx + 205],
  ];
  for (const [y, end] of rings) {
    s.box(cx - r - 8, y, 2 * r + 16, 26, { fill: 'paper', w: MEDIUM });
    s.box(end - 15, y, 30, 26, { fill: 'paper', w: THIN }).circle(end, y + 13, 8, { fill: 'ink', w: 0 });
  }
  s.line(cx - r, top + 26, cx + r, top + 26, 1.4);
  s.circle(cx, top + 330, 92, { fill: 'paper' })
    .circle(cx, top + 330, 80, { w: MEDIUM })
    .circle(cx, top + 330, 50, { w: THIN });
  s.path(sweep(cx, top + 330, 86, 110, 400), { w: MEDIUM });
  s.centre(cx, top - 40, cx, foot + 40).centre(cx - r - 50, top + 330, cx + r + 50, top + 330);
  for (const d of [20, 34, 46, 56]) s.line(cx + r - d, top + 190, cx + r - d, foot - 30, 1.4);
  s.leader('A', [cx - 205, top + 75], [cx - 380, top + 10]);
  s.leader('A', [cx + 205, top + 153], [cx + 440, top + 30]);
  // Enlarged groove.
  const dx = 1010;
  const dy = 1220;
  const loop = ring(dx, dy, 150);
  s.path(loop, { fill: 'paper', w: THIN });
  s.within(loop, () => {
    s.cut(
      `M${dx - 160} ${dy - 170}H${dx + 30}V${dy - 40}H${dx - 90}V${dy + 44}H${dx + 30}V${dy + 170}H${dx - 160}Z`,
      { gap: 12 },
    );
    s.cut(`M${dx - 66} ${dy - 18}H${dx + 58}V${dy + 44}H${dx - 66}Z`, { gap: 12, angle: -45 });
  });
  s.path(loop, { w: MEDIUM });
  s.line(cx + r + 8, top + 153, dx - 90, dy - 122, THIN);
  s.leader('C', [dx - 10, dy - 29], [dx + 100, dy - 210]);
  return s;
}

export const boresAndRings: Record<string, () => Sheet> = {
  'bore-positions': borePositions,
  'ring-gap': ringGap,
  'piston-pegs': pistonPegs,
};
