import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { aWorkshop } from './a-workshop.ts';

let workshop: ReturnType<typeof aWorkshop> | undefined;
afterEach(() => workshop?.clear());

const CHAPTER = `---
title: Second look
date: 2026-02-07   # the day of the seat
held: true   # not yet
summary: In short.
---

<Step title="Put the seat back" torque="22 Nm" hazards={["noise"]}>
Four bolts. The bore is <Qty of="machine.engine.bore" />.
</Step>

<Timing advance="24 deg" stroke="58 mm" rod="115 mm" rim="160 mm" />
`;
const FILE = 'chapters/02-second-look/chapter.mdx';
const MEASURED = `date,chapter,item,found,max,unit
2026-02-07,02-second-look,Seat gap,0.2,0.5,mm
`;

function held(chapter = CHAPTER) {
  const made = aWorkshop({ [FILE]: chapter, 'measurements.csv': MEASURED });
  workshop = made;
  const put = (file: string, text: string) => writeFileSync(join(made.root, 'content', file), text);
  return {
    ...made,
    put,
    change: (from: string, to: string, file = FILE) => put(file, made.read(file).replace(from, to)),
  };
}

describe('a chapter that is released', () => {
  test('loses the line that held it, and nothing else; its figures are kept', async () => {
    const { run, read } = held();
    const { code, out } = await run('release', '2');
    expect(out).toContain('02-second-look is released.');
    expect(code).toBe(0);
    expect(read(FILE)).toBe(CHAPTER.replace('held: true   # not yet\n', ''));
    const kept = read('released.yaml');
    for (const one of [
      'torque 22 Nm',
      'hazard noise',
      'machine.engine.bore = 54 mm',
      'timing.advance = 24 deg',
      'most Seat gap = 0.5 mm',
    ])
      expect(kept).toContain(one);
    expect((await run('check')).code).toBe(0);
  });

  test.each([
    ['a torque', 'torque="22 Nm"', 'torque="28 Nm"', FILE, '"torque 22 Nm" was released'],
    ['a hazard', ' hazards={["noise"]}', '', FILE, '"hazard noise" was released'],
    ['a setting', 'advance="24 deg"', 'advance="28 deg"', FILE, '"timing.advance = 24 deg" was released'],
    ['a limit', '0.5,mm', '0.7,mm', 'measurements.csv', '"most Seat gap = 0.5 mm" was released'],
    [
      'a figure of the machine',
      '54 mm',
      '55 mm',
      'machine.yaml',
      '"machine.engine.bore = 54 mm" was released',
    ],
  ])('changed in %s fails the check until a correction tells it', async (_what, from, to, file, why) => {
    const { run, change } = held();
    await run('release', '02-second-look');
    change(from, to, file);
    const { code, out } = await run('check');
    expect(out).toContain(why);
    expect(code).toBe(1);
    const was = /"was" holds "([^"]+)"/.exec(out)?.[1] ?? '';
    const correction = [
      '--chapter',
      '02-second-look',
      '--date',
      '2026-03-01',
      '--was',
      `It said ${was}.`,
      '--now',
      'It is otherwise.',
      '--why',
      'Misread.',
      '--can-hurt',
      'yes',
    ];
    expect((await run('add-correction', ...correction)).code).toBe(0);
    expect((await run('check')).code).toBe(0);
    // Released again, the new figure is the one to compare with.
    expect((await run('release', '2')).out).toContain('was out already');
    change(to, from === '0.5,mm' ? '0.9,mm' : from, file);
    if (to !== '') expect((await run('check')).code).toBe(1);
  });

  test('keeps what was recorded of others, and the remarks of the file', async () => {
    const { run, read, put } = held();
    put('released.yaml', '# mine\n01-first-look:\n  "-": [ ]\n');
    expect((await run('release', '2')).code).toBe(0);
    expect(read('released.yaml')).toMatch(/^# mine\n01-first-look:/);
  });

  test('with --dry-run stays held', async () => {
    const { run, read, names } = held();
    const before = names();
    expect((await run('release', '2', '--dry-run')).code).toBe(0);
    expect([read(FILE), names()]).toEqual([CHAPTER, before]);
  });
});

test('A chapter with an error is not released, and nothing is written', async () => {
  const { run, read, names } = held(CHAPTER.replace('hazards={["noise"]}', 'hazards={["noize"]}'));
  const [text, before] = [read(FILE), names()];
  const { code, out } = await run('release', '2');
  expect(out).toContain('noize');
  expect(out).toContain('02-second-look is not released.');
  expect([code, read(FILE), names()]).toEqual([1, text, before]);
});

test('An error that only its release brings keeps a chapter held: a link to another held one', async () => {
  const { run, read, put } = held();
  put('refit.csv', 'line,what,action\n');
  put('chapters/01-first-look/chapter.mdx', CHAPTER.replace('date: 2026-02-07', 'date: 2026-01-17'));
  put(FILE, CHAPTER.replace('Four bolts.', 'As in <Earlier chapter="01-first-look">the first</Earlier>.'));
  expect((await run('check')).code).toBe(0);
  const { code, out } = await run('release', '2');
  expect(out).toContain('is held. Release it first');
  expect(code).toBe(1);
  expect(read(FILE)).toContain('held: true');
});

test.each([
  [['release'], 'Held: 02-second-look.'],
  [['release', '02-secnd-look'], 'There is no chapter "02-secnd-look".'],
])('%j: %s', async (args, why) => {
  const { code, err } = await held().run(...args);
  expect(err).toContain(why);
  expect(code).toBe(2);
});
