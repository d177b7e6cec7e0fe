/** What an author lays over a photo: rectangles that are burnt out of it, and numbered marks that are drawn on it. */

/** A rectangle in parts of the upright picture's width and height: 0 is the left or top edge, 1 the other. */
export interface Mask {
  left: number;
  top: number;
  width: number;
  height: number;
}

/** A mark with its words; places in parts of the width and height, the radius in parts of the width. */
export type PictureMark =
  | { kind: 'circle'; x: number; y: number; radius: number; words: string }
  | { kind: 'arrow'; fromX: number; fromY: number; x: number; y: number; words: string };

/** Figures in hundredths, 0 to 100, with or without a per cent sign; undefined where one is none. */
function parts(text: string, count: number): number[] | undefined {
  const words = text.trim().split(/[\s,]+/);
  if (words.length !== count) return undefined;
  const figures = words.map((word) =>
    /^\d{1,3}(?:\.\d+)?%?$/.test(word) ? Number.parseFloat(word) / 100 : -1,
  );
  return figures.every((one) => one >= 0 && one <= 1) ? figures : undefined;
}

/** A mask as written: left, top, width and height, such as "12 30 20 15". Undefined where it is none, or reaches past the edge. */
export function readMask(text: string): Mask | undefined {
  const [left = -1, top = -1, width = 0, height = 0] = parts(text, 4) ?? [];
  const inside = left >= 0 && width > 0 && height > 0 && left + width <= 1.0001 && top + height <= 1.0001;
  return inside ? { left, top, width, height } : undefined;
}

/** A mark as written: "circle 62 40 8: the lock nut" or "arrow 20 30 45 52: the scribed line", the tip last. */
export function readMark(text: string): PictureMark | undefined {
  const [, kind, figures = '', words = ''] = /^\s*(circle|arrow)\s+([^:]+):\s*(\S.*?)\s*$/s.exec(text) ?? [];
  if (kind === 'circle') {
    const [x = 0, y = 0, radius = 0] = parts(figures, 3) ?? [];
    return radius > 0 ? { kind, x, y, radius, words } : undefined;
  }
  if (kind === 'arrow') {
    const at = parts(figures, 4);
    const [fromX = 0, fromY = 0, x = 0, y = 0] = at ?? [];
    return at && Math.hypot(x - fromX, y - fromY) > 0.02 ? { kind, fromX, fromY, x, y, words } : undefined;
  }
  return undefined;
}
