import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { BaseBuilder, buildGPX } from 'gpx-builder';
import sharp from 'sharp';
import { beforeAll, expect, test } from 'vitest';
import { filesOf } from './built-site.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const place = join(root, '.oilway', 'secrets');
const content = join(place, 'content');
const site = join(place, 'site');

/** Words that stand nowhere else, each planted where an author keeps something private. */
const SECRETS = {
  'a private ledger note': 'kestrelferry',
  'a rough note': 'quillhatchet',
  'the text of a held chapter': 'brambletide',
  'the title of a held chapter': 'oxbowlantern',
  'a ledger row of a held chapter': 'pewtermoth',
  'a supporter who did not agree': 'Zephrinella Okonwode',
  "a fault's event in a held chapter": 'saltmarshkite',
  "a photo's description": 'thistlegate',
  "a photo's serial number": 'SN77311942',
  'a photo of a held chapter': 'copperwren',
  'a measurement in a held chapter': 'juniperlatch',
  'a name and a file of a road-test track': 'heronsluice',
  'a place of a road-test track': '46.913',
  'a road test of a held chapter': 'larkspurgate',
  'a word said while a speed was read aloud': 'wagtailbridge',
} as const;

/** Adds one row to a CSV of the copy, cells given by heading, in the file's own columns. */
function addRow(file: string, cells: Record<string, string>): void {
  const path = join(content, file);
  const text = readFileSync(path, 'utf8');
  const headings = (text.split(/\r?\n/)[0] ?? '').replace(/^\uFEFF/, '').split(',');
  for (const name of Object.keys(cells)) {
    if (!headings.includes(name)) throw new Error(`${file} has no column ${name}`);
  }
  writeFileSync(
    path,
    `${text.replace(/\n?$/, '\n')}${headings.map((name) => cells[name] ?? '').join(',')}\n`,
  );
}

