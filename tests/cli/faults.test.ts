import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { parseDocument } from 'yaml';
import { aWorkshop } from './a-workshop.ts';

let workshop: ReturnType<typeof aWorkshop> | undefined;
afterEach(() => workshop?.clear());

const FAULT = `---
# my own remark
title: 'Front brake drags'   # in quotes
system: brakes
symptom: It will not roll.
suspects:
    - {id: hose,   name: "Hose swollen shut"}   # odd spaces
    - {id: spring, name: Spring tired}
events:
    # the first
    - chapter: 01-first-look
      date: 2026-01-17
      what: found
      severity: do not drive
      text: "Warm drum."   # felt by hand

    # kept at the end
---

The story, with --- in it.
`;

function open(fault = FAULT) {
  workshop = aWorkshop({});
  mkdirSync(join(workshop.root, 'content/faults'));
  writeFileSync(join(workshop.root, 'content/faults/drag.md'), fault);
  return workshop;
}
const TRIED = [
  '--fault',
  'drag',
  '--chapter',
  '02-second-look',
  '--date',
  '2026-02-07',
  '--text',
  'Slackened: no change.',
];

describe('an event added to a fault', () => {
  test('stands at the end of its life, and every other byte of the file stays', async () => {
    const { run, read } = open();
    const { code, out } = await run('finding', ...TRIED, '--what', 'tried', '--rules-out', 'spring');
    expect(out).toContain('Written, and the check finds nothing new.');
    expect(code).toBe(0);
    const added = `    - chapter: 02-second-look
      date: 2026-02-07
      what: tried
      text: "Slackened: no change."
      rules_out: spring
`;
    const [before, after] = FAULT.split('\n\n    # kept');
    expect(read('faults/drag.md')).toBe(`${before}\n${added}\n    # kept${after}`);
  });

  test('keeps Windows line ends and a byte-order mark', async () => {
    const { run, read } = open(`\ufeff${FAULT.replaceAll('\n', '\r\n')}`);
    expect((await run('finding', ...TRIED, '--what', 'tried')).code).toBe(0);
    const now = read('faults/drag.md');
    expect(now.startsWith('\ufeff---\r\n')).toBe(true);
    expect(now.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  test('fits a list written in brackets, and keeps the remarks of the rest', async () => {
    const flow = FAULT.replace(
      /events:[\s\S]*?---/,
      'events: [{chapter: 01-first-look, date: 2026-01-17, what: found, severity: nuisance, text: Seen.}]\n---',
    );
    const { run, read } = open(flow);
    expect((await run('cure', ...TRIED)).code).toBe(0);
    expect(read('faults/drag.md')).toContain('# my own remark');
    expect(read('faults/drag.md').match(/what: cured/g)).toHaveLength(1);
  });

  test('is put off with reason and review, cured, and back again: a whole life', async () => {
    const { run, read } = open();
    expect(
      (await run('put-off', ...TRIED, '--review', '2026-03-01', '--waits-for', 'a long reamer')).code,
    ).toBe(0);
    expect((await run('cure', ...TRIED, '--rules-in', 'hose')).code).toBe(0);
    expect((await run('came-back', ...TRIED, '--severity', 'drive with care')).code).toBe(0);
    const head = parseDocument(read('faults/drag.md').split(/^---$/m)[1] ?? '').toJS();
    expect(head.events.map((one: { what: string }) => one.what)).toEqual([
      'found',
      'put off',
      'cured',
      'came back',
    ]);
    expect(head.events[1]).toMatchObject({ review: '2026-03-01', waits_for: 'a long reamer' });
  });

  test.each([
    ['cured twice', ['cure', ...TRIED], ['cure', ...TRIED], 'although it was cured'],
    [
      'back before a cure',
      ['came-back', ...TRIED, '--severity', 'nuisance'],
      undefined,
      'although it was not cured',
    ],
    [
      'in a chapter that does not exist',
      ['cure', '--fault', 'drag', '--chapter', '09-none', '--date', '2026-02-07', '--text', 'x'],
      undefined,
      'There is no chapter "09-none"',
    ],
    [
      'that rules out nobody known',
      ['finding', ...TRIED, '--what', 'tried', '--rules-out', 'hoes'],
      undefined,
      'There is no suspect "hoes"',
    ],
  ])('%s is told, and nothing is written', async (_name, first, second, why) => {
    const { run, read } = open();
    if (second) expect((await run(...first)).code).toBe(0);
    const before = read('faults/drag.md');
    const { code, out } = await run(...(second ?? first));
    expect(out).toContain(why);
    expect(out).toContain('Nothing was written.');
    expect([code, read('faults/drag.md')]).toEqual([1, before]);
  });

  test.each([
    [
      ['cure', '--fault', 'drga', '--chapter', '02-second-look', '--text', 'x'],
      'There is no fault "drga". Write "drag".',
    ],
    [['cure', '--fault', '../series', '--chapter', '02-second-look', '--text', 'x'], 'There is no fault'],
    [['put-off', ...TRIED], '--review is missing'],
    [['came-back', ...TRIED], '--severity is missing'],
  ])('%j: %s', async (args, why) => {
    const { run, read } = open();
    const { code, err } = await run(...args);
    expect(err.replace('The nearest is', 'Write')).toContain(why);
    expect([code, read('faults/drag.md')]).toEqual([2, FAULT]);
  });

  test('is only shown with --dry-run', async () => {
    const { run, read } = open();
    const { code, out } = await run('cure', ...TRIED, '--dry-run');
    expect(out).toContain('what: cured');
    expect([code, read('faults/drag.md')]).toEqual([0, FAULT]);
  });
});

describe('a fault that is opened', () => {
  const OPEN = [
    'open-fault',
    '--title',
    'Will not fire: at all',
    '--chapter',
    '02-second-look',
    '--date',
    '2026-02-07',
    '--severity',
    'nuisance',
    '--text',
    'Ten pulls, nothing.',
  ];

  test('has a file of its own with the starter list, marked as common practice', async () => {
    const { run, read } = open();
    const { code, out } = await run(
      ...OPEN,
      '--like',
      'will-not-start',
      '--suspects',
      'My own slip: tap left shut',
    );
    expect(out).toContain('Written, and the check finds nothing new.');
    expect(out).toMatch(/(?:DANGER|WARNING): /);
    expect(code).toBe(0);
    const text = read('faults/will-not-fire-at-all.md');
    expect(text).toContain('Common practice of the trade, no source.');
    expect(text).toContain('# spark\n');
    const head = parseDocument(text.split(/^---$/m)[1] ?? '').toJS();
    expect(head).toMatchObject({
      title: 'Will not fire: at all',
      system: 'engine',
      symptom: 'It turns over and does not fire.',
    });
    expect(head.suspects.length).toBeGreaterThan(10);
    expect(head.suspects[0]).toEqual({ id: 'my-own-slip-tap-left-shut', name: 'My own slip: tap left shut' });
    expect(head.events).toHaveLength(1);
  });

  test('is never written over another', async () => {
    const { run, read } = open();
    const { code, err } = await run(...OPEN, '--like', 'floods', '--name', 'drag');
    expect(err).toContain('faults/drag.md is there already');
    expect([code, read('faults/drag.md')]).toEqual([2, FAULT]);
  });

  test('with an error leaves no file', async () => {
    const { run, root } = open();
    const { code } = await run(
      ...OPEN.map((one) => (one === '02-second-look' ? '07-none' : one)),
      '--like',
      'floods',
    );
    expect(code).toBe(1);
    expect(existsSync(join(root, 'content/faults/will-not-fire-at-all.md'))).toBe(false);
  });

  test('needs a symptom, or one of the usual ones', async () => {
    const { code, err } = await open().run(...OPEN);
    expect(err).toContain('--system, --symptom are missing');
    expect(code).toBe(2);
  });
});
