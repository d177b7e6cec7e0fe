import { readFile, stat } from 'node:fs/promises';
import sharp, { type Metadata, type Sharp } from 'sharp';
import { burn, type Mask } from './mask.ts';
import { pngWithProfile } from './png-profile.ts';
import { LIMITS } from './settings.ts';

/** Why one picture cannot be used: what is wrong, then what to do. The rest of the work goes on. */
export class PictureError extends Error {}

const KINDS = new Set(['jpeg', 'png', 'webp', 'tiff', 'heif', 'gif']);

export interface Opened {
  /** Upright, in sRGB; resize and encode it. */
  picture: Sharp;
  /** As seen, upright. */
  width: number;
  height: number;
  metadata: Metadata;
}

/**
 * Opens an original: upright by the camera's note, colours to sRGB, masks burnt in at full size.
 * @throws {PictureError} too large, empty, cut off in its head, of no kind that can be read, or HEIC without its decoder.
 */
export async function openPicture(
  path: string,
  { masks = [], bytes }: { masks?: readonly Mask[]; bytes?: Buffer } = {},
): Promise<Opened> {
  const { size } = await stat(path);
  if (size === 0) throw new PictureError('is empty. Copy it again from the camera.');
  if (size > LIMITS.bytes)
    throw new PictureError(
      `has ${Math.round(size / 1e6)} MB, more than ${LIMITS.bytes / 1e6}. Export it smaller.`,
    );
  const source = bytes ?? (await readFile(path));
  const metadata = await head(source);
  const { width, height } = metadata.autoOrient;
  if (width * height > LIMITS.pixels)
    throw new PictureError(
      `has ${width} × ${height} pixels, more than ${LIMITS.pixels / 1e6} million. Export it smaller.`,
    );
  const coded = metadata.compression === 'hevc' ? await fromHeic(source, metadata) : source;
  // HEIC comes out of its decoder upright; its orientation note must not turn it again.
  const upright = () =>
    sharp(coded, { limitInputPixels: LIMITS.pixels, failOn: 'truncated' }).autoOrient().flatten({
      background: '#fff',
    });
  if (masks.length === 0) return { picture: upright(), width, height, metadata };
  const { data, info } = await upright().toColourspace('srgb').raw().toBuffer({ resolveWithObject: true });
  const raw = { data, width: info.width, height: info.height, channels: info.channels };
  burn(raw, masks);
  return {
    picture: sharp(data, { raw, limitInputPixels: LIMITS.pixels }),
    width: info.width,
    height: info.height,
    metadata,
  };
}

async function head(source: Buffer): Promise<Metadata> {
  let metadata: Metadata;
  try {
    metadata = await sharp(source, { limitInputPixels: false }).metadata();
  } catch {
    throw new PictureError('is no picture that can be read. Export it again as JPEG.');
  }
  if (!KINDS.has(metadata.format))
    throw new PictureError(`is a picture of the kind ${metadata.format}. Export it as JPEG.`);
  return metadata;
}

/** The pixels of a HEIC photo as a PNG that carries the photo's own colour profile. */
async function fromHeic(source: Buffer, metadata: Metadata): Promise<Buffer> {
  const { default: decode } = await import('heic-decode').catch(() => {
    throw new PictureError(
      'is a HEIC photo, and the package that reads them is not installed. Run npm install, or export it as JPEG.',
    );
  });
  const { width, height, data } = await decode({ buffer: source }).catch(() => {
    throw new PictureError('is a HEIC photo that cannot be read to its end. Copy it again from the camera.');
  });
  const png = await sharp(Buffer.from(data.buffer, data.byteOffset, data.byteLength), {
    raw: { width, height, channels: 4 },
    limitInputPixels: LIMITS.pixels,
  })
    .removeAlpha()
    .png({ compressionLevel: 0 })
    .toBuffer();
  return metadata.icc ? pngWithProfile(png, metadata.icc) : png;
}

/** What stopped the reading of a picture, in words for its problem. */
export function inWords(error: unknown): string {
  if (error instanceof PictureError) return error.message;
  if (error instanceof Error && 'code' in error) {
    if (error.code === 'ENOENT') return 'is not there. Copy it beside the chapter.';
    if (error.code === 'EACCES') return 'may not be read. Look at its permissions.';
    if (error.code === 'ENOSPC') throw error;
  }
  // The decoder's own words are kept in one place for all pictures at work, so that one picture's may name another's fault.
  // Its head was read, so what failed is the rest.
  return 'is cut off before its end, or damaged there. Copy it again from the camera.';
}
