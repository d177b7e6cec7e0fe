import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { setTimeout as wait } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { readSeries } from '../../src/record/read-series.ts';
import { writeUpShop } from './write-up-shop.ts';

/** Two texts in the demo's world, as an author brings them. */
const BENCH = `# sat 14 march - tank + tap

- tank off, 2 bolts + the strap. about 3 L of old petrol drained into the red can, smells like varnish!!
- fuel tap weeps at the lever, cork is hard as wood. ordered: 2 cork seals 4.80 EUR + post 6.50, and order 7 has the lever spring 158 CZK
- [ ] strainer missing altogether, find one
- [x] cap vent hole was blocked, cleared w/ 0.8 mm drill in fingers
- measured the tap spigot: 7.9 / 7.9 / 7.7 mm, so worn on one side. clip it for now
- Berta lent the compressor, thank her in the next one

| what | found | limit |
|---|---|---|
| tap lever play | 0.6 mm | 0.3 mm |
| hose wall | 2.1 mm | min 2 mm |
`;
const SHED = `[0:07] right so this is the front end today and uh the plan was to do both stub axles but we'll see how far we get
[1:02] wheel off hub cap off and there's meant to be a split pin in there
[1:25] inner bearing is blue so that's been hot i've got a pair on order thirty one pounds for the two plus four pounds fifty postage
[1:49] drum inside is scored and i'll put the gauge on it we have one hundred and sixty point four at the widest and one hundred and sixty point one the other way
[2:47] wheel cylinder pushes back by hand doesn't leak but the bleed screw is rounded that's for another day
[5:12] thanks to vashti for the press
`;

const errorsOf = async (content: string) =>
  (await readSeries(content, { root: join(content, '..') })).problems.filter(
    ({ severity }) => severity === 'error',
  );

test('every proposal of two texts, taken into the demo’s registers, passes the check', async () => {
  const shop = writeUpShop({ demo: true });
  for (const [name, text] of [
    ['bench.md', BENCH],
    ['shed.txt', SHED],
  ] as const) {
    const { out } = await shop.run(['write-up', shop.note(name, text)]);
    const chapter = /chapters\/(\S+)\/chapter\.mdx, held/.exec(out)?.[1] ?? '';
    const file = join(shop.content, 'chapters', chapter, 'proposals.yaml');
    writeFileSync(file, readFileSync(file, 'utf8').replaceAll('consent: ""', 'consent: yes'));
    const take = await shop.run(['write-up', '--take', chapter, '--all']);
    expect(take.out).toMatch(/Taken: \d\d?\./);
    expect(take.out + take.err).not.toContain(' error ');
  }
  expect((await errorsOf(shop.content)).map(({ file, message }) => `${file}: ${message}`)).toEqual([]);
  const ledger = readFileSync(join(shop.content, 'ledger.csv'), 'utf8');
  expect(ledger).toMatch(/Cork seals.*4[.,]80/);
  expect(ledger).toMatch(/part,Inner bearing.*31[.,]00,GBP/);
  expect(readFileSync(join(shop.content, 'measurements.csv'), 'utf8')).toMatch(/Hose wall/);
  shop.clear();
}, 60_000);

test('thanks to somebody in the register add the chapter to that row, and touch no other byte', async () => {
  const shop = writeUpShop({
    notes: { 'evening.md': '# Tank\n\n- took the tank off\n- thanks to Berta for the press\n' },
  });
  const file = join(shop.content, 'supporters.csv');
  const before =
    'name,credit,kind,what,from,until,chapters,consent,link\r\n"Orr, Vashti",,loan,"a press, and time",,,01-first-look,yes,\r\nBerta Quill,,help,Held the other end,,,01-first-look,yes,\r\n';
  writeFileSync(file, before);
  await shop.run(['write-up', shop.files[0] ?? '']);
  expect(shop.read('proposals.yaml')).toContain('add_to: Berta Quill');
  const name = shop.folder().split('/').at(-1) ?? '';
  await shop.run(['write-up', '--take', name, '--all']);
  expect(readFileSync(file, 'utf8')).toBe(
    before.replace('end,,,01-first-look', `end,,,01-first-look ${name}`),
  );
  shop.clear();
});

test('a fault that is open in the register is gone on with, not opened a second time', async () => {
  const shop = writeUpShop({ demo: true });
  const { series } = await readSeries(shop.content, { root: shop.root });
  const fault = series?.faults.find(({ events }) => events.at(-1)?.what !== 'cured');
  expect(fault).toBeDefined();
  const note = shop.note(
    'again.md',
    `# Again\n\n- looked at it again: ${fault?.title ?? ''}, still leaks and worn\n`,
  );
  const { out } = await shop.run(['write-up', note]);
  const chapter = /chapters\/(\S+)\/chapter\.mdx, held/.exec(out)?.[1] ?? '';
  const text = readFileSync(join(shop.content, 'chapters', chapter, 'proposals.yaml'), 'utf8');
  expect(text, `${fault?.title}\n${text}`).toContain(`fault: ${fault?.id}`);
  expect(text).not.toMatch(/kind: fault\n/);
  shop.clear();
});

test('at a terminal each proposal is asked, and what is accepted is written at once', async () => {
  const shop = writeUpShop({
    notes: { 'evening.md': '# Tank\n\n- horn dead\n- ordered: 2 cork seals 4.80 EUR\n' },
  });
  await shop.run(['write-up', shop.files[0] ?? '']);
  const input = new PassThrough();
  const output = new PassThrough();
  let shown = '';
  output.on('data', (text) => {
    shown += text;
  });
  const asked = async (nth: number): Promise<void> => {
    for (let n = 0; n < 200 && (shown.match(/evening\.md:\d+\) "/g)?.length ?? 0) < nth; n++) {
      await wait(10);
      if (new Set(shown.match(/\w+ \(notes\/evening\.md:\d+\)/g)).size >= nth) return;
    }
  };
  const name = shop.folder().split('/').at(-1) ?? '';
  const run = shop.run(['write-up', '--take', name], { terminal: { input, output } });
  await asked(1);
  input.write('y');
  await asked(2);
  await wait(50);
  input.write('n');
  await asked(3);
  await wait(50);
  input.write('\x03');
  const { out } = await run;
  expect(shown).toContain('horn dead');
  expect(out).toContain('Taken: 1.');
  expect(shop.read('proposals.yaml').match(/done:/g)).toHaveLength(1);
  shop.clear();
});

test('nothing in a note becomes a formula of a register or a mark of a fault’s file', async () => {
  const shop = writeUpShop({
    notes: {
      'evening.md':
        '# Tank\n\n- ordered: 2 =HYPERLINK("x") seals 4.80 EUR\n- tap weeps: "---" {x} `y` #z & <b>, leaks at @here\n- thanks to =Berta, for \'the\' "press"\n',
    },
  });
  await shop.run(['write-up', shop.files[0] ?? '']);
  const file = shop.path('proposals.yaml');
  writeFileSync(
    file,
    readFileSync(file, 'utf8')
      .replaceAll('consent: ""', 'consent: yes')
      .replaceAll('name: ""', 'name: "=cmd"'),
  );
  await shop.run(['write-up', '--take', shop.folder().split('/').at(-1) ?? '', '--all']);
  for (const [name, text] of shop.all())
    if (name.endsWith('.csv')) expect(text, name).not.toMatch(/(?:^|[,;"])[=+@]/m);
  expect((await errorsOf(shop.content)).map(({ message }) => message)).toEqual([]);
  shop.clear();
});
