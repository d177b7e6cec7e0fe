import { afterEach, expect, test } from 'vitest';
import { aWorkshop } from './a-workshop.ts';

let workshop: ReturnType<typeof aWorkshop>;
afterEach(() => workshop.clear());

const CHAPTER = (head = '') => `---
title: Second look
date: 2026-02-07
summary: What is wrong
${head}---

<Step title="Put the seat back" closes={["seat"]} at="12:31" hazards={["hot-parts"]} expect="It sits." otherwise="Lift it.">

Push it down.

</Step>

<Step title="Fill the tank" at="1:05" hazards={["petrol-vapour"]}>

Pour.

</Step>
`;
const SUPPORTERS = `name,credit,kind,what,from,until,chapters,consent,link
Vashti Loor,,help,Read the drawing,,,02-second-look,yes,
Berta Ommen,A neighbour,loan,A winch,,,02-second-look,yes,
Malachy Threllow,,gift,Pins,,,02-second-look,no,
Halmquist,,paid,Paid 150 euros,,,02-second-look,yes,
Osric Vennerholt,,paid,Paid for silence,,,02-second-look,no,
`;
const CORRECTIONS = `date,chapter,step,was,now,why,can_hurt
2026-02-09,02-second-look,put-the-seat-back,Any bolt will do,Use the long bolt,I mixed them up.,no
2026-02-10,02-second-look,fill-the-tank,Fill it warm,Fill it cold,A slip.,yes
`;
const FILES = {
  'chapters/02-second-look/chapter.mdx': CHAPTER(),
  'supporters.csv': SUPPORTERS,
  'corrections.csv': CORRECTIONS,
};
const SITE = ['--site', 'https://example.org/van'];

test('the text has the disclosure, the address, the cautions, the steps’ times, corrections and thanks', async () => {
  workshop = aWorkshop(FILES);
  const { out, err, code } = await workshop.run('video-text', '2', ...SITE);
  expect(code).toBe(0);
  const [title, paid, summary, address, cautions, times, corrections, thanks] = out.trimEnd().split('\n\n');
  expect(title).toMatch(/^Second look: /);
  expect(paid).toBe(
    'Paid support: money for this chapter came from Halmquist and a supporter who is not named. Paid 150 euros.',
  );
  expect(summary).toBe('What is wrong.');
  expect(address).toContain('\nhttps://example.org/van/chapters/second-look/');
  expect(cautions).toMatch(
    /^DANGER: Petrol and its vapour\. .+\n(?:.+\n)*CAUTION: Hot parts\. .+\nPrecautions stand at each step/,
  );
  expect(times).toBe('Steps:\n0:00 Beginning\n1:05 2.2 Fill the tank\n12:31 2.1 Put the seat back');
  expect(corrections).toBe(
    'Corrections:\nStep 2.1, corrected 2026-02-09. Was: Any bolt will do. Now: Use the long bolt.\nStep 2.2, corrected 2026-02-10. The old words can hurt. Was: Fill it warm. Now: Fill it cold.',
  );
  expect(thanks).toBe('Thanks:\nVashti Loor: Read the drawing.\nA neighbour: A winch.');
  expect(err).toContain(`${[...out].length} of 5000 characters`);
});

test('nobody who did not agree is named, nor what they paid for', async () => {
  workshop = aWorkshop(FILES);
  const { out } = await workshop.run('video-text', '2', ...SITE);
  expect(out).not.toMatch(/Malachy|Threllow|Osric|Vennerholt|silence|Berta/);
});

test('at every limit the text fits, and who paid, what can injure, what could hurt and the address stay in it', async () => {
  workshop = aWorkshop(FILES);
  let short = 0;
  for (let limit = 400; limit <= 2000; limit += 100) {
    const { out, err, code } = await workshop.run('video-text', '2', ...SITE, '--limit', String(limit));
    if (code === 1) {
      expect(err).toBe(
        `What must be said is longer than ${limit} characters. Use a place that takes more.\n`,
      );
      expect(out).toBe('');
      short += 1;
      continue;
    }
    expect([...out].length).toBeLessThanOrEqual(limit);
    for (const must of [
      'Halmquist',
      'https://example.org/van/chapters/second-look/',
      'DANGER: Petrol',
      'Fill it cold',
    ])
      expect(out, String(limit)).toContain(must);
  }
  expect(short).toBeGreaterThan(0);
  expect(short).toBeLessThan(10);
});

test('a recording longer than an hour has hours in every time', async () => {
  workshop = aWorkshop({ 'chapters/02-second-look/chapter.mdx': CHAPTER().replace('12:31', '1:02:03') });
  const { out } = await workshop.run('video-text', '02-second-look', ...SITE);
  expect(out).toContain('0:00:00 Beginning\n0:01:05 2.2 Fill the tank\n1:02:03 2.1 Put the seat back');
});

test('a held chapter gets its text, and a word that its address does not stand yet', async () => {
  workshop = aWorkshop({ 'chapters/02-second-look/chapter.mdx': CHAPTER('held: true\n') });
  const { code, err } = await workshop.run('video-text', '2', ...SITE);
  expect([code, err]).toEqual([0, expect.stringContaining('The chapter is held')]);
});

test.each([
  [['7', ...SITE], 'There is no chapter "7".'],
  [['2'], 'Say where the series is published'],
  [['2', '--site', 'javascript:alert(1)'], 'is not a web address'],
  [['2', ...SITE, '--limit', 'long'], '"long" is no length.'],
])('wrong use %j is refused in words', async (args, words) => {
  workshop = aWorkshop(FILES);
  expect(await workshop.run('video-text', ...args)).toMatchObject({
    code: 2,
    err: expect.stringContaining(words),
  });
});
