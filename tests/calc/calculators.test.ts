import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Answer } from '../../src/calc/answer.ts';
import type { Refusal } from '../../src/calc/contract.ts';
import { calculators } from '../../src/calc/index.ts';
import { readValues } from '../../src/calc/read-values.ts';
import { fromSi, type Quantity, toSi, type UnitId } from '../../src/calc/units.ts';
import { answerOf, drawingsOf, notesOf, said, tablesOf } from './answers.ts';

const solved = (id: string, given: Record<string, string>): Answer | Refusal => {
  const found = calculators.find((c) => c.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found.solve(readValues(found, given, {}, false).values);
};
const answered = (id: string, given: Record<string, string>): Answer => answerOf(solved(id, given));
const output = (id: string, given: Record<string, string>, name: string, quantity: Quantity, unit: UnitId) =>
  fromSi(answered(id, given).outputs[name]?.si ?? Number.NaN, quantity, unit);
const refusals = (id: string, given: Record<string, string>) => {
  const answer = solved(id, given);
  return answer.ok ? [] : answer.errors.map((e) => said(`${e.field}: ${e.message}`));
};
const notes = (id: string, given: Record<string, string>) => notesOf(answered(id, given)).join('\n');

const ENGINE = { stroke: '58 mm', rod: '115 mm' };

describe('timing', () => {
  const deg = (given: Record<string, string>, name = 'advance') =>
    output('timing', { ...ENGINE, ...given }, name, 'angle', 'deg');
  const mm = (given: Record<string, string>, name: string) =>
    output('timing', { ...ENGINE, ...given }, name, 'length', 'mm');

  test('24° of a 58 mm stroke with a 115 mm rod is 3.105 mm (worked by hand)', () =>
    // 29 + 115 − 29 cos 24° − √(115² − (29 sin 24°)²)
    expect(mm({ advance: '24 deg' }, 'travel')).toBeCloseTo(
      144 - 29 * 0.9135454576 - Math.sqrt(13225 - (29 * 0.4067366431) ** 2),
      6,
    ));

  test('any one of travel, rim and dial gives the degrees back', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: -2, max: 2, noNaN: true }),
        (a, e) => {
          const rest = {
            rim: '160 mm',
            dial: '0.1 in',
            slant: '20 deg',
            offset: `${Math.abs(e).toFixed(6)} mm`,
            side: e < 0 ? 'thrust' : 'away',
          };
          const { outputs } = answered('timing', { ...ENGINE, ...rest, advance: `${a.toFixed(9)} deg` });
          const back = (name: string, key: string, quantity: Quantity, unit: UnitId) =>
            deg({
              ...rest,
              [name]: `${fromSi(outputs[key]?.si ?? 0, quantity, unit).toFixed(10)}${unit === 'n' ? '' : unit}`,
            });
          expect(back('travel', 'travel', 'length', 'mm')).toBeCloseTo(a, 5);
          expect(back('arc', 'arc', 'length', 'mm')).toBeCloseTo(a, 6);
          expect(back('turns', 'dialTurns', 'count', 'n')).toBeCloseTo(a, 5);
        },
      ),
      { numRuns: 300 },
    ));

  test('a dial of 0.1 in a turn: 1 turn and 0.0575 in are 4 mm', () => {
    const given = { turns: '1', reading: '0.0575 in', dial: '0.1 in' };
    expect(mm(given, 'travel')).toBeCloseTo(4.0005, 4);
    expect(mm({ travel: '4 mm', dial: '0.1 in' }, 'leftOver')).toBeCloseTo(1.46, 6);
  });

  test('a slanted gauge reads more than the piston travels: 4 mm at 30° is 4.619 mm', () =>
    expect(mm({ travel: '4 mm', slant: '30 deg' }, 'gauge')).toBeCloseTo(4 / Math.cos(Math.PI / 6), 6));

  test('on a domed crown a slanted gauge is refused with the reason', () =>
    expect(refusals('timing', { ...ENGINE, travel: '4 mm', slant: '30 deg', crown: 'domed' })).toEqual([
      'crown: On a domed crown a slanted gauge does not tell the travel: its tip moves over the dome. Measure straight down the bore, or use a degree disc.',
    ]));

  test('a positive stop without pin offset: half-way', () => {
    const given = { advance: '24 deg', rim: '160 mm', marks: '84 mm' };
    expect(mm(given, 'fromFirst')).toBeCloseTo(42, 9);
    expect(deg(given, 'stopShift')).toBeCloseTo(0, 9);
    expect(notes('timing', { ...ENGINE, ...given })).toContain('half-way between the two marks');
  });

  test('a positive stop with the pin towards the thrust side: the top lies on from half-way, in the running direction', () => {
    const given = { advance: '24 deg', rim: '160 mm', marks: '84 mm', offset: '2 mm', side: 'thrust' };
    // θ₀ = arcsin(−2/144), pin distance D = 29 cos φ + √(115² − (29 sin φ)²) at φ = 84/160 rad, shift = θ₀ − arcsin(−2/D)
    const D = 29 * Math.cos(0.525) + Math.sqrt(115 ** 2 - (29 * Math.sin(0.525)) ** 2);
    const shift = (Math.asin(2 / D) - Math.asin(2 / 144)) * (180 / Math.PI);
    expect(deg(given, 'stopShift')).toBeCloseTo(shift, 9);
    expect(shift).toBeGreaterThan(0);
    expect(mm(given, 'fromFirst')).toBeGreaterThan(42);
    expect(deg({ ...given, side: 'away' }, 'stopShift')).toBeCloseTo(-shift, 9);
  });

  test('a degree disc and a rim say the same of the stop', () => {
    const onRim = mm({ advance: '24 deg', rim: '160 mm', marks: '84 mm' }, 'stopDepth');
    const onDisc = mm({ advance: '24 deg', disc: `${(84 / 80) * (180 / Math.PI)} deg` }, 'stopDepth');
    expect(onDisc).toBeCloseTo(onRim, 9);
  });

  test('a two-stroke twin fires every half turn; the second is off by the phase error', () => {
    const given = { ...ENGINE, advance: '24 deg', cylinders: '2', strokes: '2', phase: '1.6 deg' };
    expect(notes('timing', given)).toContain('2 cylinders fire every 180° of crank');
    const answer = answered('timing', given);
    const { outputs } = answer;
    expect(tablesOf(answer)[0]?.rows.map((r) => [r[1], r[2], r[4]])).toEqual([
      ['0°', '24.0°', '22.4°'],
      ['180°', '25.6°', '24.0°'],
    ]);
    expect(((outputs['reset']?.si ?? 0) * 180) / Math.PI).toBeCloseTo(22.4, 9);
  });

  test('where the second cylinder is late the first is the most advanced and stays', () =>
    expect(deg({ advance: '24 deg', cylinders: '2', phase: '-1.6 deg' }, 'reset')).toBeCloseTo(24, 9));

  test('three cylinders want two phase errors', () =>
    expect(refusals('timing', { ...ENGINE, advance: '24 deg', cylinders: '3', phase: '1.6' })).toEqual([
      'phase: Give one error for each cylinder after the first: 2, not 1.',
    ]));

  test('a four-stroke twin fires once a turn', () =>
    expect(notes('timing', { ...ENGINE, advance: '24 deg', cylinders: '2', strokes: '4' })).toContain(
      'every 360°',
    ));

  test('24° at 3000 rev/min are 1.333 ms', () =>
    expect(
      output('timing', { ...ENGINE, advance: '24 deg', speed: '3000' }, 'time', 'time', 'ms'),
    ).toBeCloseTo(4 / 3, 9));

  test('an advance curve is tabled in order of speed and drawn', () => {
    const answer = answered('timing', {
      ...ENGINE,
      advance: '24 deg',
      curve: '4000 24; 1000 10',
    });
    expect(tablesOf(answer)[0]?.rows.map((r) => r[1])).toEqual(['10.0°', '24.0°']);
    expect(drawingsOf(answer).map((d) => d.title)).toEqual([
      'Crank, piston and rim at the firing point',
      'Piston travel before top dead centre',
      'Advance against engine speed',
    ]);
  });

  test('what geometry forbids is said', () => {
    expect(refusals('timing', { stroke: '58 mm', rod: '20 mm', advance: '24 deg' })).toEqual([
      'rod: The rod must be longer than half the stroke.',
    ]);
    expect(refusals('timing', { ...ENGINE, travel: '60 mm' })).toEqual([
      'travel: The piston travels only 58.0 mm in all.',
    ]);
    expect(refusals('timing', { ...ENGINE, arc: '30 mm' })[0]).toMatch(
      /^rim: The diameter of the rim is needed/,
    );
    expect(refusals('timing', { ...ENGINE, advance: '179 deg', offset: '10 mm', side: 'away' })[0]).toMatch(
      /past bottom dead centre/,
    );
  });
});

