/** Fuel: carburettor, float level, tap, mixing. */
import { box, HEAVY, MEDIUM, ring, Sheet, THIN } from '../pen.ts';
import { nutSide, spring } from '../shapes.ts';

const FUEL = '#dfe3e2';

function carburettor(): Sheet {
  const s = new Sheet('portrait');
  const cx = 690;
  const level = 800;
  // Fuel in the bowl and the well.
  s.box(150, level, 300, 334, { fill: FUEL, w: 0 })
    .box(300, 1126, 360, 34, { fill: FUEL, w: 0 })
    .box(cx - 60, level, 120, 360, { fill: FUEL, w: 0 });
  // Body: mixing bore from G to H, slide bore across it.
  s.cut(`M540 560H${cx - 84}V300H${cx - 120}V260H${cx - 150}V520H540Z`, { gap: 12 });
  s.cut(`M1010 560H${cx + 84}V300H${cx + 120}V260H${cx + 150}V520H980V480H1010Z`, { gap: 12, angle: -45 });
  s.cut(`M540 700H${cx - 26}V740H${cx - 60}V1126H450V1100H${cx - 92}V744H540Z`, { gap: 12 });
  s.cut(`M1010 700H${cx + 26}V740H${cx + 60}V1126H${cx + 92}V744H980V780H1010Z`, { gap: 12, angle: -45 });
  s.cut('M540 560L520 540V480H500V566H540Z', { gap: 10 }).cut('M540 700L520 720V784H500V694H540Z', {
    gap: 10,
  });
  // Slide with its cut-away on the air side, spring, cable, cap.
  s.cut(`M${cx - 82} 320H${cx - 56}V560H${cx + 56}V320H${cx + 82}V650H${cx - 20}L${cx - 82} 622Z`, {
    gap: 10,
    angle: 45,
  });
  spring(s, [cx, 220], [cx, 548], 92, 8, 9);
  s.line(cx, 90, cx, 560, HEAVY);
  s.cut(`M${cx - 132} 260V190H${cx - 20}V130H${cx - 8}V220H${cx - 100}V260Z`, { gap: 10 });
  s.cut(`M${cx + 132} 260V190H${cx + 20}V130H${cx + 8}V220H${cx + 100}V260Z`, { gap: 10, angle: -45 });
  // Needle jet and main jet.
  s.cut(`M${cx - 26} 690H${cx - 11}V1010H${cx - 34}V980H${cx - 26}Z`, { gap: 8 });
  s.cut(`M${cx + 26} 690H${cx + 11}V1010H${cx + 34}V980H${cx + 26}Z`, { gap: 8, angle: -45 });
  s.path(`M${cx - 5} 566V700L${cx - 1} 960H${cx + 1}L${cx + 5} 700V566Z`, { fill: 'ink', w: THIN });
  s.line(cx - 26, 574, cx + 26, 574, MEDIUM).line(cx - 14, 562, cx + 14, 562, MEDIUM);
  s.cut(`M${cx - 30} 1016H${cx - 5}V1080H${cx - 30}Z`, { gap: 8 }).cut(
    `M${cx + 30} 1016H${cx + 5}V1080H${cx + 30}Z`,
    { gap: 8, angle: -45 },
  );
  // Plug below.
  s.cut(`M${cx - 92} 1126H${cx + 92}V1160H${cx + 60}V1196H${cx - 60}V1160H${cx - 92}Z`, { gap: 10 });
  nutSide(s, cx, 1196, 150, 50);
  // Passage from the bowl.
  s.cut(`M180 1160H${cx - 92}V1190H180Z`, { gap: 10 });
  // Bowl with float, needle and seat in the cap.
  s.cut(`M120 760H150V1120H300V1160H160Q120 1160 120 1120Z`, { gap: 12 });
  s.cut(`M480 760H450V1100H480Z`, { gap: 12, angle: -45 });
  s.cut(`M104 760V720H250V680H284V738H488V760Z`, { gap: 12 });
  s.cut(`M316 738V680H350V720H488V738Z`, { gap: 12, angle: -45 });
  s.path('M284 680V640H316V680', { fill: 'paper' }).path('M310 640V600H180V632H290V640', { fill: 'paper' });
  s.box(138, 588, 50, 56, { fill: 'paper', r: 6 });
  s.line(150, level, 190, level, MEDIUM).line(410, level, 450, level, MEDIUM);
  s.path(box(190, 790, 220, 200, 34), { fill: 'paper', w: HEAVY }).line(190, 890, 410, 890, THIN);
  s.path(box(292, 780, 16, 230, 4), { fill: 'paper' });
  s.path('M292 790V746L300 724L308 746V790Z', { fill: 'ink', w: THIN });
  for (let i = 0; i < 3; i += 1) {
    s.line(160 + i * 6, level + 18 + i * 60, 184, level + 18 + i * 60, 1.6).line(
      416,
      level + 18 + i * 60,
      444,
      level + 18 + i * 60,
      1.6,
    );
  }
  s.line(cx - 58, level, cx - 28, level, MEDIUM).line(cx + 28, level, cx + 58, level, MEDIUM);
  // Idle air screw into the engine-side wall.
  s.box(cx + 178, 744, 30, 70, { fill: 'paper' }).path(`M${cx + 178} 744L${cx + 193} 706L${cx + 208} 744Z`, {
    fill: 'paper',
  });
  spring(s, [cx + 193, 770], [cx + 193, 830], 50, 3, 6);
  s.box(cx + 168, 830, 50, 26, { fill: 'paper', r: 5 });
  s.arrow(400, 630, 480, 630).arrow(1030, 630, 1120, 630);
  s.centre(cx, 60, cx, 1290).centre(300, 560, 300, 1210);
  s.leader('A', [cx + 70, 420], [cx + 330, 330]);
  s.leader('B', [cx + 18, 574], [cx + 330, 420]);
  s.leader('C', [cx + 18, 900], [cx + 300, 960]);
  s.leader('D', [cx + 18, 1050], [cx + 300, 1080]);
  s.leader('E', [230, 920], [70, 1240]);
  s.leader('F', [300, 752], [90, 680]);
  s.letter('G', 360, 630).letter('H', 1160, 630);
  s.leader('J', [cx + 196, 846], [cx + 380, 860]);
  return s;
}

