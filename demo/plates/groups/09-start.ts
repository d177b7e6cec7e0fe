/** The first start: everything in its place, the throttle stop, two ways to stop. */
import { along, box, HEAVY, MEDIUM, type Point, Sheet, THIN } from '../pen.ts';
import { ground, spring } from '../shapes.ts';
import { vanSide } from './01-van-side.ts';

function startSetUp(): Sheet {
  const s = new Sheet('landscape');
  const floor = 900;
  const k = 0.74;
  ground(s, 40, 1560, floor);
  s.placed(330, floor, -3.6, () => s.placed(-330, -floor, 0, () => vanSide(s, floor)), k);
  const rear: Point = [330 + 851 * k * 0.998, floor - 851 * k * 0.063 - 93 * k];
  // Stands below the axle: a tripod with a saddle.
  s.poly(
    [
      [rear[0] - 14, rear[1] + 12],
      [rear[0] + 14, rear[1] + 12],
      [rear[0] + 62, floor],
      [rear[0] + 40, floor],
      [rear[0], rear[1] + 56],
      [rear[0] - 40, floor],
      [rear[0] - 62, floor],
    ],
    { fill: 'paper', w: HEAVY },
  );
  s.path(
    `M${rear[0] - 26} ${rear[1] - 8}Q${rear[0]} ${rear[1] + 34} ${rear[0] + 26} ${rear[1] - 8}L${rear[0] + 18} ${rear[1] + 20}H${rear[0] - 18}Z`,
    { fill: 'paper' },
  );
  s.line(rear[0] - 48, floor - 30, rear[0] + 48, floor - 30, MEDIUM);
  // Chocks before and behind the front wheel.
  for (const way of [-1, 1])
    s.poly(
      [
        [330 + way * 44, floor],
        [330 + way * 132, floor],
        [330 + way * 126, floor - 22],
        [330 + way * 62, floor - 50],
      ],
      { fill: 'paper', w: HEAVY },
    );
  // Extinguisher on the windward side.
  s.path(box(96, floor - 150, 56, 150, 18), { fill: 'paper', w: HEAVY }).box(112, floor - 172, 24, 22, {
    fill: 'paper',
  });
  s.path(`M104 ${floor - 190}L146 ${floor - 180}M136 ${floor - 168}Q176 ${floor - 150} 168 ${floor - 60}`, {
    w: MEDIUM,
  });
  s.arrow(70, 300, 200, 300).arrow(70, 350, 170, 350).arrow(70, 400, 200, 400);
  // Cut-out switch on a lead, hanging out of the cab.
  s.path(`M480 ${floor - 320}C470 ${floor - 200} 560 ${floor - 210} 590 ${floor - 130}`, { w: MEDIUM });
  s.path(box(566, floor - 132, 50, 74, 10), { fill: 'paper', w: HEAVY }).circle(591, floor - 98, 12, {
    fill: 'paper',
  });
  // Board for the air intake, leaning ready.
  s.poly(
    [
      [690, floor],
      [712, floor],
      [752, floor - 150],
      [730, floor - 156],
    ],
    { fill: 'paper', w: HEAVY },
  );
  s.line(704, floor - 20, 738, floor - 140, 1.4);
  // Nobody in line with the driven wheels and the chain.
  const zone: Point[] = [
    [1230, floor - 6],
    [1530, floor - 6],
    [1530, floor - 260],
    [1230, floor - 260],
  ];
  s.within(along(zone, true), () => {
    for (let i = 0; i < 40; i += 1) s.line(1180 + i * 26, floor, 920 + i * 26, floor - 260, 1.3);
  });
  s.poly(zone, { w: THIN, dash: '20 10' });
  s.leader('A', [rear[0] + 30, floor - 22], [rear[0] + 60, floor + 130]);
  s.leader('B', [430, floor - 14], [470, floor + 130]);
  s.leader('C', [124, floor - 60], [150, floor + 130]);
  s.leader('D', [604, floor - 70], [640, floor + 130]);
  s.leader('E', [718, floor - 60], [780, floor + 130]);
  s.leader('F', [1380, floor - 120], [1390, floor + 130]);
  return s;
}

