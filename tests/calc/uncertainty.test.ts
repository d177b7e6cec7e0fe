import { describe, expect, test } from 'vitest';
import type { Calculator, Figure, Value, Values } from '../../src/calc/contract.ts';
import { calculators } from '../../src/calc/index.ts';
import { readValues } from '../../src/calc/read-values.ts';
import { type Computed, spread } from '../../src/calc/uncertainty.ts';

/** The same dice at every run. */
function dice(seed: number): () => number {
  let s = seed;
  return () => {
    s = (s * 1664525 + 1013904223) % 4294967296;
    return (s + 0.5) / 4294967296;
  };
}

/** A draw from the bell curve. */
const bell = (roll: () => number) => Math.sqrt(-2 * Math.log(roll())) * Math.cos(2 * Math.PI * roll());

const isTable = (v: Value): v is readonly (readonly Figure[])[] => typeof v === 'object' && !('si' in v);

/** One throw: every figure moved by its ± times a draw, a column of a table by one draw. */
function thrown(values: Values, roll: () => number): Values {
  const moved: Record<string, Value> = {};
  for (const [name, value] of Object.entries(values)) {
    if (value === undefined) continue;
    if (typeof value === 'string') moved[name] = value;
    else if (isTable(value)) {
      const draws = (value[0] ?? []).map(() => bell(roll));
      moved[name] = value.map((row) => row.map((f, j) => ({ si: f.si + (f.pm ?? 0) * (draws[j] ?? 0) })));
    } else moved[name] = { si: value.si + (value.pm ?? 0) * bell(roll) };
  }
  return moved;
}

const THROWS = 2500;

interface Scatter {
  low: number;
  high: number;
  sd: number;
}

/** Where thousands of throws leave each output: the middle two thirds, and the standard deviation. */
function scatter(
  throwOnce: (roll: () => number) => Readonly<Record<string, number | undefined>>,
): (name: string) => Scatter {
  const roll = dice(20260919);
  const throws = Array.from({ length: THROWS }, () => throwOnce(roll));
  return (name) => {
    const found = throws.flatMap((t) => t[name] ?? []).sort((a, b) => a - b);
    const at = (p: number) => found[Math.round(p * (found.length - 1))] ?? Number.NaN;
    const mean = found.reduce((a, b) => a + b, 0) / found.length;
    const sd = Math.sqrt(found.reduce((a, b) => a + (b - mean) ** 2, 0) / found.length);
    return { low: at(0.1587), high: at(0.8413), sd };
  };
}

const outputsOf = (calculator: Calculator, values: Values): Record<string, number> => {
  const answer = calculator.solve(values);
  return answer.ok
    ? Object.fromEntries(Object.entries(answer.outputs).map(([name, o]) => [name, o?.si ?? Number.NaN]))
    : {};
};