function floatLevel(): Sheet {
  const s = new Sheet('landscape');
  const cx = 760;
  const rim = 330;
  const level = 520;
  s.box(460, level, 600, 460, { fill: FUEL, w: 0 });
  s.cut(`M400 ${rim}H460V980H1060V${rim}H1120V1010Q1120 1040 1090 1040H430Q400 1040 400 1010Z`, { gap: 15 });
  s.line(460, level, 540, level, MEDIUM).line(980, level, 1060, level, MEDIUM);
  for (let i = 1; i < 6; i += 1)
    s.line(470, level + i * 70, 528, level + i * 70, 1.6, '26 14').line(
      992,
      level + i * 70,
      1050,
      level + i * 70,
      1.6,
      '26 14',
    );
  // Cap with seat.
  s.cut(`M376 ${rim}V260H650V170H732V300H460V${rim}Z`, { gap: 15 });
  s.cut(`M1144 ${rim}V260H870V170H788V300H1060V${rim}Z`, { gap: 15, angle: -45 });
  s.path('M732 170V110H788V170M744 110V70H776V110', { fill: 'paper' });
  s.arrow(760, 20, 760, 60, MEDIUM);
  // Float, soldered in two halves, with the needle standing on it.
  s.path(box(540, 440, 440, 380, 60), { fill: 'paper', w: HEAVY }).path(box(552, 452, 416, 356, 50), {
    w: THIN,
  });
  s.line(540, 630, 980, 630, MEDIUM).line(540, 640, 980, 640, THIN);
  s.path(`M744 440V320L760 274L776 320V440Z`, { fill: 'paper', w: MEDIUM }).path(
    `M747 318L760 278L773 318Z`,
    { fill: 'ink', w: 0 },
  );
  s.box(728, 424, 64, 16, { fill: 'paper' });
  s.path(`M744 820V900H776V820`, { fill: 'paper' });
  s.cut('M700 980V880H740V950H780V880H820V980Z', { gap: 12 });
  s.centre(cx, 60, cx, 1100);
  s.dim('h', [1144, rim], [1144, level], -140);
  s.line(1070, level, 1300, level, THIN);
  s.leader('A', [766, 380], [930, 390]);
  s.leader('B', [712, 290], [520, 130]);
  s.leader('C', [620, 720], [250, 760]);
  return s;
}

