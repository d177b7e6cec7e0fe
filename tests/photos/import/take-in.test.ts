import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import readExif from 'exif-reader';
import sharp from 'sharp';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { photos } from '../../../src/cli/photos.ts';
import { Journal } from '../../../src/photos/import/journal.ts';
import { DISK } from '../../../src/photos/import/place-file.ts';
import { takeIn } from '../../../src/photos/import/take-in.ts';
import { asFromPhone, bands, pixel, put, SECRETS } from '../made-picture.ts';

let root: string;
let camera: string;
let chapter: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'take-in-'));
  camera = join(root, 'camera');
  chapter = join(root, 'content', 'chapters', '01-first');
  mkdirSync(camera);
  mkdirSync(chapter, { recursive: true });
  writeFileSync(
    join(chapter, 'chapter.mdx'),
    '---\ntitle: First\ndate: 2026-03-07\nsummary: One.\n---\n\n<Step title="Lift it" at="1:00">\n\nBoth hands.\n\n</Step>\n',
  );
  writeFileSync(
    join(root, 'content', 'series.yaml'),
    'title: T\nsummary: S\nbyline: B\nlanguage: en-GB\nhome_currency: EUR\n',
  );
  writeFileSync(join(root, 'content', 'machine.yaml'), 'name: M\n');
});
afterEach(() => rmSync(root, { recursive: true }));

/** A scene that no other number makes. */
function scene(number: number, width = 640, height = 480) {
  const part = (at: number) => {
    let x = Math.imul(number * 131 + at + 1, 2654435761) >>> 0;
    x = Math.imul(x ^ (x >>> 15), 2246822519) >>> 0;
    return ((x ^ (x >>> 13)) >>> 0) / 2 ** 32;
  };
  const shapes = Array.from(
    { length: 8 },
    (_, at) =>
      `<circle cx="${part(at) * width}" cy="${part(at + 20) * height}" r="${40 + part(at + 40) * 140}" fill="hsl(${part(at + 60) * 360} 60% ${20 + part(at + 80) * 60}%)"/>`,
  );
  return sharp(
    Buffer.from(
      `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><rect width="${width}" height="${height}" fill="#888"/>${shapes.join('')}</svg>`,
    ),
  ).flatten();
}
const timed = (number: number, time: string) =>
  scene(number)
    .withExif({ IFD2: { DateTimeOriginal: time } })
    .jpeg();

async function run(...args: string[]): Promise<{ code: number; text: string }> {
  let text = '';
  const write = (words: string) => {
    text += words;
  };
  const code = await photos(['camera', ...args], { root, out: write, err: write, interactive: false });
  return { code, text };
}
const pictures = () =>
  readdirSync(chapter)
    .filter((name) => name.endsWith('.jpg'))
    .sort();

test('what is kept of a phone photo is the picture and its time: no place, serial number, owner or XMP in any byte', async () => {
  await put(camera, 'IMG_1.jpg', asFromPhone(bands(3000, 2000)).withMetadata({ orientation: 6 }).jpeg());
  expect(await run('--chapter', '1')).toMatchObject({ code: 0 });
  expect(pictures()).toEqual(['2026-03-07-101500.jpg']);
  const bytes = readFileSync(join(chapter, '2026-03-07-101500.jpg'));
  for (const secret of [...SECRETS.filter((one) => one !== '2026:03:07'), 'GPS', 'xpacket'])
    expect(bytes.toString('latin1')).not.toContain(secret);
  const { exif, width, height, icc } = await sharp(bytes).metadata();
  expect([width, height, icc]).toEqual([1600, 2400, undefined]);
  // Read back with another reader than the one that wrote it.
  const { Photo, GPSInfo, Image } = readExif(exif ?? Buffer.alloc(0));
  expect(Photo?.DateTimeOriginal?.toISOString()).toBe('2026-03-07T10:15:00.000Z');
  expect([GPSInfo, Image?.Make, Image?.Artist, Photo?.['BodySerialNumber']]).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
  expect(readFileSync(join(camera, 'IMG_1.jpg')).toString('latin1')).toContain('SERIAL-7719-PLANTED');
});

test('HEIC from a phone comes upright, in its own colours, without what it knew', async () => {
  await put(
    camera,
    'IMG_2.HEIC',
    readFileSync(fileURLToPath(new URL('../heic/turned-p3.heic', import.meta.url))),
  );
  expect(await run('--chapter', '1')).toMatchObject({ code: 0 });
  const path = join(chapter, '2026-03-07-101500.jpg');
  const { width, height } = await sharp(path).metadata();
  expect([width, height]).toEqual([320, 240]);
  for (const secret of ['SERIAL-7719-PLANTED', 'Halvorn', 'HiddenOwner', 'kitchen-window'])
    expect(readFileSync(path).toString('latin1')).not.toContain(secret);
  for (const [x, y, colour] of [
    [60, 50, [0xc0, 0x20, 0x20]],
    [240, 50, [0x20, 0xa0, 0x40]],
    [160, 180, [0x20, 0x40, 0xc0]],
  ] as const)
    expect(distance(await pixel(path, x, y), colour)).toBeLessThan(4);
});