describe('premix', () => {
  const at = (given: Record<string, string>, name: string, unit: UnitId = 'mL') =>
    output('premix', given, name, 'volume', unit);

  test('5 L at 25:1: 200 mL added, 192.3 mL inside; the page asks which', () => {
    const given = { ratio: '25:1', fuel: '5 L' };
    expect(at(given, 'oil')).toBeCloseTo(200, 9);
    expect(at(given, 'oilInside')).toBeCloseTo(192.3077, 4);
    expect(notes('premix', given)).toContain('Which is meant? 200.0 mL of oil is added to 5.000 L of fuel');
  });

  test('fuel to oil to fuel, and can to both, give the same back', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 150, noNaN: true }),
        fc.double({ min: 1, max: 200, noNaN: true }),
        (n, litres) => {
          const ratio = `${n.toFixed(9)}:1`;
          const oil = at({ ratio, fuel: `${litres.toFixed(9)} L` }, 'oil');
          expect(at({ ratio, oil: `${oil.toFixed(9)} mL` }, 'fuel', 'L') / litres).toBeCloseTo(1, 6);
          const can = litres + oil / 1000;
          expect(at({ ratio, can: `${can.toFixed(9)} L` }, 'oil') / oil).toBeCloseTo(1, 6);
        },
      ),
      { numRuns: 1000 },
    ));

  test('a corrected tank has the ratio that was wanted, whichever way it was wrong', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 150, noNaN: true }),
        fc.double({ min: 10, max: 150, noNaN: true }),
        fc.double({ min: 0.5, max: 50, noNaN: true }),
        (want, has, litres) => {
          const { outputs } = answered('premix', {
            ratio: `${want.toFixed(9)}:1`,
            fuel: '5 L',
            tank: `${litres.toFixed(9)} L`,
            tankRatio: `${has.toFixed(9)}:1`,
          });
          const [oil, fuel] = [litres / (1 + has), (litres * has) / (1 + has)];
          const after =
            (fuel + (outputs['addFuel']?.si ?? 0) * 1e3) / (oil + (outputs['addOil']?.si ?? 0) * 1e3);
          expect(after / want).toBeCloseTo(1, 6);
          expect(outputs['addOil'] && outputs['addFuel']).toBeUndefined();
        },
      ),
      { numRuns: 1000 },
    ));

  test('more fuel takes more oil, a leaner ratio less', () => {
    expect(at({ ratio: '25:1', fuel: '6 L' }, 'oil')).toBeGreaterThan(
      at({ ratio: '25:1', fuel: '5 L' }, 'oil'),
    );
    expect(at({ ratio: '50:1', fuel: '5 L' }, 'oil')).toBeLessThan(at({ ratio: '25:1', fuel: '5 L' }, 'oil'));
  });

  test('a per cent is of the fuel: 4 % is 25:1', () =>
    expect(at({ ratio: '4 %', fuel: '5 L' }, 'oil')).toBeCloseTo(200, 9));

  test('a fill that cannot reach the ratio is refused with the least that can', () =>
    expect(
      refusals('premix', { ratio: '50:1', fuel: '5 L', tank: '3 L', tankRatio: '25:1', fill: '4 L' }),
    ).toEqual([
      'fill: 50.0:1 cannot be reached in 4.000 L: with what is in the tank it takes at least 5.885 L.',
    ]));

  test('plain fuel poured on 3 L at 25:1 makes it leaner', () =>
    expect(
      output(
        'premix',
        { ratio: '25:1', fuel: '5 L', tank: '2.6 L', tankRatio: '25:1', added: '2.5 L' },
        'blendRatio',
        'mixture',
        ':1',
      ),
    ).toBeCloseTo(50, 9));

  test('range and cost of a tank', () => {
    const given = {
      ratio: '25:1',
      fuel: '5 L',
      capacity: '12 L',
      reserve: '1.5 L',
      use: '6 L/100km',
      fuelPrice: '1.80',
      oilPrice: '9',
    };
    expect(output('premix', given, 'range', 'length', 'km')).toBeCloseTo(200, 9);
    expect(output('premix', given, 'rangeToReserve', 'length', 'km')).toBeCloseTo(175, 9);
    // 12 L hold 11.538 L of fuel and 0.4615 L of oil
    expect(output('premix', given, 'cost', 'money', 'n')).toBeCloseTo(11.53846 * 1.8 + 0.461538 * 9, 4);
  });

  test('the wall table names both gallons apart', () => {
    const wall = tablesOf(answered('premix', { ratio: '20:1', fuel: '5 L' })).find((t) =>
      t.caption.includes('wall'),
    );
    expect(wall?.rows.map((r) => r[0])).toContain('1 imp gal');
    expect(wall?.rows.map((r) => r[0])).toContain('1 US gal');
  });
});