function fuelTap(): Sheet {
  const s = new Sheet('portrait');
  const cx = 540;
  const wall = 640;
  const main = 280;
  const reserve = 580;
  s.box(100, 230, 920, wall - 230, { fill: FUEL, w: 0 });
  s.line(100, 230, 1020, 230, MEDIUM);
  for (let i = 1; i < 6; i += 1)
    s.line(130 + (i % 2) * 60, 230 + i * 66, 330 + (i % 2) * 40, 230 + i * 66, 1.6, '40 22').line(
      700 + (i % 2) * 60,
      230 + i * 66,
      960 + (i % 2) * 40,
      230 + i * 66,
      1.6,
      '40 22',
    );
  s.cut(`M60 ${wall}H${cx - 120}V${wall + 26}H60Z`, { gap: 10 }).cut(
    `M1060 ${wall}H${cx + 120}V${wall + 26}H1060Z`,
    { gap: 10 },
  );
  // Body: flange, two bores down to the plug.
  s.cut(`M${cx - 160} ${wall + 30}H${cx - 78}V840H${cx - 160}V780H${cx - 110}V690H${cx - 160}Z`, { gap: 12 });
  s.cut(`M${cx + 160} ${wall + 30}H${cx + 78}V840H${cx + 160}V780H${cx + 110}V690H${cx + 160}Z`, {
    gap: 12,
    angle: -45,
  });
  s.cut(`M${cx - 42} ${wall + 30}H${cx + 42}V760H${cx - 42}Z`, { gap: 12 });
  s.cut(`M${cx - 160} 840H${cx - 110}V1000H${cx - 20}V1060H${cx - 160}Z`, { gap: 12 });
  s.cut(`M${cx + 160} 840H${cx + 110}V1000H${cx + 20}V1060H${cx + 160}Z`, { gap: 12, angle: -45 });
  for (const x of [-136, 136]) nutSide(s, cx + x, wall + 4, 40, 26);
  // Intakes.
  for (const [x, mouth] of [
    [-60, main],
    [60, reserve],
  ] as const) {
    s.box(cx + x - 18, mouth, 36, wall + 120 - mouth, { fill: 'paper' });
    s.line(cx + x - 9, mouth, cx + x - 9, wall + 110, THIN).line(
      cx + x + 9,
      mouth,
      cx + x + 9,
      wall + 110,
      THIN,
    );
    s.path(`M${cx + x - 18} ${mouth}A18 6 0 0 1 ${cx + x + 18} ${mouth}A18 6 0 0 1 ${cx + x - 18} ${mouth}`, {
      fill: 'paper',
      w: THIN,
    });
  }
  // Plug, turned to main: its passage joins the left bore to the outlet below.
  s.cut(ring(cx, 880, 112), { gap: 12, angle: 20 });
  s.path(`M${cx - 80} 796Q${cx - 64} 880 ${cx - 22} 996H${cx + 22}Q${cx - 10} 890 ${cx - 42} 776Z`, {
    fill: 'paper',
  });
  s.circle(cx, 880, 112, { w: HEAVY });
  // Filter bowl with gauze and outlet.
  s.box(cx - 20, 1000, 40, 80, { fill: 'paper', w: 0 })
    .line(cx - 20, 1000, cx - 20, 1060, MEDIUM)
    .line(cx + 20, 1000, cx + 20, 1060, MEDIUM);
  s.cut(`M${cx - 190} 1060H${cx - 20}V1100H${cx - 150}V1130H${cx - 190}Z`, { gap: 12 });
  s.cut(`M${cx + 20} 1060H${cx + 190}V1130H${cx + 150}V1100H${cx + 20}Z`, { gap: 12, angle: -45 });
  s.path(
    `M${cx - 150} 1116V1330Q${cx - 150} 1400 ${cx - 80} 1400H${cx + 80}Q${cx + 150} 1400 ${cx + 150} 1330V1116Z`,
    { fill: 'paper', w: HEAVY },
  );
  s.path(
    `M${cx - 138} 1120V1326Q${cx - 138} 1388 ${cx - 76} 1388H${cx + 76}Q${cx + 138} 1388 ${cx + 138} 1326V1120`,
    { w: THIN },
  );
  s.path(box(cx - 96, 1130, 192, 150, 10), { fill: 'paper' });
  for (let i = 0; i < 15; i += 1) s.line(cx - 92 + i * 13, 1134, cx - 92 + i * 13, 1276, 1.2);
  for (let i = 0; i < 11; i += 1) s.line(cx - 92, 1138 + i * 13, cx + 92, 1138 + i * 13, 1.2);
  nutSide(s, cx, 1400, 96, 40);
  // Outlet spigot on the right of the bowl's head.
  s.path(
    `M${cx + 190} 1072H${cx + 270}L${cx + 280} 1064H${cx + 330}V1122H${cx + 280}L${cx + 270} 1114H${cx + 190}`,
    { fill: 'paper' },
  );
  s.arrow(cx + 346, 1093, cx + 430, 1093);
  s.dim('r', [cx + 440, main], [cx + 440, reserve], -60);
  s.line(cx - 40, main, cx + 500, main, THIN, '24 8 6 8').line(
    cx + 82,
    reserve,
    cx + 500,
    reserve,
    THIN,
    '24 8 6 8',
  );
  s.leader('A', [cx - 60, 400], [cx - 260, 400]);
  s.leader('B', [cx + 60, 610], [cx + 260, 470]);
  s.leader('C', [cx - 90, 880], [cx - 360, 880]);
  s.leader('D', [cx - 146, 1300], [cx - 360, 1300]);
  s.leader('E', [cx + 240, 1093], [cx + 330, 1260]);
  return s;
}

