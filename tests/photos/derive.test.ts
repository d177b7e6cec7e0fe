import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32 as crc } from 'node:zlib';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { derivePhotos, photoFile } from '../../src/photos/derive.ts';
import { photoSet, setPhotoSets } from '../../src/photos/set.ts';
import { asFromPhone, bands, pixel, put, SECRETS } from './made-picture.ts';

let folder: string;
let cache: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'photos-'));
  cache = join(folder, 'cache');
});
afterAll(() => rmSync(folder, { recursive: true }));

const outputs = () =>
  readdirSync(cache)
    .filter((name) => /\.(avif|jpg)$/.test(name))
    .map((name) => join(cache, name));

test('no place, serial number, owner, time or XMP of the original is in any byte of a published picture', async () => {
  const path = await put(folder, 'phone.jpg', asFromPhone(bands(2000, 1500)).jpeg());
  const original = readFileSync(path).toString('latin1');
  for (const secret of SECRETS) expect(original, 'planted').toContain(secret);

  const { problems, files } = await derivePhotos([path], { cache });
  expect(problems).toEqual([]);
  expect(files.map((one) => one.path.replace(/[\da-f]{16}/, 'KEY'))).toEqual([
    'photos/KEY-1600.avif',
    'photos/KEY-480.avif',
    'photos/KEY-800.avif',
    'photos/KEY-800.jpg',
  ]);
  for (const file of outputs()) {
    const bytes = readFileSync(file).toString('latin1');
    for (const secret of [...SECRETS, 'Exif\0', 'GPS', 'xpacket', 'ICC_PROFILE', 'http://ns'])
      expect(bytes, file).not.toContain(secret);
    const { exif, xmp, icc, iptc } = await sharp(file).metadata();
    expect({ exif, xmp, icc, iptc }).toEqual({
      exif: undefined,
      xmp: undefined,
      icc: undefined,
      iptc: undefined,
    });
  }
});

test('a photo taken on its side stands upright, with the width and height that a reader sees', async () => {
  const path = await put(
    folder,
    'turned.jpg',
    asFromPhone(bands(400, 200)).withMetadata({ orientation: 6 }).jpeg(),
  );
  const { sets } = await derivePhotos([path], { cache });
  const set = sets.get(path);
  expect([set?.width, set?.height]).toEqual([200, 400]);
  const file = photoFile(set?.fallback.src ?? '', { cache }) ?? '';
  // Turned a quarter clockwise, the lower blue half lies on the left.
  const [red = 0, , blue = 0] = await pixel(file, 50, 200);
  expect(blue).toBeGreaterThan(150);
  expect(red).toBeLessThan(90);
});

test('a small picture is not made larger', async () => {
  const path = await put(folder, 'small.png', bands(300, 100).png());
  const { sets } = await derivePhotos([path], { cache });
  expect(sets.get(path)?.sources[0]?.srcset).toMatch(/^photos\/[\da-f]{16}-300\.avif 300w$/);
});

test('display-P3 and 16-bit colours are published as the same colours in sRGB', async () => {
  const grey = bands(200, 200);
  const p3 = await put(
    folder,
    'p3.jpg',
    grey.clone().withIccProfile('p3').jpeg({ quality: 100, chromaSubsampling: '4:4:4' }),
  );
  const deep = await put(folder, 'deep.png', grey.clone().toColourspace('rgb16').png());
  const { sets } = await derivePhotos([p3, deep], { cache });
  for (const path of [p3, deep]) {
    const file = photoFile(sets.get(path)?.fallback.src ?? '', { cache }) ?? '';
    for (const [x, y, colour] of [
      [50, 50, [0xc0, 0x20, 0x20]],
      [50, 150, [0x20, 0x40, 0xc0]],
      [150, 50, [0x20, 0xa0, 0x40]],
    ] as const) {
      const seen = await pixel(file, x, y);
      colour.forEach((part, at) => {
        expect(Math.abs((seen[at] ?? 0) - part), `${path} ${seen}`).toBeLessThanOrEqual(5);
      });
    }
  }
});

test('what a mask covers is in no size, and no colour of it has run over the edge', async () => {
  const plate =
    '<svg xmlns="http://www.w3.org/2000/svg" width="1800" height="1200"><rect width="1800" height="1200" fill="#ffffff"/><rect x="600" y="400" width="300" height="200" fill="#ff0000"/></svg>';
  const path = await put(folder, 'plate.jpg', sharp(Buffer.from(plate)).jpeg({ quality: 60 }));
  const masks = [{ left: 600 / 1800, top: 400 / 1200, width: 300 / 1800, height: 200 / 1200 }];
  const { sets } = await derivePhotos([{ path, masks }], { cache });
  const set = sets.get(path);
  const addresses = [
    set?.fallback.src ?? '',
    ...(set?.sources[0]?.srcset.split(', ').map((one) => one.split(' ')[0] ?? '') ?? []),
  ];
  expect(addresses).toHaveLength(4);
  for (const address of addresses) {
    const { data, info } = await sharp(photoFile(address, { cache }) ?? '')
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    let reddest = 0;
    for (let at = 0; at < data.length; at += info.channels)
      reddest = Math.max(reddest, (data[at] ?? 0) - (data[at + 1] ?? 0));
    expect(reddest, address).toBeLessThan(12);
  }
  const bare = await derivePhotos([path], { cache });
  expect(bare.sets.get(path)?.fallback.src).not.toBe(set?.fallback.src);
});

