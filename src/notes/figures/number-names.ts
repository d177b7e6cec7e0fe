/** Names of numbers, as English says them and as a recording's recogniser spells them. */
const list = (words: string, value: (at: number) => number): [string, number][] =>
  words.split(' ').map((word, place) => [word, value(place)]);

export const ONES: ReadonlyMap<string, number> = new Map([
  ...list('zero one two three four five six seven eight nine', (n) => n),
  ['nought', 0],
  ['naught', 0],
  ['nil', 0],
]);
export const TEENS: ReadonlyMap<string, number> = new Map(
  list('ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen', (n) => n + 10),
);
export const TENS: ReadonlyMap<string, number> = new Map([
  ...list('twenty thirty forty fifty sixty seventy eighty ninety', (n) => (n + 2) * 10),
  ['fourty', 40],
]);

/** Parts of one, singular and plural. */
export const PARTS: ReadonlyMap<string, number> = new Map(
  Object.entries({
    half: 2,
    third: 3,
    quarter: 4,
    fifth: 5,
    sixth: 6,
    eighth: 8,
    tenth: 10,
    sixteenth: 16,
    'thirty-second': 32,
    'sixty-fourth': 64,
    hundredth: 100,
    thousandth: 1000,
  }).flatMap(([name, size]): [string, number][] => [
    [name, size],
    [name === 'half' ? 'halves' : `${name}s`, size],
  ]),
);

/** Words that a number in words, or one of a unit, may begin with. */
const STARTS: ReadonlySet<string> = new Set([
  ...ONES.keys(),
  ...TEENS.keys(),
  ...TENS.keys(),
  ...PARTS.keys(),
  ...'a an another hundred point couple oh o euro pound quid dollar buck inch litre turn millimetre pint gallon hour foot metre kilo thirty sixty'.split(
    ' ',
  ),
]);
export const mayBeginNumber = (word: string): boolean => STARTS.has(word);

/** Whether a word may begin or go on with a number. */
export const isNumberName = (word: string): boolean =>
  ONES.has(word) || TEENS.has(word) || TENS.has(word) || word === 'hundred' || word === 'thousand';