const CASES: Record<string, { given: Record<string, string>; outputs: string[] }[]> = {
  timing: [
    {
      given: {
        travel: '3.4 ± 0.05 mm',
        stroke: '58 ± 0.1 mm',
        rod: '115 ± 0.2 mm',
        rim: '160 ± 0.5 mm',
        speed: '3000 ± 50',
        offset: '1 ± 0.2 mm',
        slant: '20 ± 1 deg',
      },
      outputs: ['advance', 'arc', 'time', 'gauge', 'perTenth'],
    },
    {
      given: {
        advance: '24 ± 0.5 deg',
        stroke: '58 mm',
        rod: '115 mm',
        rim: '160 ± 0.5 mm',
        marks: '84 ± 0.5 mm',
        dial: '1 mm',
      },
      outputs: ['travel', 'arc', 'fromFirst', 'fireFromFirst', 'dialTurns', 'stopDepth'],
    },
  ],
  'compression-ratio': [
    {
      given: {
        bore: '54 ± 0.05 mm',
        stroke: '58 ± 0.1 mm',
        cylinders: '2',
        port: '38 ± 0.2 mm',
        poured: '22.9 ± 0.3 mL',
        squish: '1.4 ± 0.05 mm',
        skim: '0.3 ± 0.02 mm',
        target: '7.3',
      },
      outputs: ['swept', 'clearance', 'ratio', 'trappedRatio', 'ratioAfter', 'squishAfter', 'skimFor'],
    },
  ],
  'port-timing': [
    {
      given: {
        stroke: '58 ± 0.1 mm',
        rod: '115 ± 0.2 mm',
        exhaust: '38 ± 0.15 mm',
        transfer: '46 ± 0.15 mm',
        inletFloor: '88 ± 0.2 mm',
        skirt: '70 ± 0.1 mm',
        speed: '3000 ± 50',
      },
      outputs: [
        'exhaustOpens',
        'exhaustDuration',
        'transferDuration',
        'blowdown',
        'blowdownTime',
        'inletDuration',
      ],
    },
    {
      given: {
        stroke: '58 ± 0.1 mm',
        rod: '115 mm',
        inletBy: 'none',
        exhaustDuration: '150 ± 1 deg',
        offset: '1 mm',
      },
      outputs: ['exhaustTravel', 'exhaustOpens'],
    },
  ],
  'air-and-jets': [
    {
      given: {
        altitudeThen: '0 ± 20 m',
        temperatureThen: '15 ± 1 degC',
        altitude: '1200 ± 30 m',
        temperature: '28 ± 1.5 degC',
        humidity: '60 ± 8 %',
        jet: '95',
      },
      outputs: ['density', 'pressure', 'change', 'richer', 'jet'],
    },
  ],
  'compression-test': [
    {
      given: {
        dry: '6.8 ± 0.1; 6.4 ± 0.1',
        altitude: '600 ± 30 m',
        reference: '7 ± 0.2 bar',
      },
      outputs: ['air', 'mean', 'meanSea', 'expected'],
    },
  ],
  fits: [
    {
      given: {
        size: '52 mm',
        outer: 'own',
        outerGrowth: '22.5 ± 1.5',
        inner: 'own',
        innerGrowth: '11.7 ± 0.6',
        clearance: '-0.03 ± 0.005 mm',
        outerHot: '100 ± 5 degC',
        innerHot: '25 ± 3 degC',
        gap: '0.03 mm',
      },
      outputs: ['outerGrowth', 'hot', 'heatTo'],
    },
  ],
  cable: [
    {
      given: {
        supply: '12 ± 0.2 V',
        load: '45 ± 2 W',
        length: '4.2 ± 0.2 m',
        section: '2.5 mm2',
        temperature: '40 ± 5 degC',
        joints: '80 ± 10 mV',
        limit: '3 %',
      },
      outputs: ['current', 'resistance', 'drop', 'share', 'atLoad', 'lost', 'needed'],
    },
  ],
  'bolt-tension': [
    {
      given: { thread: 'M8', grade: '8.8', state: 'own', factor: '0.16 ± 0.008', torque: '22 ± 1 Nm' },
      outputs: ['tension', 'share'],
    },
  ],
  'speed-check': [
    {
      given: {
        distance: '500 ± 1 m',
        time: '39.6 ± 0.4 s',
        indicated: '45 ± 1 km/h',
        odoTrue: '20 ± 0.1 km',
        odoShown: '20.6 ± 0.1 km',
      },
      outputs: ['speed', 'off', 'share', 'most', 'factor', 'odoShare'],
    },
  ],
  'fuel-use': [
    {
      given: { use: '6.5 ± 0.2 L/100km', tank: '12 ± 0.1 L', reserve: '1.5 ± 0.1 L', now: '5 ± 0.2 L' },
      outputs: ['use', 'range', 'toReserve', 'left'],
    },
  ],
  'brake-drum': [
    {
      given: {
        across: '150.42 ± 0.02; 150.55 ± 0.02',
        fresh: '150 mm',
        discard: '151 mm',
        runOut: '0.1 ± 0.02 mm',
        lining: '3.2 ± 0.1 mm',
        liningLimit: '1.5 mm',
      },
      outputs: ['most', 'wear', 'left', 'clean', 'leftAfter', 'liningLeft'],
    },
  ],
  'firing-speed': [
    {
      given: { cylinders: '2', strokes: '2', frequency: '25 ± 0.5 Hz' },
      outputs: ['speed', 'firing', 'crank', 'one', 'time'],
    },
  ],
  shake: [
    {
      given: {
        road: '45 ± 1 km/h',
        circumference: '1232 ± 6 mm',
        sprocket: '16',
        axle: '34',
        links: '102',
        gear: '1',
        primary: '2.13',
        cylinders: '2',
        strokes: '2',
      },
      outputs: ['wheel', 'shaft', 'link', 'chain', 'engine', 'firing'],
    },
  ],
  premix: [
    {
      given: {
        ratio: '25:1',
        fuel: '5 ± 0.05 L',
        capacity: '12 L',
        use: '5.5 ± 0.3 L/100km',
        tank: '3 ± 0.1 L',
        tankRatio: '50:1',
      },
      outputs: ['oil', 'range', 'addOil'],
    },
  ],
  gearing: [
    {
      given: {
        first: '3.2',
        second: '1.75',
        third: '1',
        primary: '2.1',
        sprocket: '15',
        axle: '34',
        tyre: '4.00-8',
        circumference: '1240 ± 10 mm',
        speed: '4000 ± 50',
        road: '40 ± 0.5 km/h',
        circumference2: '1300 ± 12 mm',
      },
      outputs: ['per1000', 'at', 'engine', 'per10002', 'engineChange', 'at_0'],
    },
  ],
  hills: [
    {
      given: {
        mass: '520 ± 10 kg',
        drag: '1.1 ± 0.1 m2',
        rolling: '0.018 ± 0.002',
        efficiency: '88 ± 2 %',
        torque: '1500 15 ± 0.3; 2500 18 ± 0.3; 3500 19 ± 0.3; 4500 17 ± 0.3; 5000 14 ± 0.3',
        first: '3.2',
        second: '1.75',
        third: '1',
        primary: '2.1',
        sprocket: '15',
        axle: '34',
        circumference: '1240 ± 10 mm',
        wind: '0 ± 3 km/h',
        slopes: '0 6 10',
        road: '40 km/h',
        from: '10 km/h',
        to: '50 km/h',
        changeTime: '1.5 ± 0.2 s',
      },
      outputs: [
        'top',
        'steepest',
        'time',
        'wheelPower',
        'dragForce',
        'top_1_2',
        'steepest_1',
        'change_1',
        'changeSlope_1',
      ],
    },
  ],
};