beforeAll(async () => {
  rmSync(place, { recursive: true, force: true });
  mkdirSync(place, { recursive: true });
  cpSync(join(root, 'content'), content, { recursive: true });

  const held = join(content, 'chapters', '98-oxbowlantern-later');
  mkdirSync(held);
  await sharp({ create: { width: 320, height: 240, channels: 3, background: '#778899' } })
    .withExif({ IFD0: { ImageDescription: SECRETS['a photo of a held chapter'] } })
    .jpeg()
    .toFile(join(held, 'copperwren.jpg'));
  writeFileSync(
    join(held, 'chapter.mdx'),
    `---
title: ${SECRETS['the title of a held chapter']}
date: 2026-12-01
summary: Not yet.
held: true
---

It says ${SECRETS['the text of a held chapter']} here.

<Photo src="./copperwren.jpg" alt="A grey card." caption="Grey." />
`,
  );
  addRow('ledger.csv', {
    date: '2026-12-01',
    kind: 'consumable',
    item: SECRETS['a ledger row of a held chapter'],
    supplier: 'Corner shop',
    qty: '1',
    amount: '3.00',
    currency: 'EUR',
    chapter: '98-oxbowlantern-later',
  });
  addRow('ledger.csv', {
    date: '2026-03-07',
    kind: 'consumable',
    item: 'Rags',
    supplier: 'Corner shop',
    qty: '1',
    amount: '3.00',
    currency: 'EUR',
    private_note: SECRETS['a private ledger note'],
  });
  addRow('supporters.csv', {
    name: SECRETS['a supporter who did not agree'],
    kind: 'gift',
    what: 'A box of bolts',
    consent: 'no',
  });
  addRow('measurements.csv', {
    date: '2026-12-01',
    chapter: '98-oxbowlantern-later',
    item: SECRETS['a measurement in a held chapter'],
    found: '1.00',
    unit: 'mm',
    source: 'measured',
  });
  const [track, where, unseen] = [
    SECRETS['a name and a file of a road-test track'],
    SECRETS['a place of a road-test track'],
    SECRETS['a road test of a held chapter'],
  ];
  const { Metadata, Point, Segment, Track } = BaseBuilder.MODELS;
  const points = Array.from(
    { length: 50 },
    (_, i) =>
      new Point(Number(`${where}${String(i * 9).padStart(4, '0')}`), -30.5, {
        time: new Date(Date.UTC(2026, 4, 2, 9, 30, i)),
      }),
  );
  // Written by gpx-builder, a general library for GPX 1.1.
  const gpx = new BaseBuilder();
  gpx.setMetadata(new Metadata({ name: track }));
  gpx.setTracks([new Track([new Segment(points)], { name: track })]);
  writeFileSync(join(content, 'road-tests', `${track}.gpx`), buildGPX(gpx.toObject()));
  addRow('road-tests.csv', {
    test: 'planted',
    chapter: '10-round-the-lane',
    kind: 'cruise',
    file: `${track}.gpx`,
  });
  addRow('road-tests.csv', {
    test: 'unseen',
    title: unseen,
    chapter: '98-oxbowlantern-later',
    kind: 'cruise',
    file: `${track}.gpx`,
  });
  const said = SECRETS['a word said while a speed was read aloud'];
  writeFileSync(
    join(content, 'road-tests', `${said}.vtt`),
    `WEBVTT\n\nNOTE ${said}\n\n00:02.000 --> 00:05.000\nPast ${said} it shows 41 km/h on the level.\n`,
  );
  addRow('road-tests.csv', {
    test: 'heard',
    chapter: '10-round-the-lane',
    kind: 'cruise',
    file: `${said}.vtt`,
  });
  mkdirSync(join(content, 'notes'), { recursive: true });
  writeFileSync(join(content, 'notes', 'evening.md'), `- ${SECRETS['a rough note']}\n`);

  const faults = join(content, 'faults');
  /** One that is still open, so that something more may be tried at it. */
  const fault = readdirSync(faults).find((name) => {
    const events = [...readFileSync(join(faults, name), 'utf8').matchAll(/\bwhat: (\w+)/g)].map(
      ([, what]) => what,
    );
    return events.at(-1) !== 'cured';
  });
  if (fault === undefined) throw new Error('The demo has no fault to hang a held event on');
  const text = readFileSync(join(faults, fault), 'utf8');
  const [, frontmatter, body] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text) ?? [];
  if (frontmatter === undefined || !/\nevents:\n( {2}- [\s\S]*)$/.test(frontmatter))
    throw new Error(`events are not last in ${fault}`);
  writeFileSync(
    join(faults, fault),
    `---\n${frontmatter}\n  - chapter: 98-oxbowlantern-later\n    date: 2026-12-01\n    what: tried\n    text: ${SECRETS["a fault's event in a held chapter"]}\n---\n${body}`,
  );

  const chapter = readdirSync(join(content, 'chapters')).sort()[0] ?? '';
  const picture = readdirSync(join(content, 'chapters', chapter)).find((name) => name.endsWith('.jpg')) ?? '';
  const path = join(content, 'chapters', chapter, picture);
  const marked = await sharp(path)
    .withExif({
      IFD0: { ImageDescription: SECRETS["a photo's description"] },
      IFD2: { BodySerialNumber: SECRETS["a photo's serial number"] },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '51/1 30/1 3230/100',
        GPSLongitudeRef: 'W',
        GPSLongitude: '0/1 7/1 4366/100',
      },
    })
    .jpeg()
    .toBuffer();
  writeFileSync(path, marked);

  const ran = spawnSync(
    'node',
    ['src/cli/main.ts', 'build', '--content', content, '--out', site, '--site', 'https://series.example'],
    {
      cwd: root,
      encoding: 'utf8',
    },
  );
  expect(ran.status, ran.stdout + ran.stderr).toBe(0);
}, 180_000);

test('The planted photo really carries its place and serial number', () => {
  const chapter = readdirSync(join(content, 'chapters')).sort()[0] ?? '';
  const carried = readdirSync(join(content, 'chapters', chapter)).some((name) =>
    readFileSync(join(content, 'chapters', chapter, name)).includes(SECRETS["a photo's serial number"]),
  );
  expect(carried).toBe(true);
});

test.each(Object.entries(SECRETS))('%s is in no byte of the built site', (_what, secret) => {
  expect(existsSync(join(site, 'index.html'))).toBe(true);
  const needles = [
    secret,
    secret.toLowerCase(),
    secret.replaceAll(' ', '-').toLowerCase(),
    encodeURIComponent(secret),
  ].flatMap((one) => [Buffer.from(one, 'utf8'), Buffer.from(one, 'utf16le')]);
  const found = filesOf(site).filter((file) => {
    if (needles.some((needle) => Buffer.from(file.toLowerCase()).includes(needle))) return true;
    const bytes = readFileSync(join(site, file));
    const plain = file.endsWith('.gz') ? gunzipSync(bytes) : bytes;
    return needles.some((needle) => plain.includes(needle));
  });
  expect(found).toEqual([]);
});

test('No picture of the built site carries any metadata', async () => {
  const pictures = filesOf(site).filter((file) => /\.(jpe?g|avif|png|webp)$/.test(file));
  expect(pictures.length).toBeGreaterThan(10);
  for (const file of pictures) {
    const { exif, xmp, iptc, icc } = await sharp(join(site, file)).metadata();
    expect({ file, exif, xmp, iptc, icc }).toEqual({
      file,
      exif: undefined,
      xmp: undefined,
      iptc: undefined,
      icc: undefined,
    });
  }
});