const DRIVE = {
  first: '3.2',
  second: '35/20',
  third: '1',
  primary: '2.1',
  sprocket: '15',
  axle: '34',
  circumference: '1240 mm',
};

describe('gearing', () => {
  test('road speed and engine speed turn back into each other', () =>
    fc.assert(
      fc.property(fc.integer({ min: 500, max: 6000 }), (rpm) => {
        const v = output('gearing', { ...DRIVE, speed: String(rpm) }, 'at', 'speed', 'km/h');
        expect(
          output('gearing', { ...DRIVE, road: `${v.toFixed(9)} km/h` }, 'engine', 'rotation', 'rpm'),
        ).toBeCloseTo(rpm, 4);
      }),
      { numRuns: 300 },
    ));

  test('4000 rev/min on 1240 mm at 4.76:1 is 62.5 km/h (worked by hand)', () =>
    expect(output('gearing', { ...DRIVE, speed: '4000' }, 'at', 'speed', 'km/h')).toBeCloseTo(
      (4000 * 60 * 1.24) / 4.76 / 1000,
      9,
    ));

  test('a tooth more on the gearbox gives 16/15 of the speed', () => {
    const { outputs } = answered('gearing', { ...DRIVE, sprocket2: '16' });
    expect((outputs['per10002']?.si ?? 0) / (outputs['per1000']?.si ?? 1)).toBeCloseTo(16 / 15, 12);
    expect(tablesOf(answered('gearing', { ...DRIVE, sprocket2: '16' })).map((t) => t.caption)).toEqual([
      'This set-up',
      'The other set-up',
    ]);
  });

  test('measured counts before the marking, and the page says which', () => {
    const both = { ...DRIVE, tyre: '4.00-8' };
    expect(output('gearing', both, 'roll', 'length', 'mm')).toBeCloseTo(1240, 9);
    expect(notes('gearing', both)).toContain('measured rolling circumference');
    const { circumference: _none, ...marked } = both;
    expect(notes('gearing', marked)).toContain('π × the nominal diameter');
  });

  test('the drop at a change is the step between the two gears', () => {
    const { outputs } = answered('gearing', { ...DRIVE, change: '4500' });
    expect(fromSi(outputs['drop_0']?.si ?? 0, 'rotation', 'rpm')).toBeCloseTo(4500 * (1 - 1.75 / 3.2), 6);
  });

  test('a speedometer driven by the gearbox reads wrong with another sprocket, one by the wheel does not', () => {
    const given = { ...DRIVE, sprocket2: '16', indicated: '60 km/h' };
    expect(output('gearing', { ...given, speedo: 'gearbox' }, 'trueSpeed', 'speed', 'km/h')).toBeCloseTo(
      64,
      9,
    );
    expect(output('gearing', { ...given, speedo: 'wheel' }, 'trueSpeed', 'speed', 'km/h')).toBeCloseTo(60, 9);
  });

  test('ratio and sprockets that contradict each other are refused', () =>
    expect(refusals('gearing', { ...DRIVE, final: '3' })).toEqual([
      'final: The sprockets give 2.267:1, which is not this ratio: leave one of the two empty.',
    ]));

  test.each([
    ['155/80 R 13', 578],
    ['155/80R13 79T', 578],
    ['165/70-10', 485],
    ['145 R 10', 492],
    ['4.00-8', 406.4],
    ['4.00 - 8 6PR', 406.4],
    ['3.25 x 19', 647.7],
    ['130/90-16', 640],
    ['110/80 B 18', 633],
    ['5.20-13', 582],
    ['26 x 3', 660.4],
  ])('tyre %s measures %f mm', (tyre, mm) =>
    expect(output('gearing', { tyre }, 'diameter', 'length', 'mm')).toBeCloseTo(mm, 1),
  );

  test.each(['', 'round', '155/80', '155/800 R 13', '4.00-80', 'MT90-16', '99-99', '4.00'])(
    '“%s” is no tyre',
    (tyre) => expect(refusals('gearing', { tyre })[0]).toMatch(/^tyre: /),
  );

  test('a wider tyre of the same height in per cent is larger', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 80, max: 250 }),
        fc.integer({ min: 40, max: 100 }),
        fc.integer({ min: 8, max: 20 }),
        (w, a, d) => {
          const size = (width: number) =>
            output('gearing', { tyre: `${width}/${a} R ${d}` }, 'diameter', 'length', 'mm');
          return size(w + 5) > size(w);
        },
      ),
      { numRuns: 300 },
    ));
});

