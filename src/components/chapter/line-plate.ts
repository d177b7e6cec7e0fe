import { readFileSync } from 'node:fs';

export interface LinePlateFile {
  /** The drawing as a data address: shown as a picture, so that nothing in the file can act on the page. */
  src: string;
  width?: number;
  height?: number;
}

const read = new Map<string, LinePlateFile>();

/** A drawing in SVG, with the size that its view box gives. Read once a build. */
export function linePlate(path: string): LinePlateFile {
  const known = read.get(path);
  if (known) return known;
  const bytes = readFileSync(path);
  const box = /viewBox="\s*[-\d.]+[\s,]+[-\d.]+[\s,]+([\d.]+)[\s,]+([\d.]+)\s*"/.exec(bytes.toString('utf8'));
  const [width, height] = [Number(box?.[1]), Number(box?.[2])].map(Math.round);
  const plate = {
    src: `data:image/svg+xml;base64,${bytes.toString('base64')}`,
    ...(width && height && { width, height }),
  };
  read.set(path, plate);
  return plate;
}