test('a second run makes nothing; a changed original is made again', async () => {
  const path = await put(folder, 'again.jpg', bands(900, 600).jpeg());
  expect(await derivePhotos([path], { cache })).toMatchObject({ made: 1, kept: 0 });
  expect(await derivePhotos([path], { cache })).toMatchObject({ made: 0, kept: 1 });
  await put(folder, 'again.jpg', bands(600, 900).jpeg());
  expect(await derivePhotos([path], { cache })).toMatchObject({ made: 1, kept: 0 });
});

test('a size that went missing from the cache is made again', async () => {
  const path = await put(folder, 'missing.jpg', bands(700, 500).jpeg());
  const first = await derivePhotos([path], { cache });
  rmSync(first.files[0]?.file ?? '');
  expect(await derivePhotos([path], { cache })).toMatchObject({ made: 1, kept: 0 });
});

test('each broken picture is one problem that names its file, and the sound ones are made all the same', async () => {
  const sound = await put(folder, 'sound.jpg', bands(640, 480).jpeg());
  const whole = await bands(640, 480).jpeg().toBuffer();
  const cut = await put(folder, 'cut.jpg', whole.subarray(0, whole.length / 2));
  const byte = await put(folder, 'byte.jpg', Buffer.from([0xff]));
  const empty = await put(folder, 'empty.jpg', Buffer.alloc(0));
  const text = join(folder, 'text.jpg');
  writeFileSync(text, 'not a picture');
  const svg = await put(
    folder,
    'drawing.jpg',
    Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'),
  );
  const vast = await put(folder, 'vast.png', vastPng());
  const gone = join(folder, 'gone.jpg');
  const { sets, problems } = await derivePhotos([cut, byte, empty, text, svg, vast, gone, sound], {
    cache,
    root: folder,
  });
  expect([...sets.keys()]).toEqual([sound]);
  expect(problems.map((one) => `${one.file} ${one.severity} ${one.rule} ${one.message}`).sort()).toEqual([
    'byte.jpg error chapters/picture The picture is no picture that can be read. Export it again as JPEG.',
    'cut.jpg error chapters/picture The picture is cut off before its end, or damaged there. Copy it again from the camera.',
    'drawing.jpg error chapters/picture The picture is a picture of the kind svg. Export it as JPEG.',
    'empty.jpg error chapters/picture The picture is empty. Copy it again from the camera.',
    'gone.jpg error chapters/picture The picture is not there. Copy it beside the chapter.',
    'text.jpg error chapters/picture The picture is no picture that can be read. Export it again as JPEG.',
    'vast.png error chapters/picture The picture has 25000 × 20000 pixels, more than 250 million. Export it smaller.',
  ]);
});

/** The head of a PNG that claims 500 megapixels. */
function vastPng(): Buffer {
  const png = Buffer.from(
    '89504e470d0a1a0a0000000d49484452000000010000000108000000003a7e9b550000000a49444154789c63600000000200 0148afa4710000000049454e44ae426082'.replace(
      ' ',
      '',
    ),
    'hex',
  );
  png.writeUInt32BE(25000, 16);
  png.writeUInt32BE(20000, 20);
  png.writeUInt32BE(crc(png.subarray(12, 29)), 29);
  return png;
}

test('only addresses of our own pictures lead into the cache', () => {
  expect(photoFile('/van/photos/0123456789abcdef-800.avif', { cache: '/c' })).toBe(
    '/c/0123456789abcdef-800.avif',
  );
  for (const address of [
    '/photos/../index.json',
    '/photos/index.json',
    '/photos/0123456789abcdef-800.avif/..',
    '/0123456789abcdef-800.avif',
  ])
    expect(photoFile(address, { cache: '/c' }), address).toBeUndefined();
});

test('a page asks for a picture by its original; one that was never made stops the page', async () => {
  const path = await put(folder, 'asked.jpg', bands(500, 500).jpeg());
  setPhotoSets(await derivePhotos([path], { cache }));
  expect(photoSet(path).fallback).toMatchObject({ width: 500, height: 500 });
  expect(() => photoSet('/nowhere.jpg')).toThrow('No sizes were made');
});
