import type { Mask } from '../record/chapter/picture-marks.ts';

export type { Mask };

export interface Raw {
  data: Buffer;
  width: number;
  height: number;
  channels: 1 | 2 | 3 | 4;
}

/** Pixels covered beyond the rectangle: a JPEG smears each pixel over its block of 8, or 16 where colour is halved. */
const BEYOND_px = 16;
const GREY = 0x6b;

/** Overwrites what lies under the masks, in the full picture, before anything is made smaller: no trace of it is left to blend. */
export function burn({ data, width, height, channels }: Raw, masks: readonly Mask[]): void {
  for (const mask of masks) {
    const left = Math.max(0, Math.floor(mask.left * width) - BEYOND_px);
    const right = Math.min(width, Math.ceil((mask.left + mask.width) * width) + BEYOND_px);
    const top = Math.max(0, Math.floor(mask.top * height) - BEYOND_px);
    const bottom = Math.min(height, Math.ceil((mask.top + mask.height) * height) + BEYOND_px);
    if (!(right > left)) continue;
    for (let row = top; row < bottom; row += 1) {
      const start = (row * width + left) * channels;
      data.fill(GREY, start, start + (right - left) * channels);
      if (channels === 2 || channels === 4)
        for (let at = start + channels - 1; at < start + (right - left) * channels; at += channels)
          data[at] = 0xff;
    }
  }
}