const VAN = {
  mass: '520 kg',
  drag: '1.1 m2',
  rolling: '0.018',
  efficiency: '88 %',
  torque: '1500 15; 2500 18; 3500 19; 4500 17; 5000 14',
  slopes: '0 3 6 10 15',
};

describe('hills', () => {
  const van = { ...VAN, ...DRIVE };
  const top = (given: Record<string, string>, gear: number, slope: number) =>
    output('hills', { ...van, ...given }, `top_${gear}_${slope}`, 'speed', 'km/h');

  test('at a steady speed pull and resistance are equal (worked out again from the parts)', () => {
    const v = top({}, 2, 0) / 3.6;
    const rpm = ((v * 4.76) / 1.24) * 60;
    const torque =
      rpm > 4500 ? 17 + ((14 - 17) * (rpm - 4500)) / 500 : 19 + ((17 - 19) * (rpm - 3500)) / 1000;
    const pull = (torque * 4.76 * 0.88) / (1.24 / (2 * Math.PI));
    const resistance = 520 * 9.80665 * 0.018 + 0.5 * 1.225 * 1.1 * v * v;
    // The density at 0 m and 15 °C is 1.22500 to five figures.
    expect(pull / resistance).toBeCloseTo(1, 4);
  });

  test('the steepest slope held is where the steady speed ends', () => {
    const { outputs } = answered('hills', { ...van, slopes: '0' });
    const steepest = (outputs['steepest_1']?.si ?? 0) * 100;
    const just = (d: number) =>
      answered('hills', { ...van, slopes: (steepest + d).toFixed(6) }).outputs['top_1_0'];
    expect(just(-0.01)).toBeDefined();
    expect(just(0.01)).toBeUndefined();
  });

  test('at the slope where it turns both gears are as fast', () => {
    const { outputs } = answered('hills', van);
    const slope = ((outputs['changeSlope_1']?.si ?? 0) * 100).toFixed(9);
    const at = answered('hills', { ...van, slopes: slope }).outputs;
    const turn = outputs['change_1']?.si ?? 0;
    expect((at['top_1_0']?.si ?? 0) / turn).toBeCloseTo(1, 5);
    expect(Math.min(Math.abs((at['top_2_0']?.si ?? 0) / turn - 1), 1)).toBeLessThan(0.3);
  });

  test('steeper, heavier, into the wind or higher up is never faster', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 12, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.constantFrom('first', 'second', 'third'),
        (slope, more, gear) => {
          const g = ['first', 'second', 'third'].indexOf(gear);
          const at = (given: Record<string, string>, s = slope) =>
            answered('hills', { ...van, ...given, slopes: s.toFixed(6) }).outputs[`top_${g}_0`]?.si ?? 0;
          const here = at({}) + 1e-9;
          return (
            at({}, slope + more) <= here &&
            at({ mass: `${520 + 50 * more} kg` }) <= here &&
            at({ wind: `${10 * more} km/h` }) <= here &&
            at({ altitude: `${500 * more} m` }) <= here &&
            at({ efficiency: `${88 - 10 * more} %` }) <= here
          );
        },
      ),
      { numRuns: 400 },
    ));

  test('the time to a speed grows with mass and with the length of a change', () => {
    const t = (given: Record<string, string>) =>
      answered('hills', { ...van, from: '0 km/h', to: '50 km/h', changeTime: '1 s', ...given }).outputs[
        'time'
      ]?.si ?? 0;
    expect(t({ mass: '600 kg' })).toBeGreaterThan(t({}));
    expect(t({ changeTime: '2 s' })).toBeGreaterThan(t({}));
    expect(t({ to: '55 km/h' })).toBeGreaterThan(t({}));
  });

  test('with constant force and no resistance the time is mass × speed / force (worked by hand)', () => {
    // 20 N·m at every speed, 1:1 on a wheel of 2π m: 20 N; 100 kg to 10 m/s takes 50 s
    const given = {
      mass: '100 kg',
      drag: '0.05 m2',
      rolling: '0.001',
      air: '0.3 kg/m3',
      torque: '10 20; 6000 20',
      circumference: '3.14159265 m',
      efficiency: '100 %',
      from: '0 km/h',
      to: '36 km/h',
      rotating: '0 %',
    };
    // Torque falls with density: 20 × 0.3/1.225 = 4.898 N·m on a radius of 0.5 m is 9.796 N
    const force = (20 * 0.3) / 1.225 / 0.5;
    const t = answered('hills', given).outputs['time']?.si ?? 0;
    // rolling 0.98 N, drag up to 0.75 N: integrate by hand in small steps
    let byHand = 0;
    for (let v = 0.0005; v < 10; v += 0.001)
      byHand += (0.001 * 100) / (force - 100 * 9.80665 * 0.001 - 0.5 * 0.3 * 0.05 * v * v);
    expect(t / byHand).toBeCloseTo(1, 3);
  });

  test('a speed that is never reached has no time, and says so', () => {
    const given = { ...van, slope: '10 %', from: '10 km/h', to: '60 km/h' };
    expect(answered('hills', given).outputs['time']).toBeUndefined();
    expect(notes('hills', given)).toContain('never reached');
  });

  test('it says which gear is faster uphill and where that turns', () =>
    expect(notes('hills', van)).toMatch(
      /On slopes of more than [\d.]+ % second is the faster gear, on less third; it turns at [\d.]+ km\/h/,
    ));

  test('power or torque at each speed say the same', () => {
    const kW = [15, 18, 19, 17, 14].map(
      (t, i) =>
        `${[1500, 2500, 3500, 4500, 5000][i]} ${((t * ((([1500, 2500, 3500, 4500, 5000][i] ?? 0) * Math.PI) / 30)) / 1000).toFixed(9)}`,
    );
    const { torque: _none, ...rest } = van;
    expect(output('hills', { ...rest, power: kW.join('; ') }, 'top_2_0', 'speed', 'km/h')).toBeCloseTo(
      top({}, 2, 0),
      5,
    );
  });

  test('forces alone need neither engine nor tyre', () =>
    expect(
      output(
        'hills',
        { mass: '520 kg', drag: '1.1 m2', rolling: '0.018', road: '40 km/h' },
        'force',
        'force',
        'N',
      ),
    ).toBeCloseTo(520 * 9.80665 * 0.018 + 0.5 * 1.225 * 1.1 * (40 / 3.6) ** 2, 2));

  test('a curve with one row or one speed twice is refused', () => {
    expect(refusals('hills', { ...van, torque: '1500 15' })[0]).toMatch(/^torque: Two rows/);
    expect(refusals('hills', { ...van, torque: '1500 15; 1500 16' })[0]).toMatch(
      /^torque: Each engine speed/,
    );
  });
});

test('units of the tests themselves: 36 km/h is 10 m/s', () =>
  expect(toSi(36, 'speed', 'km/h')).toBeCloseTo(10, 12));