/** Filled areas stand one to twenty-five: 260 × 48 against 520 × 600. */
function mixingCan(): Sheet {
  const s = new Sheet('landscape');
  const floor = 1060;
  s.line(90, floor, 1510, floor, MEDIUM);
  // Measure.
  s.box(200, floor - 58, 260, 48, { fill: '#cfcabb', w: 0 });
  s.path(
    `M190 ${floor - 420}L200 ${floor - 410}V${floor - 10}Q200 ${floor} 212 ${floor}H448Q460 ${floor} 460 ${floor - 10}V${floor - 400}L496 ${floor - 430}`,
    { w: HEAVY },
  );
  s.line(200, floor - 58, 460, floor - 58, MEDIUM);
  for (let i = 1; i <= 8; i += 1)
    s.line(200, floor - 10 - i * 48, i % 2 === 0 ? 290 : 256, floor - 10 - i * 48, THIN);
  s.path(`M200 ${floor - 340}H140V${floor - 90}H200M200 ${floor - 312}H168V${floor - 118}H200`, {
    w: MEDIUM,
  });
  // Can with 25 divisions.
  const x = 800;
  s.box(x, floor - 612, 520, 600, { fill: FUEL, w: 0 });
  s.path(
    `M${x - 6} ${floor - 690}Q${x - 6} ${floor - 730} ${x + 34} ${floor - 730}H${x + 380}L${x + 430} ${floor - 850}H${x + 520}L${x + 480} ${floor - 730}Q${x + 526} ${floor - 726} ${x + 526} ${floor - 680}V${floor - 20}Q${x + 526} ${floor} ${x + 506} ${floor}H${x + 14}Q${x - 6} ${floor} ${x - 6} ${floor - 20}Z`,
    { w: HEAVY },
  );
  s.path(
    `M${x + 60} ${floor - 730}V${floor - 800}Q${x + 60} ${floor - 826} ${x + 86} ${floor - 826}H${x + 280}Q${x + 306} ${floor - 826} ${x + 306} ${floor - 800}V${floor - 730}M${x + 86} ${floor - 730}V${floor - 790}Q${x + 86} ${floor - 802} ${x + 98} ${floor - 802}H${x + 268}Q${x + 280} ${floor - 802} ${x + 280} ${floor - 790}V${floor - 730}`,
    { w: MEDIUM },
  );
  s.placed(x + 475, floor - 862, 0, () => s.box(-56, -26, 112, 36, { fill: 'paper', r: 8 }));
  s.line(x - 6, floor - 612, x + 526, floor - 612, MEDIUM);
  for (let i = 0; i <= 25; i += 1)
    s.line(
      x + 526 - (i % 5 === 0 ? 110 : 62),
      floor - 12 - i * 24,
      x + 526,
      floor - 12 - i * 24,
      i % 5 === 0 ? MEDIUM : THIN,
    );
  s.path(`M420 ${floor - 470}C520 ${floor - 640} 620 ${floor - 700} 740 ${floor - 660}`, {
    w: MEDIUM,
    dash: '26 14',
  }).head(752, floor - 654, 26);
  s.leader('A', [330, floor - 34], [580, floor - 150]);
  s.leader('B', [x + 200, floor - 300], [x - 130, floor - 380]);
  return s;
}

export const twentyFiveToOne: Record<string, () => Sheet> = {
  carburettor,
  'float-level': floatLevel,
  'fuel-tap': fuelTap,
  'mixing-can': mixingCan,
};
