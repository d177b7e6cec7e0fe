/** Figure letters as strokes, so that a plate looks the same on a machine without any font. Box: 8 wide, 10 high. */
const STROKES: Record<string, string> = {
  A: 'M0 10 4 0 8 10M1.4 6.6H6.6',
  B: 'M1 0V10H4.6A2.7 2.7 0 0 0 4.6 4.7H1M1 0H4.2A2.35 2.35 0 0 1 4.2 4.7',
  C: 'M7.4 1.8A4.2 5 0 1 0 7.4 8.2',
  D: 'M1 0V10H3A5 5 0 0 0 3 0Z',
  E: 'M7 0H1V10H7M1 4.8H6',
  F: 'M7 0H1V10M1 4.8H6',
  G: 'M7.4 1.8A4.2 5 0 1 0 7.6 7.4V5.4H4.8',
  H: 'M1 0V10M7 0V10M1 4.8H7',
  J: 'M6 0V7A2.6 3 0 0 1 .8 7',
  K: 'M1 0V10M7 0 1 6M3 4 7.4 10',
  L: 'M1 0V10H6.6',
  P: 'M1 10V0H4.4A2.7 2.7 0 0 1 4.4 5.4H1',
  R: 'M1 10V0H4.4A2.6 2.6 0 0 1 4.4 5.2H1M4.2 5.2 7.4 10',
  S: 'M7 1.8C6 -.4 1.2 -.6 1.2 2.4C1.2 5.2 7 4.6 7 7.4C7 10.8 1.6 10.6 .8 8',
  T: 'M0 0H8M4 0V10',
  c: 'M6.4 4.6A3 3.2 0 1 0 6.4 8.8',
  d: 'M6.6 0V10M6.6 6.8A2.9 3.2 0 1 0 6.6 6.9',
  f: 'M6.4 .6C4.6 -.6 3 .2 3 2.4V10M1 4H5.6',
  h: 'M1.4 0V10M1.4 6C2.2 3.2 6.4 2.8 6.4 6V10',
  p: 'M1.4 3.6V13M1.4 6.8A2.9 3.2 0 1 1 1.4 6.9',
  r: 'M1.6 3.6V10M1.6 6.4C2 4.4 3.6 3.4 5.6 3.9',
  s: 'M6 4.8C5.2 3 1.6 3.2 1.6 5C1.6 7 6.2 6.2 6.2 8.2C6.2 10.4 2 10.6 1 8.6',
  '1': 'M2 2 4.6 0V10',
  '2': 'M1 2.4C1.2 -.8 6.8 -.8 6.8 2.6C6.8 5 1.4 7.4 1 10H7.2',
  '3': 'M1 1.4C2.6 -.8 6.6 -.2 6.6 2.4C6.6 4 5.2 4.7 3.4 4.7C5.4 4.7 7 5.6 7 7.4C7 10.4 2.4 11 .8 8.4',
  '4': 'M5.6 10V0L.6 7H7.6',
  '5': 'M6.6 0H2L1.4 4.4C3.4 3 7 3.6 7 6.8C7 10.4 2.4 11 .8 8.6',
  '6': 'M6.2 .6C2.4 1 1 4.4 1 6.8A3 3.1 0 1 0 1.1 6.2',
  '7': 'M1 0H7.2L3 10',
  '8': 'M4 4.6A2.3 2.3 0 1 1 4.05 4.6A2.9 2.7 0 1 1 4 4.6',
};

/** One letter, centred on (x, y), `size` units high; small letters lean, as dimensions do. */
export function letter(char: string, x: number, y: number, size: number): string {
  const strokes = STROKES[char];
  if (strokes === undefined) throw new RangeError(`No strokes for "${char}"; add them to letters.ts`);
  const k = size / 10;
  const lean = /[a-z]/.test(char) ? ' skewX(-12) translate(1 0)' : '';
  return `<path d="${strokes}" transform="translate(${x - 4 * k} ${y - 5 * k}) scale(${k})${lean}" class="letter"/>`;
}