test('colours of a display-P3 and of a 16-bit chart stay within a distance of 2 (CIE 1976 L*a*b*)', async () => {
  const patches = [
    0x735244, 0xc29682, 0x627a9d, 0x576c43, 0x8580b1, 0x67bdaa, 0xd67e2c, 0x505ba6, 0xc15a63, 0x5e3c6c,
    0x9dbc40, 0xe0a32e, 0x808080, 0x404040, 0xf0f0f0,
  ].map((hex) => [hex >> 16, (hex >> 8) & 255, hex & 255] as const);
  const squares = patches.map(
    ([r, g, b], at) => `<rect x="${at * 64}" width="64" height="64" fill="rgb(${r},${g},${b})"/>`,
  );
  const chart = () =>
    sharp(
      Buffer.from(
        `<svg xmlns="http://www.w3.org/2000/svg" width="${patches.length * 64}" height="64">${squares.join('')}</svg>`,
      ),
    ).flatten();
  await put(
    camera,
    'p3.jpg',
    chart().withIccProfile('p3').jpeg({ quality: 100, chromaSubsampling: '4:4:4' }),
  );
  await put(camera, 'deep.png', chart().flop().toColourspace('rgb16').png());
  await put(camera, 'deep.tif', chart().flip().rotate(180).withIccProfile('p3').tiff());
  await run('--chapter', '1', '--near', 'take');
  const names = pictures();
  expect(names).toHaveLength(3);
  for (const name of names) {
    const first = await pixel(join(chapter, name), 32, 32);
    const order = distance(first, patches[0] ?? [0, 0, 0]) < 10 ? patches : patches.toReversed();
    for (const [at, patch] of order.entries())
      expect(
        distance(await pixel(join(chapter, name), at * 64 + 32, 32), patch),
        `${name} ${at}`,
      ).toBeLessThanOrEqual(2);
  }
});