describe.each(calculators.map((c) => [c.title, c] as const))(
  '%s: the ± shown is what thousands of throws give',
  (_, calculator) => {
    const cases = CASES[calculator.id] ?? [];
    test('there is a case', () => expect(cases.length).toBeGreaterThan(0));

    test.each(cases.map((c) => [c.outputs.join(', '), c] as const))(
      '%s',
      (_names, { given, outputs }) => {
        const read = readValues(calculator, given, {}, false);
        expect(read.errors.filter((e) => given[e.field] !== undefined)).toEqual([]);
        const answer = calculator.solve(read.values);
        if (!answer.ok) throw new Error(JSON.stringify(answer.errors));
        const found = scatter((roll) => outputsOf(calculator, thrown(read.values, roll)));
        for (const output of outputs) {
          const shown = answer.outputs[output];
          if (!shown) throw new Error(`${output} is missing`);
          const { low, high, sd } = found(output);
          if (!shown.interval) {
            expect((shown.pm ?? 0) / sd, `${output} ± ${shown.pm} against ${sd}`).toBeGreaterThan(0.88);
            expect((shown.pm ?? 0) / sd, `${output} ± ${shown.pm} against ${sd}`).toBeLessThan(1.12);
            continue;
          }
          const half = (high - low) / 2;
          expect(
            Math.abs(shown.interval.low - low) / half,
            `${output} from ${shown.interval.low}, ${low}`,
          ).toBeLessThan(0.3);
          expect(
            Math.abs(shown.interval.high - high) / half,
            `${output} to ${shown.interval.high}, ${high}`,
          ).toBeLessThan(0.3);
        }
      },
      60_000,
    );
  },
);

