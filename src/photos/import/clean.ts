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

const QUALITY = 86;
const SMALL_px = 360;

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
  const { data, info } = await picture
    .resize({ width: longest_px, height: longest_px, fit: 'inside', withoutEnlargement: true })
    .toColourspace('srgb')
    .raw()
    .toBuffer({ resolveWithObject: true });
  const raw = { width: info.width, height: info.height, channels: info.channels };
  const time = takenAt(metadata.exif, written, clock_s);
  const jpeg = await sharp(data, { raw }).withExif(exifTime(time)).jpeg({ quality: QUALITY }).toBuffer();
  const small = sharp(data, { raw }).resize({ width: SMALL_px, height: SMALL_px, fit: 'inside' });
  return {
    jpeg,
    small: await small.clone().jpeg({ quality: 70 }).toBuffer(),
    likeness: await likeness(sharp(await small.png({ compressionLevel: 0 }).toBuffer())),
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