/** CIE 1976 L*a*b* distance of two sRGB colours, white D65. Source: CIE 15; sRGB from IEC 61966-2-1. */
function distance(one: readonly number[], other: readonly number[]): number {
  const lab = (colour: readonly number[]) => {
    const [r = 0, g = 0, b = 0] = colour.map((part) => {
      const v = part / 255;
      return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
    });
    const [x, y, z] = [
      (0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.95047,
      0.2126 * r + 0.7152 * g + 0.0722 * b,
      (0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.08883,
    ].map((t) => (t > 216 / 24389 ? Math.cbrt(t) : (24389 / 27 / 116) * t + 16 / 116)) as [
      number,
      number,
      number,
    ];
    return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
  };
  const [a, b] = [lab(one), lab(other)];
  return Math.hypot(...a.map((part, at) => part - (b[at] ?? 0)));
}

test('the same bytes under two names are taken once; two photos of one second both, with a number', async () => {
  mkdirSync(join(camera, 'a'));
  mkdirSync(join(camera, 'b'));
  const one = await timed(1, '2026:03:07 10:00:00').toBuffer();
  await put(join(camera, 'a'), 'IMG_1.jpg', one);
  await put(join(camera, 'b'), 'IMG_1.jpg', await timed(2, '2026:03:07 10:00:00').toBuffer());
  await put(join(camera, 'b'), 'IMG_1 copy.jpg', one);
  const { text } = await run('--chapter', '1');
  expect(pictures()).toEqual(['2026-03-07-100000-2.jpg', '2026-03-07-100000.jpg']);
  expect(text).toContain('1 file taken in before or twice the same: IMG_1 copy.jpg.');
});

test('a picture nearly the same as another waits for an answer; the answer takes it in or leaves it out for good', async () => {
  const one = timed(3, '2026:03:07 10:00:00');
  await put(camera, '1.jpg', await one.clone().toBuffer());
  await put(camera, '2.jpg', await one.clone().resize(500).jpeg({ quality: 60 }).toBuffer());
  await put(camera, '3.jpg', await one.clone().resize(400).jpeg({ quality: 50 }).toBuffer());
  const { text, code } = await run('--chapter', '1');
  expect(code).toBe(0);
  expect(text).toContain('2.jpg is nearly the same as 2026-03-07-100000.jpg; it waits.');
  expect(pictures()).toHaveLength(1);
  rmSync(join(camera, '3.jpg'));
  await run('--chapter', '1', '--near', 'take');
  expect(pictures()).toHaveLength(2);
  expect((await run('--chapter', '1', '--near', 'leave')).text).not.toContain('nearly the same');
});

test('a picture like one that lay in the chapter before is found too', async () => {
  await put(chapter, 'by-hand.jpg', await scene(4).jpeg().toBuffer());
  await put(camera, '1.jpg', await scene(4).resize(500).jpeg({ quality: 60 }).toBuffer());
  expect((await run('--chapter', '1')).text).toContain('1.jpg is nearly the same as by-hand.jpg');
});

test('each broken picture is told by its name, and the sound ones are taken in', async () => {
  const sound = await timed(5, '2026:03:07 10:00:00').toBuffer();
  await put(camera, 'byte.jpg', Buffer.from([0xff]));
  await put(camera, 'cut.jpg', sound.subarray(0, sound.length / 2));
  await put(camera, 'empty.jpg', Buffer.alloc(0));
  await put(camera, 'liar.jpg', await scene(6).png().toBuffer());
  await put(camera, 'sound.jpg', sound);
  await put(camera, 'clip.mp4', Buffer.from('film'));
  const { text, code } = await run('--chapter', '1');
  expect(code).toBe(1);
  expect(text).toContain('byte.jpg is no picture that can be read. Export it again as JPEG.');
  expect(text).toContain(
    'cut.jpg is cut off before its end, or damaged there. Copy it again from the camera.',
  );
  expect(text).toContain('empty.jpg is empty. Copy it again from the camera.');
  expect(text).toContain('1 other file left alone: clip.mp4.');
  expect(pictures()).toHaveLength(2);
});

test('on a full disk what was taken in is whole, and the next run goes on from there', async () => {
  const paths = await Promise.all(
    [1, 2, 3, 4, 5].map(async (at) =>
      put(camera, `${at}.jpg`, await timed(at, `2026:03:07 10:00:0${at}`).toBuffer()),
    ),
  );
  const scratch = join(root, '.oilway', 'taken-in', '01-first');
  let writes = 0;
  const full = {
    write: async (path: string, data: Uint8Array | string) => {
      writes += 1;
      if (writes > 5) {
        writeFileSync(path, data.slice(0, 10));
        throw Object.assign(new Error('no space left on device'), { code: 'ENOSPC' });
      }
      await DISK.write(path, data);
    },
  };
  const options = { chapter, scratch, longest_px: 600, clock_s: 0 };
  const journal = () => Journal.open(join(scratch, 'journal.jsonl'), chapter);
  const first = await takeIn(paths, { ...options, journal: await journal(), disk: full });
  expect(first.full).toBe(true);
  expect(first.failed).toEqual([]);
  expect(first.taken).toHaveLength(2);
  for (const name of pictures()) await sharp(join(chapter, name)).stats();
  expect(readdirSync(scratch).filter((name) => name.endsWith('.part'))).toEqual([]);
  const second = await takeIn(paths, { ...options, journal: await journal() });
  expect(second.taken).toHaveLength(3);
  expect(pictures()).toHaveLength(5);
});

test('lines are added once, at the end, and the text before them stays as it was', async () => {
  const before = readFileSync(join(chapter, 'chapter.mdx'), 'utf8');
  await put(camera, '1.jpg', timed(1, '2026:03:07 14:02:00'));
  await put(camera, '2.jpg', timed(2, '2026:03:07 14:00:10'));
  await run('--chapter', '1', '--recording-began', '2026-03-07 14:00:05', '--faces', '2', '--plates', 'none');
  await run('--chapter', '1');
  const after = readFileSync(join(chapter, 'chapter.mdx'), 'utf8');
  expect(after).toBe(
    `${before}
<Photo src="./2026-03-07-140010.jpg" alt="" caption="" />

{/* Taken during step 1.1, Lift it */}

<Photo src="./2026-03-07-140200.jpg" alt="" caption="" mask={["? ? ? ?"]} />
`,
  );
});

test('what was not answered about people and places is listed', async () => {
  await put(camera, '1.jpg', timed(1, '2026:03:07 14:02:00'));
  const { text } = await run('--chapter', '1', '--faces', 'none');
  expect(text).not.toContain('faces in');
  expect(text).toContain('Not answered, number plates in 1 picture: --plates NUMBERS or none.');
  expect(text).toContain('Not answered, house fronts in 1 picture: --fronts NUMBERS or none.');
});

test('without a chapter nothing is taken in, and the chapters that fit are proposed', async () => {
  await put(camera, '1.jpg', timed(1, '2026:03:01 14:02:00'));
  const { text } = await run();
  expect(text).toContain(
    '1 picture of 2026-03-01: 01-first (2026-03-07)\n  npm run photos -- camera --chapter 01-first',
  );
  expect(pictures()).toEqual([]);
});

test.each([
  [['--chapter', '9'], 'There is no chapter "9".'],
  [['--clock', 'late'], '"late" is no correction. Write +1:02:10, -0:45 or -1d.'],
  [['--credit', 'Vashti Loor'], 'Pictures of somebody else need --permission'],
  [['--near', 'perhaps'], '--near is take or leave, not "perhaps".'],
])('wrong use %s is refused in words', async (args, words) => {
  await put(camera, '1.jpg', timed(1, '2026:03:01 14:02:00'));
  await expect(run(...args)).rejects.toThrow(words);
});

test('the command never takes from the author’s own folder', async () => {
  await expect(
    photos(['content/chapters'], { root, out: () => undefined, err: () => undefined, interactive: false }),
  ).rejects.toThrow('lies in content');
});
