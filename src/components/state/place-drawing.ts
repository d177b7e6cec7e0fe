/**
 * The small drawing of where readings were taken, made from their positions: a bore or journal by heights and directions, a
 * drum by numbered diameters and depths, anything else by its places in the order measured. Not to scale.
 */
import type { Drawing } from '../../calc/contract.ts';
import { circle, drawing, lettering, path, polyline, solid } from '../../calc/svg.ts';
import type { Measurement } from '../../record/types.ts';

export type Shape = 'bore' | 'drum' | 'shaft' | 'other';

/** The shape that an item's name speaks of. */
export function shapeNamed(item: string): Shape {
  if (/\b(bore|cylinder|liner|bush(?:ing)?)\b/i.test(item)) return 'bore';
  if (/\bdrum\b/i.test(item)) return 'drum';
  if (/\b(journal|shaft|crank ?pin|gudgeon pin|king pin|spindle)\b/i.test(item)) return 'shaft';
  return 'other';
}

const unique = (texts: readonly (string | undefined)[]): string[] => [
  ...new Set(texts.filter((one) => one !== undefined)),
];

/** Undefined where fewer than two places are named: then words say it better. */
export function placeDrawing(
  item: string,
  rows: readonly Pick<Measurement, 'position'>[],
): Drawing | undefined {
  const positions = unique(rows.map((row) => row.position?.trim() || undefined));
  if (positions.length < 2) return undefined;
  const pairs = positions.map((one) => one.split(',').map((part) => part.trim()));
  const paired = pairs.every((pair) => pair.length === 2);
  const firsts = unique(pairs.map(([first]) => first));
  const seconds = unique(pairs.map(([, second]) => second));
  const shape = shapeNamed(item);
  const title = `Where ${item.toLowerCase()} was measured`;
  const said = `At ${positions.join('; ')}. Not to scale.`;
  const drawn = (name: string, height: number, body: string[]) => drawing(name, height, title, said, body);
  if (paired && shape === 'drum') return drawn('drum', 176, drum(firsts, seconds));
  if (paired && shape === 'bore') return drawn('bore', 176, [...bore(firsts), ...directions(seconds)]);
  if (paired && shape === 'shaft') return drawn('shaft', 176, [...shaft(firsts), ...directions(seconds)]);
  return drawn('places', 22 + positions.length * 22, places(positions));
}

const DASH = 'stroke-dasharray="4 3"';
const WALL = 'stroke-width="2"';
const spread = (count: number, from: number, to: number): number[] =>
  Array.from({ length: count }, (_, at) =>
    count === 1 ? (from + to) / 2 : from + ((to - from) * at) / (count - 1),
  );

/** Cut along its axis: heights from the top, in the order in which they were written. */
function bore(heights: readonly string[]): string[] {
  const levels = spread(heights.length, 36, 140);
  return [
    path('M40 14V160M120 14V160', WALL),
    path('M28 14V160H40M132 14V160H120M28 14H40M120 14H132'),
    polyline(
      [
        [80, 8],
        [80, 168],
      ],
      'stroke-dasharray="10 3 2 3"',
    ),
    ...levels.map((y) => path(`M40 ${y}H120`, DASH)),
    ...heights.flatMap((height, at) => lettering(138, (levels[at] ?? 0) + 4, height)),
  ];
}

/** Seen from the side: the journal between its webs, stations along it. */
function shaft(stations: readonly string[]): string[] {
  const at = spread(stations.length, 44, 126);
  return [
    path('M28 56H142V112H28Z', WALL),
    path('M12 36H28V132H12M158 36H142V132H158'),
    polyline(
      [
        [6, 84],
        [164, 84],
      ],
      'stroke-dasharray="10 3 2 3"',
    ),
    ...at.map((x) => path(`M${x} 56V112`, DASH)),
    ...stations.map((station, index) => lettering(at[index] ?? 0, 50, station, 'middle')),
  ];
}

/** Seen along the axis: one diameter a direction, the first level, the others turned evenly. */
function directions(names: readonly string[]): string[] {
  const [x, y, r] = [250, 80, 44];
  const turned = names.map((_, at) => (Math.PI * at) / names.length);
  return [
    circle(x, y, r),
    ...turned.flatMap((angle) => {
      const [dx, dy] = [r * Math.cos(angle), r * Math.sin(angle)];
      return [
        polyline(
          [
            [x - dx, y + dy],
            [x + dx, y - dy],
          ],
          DASH,
        ),
        ...arrows(x, y, r, angle),
      ];
    }),
    ...names.map((name, at) =>
      lettering(
        x,
        142 + at * 15,
        `${at === 0 ? '↔' : at === 1 && names.length === 2 ? '↕' : at + 1} ${name}`,
        'middle',
      ),
    ),
  ];
}

/** Points of a diameter at both ends, drawn as small heads. */
function arrows(x: number, y: number, r: number, angle: number): string[] {
  return [angle, angle + Math.PI].map((a) => {
    const [c, s] = [Math.cos(a), -Math.sin(a)];
    const tip = [x + r * c, y + r * s] as const;
    const back = [x + (r - 7) * c, y + (r - 7) * s] as const;
    const point = (p: readonly [number, number], side: number) =>
      `${(p[0] - s * side).toFixed(1)} ${(p[1] + c * side).toFixed(1)}`;
    return solid(`M${tip[0].toFixed(1)} ${tip[1].toFixed(1)}L${point(back, 3)}L${point(back, -3)}Z`);
  });
}

/** Face on, with its numbered diameters, and cut through, with the depths. */
function drum(numbers: readonly string[], depths: readonly string[]): string[] {
  const [x, y, r] = [86, 84, 58];
  const at = spread(depths.length, 262, 226);
  return [
    circle(x, y, r + 8),
    circle(x, y, r),
    circle(x, y, 12),
    ...numbers.flatMap((number, index) => {
      const angle = (Math.PI * index) / numbers.length;
      const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
      return [
        polyline(
          [
            [x - r * dx, y + r * dy],
            [x + r * dx, y - r * dy],
          ],
          DASH,
        ),
        lettering(x + (r - 13) * dx, y - (r - 13) * dy + 4, number, 'middle'),
      ];
    }),
    path('M276 26H206V142H276', WALL),
    path('M276 18H198V150H276M276 18V26M276 142V150'),
    ...at.map((depth) => path(`M${depth} 26V142`, DASH)),
    ...depths.map((depth, index) => lettering(340, 58 + index * 18, depth, 'end')),
    ...depths.map((_, index) => path(`M${at[index] ?? 0} ${54 + index * 18}H280`)),
  ];
}

/** A shape that is not known: its places one below the other, as they were measured. */
function places(names: readonly string[]): string[] {
  const levels = spread(names.length, 22, names.length * 22);
  return [
    path(`M12 8H44V${14 + names.length * 22}H12Z`),
    ...levels.flatMap((y, at) => [
      solid(`M44 ${y - 3}L36 ${y}L44 ${y + 3}Z`),
      path(`M44 ${y}H62`),
      lettering(68, y + 4, names[at] ?? ''),
    ]),
  ];
}
