/**
 * Draws every plate of the demo series and writes it as the photo that a phone would leave: eight megapixels, turned on its side
 * where it is upright, with time, place (in the open ocean) and serial number in its EXIF, so that their removal can be seen.
 * Usage: npm run plates [-- name …] [--svg folder]
 */
import { mkdir, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { GROUPS } from './groups.ts';
import { PAPER } from './pen.ts';

const CHAPTERS = new URL('../../content/chapters/', import.meta.url).pathname;
const LONG = 3264;
const SHORT = 2448;

function exif(day: string, minute: number) {
  const time = `${day.replaceAll('-', ':')} ${String(9 + Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}:00`;
  return {
    IFD0: { Make: 'Halvorn', Model: 'Pocket 3', Software: 'HV3 4.1', DateTime: time },
    IFD2: {
      DateTimeOriginal: time,
      OffsetTimeOriginal: '+01:00',
      BodySerialNumber: 'HV3-SERIAL-0042-7719',
      LensModel: 'Halvorn 5.1 mm',
    },
    IFD3: {
      GPSLatitudeRef: 'N',
      GPSLatitude: '47/1 31/1 1200/100',
      GPSLongitudeRef: 'W',
      GPSLongitude: '22/1 4/1 3600/100',
    },
  };
}

const wanted = process.argv.slice(2).filter((word) => !word.startsWith('--'));
const svgAt = process.argv.indexOf('--svg');
const svgFolder = svgAt === -1 ? undefined : process.argv[svgAt + 1];
let total = 0;
for (const { chapter, day, plates } of GROUPS) {
  await mkdir(join(CHAPTERS, chapter), { recursive: true });
  for (const [index, [name, drawPlate]] of Object.entries(plates).entries()) {
    if (wanted.length > 0 && !wanted.includes(name) && !wanted.includes(chapter)) continue;
    const sheet = drawPlate();
    const upright = sheet.height > sheet.width;
    const svg = upright ? sheet.svg(SHORT, LONG) : sheet.svg(LONG, SHORT);
    if (svgFolder !== undefined) await writeFile(join(svgFolder, `${name}.svg`), svg);
    const turned = await sharp(Buffer.from(svg))
      .rotate(upright ? 270 : 0)
      .flatten({ background: PAPER })
      .toBuffer();
    const jpeg = await sharp(turned)
      .withExif(exif(day, index * 17))
      .withMetadata({ orientation: upright ? 6 : 1 })
      .jpeg({ quality: 60, mozjpeg: true })
      .toBuffer();
    const path = join(CHAPTERS, chapter, `${name}.jpg`);
    await writeFile(`${path}.part`, jpeg);
    await rename(`${path}.part`, path);
    total += jpeg.length;
    process.stdout.write(`${chapter}/${name}.jpg ${Math.round(jpeg.length / 1000)} kB\n`);
  }
}
process.stdout.write(`${(total / 1e6).toFixed(2)} MB\n`);
