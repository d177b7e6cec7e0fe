import { GEARS } from './drive-line.ts';

/** Refusals that gearing and hills have in common. */
export const driveLineWrong = {
  tyreNeeded: 'A tyre marking such as 4.00-8 is needed, or what the wheel rolls in a turn.',
  teeth: 'The teeth of this sprocket are needed as well.',
  final: 'The sprockets give {bySprockets}:1, which is not this ratio: leave one of the two empty.',
  letters:
    'Sizes in letters are not worked out here. Look up the metric size of “{here}” and write that, such as 130/90-16.',
  noTyre:
    '“{here}” is no tyre size known here. Write it as on the side wall, such as 155/80 R 13, 145 R 10, 4.00-8 or 3.25 x 19.',
  oddTyre:
    '“{here}” does not look right: after the width comes the rim, 4 to 24 inches, as in 155/80 R 13, 145 R 10, 4.00-8 or 3.25 x 19.',
  aspect:
    'The figure behind the stroke is the height in per cent of the width, 20 to 110, as in 155/80 R 13.',
};

/** Where a nominal diameter comes from. */
const RULES = {
  old: 'the overall diameter that an old size begins with',
  table: 'UN Regulation No. 30, Annex 5, from memory',
  aspect: 'rim + 2 × height of the side wall',
  'metric estimate': 'rim + 2 × 82 % of the width, an estimate',
  'low estimate': 'rim + 2 × 95 % of the width in inches, an estimate',
  'inch estimate': 'rim + 2 × width in inches, an estimate',
};

export const tyreNotes = Object.entries(RULES).map(
  ([rule, says]) => `{?rule=${rule}}Nominal diameter: ${says}.`,
);

/** A row or column for every gear that there may be. */
export const eachGear = <T>(of: (gear: number) => T): T[] => GEARS.map((_, i) => of(i));
