import sharp, { type Exif } from 'sharp';
import { openPicture } from '../open-picture.ts';
import { likeness } from './likeness.ts';
import { type TakenAt, takenAt } from './taken-at.ts';

export interface Clean {
  /** The picture to keep: upright, sRGB, no more metadata than the time. */
  jpeg: Buffer;
  /** For the contact sheet. */
  small: Buffer;
  likeness: string;
  takenAt: TakenAt;
  width: number;
  height: number;
}

export interface CleanOptions {
  /** Longest edge of what is kept. */
  longest_px: number;
  clock_s: number;
}

/** JPEG quality of what is kept. */
export const QUALITY = 86;
/** Of the contact sheet's pictures. */
export const SMALL = { px: 360, quality: 70 };

/**
 * A clean copy of one original. Place, serial numbers, names and the camera's own notes are not copied; the time is.
 * @throws {PictureError} see openPicture
 */
export async function cleanPicture(
  path: string,
  bytes: Buffer,
  written: Date,
  { longest_px, clock_s }: CleanOptions,
): Promise<Clean> {
  const { picture, metadata } = await openPicture(path, { bytes });
  const time = takenAt(metadata.exif, written, clock_s);
  const { data: jpeg, info } = await picture
    .resize({ width: longest_px, height: longest_px, fit: 'inside', withoutEnlargement: true })
    .toColourspace('srgb')
    .withExif(exifTime(time))
    .jpeg({ quality: QUALITY })
    .toBuffer({ resolveWithObject: true });
  // Small ones are made from what is kept: decoding that at an eighth is quicker than decoding the original again.
  const small = await sharp(jpeg)
    .resize({ width: SMALL.px, height: SMALL.px, fit: 'inside', withoutEnlargement: true })
    .raw()
    .toBuffer({ resolveWithObject: true });
  const raw = { width: small.info.width, height: small.info.height, channels: small.info.channels };
  return {
    jpeg,
    small: await sharp(small.data, { raw }).jpeg({ quality: SMALL.quality }).toBuffer(),
    likeness: await likeness(sharp(small.data, { raw })),
    takenAt: time,
    width: info.width,
    height: info.height,
  };
}

/** EXIF with the time alone; where the camera noted none, nothing. */
function exifTime({ wall, offset, from }: TakenAt): Exif {
  if (from === 'file') return {};
  const time = wall.replace('T', ' ').replace(/^(\d{4})-(\d\d)-(\d\d)/, '$1:$2:$3');
  return { IFD2: { DateTimeOriginal: time, ...(offset && { OffsetTimeOriginal: offset }) } };
}
