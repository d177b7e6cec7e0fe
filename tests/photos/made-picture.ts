/** Pictures made for a test, with what a phone would leave in them. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp, { type Sharp } from 'sharp';

export const SECRETS = ['SERIAL-7719-PLANTED', 'Halvorn', 'HiddenOwner', '2026:03:07', 'kitchen-window'];

/** Rows of bands in four strong colours, so that a quarter turn shows. */
export function bands(width: number, height: number): Sharp {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><rect width="${width}" height="${height}" fill="#c02020"/><rect y="${height / 2}" width="${width}" height="${height / 2}" fill="#2040c0"/><rect x="${width / 2}" width="${width / 2}" height="${height / 2}" fill="#20a040"/></svg>`;
  return sharp(Buffer.from(svg)).flatten({ background: '#fff' });
}

/** As a phone writes it: place, serial number, owner, time, XMP. */
export function asFromPhone(picture: Sharp): Sharp {
  return picture
    .withExif({
      IFD0: { Make: 'Halvorn', Model: 'Pocket 3', Artist: 'HiddenOwner' },
      IFD2: { DateTimeOriginal: '2026:03:07 10:15:00', BodySerialNumber: 'SERIAL-7719-PLANTED' },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '47/1 31/1 1200/100',
        GPSLongitudeRef: 'W',
        GPSLongitude: '22/1 4/1 3600/100',
      },
    })
    .withXmp(
      '<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="kitchen-window"/></rdf:RDF></x:xmpmeta><?xpacket end="w"?>',
    );
}

export async function put(folder: string, name: string, data: Buffer | Sharp): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, Buffer.isBuffer(data) ? data : await data.toBuffer());
  return path;
}

/** The colour of one pixel as [red, green, blue]. */
export async function pixel(picture: string | Buffer, x: number, y: number): Promise<number[]> {
  const { data } = await sharp(picture)
    .extract({ left: x, top: y, width: 1, height: 1 })
    .toColourspace('srgb')
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return [...data];
}
