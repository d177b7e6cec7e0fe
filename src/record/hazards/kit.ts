/** Protective kit that notes name, in the order in which a chapter lays it out. */
import type { SymbolId } from './symbols.ts';

export interface Kit {
  name: string;
  /** What to look for when buying or picking it up. */
  detail: string;
  symbol: SymbolId;
}

/**
 * The pictures follow the meaning of ISO 7010's mandatory signs, named beside each (titles found in a list of the 2019
 * numbering); the drawings are our own and claim no conformity. European and American marks are from memory.
 */
export const KIT = {
  /** M004 */
  glasses: {
    name: 'Safety glasses',
    detail: 'marked EN 166, EN ISO 16321 or ANSI Z87.1, with side shields',
    symbol: 'eyes',
  },
  /** M004 */
  goggles: { name: 'Closed goggles', detail: 'that seal round the eye against splashes', symbol: 'eyes' },
  /** M013 */
  'face-shield': { name: 'Face shield', detail: 'worn over glasses, not instead of them', symbol: 'face' },
  /** M019 is not drawn here: the welder's screen counts as face protection. */
  'welding-screen': {
    name: "Welder's screen",
    detail: 'of the shade that the process calls for',
    symbol: 'face',
  },
  /** M003 */
  'ear-defenders': {
    name: 'Ear defenders',
    detail: 'or plugs, fitted before the noise starts',
    symbol: 'ears',
  },
  /** M017 */
  'dust-mask': {
    name: 'Particle mask, close fitting',
    detail: 'class FFP3, P100 or a P3 filter, on a shaven face',
    symbol: 'breath',
  },
  /** M017 */
  'vapour-mask': {
    name: 'Mask with organic vapour filters',
    detail: 'of the type named on the tin, within its date',
    symbol: 'breath',
  },
  /** M017 */
  'air-fed-mask': {
    name: 'Air-fed breathing apparatus',
    detail: 'with clean air from outside the spray; no filter mask will do',
    symbol: 'breath',
  },
  /** M009 */
  'work-gloves': {
    name: 'Work gloves',
    detail: 'never near a drill, lathe, belt or anything else that turns',
    symbol: 'hands',
  },
  /** M009 */
  'chemical-gloves': {
    name: 'Chemical gloves',
    detail: 'of nitrile or as the data sheet says',
    symbol: 'hands',
  },
  /** M009 */
  'heat-gloves': { name: 'Heat gloves', detail: 'dry, of leather or better', symbol: 'hands' },
  /** M009 */
  'insulated-gloves': { name: 'Dry insulating gloves', detail: 'rated for electrical work', symbol: 'hands' },
  /** M008 */
  'safety-shoes': { name: 'Safety shoes', detail: 'with toe caps', symbol: 'feet' },
  /** M010 */
  overalls: {
    name: 'Close-fitting cotton overalls',
    detail: 'cuffs buttoned, no loose ends',
    symbol: 'clothes',
  },
  /** M010 */
  apron: { name: 'Acid-proof apron', detail: 'and boots that shed a splash', symbol: 'clothes' },
  /** M015 is the standard's vest; drawn as clothing. */
  'bright-vest': { name: 'High-visibility vest', detail: 'for everybody at the roadside', symbol: 'clothes' },
} as const satisfies Record<string, Kit>;

export type KitId = keyof typeof KIT;
export const kitIds = Object.keys(KIT) as KitId[];

/** Kit of several hazards, each once, in the order in which it is laid out. Closed goggles stand in for glasses. */
export function kitOf(worn: readonly (readonly KitId[])[]): KitId[] {
  const wanted = new Set(worn.flat());
  if (wanted.has('goggles')) wanted.delete('glasses');
  return kitIds.filter((id) => wanted.has(id));
}