function throttleStop(): Sheet {
  const s = new Sheet('landscape');
  const cx = 760;
  // Body seen from the side with the slide cut free.
  s.cut(`M300 500H${cx - 150}V210H${cx - 210}V440H300Z`, { gap: 13 });
  s.cut(`M1260 500H${cx + 150}V210H${cx + 210}V380L${cx + 210} 440H1220V400H1260Z`, { gap: 13, angle: -45 });
  s.cut(`M300 900H${cx - 40}V980H300Z`, { gap: 13 });
  s.cut(`M1260 900H${cx + 40}V980H1220V1020H1260Z`, { gap: 13, angle: -45 });
  s.cut(`M${cx - 40} 900H${cx - 16}V1110H${cx - 40}Z`, { gap: 9 }).cut(
    `M${cx + 40} 900H${cx + 16}V1110H${cx + 40}Z`,
    { gap: 9, angle: -45 },
  );
  // Slide with spring and cable, lifted a little by the screw.
  s.cut(`M${cx - 148} 250H${cx - 104}V660H${cx + 104}V250H${cx + 148}V850H${cx - 30}L${cx - 148} 800Z`, {
    gap: 12,
  });
  spring(s, [cx, 196], [cx, 640], 150, 8, 14);
  s.line(cx, 40, cx, 660, HEAVY);
  s.path(`M${cx - 9} 664V880L${cx - 2} 1060H${cx + 2}L${cx + 9} 880V664Z`, { fill: 'ink', w: THIN });
  // Notch in the slide and the screw that bears in it, from the left.
  s.placed(cx - 148, 470, -20, () => {
    s.box(-220, -18, 222, 36, { fill: 'paper', w: MEDIUM });
    for (let i = 0; i < 13; i += 1) s.line(-160 + i * 12, -18, -164 + i * 12, 18, 1.5);
    s.path('M2 -18L24 0L2 18Z', { fill: 'paper' });
    spring(s, [-290, 0], [-224, 0], 56, 3, 8);
    s.box(-340, -34, 48, 68, { fill: 'paper', w: MEDIUM, r: 8 }).line(-340, 0, -322, 0, HEAVY);
  });
  // Idle air screw.
  s.box(1060, 800, 36, 104, { fill: 'paper', w: MEDIUM }).path('M1060 904L1078 950L1096 904Z', {
    fill: 'paper',
  });
  s.box(1060, 980, 36, 70, { fill: 'paper', w: 0 });
  // Cable adjuster with its free play.
  s.cut(`M${cx - 226} 210V150H${cx - 40}V90H${cx - 14}V180H${cx - 170}V210Z`, { gap: 11 });
  s.cut(`M${cx + 226} 210V150H${cx + 40}V90H${cx + 14}V180H${cx + 170}V210Z`, { gap: 11, angle: -45 });
  s.line(cx + 20, 40, cx + 130, 40, THIN).line(cx + 46, 88, cx + 130, 88, THIN);
  s.line(cx + 116, 4, cx + 116, 20, THIN)
    .head(cx + 116, 40, 90)
    .line(cx + 116, 108, cx + 116, 130, THIN)
    .head(cx + 116, 88, -90)
    .letter('f', cx + 160, 62, 42);
  s.arrow(180, 700, 290, 700).arrow(1290, 700, 1400, 700);
  s.leader('A', [cx - 440, 578], [200, 560]);
  s.leader('B', [1078, 840], [1180, 720]);
  s.leader('C', [cx, 60], [cx - 200, 70]);
  return s;
}

function twoWays(): Sheet {
  const s = new Sheet('landscape');
  // Left: breaker, switch across it.
  s.path(box(70, 110, 670, 960, 20), { w: THIN });
  s.path(box(860, 110, 670, 960, 20), { w: THIN });
  const wire = (...p: Point[]) => s.path(along(p), { w: MEDIUM });
  s.box(150, 250, 90, 220, { fill: 'paper', w: HEAVY });
  for (let i = 0; i < 8; i += 1) s.line(150, 276 + i * 26, 240, 264 + i * 26, THIN);
  wire([195, 250], [195, 200], [560, 200], [560, 420]);
  wire([195, 470], [195, 860]);
  wire([400, 200], [400, 420]);
  s.circle(400, 200, 9, { fill: 'ink', w: 0 });
  s.circle(400, 428, 9, { fill: 'paper' })
    .line(400, 560, 360, 448, HEAVY)
    .circle(400, 566, 9, { fill: 'paper' });
  s.path('M300 436Q318 450 344 465Q318 480 300 494Q282 480 256 465Q282 450 300 436Z', {
    fill: '#e4e2dc',
    w: MEDIUM,
  });
  s.circle(300, 465, 11, { fill: 'paper', w: THIN });
  wire([400, 576], [400, 860]);
  s.circle(560, 428, 9, { fill: 'paper' })
    .line(560, 560, 606, 448, HEAVY)
    .circle(560, 566, 9, { fill: 'paper' });
  wire([560, 576], [560, 860]);
  s.path('M590 400A90 90 0 0 1 640 470', { w: THIN }).head(590, 400, 200, 20);
  for (const x of [195, 400, 560]) {
    for (const [i, half] of [40, 27, 13].entries())
      s.line(x - half, 860 + i * 14, x + half, 860 + i * 14, MEDIUM);
  }
  s.letter('A', 650, 560, 56);
  s.line(120, 930, 690, 930, THIN, '34 9 7 9');
  // Right: carburettor mouth with a flat board over it, held by its handle.
  const x = 1210;
  s.path(box(x + 60, 360, 200, 320, 30), { fill: 'paper', w: HEAVY });
  s.box(x + 110, 240, 96, 120, { fill: 'paper' }).path(box(x + 92, 680, 136, 150, 30), {
    fill: 'paper',
    w: HEAVY,
  });
  s.box(x - 20, 420, 80, 200, { fill: 'paper', w: HEAVY }).box(x - 44, 396, 24, 248, {
    fill: 'paper',
    w: HEAVY,
  });
  s.cut(box(x - 76, 340, 28, 360), { gap: 8, angle: 78 });
  s.path(`M${x - 76} 496H${x - 170}V452H${x - 206}V588H${x - 170}V544H${x - 76}Z`, {
    fill: 'paper',
    w: HEAVY,
  });
  s.arrow(x - 300, 520, x - 222, 520, MEDIUM);
  s.leader('B', [x - 62, 640], [x - 200, 780]);
  s.path(`M${x + 260} 480H1530M${x + 260} 600H1530`, { w: MEDIUM });
  return s;
}

export const firstStart: Record<string, () => Sheet> = {
  'start-set-up': startSetUp,
  'throttle-stop': throttleStop,
  'two-ways-to-stop': twoWays,
};