test('the errors of jug and pump make the scatter of the ratio that is shown', () => {
  const premix = calculators.find((c) => c.id === 'premix');
  if (!premix) throw new Error('no premix');
  const given = { ratio: '25:1', fuel: '5 ± 0.03 L', oilError: '5 mL', fuelError: '40 mL' };
  const answer = premix.solve(readValues(premix, given, {}, false).values);
  if (!answer.ok) throw new Error(JSON.stringify(answer.errors));
  const found = scatter((roll) => {
    const oil = 0.2 + 0.005 * bell(roll);
    return { made: oil / (5 + 0.03 * bell(roll) + 0.04 * bell(roll)) };
  });
  expect((answer.outputs['made']?.pm ?? 0) / found('made').sd).toBeCloseTo(1, 1);
});

describe('near top dead centre', () => {
  const timing = calculators.find((c) => c.id === 'timing');
  const near = (travel: string) => {
    if (!timing) throw new Error('no timing');
    const read = readValues(timing, { travel, stroke: '58 mm', rod: '115 mm' }, {}, false);
    const answer = timing.solve(read.values);
    if (!answer.ok) throw new Error(JSON.stringify(answer.errors));
    return { values: read.values, advance: answer.outputs['advance'] };
  };
  const DEG = Math.PI / 180;

  test('0.02 ± 0.02 mm is 0 to 2.7°, not 1.9 ± 1.3°', () => {
    const { advance } = near('0.02 ± 0.02 mm');
    expect(advance?.interval?.low).toBeCloseTo(0, 9);
    // Worked by hand: cos φ = (r² + D² − l²) / (2 r D), r 29, l 115, D 143.96 mm
    expect((advance?.interval?.high ?? 0) / DEG).toBeCloseTo(2.688, 2);
  });

  test.each(['0.02 ± 0.02 mm', '0.05 ± 0.02 mm', '0.1 ± 0.05 mm', '0.5 ± 0.05 mm'])(
    '%s agrees with thousands of throws',
    (travel) => {
      const { values, advance } = near(travel);
      if (!timing || !advance) throw new Error('no answer');
      const found = scatter((roll) => {
        const moved = thrown(values, roll)['travel'];
        const x = typeof moved === 'object' && 'si' in moved ? Math.max(0, moved.si) : 0;
        return outputsOf(timing, { ...values, travel: { si: x } });
      });
      const { low, high } = found('advance');
      const shown = advance.interval ?? {
        low: advance.si - (advance.pm ?? 0),
        high: advance.si + (advance.pm ?? 0),
      };
      const half = (high - low) / 2;
      expect(Math.abs(shown.low - low) / half, `${shown.low / DEG} against ${low / DEG}`).toBeLessThan(0.15);
      expect(Math.abs(shown.high - high) / half, `${shown.high / DEG} against ${high / DEG}`).toBeLessThan(
        0.15,
      );
    },
  );
});

describe('the law itself', () => {
  const x = (values: Values, name: string) => {
    const v = values[name];
    return typeof v === 'object' && 'si' in v ? v.si : 0;
  };
  const sum = (v: Values): Computed => ({
    sum: x(v, 'a') + x(v, 'b'),
    product: x(v, 'a') * x(v, 'b'),
    a: x(v, 'a'),
  });

  test('a sum of two adds their ± by squares: 3 and 4 make 5', () => {
    const out = spread(sum, { a: { si: 10, pm: 3 }, b: { si: 20, pm: 4 } });
    expect(out['sum']).toEqual({ si: 30, pm: 5 });
  });
  test('an answer that does not depend on a doubtful figure carries no ±', () => {
    expect(spread(sum, { a: { si: 10 }, b: { si: 20, pm: 4 } })['a']).toEqual({ si: 10 });
  });
  test('a turning point gets an interval on the side it has', () => {
    const out = spread((v) => ({ square: x(v, 'a') ** 2 }), { a: { si: 0, pm: 2 } });
    expect(out['square']?.interval).toEqual({ low: 0, high: 4 });
  });
  test('where one side has no answer the other stands for both', () => {
    const out = spread((v) => ({ root: x(v, 'a') > 9.5 ? x(v, 'a') : undefined }), { a: { si: 10, pm: 1 } });
    expect(out['root']).toEqual({ si: 10, pm: 1 });
  });
});
