/**
 * Pictures of notes as plain geometry in a field of 48 × 48. They follow the meaning of the ISO 7010 signs named beside each
 * (titles found in a list of the 2019 numbering), are drawn by this project, and claim no conformity to any standard.
 * `warning` stands in a triangle, `wear` in a disc; `fill` and `line` are SVG paths, both in the sign's dark colour.
 */
export interface SafetySymbol {
  /** Read out where the picture stands without its words. */
  means: string;
  shape: 'warning' | 'wear';
  fill?: string;
  line?: string;
}

const ring = (x: number, y: number, r: number): string =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
const dots = (places: readonly (readonly [number, number, number])[]): string =>
  places.map(([x, y, r]) => ring(x, y, r)).join('');

export const SYMBOLS = {
  /** W001 General warning sign */
  alert: { means: 'Safety alert', shape: 'warning', fill: `M22 17h4l-1 14h-2z${ring(24, 36, 2.1)}` },
  /** W021 Flammable material */
  flame: {
    means: 'Fire',
    shape: 'warning',
    fill: 'M24.5 15.5c.8 5.6 6 7.6 6 14a6.3 6.3 0 0 1-12.6 0c0-3.8 1.8-5 2.7-7.8 1.3 1.2 1.6 2.4 2 3.8 1.6-2.8 2.3-6 1.9-10zM17 37.500h14v2.300h-14z',
  },
  can: {
    means: 'Fuel in a can',
    shape: 'warning',
    line: 'M17 25h14v14.500h-14zM20.5 25v-4.500h6v4.500M20 29l8 7M28 29l-8 7',
  },
  /** W002 Explosive material */
  explosion: {
    means: 'Explosion',
    shape: 'warning',
    fill: 'M24 16l2 7 5-3.5-1.8 5.7 5.3 2.3-5.3 2.3 3.3 6-6-2.3-2.5 6.5-2.5-6.5-6 2.3 3.3-6-5.3-2.3 5.3-2.3-1.8-5.7 5 3.500z',
  },
  /** W025 Counterrotating rollers */
  gear: {
    means: 'Parts that turn',
    shape: 'warning',
    line: `${ring(24, 30, 6.5)}${ring(24, 30, 1.6)}M24 23.500v-3.500M24 36.500v3.500M17.5 30h-3.500M30.5 30h3.500M19.4 25.400l-2.4-2.400M28.6 34.600l2.4 2.400M28.6 25.400l2.4-2.400M19.4 34.600l-2.4 2.4`,
  },
  /** W041 Asphyxiating atmosphere */
  fumes: {
    means: 'Poisonous exhaust gas',
    shape: 'warning',
    fill: 'M14 34h9v5h-9z',
    line: 'M25.5 35c3.5-2-1.5-4 2-6s-1.5-4 2-6M30 38.500c3.5-2-1.5-4 2-6M24 29c3-2-2-4 1-6.5',
  },
  /** W017 Hot surface */
  heat: {
    means: 'Hot',
    shape: 'warning',
    line: 'M16 38.500h16M19 35c-2.5-3 2.5-4.5 0-8M24 35c-2.5-4 2.5-6 0-12M29 35c-2.5-3 2.5-4.5 0-8',
  },
  /** W016 Toxic material */
  poison: {
    means: 'Poison',
    shape: 'warning',
    fill: dots([
      [21.4, 26, 1.6],
      [26.6, 26, 1.6],
    ]),
    line: 'M24 19a6.8 6.8 0 0 0-4 12.300v3h8v-3a6.8 6.8 0 0 0-4-12.300zM16.5 35.500l15 5M31.5 35.500l-15 5',
  },
  /** W029 Pressurized cylinder */
  pressure: {
    means: 'Pressure',
    shape: 'warning',
    line: `${ring(24, 29, 7.5)}M24 29l4-4.500M24 36.500v4M19 40.500h10`,
  },
  /** W024 Crushing of hands */
  'crush-hand': {
    means: 'Crushed hand',
    shape: 'warning',
    fill: 'M19 34v-6h2.400v-3h2.600v3h2.400v-2h2.600v8z',
    line: 'M18 20.500h12M14 39h20M24 21v2',
  },
  /** W019 Crushing */
  crush: {
    means: 'Crushed',
    shape: 'warning',
    fill: `M17 20h14v6h-14z${ring(16, 37.5, 2.3)}`,
    line: 'M20 37.500h14M24 27.500v5M21.5 30.500l2.5 2.5 2.5-2.5',
  },
  road: {
    means: 'Danger on the road',
    shape: 'warning',
    line: 'M17 40l5.5-20M31 40l-5.5-20M24 39v-4M24 32v-3.500M24 26v-2.5',
  },
  /** W015 Overhead load */
  load: {
    means: 'Heavy load',
    shape: 'warning',
    fill: 'M16.5 31h15v8.500h-15z',
    line: 'M24 17v4.500a2.5 2.5 0 1 1-2.5 2.500M24 27l-6 4M24 27l6 4',
  },
  alone: {
    means: 'Alone',
    shape: 'warning',
    fill: ring(24, 21.5, 3),
    line: 'M24 25.500v8M18.5 28.500h11M24 33.500l-4 6.500M24 33.500l4 6.5',
  },
  /** W023 Corrosive substance */
  corrosive: {
    means: 'Corrosive',
    shape: 'warning',
    fill: `M20 20l8 4.5-1.3 2.6-8-4.500z${dots([
      [22, 29.5, 1.2],
      [24.5, 32.5, 1.2],
    ])}M15 36h7l1 2.500h3l1-2.500h6v4h-18z`,
  },
  /** W012 Electricity */
  bolt: { means: 'Electricity', shape: 'warning', fill: 'M26 15l-8 14h5l-3.5 12 9.5-15h-5l5-11z' },
  /** No sign of the standard. */
  'broken-bolt': {
    means: 'A bolt that breaks',
    shape: 'warning',
    fill: 'M17 34.500h14v5h-14zM21.300 35v-5.500l1.800 1.600 1.800-2.600 1.800 1.600v4.900zM23 26.800l1.400-8.300 5 .9-1.400 8.300-1.500-2-1.700 2.400z',
    line: 'M18.500 29.500l-2.300-1.700M20.300 25.500l-1-2.600',
  },
  spring: {
    means: 'Force stored in a spring',
    shape: 'warning',
    line: 'M18 40h12l-12-4h12l-12-4h12l-12-4h12M24 24v-6M21.5 20.500l2.5-2.5 2.5 2.5',
  },
  wheel: {
    means: 'Tyre or rim under pressure',
    shape: 'warning',
    line: `${ring(24, 31, 8.5)}${ring(24, 31, 3.5)}M24 19v-1.500M31 21.500l1-1.500M17 21.500l-1-1.5`,
  },
  disc: {
    means: 'Turning disc or bit',
    shape: 'warning',
    line: `${ring(21.5, 31, 7)}${ring(21.5, 31, 1)}M28.5 25l3-2.500M30.5 29.500l4-1M30 34l4 1.5`,
  },
  /** W035 Falling objects */
  shatter: {
    means: 'Flying splinters',
    shape: 'warning',
    fill: 'M17 22h11v5.500h-11zM27 39.500l2-5.5 2.5 4.500zM19 39.500l1.5-4 2.5 3.500zM30 33l3-4 1 4z',
    line: 'M22.5 27.500v6',
  },
  noise: {
    means: 'Noise',
    shape: 'warning',
    fill: 'M15 29h4l6-5v15l-6-5h-4z',
    line: 'M28 27.500a6 6 0 0 1 0 8M31 25a10 10 0 0 1 0 13',
  },
  dust: {
    means: 'Dust that harms the lungs',
    shape: 'warning',
    fill: dots([
      [24, 20, 1.3],
      [20, 25, 1.5],
      [27.5, 25, 1.7],
      [23, 29, 1.4],
      [17, 32, 1.6],
      [29, 31, 1.4],
      [23.5, 34, 1.8],
      [32, 36, 1.6],
      [18.5, 38, 1.5],
      [27.5, 38.5, 1.5],
    ]),
  },
  drop: {
    means: 'Harmful liquid',
    shape: 'warning',
    fill: 'M24 18c3 6 7 9.5 7 14a7 7 0 0 1-14 0c0-4.5 4-8 7-14z',
  },
  stop: {
    means: 'May not stop',
    shape: 'warning',
    fill: ring(24, 35, 1.5),
    line: `${ring(24, 30.5, 8.8)}M24 25v6.5`,
  },
  camera: {
    means: 'Camera',
    shape: 'warning',
    fill: `M15 26h12v9.500h-12zM28 29l5-3v9.500l-5-3z`,
    line: 'M18 23.500h5',
  },
  tow: {
    means: 'Towing',
    shape: 'warning',
    fill: 'M12.5 39.500h8v-5l-2.5-3.500h-5.500zM29 39.500h7v-8.500h-7z',
    line: 'M20.5 37c2-2.5 6 2 8.5-.5',
  },
  'breath-hazard': {
    means: 'Harms the lungs',
    shape: 'warning',
    line: 'M24 19v8M24 24.500l-3.5 3.500c-3 2-4.5 6-4.5 11.5 4 .5 7-1 7-4.500v-7M24 24.500l3.5 3.500c3 2 4.5 6 4.5 11.5-4 .5-7-1-7-4.500v-7',
  },
  /** M004 Wear eye protection */
  eyes: {
    means: 'Wear eye protection',
    shape: 'wear',
    fill: `${ring(17, 25, 5)}${ring(31, 25, 5)}`,
    line: 'M12 24l-4-3M36 24l4-3M22 24c1-1.5 3-1.5 4 0',
  },
  /** M013 Wear a face shield */
  face: {
    means: 'Wear a face shield',
    shape: 'wear',
    fill: 'M15 17h18v14c0 5-5 8-9 8s-9-3-9-8z',
    line: 'M12 15h24M14 11c3-3 17-3 20 0',
  },
  /** M003 Wear ear protection */
  ears: {
    means: 'Wear ear protection',
    shape: 'wear',
    fill: 'M10 23h6v11h-6zM32 23h6v11h-6z',
    line: 'M13 23c0-14 22-14 22 0',
  },
  /** M017 Wear respiratory protection */
  breath: {
    means: 'Wear a mask',
    shape: 'wear',
    fill: 'M16 24h16l-2 9c-1 4-11 4-12 0z',
    line: 'M16 25l-5-4M32 25l5-4M14 20c2-10 18-10 20 0',
  },
  /** M009 Wear protective gloves */
  hands: {
    means: 'Wear gloves',
    shape: 'wear',
    fill: 'M17 38v-9l-5-7 2.5-2 4.5 4v-11h3v9h1.500v-11h3v11h1.500v-9.500h3v10h1.500v-7h2.500v13l-3 9.500z',
  },
  /** M008 Wear safety footwear */
  feet: {
    means: 'Wear safety shoes',
    shape: 'wear',
    fill: 'M15 12h9v14l10 4c3 1 3 5 3 5h-22zM15 36.500h22v2.500h-22z',
  },
  /** M010 Wear protective clothing */
  clothes: {
    means: 'Wear protective clothing',
    shape: 'wear',
    fill: 'M18 11l6 4 6-4 8 6-4 6-3-2v17h-14v-17l-3 2-4-6z',
  },
} as const satisfies Record<string, SafetySymbol>;

export type SymbolId = keyof typeof SYMBOLS;

/** As the interface, for code that walks over every picture. */
export const symbol = (id: SymbolId): SafetySymbol => SYMBOLS[id];

const TRIANGLE = 'M24 5.5L44.5 42.5H3.500z';

/**
 * Markup of one picture, for pages and feeds alike: presentation attributes and classes only, nothing from an author in it.
 * With `label` it is an image with that name; without, it is hidden from screen readers.
 */
export function symbolSvg(id: SymbolId, options: { label?: boolean; size?: number } = {}): string {
  const { shape, fill, line, means } = symbol(id);
  const size = options.size ?? 40;
  const name =
    options.label === true ? `role="img" aria-label="${means}"` : 'aria-hidden="true" focusable="false"';
  const frame =
    shape === 'warning'
      ? `<path class="sign-field" d="${TRIANGLE}" fill="#f9c80e" stroke="#111" stroke-width="3" stroke-linejoin="round"/>`
      : `<circle class="sign-field-wear" cx="24" cy="24" r="22.5" fill="#0b4f93"/>`;
  const ink = shape === 'warning' ? '#111' : '#fff';
  const glyph =
    (fill === undefined ? '' : `<path class="sign-shape" d="${fill}" fill="${ink}"/>`) +
    (line === undefined
      ? ''
      : `<path class="sign-line" d="${line}" fill="none" stroke="${ink}" stroke-width="2.2" stroke-linecap="round" stroke-linejoin="round"/>`);
  return `<svg class="sign sign-${shape}" ${name} viewBox="0 0 48 48" width="${size}" height="${size}">${frame}${glyph}</svg>`;
}
