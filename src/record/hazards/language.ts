/**
 * The English that the gate needs: a text becomes a row of tokens, and a base word becomes every form it is met in.
 * Over-generating forms ("jackes") costs nothing, as nobody writes them.
 */

/** One word or number of a text. */
export interface Token {
  /** Lower case, without apostrophe: "dont", "lean", "25". */
  word: string;
  /** Set where the token is a figure. */
  number?: number;
  /** Where it stands in its field. */
  offset: number;
  end: number;
  /** Place in the row; a sentence's end widens the gap, so that windows seldom reach across it. */
  at: number;
}

/** Left out of the row, so that "jack the front up" and "jack front up" read alike. */
const SKIPPED = new Set(
  'a an the this that these those its our their some any very quite really just uh um er erm so well then again now'.split(
    ' ',
  ),
);

export const isSkipped = (word: string): boolean => SKIPPED.has(word);

const TENS: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};
const ONES: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  fifteen: 15,
  sixteen: 16,
  hundred: 100,
};

/** Value of a number word ("fifty", "twelve"), for figures spoken in captions. */
export const numberWord = (word: string): number | undefined => NUMBERS.get(word);
export const isTens = (word: string): boolean => TENS[word] !== undefined;
const NUMBERS = new Map(Object.entries({ ...TENS, ...ONES }));

const SENTENCE_GAP = 7;
const PIECE = /(\d+(?:[.,]\d+)*)(?=([a-z°%]*))|[a-z]+(?:['’][a-z]+)*|[.!?;\n]+|[,:()–—]|[°%]/g;

/** Reads a text into `into`, starting at place `at`; returns the next free place. */
export function tokenise(text: string, at: number, into: Token[]): number {
  const lower = text.toLowerCase();
  PIECE.lastIndex = 0;
  let next = at;
  for (let found = PIECE.exec(lower); found !== null; found = PIECE.exec(lower)) {
    const piece = found[0];
    const first = piece.charCodeAt(0);
    const offset = found.index;
    if (first >= 48 && first <= 57) {
      // "2k" and "2t" are words of the trade; elsewhere figure and unit part company.
      const unit = found[2];
      if ((unit === 'k' || unit === 't') && piece === '2') {
        PIECE.lastIndex = offset + 2;
        into.push({ word: piece + unit, offset, end: offset + 2, at: next++ });
        continue;
      }
      into.push({ word: piece, number: readFigure(piece), offset, end: offset + piece.length, at: next++ });
    } else if ((first < 97 && first !== 37) || first > 8000) {
      // A comma parts phrases, a full stop or a line's end parts sentences.
      if (into.length > 0) next += /[,:()–—]/.test(piece) ? 1 : SENTENCE_GAP;
    } else {
      const word = piece.includes("'") || piece.includes('’') ? piece.replace(/['’]/g, '') : piece;
      if (SKIPPED.has(word)) continue;
      const number = numberWord(word);
      into.push(
        number === undefined
          ? { word, offset, end: offset + piece.length, at: next++ }
          : { word, number, offset, end: offset + piece.length, at: next++ },
      );
    }
  }
  return next;
}

const readFigure = (text: string): number =>
  Number(/^\d{1,3}(,\d{3})+$/.test(text) ? text.replace(/,/g, '') : text.replace(',', '.'));

const IRREGULAR: readonly (readonly string[])[] = [
  'run ran',
  'spin spun',
  'blow blew blown',
  'hang hung',
  'lie lay lain lying',
  'break broke broken',
  'drive drove driven',
  'get got gotten',
  'take took taken',
  'hold held',
  'spill spilt spilled',
  'burn burnt',
  'light lit',
  'draw drew drawn',
  'bleed bled',
  'catch caught',
  'keep kept',
  'feel felt',
  'stick stuck',
  'fly flew flown flies',
  'feed fed',
  'sit sat',
  'swing swung',
  'wind wound',
  'unwind unwound',
  'sling slung',
  'slide slid',
  'creep crept',
  'find found',
  'sink sank sunk',
  'bring brought',
  'come came',
  'go went gone goes',
  'tear tore torn',
  'freeze froze frozen',
  'eat ate eaten',
  'bite bit bitten',
  'strike struck',
  'give gave given',
  'shake shook shaken',
  'ride rode ridden',
  'throw threw thrown',
  'shoot shot',
  'grind grinding grinds',
  'weep wept',
  'smell smelt',
  'leave left',
  'fall fell fallen',
  'see saw seen',
  'hear heard',
  'wear wore worn',
  'begin began begun',
  'fling flung',
  'say said',
  'tell told',
  'know knew known',
  'heave hove',
  'sweep swept',
  'spit spat',
  'let letting',
  'half halves',
  'be is are was were been being',
  'have has had',
  'not dont doesnt didnt wont cant cannot wouldnt isnt wasnt arent never couldnt havent',
].map((line) => line.split(' '));

const irregularForms = new Map(IRREGULAR.map(([base = '', ...rest]) => [base, rest]));

/** Spelt otherwise across the Atlantic, or in the shed. */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/tyre/, 'tire'],
  [/carburettor/, 'carburetor'],
  [/carburettor/, 'carburetter'],
  [/carburettor/, 'carb'],
  [/carburettor/, 'carbs'],
  [/syphon/, 'siphon'],
  [/vapour/, 'vapor'],
  [/colour/, 'color'],
  [/lorry/, 'lorrie'],
  [/gauge/, 'gage'],
  [/grey/, 'gray'],
  [/vice$/, 'vise'],
  [/plough/, 'plow'],
  [/neutralise/, 'neutralize'],
  [/leveller/, 'leveler'],
  [/smoulder/, 'smolder'],
  [/fibre/, 'fiber'],
  [/centre/, 'center'],
  [/battery/, 'batt'],
  [/compression$/, 'compr'],
  [/cylinder$/, 'cyl'],
  [/exhaust$/, 'exh'],
  [/caliper/, 'calliper'],
  [/metre/, 'meter'],
];

const VOWEL_CONSONANT = /[^aeiou][aeiou][bdfgklmnprt]$/;

/** Every form of a base word: plural, third person, past, -ing, irregular, British and American. "=word" stands for itself alone. */
export function formsOf(base: string): string[] {
  if (base.startsWith('=')) return [base.slice(1)];
  const forms = new Set<string>();
  const spelt = [
    base,
    ...SPELLINGS.filter(([from]) => from.test(base)).map(([from, to]) => base.replace(from, to)),
  ];
  for (const word of spelt) inflect(word, forms);
  return [...forms];
}

/** Small words that take no endings: "she" must not find "shed". */
const UNBENT = new Set(
  'she he it her him me we us they them in on off up out to at by of for from with without no not and or over under into onto down back away still all both then when while until before after first last so as if own again home'.split(
    ' ',
  ),
);

function inflect(word: string, forms: Set<string>): void {
  forms.add(word);
  for (const form of irregularForms.get(word) ?? []) forms.add(form);
  if (!/^[a-z]{2,}$/.test(word) || UNBENT.has(word)) return;
  if (/[^aeiou]y$/.test(word)) {
    const stem = word.slice(0, -1);
    for (const end of ['ies', 'ied', 'ying']) forms.add(stem + end);
    return;
  }
  forms.add(`${word}s`);
  if (/(s|x|z|ch|sh|o)$/.test(word)) forms.add(`${word}es`);
  if (word.endsWith('ie')) forms.add(`${word.slice(0, -2)}ying`);
  if (word.endsWith('e')) {
    forms.add(`${word}d`);
    forms.add(`${word.slice(0, -1)}ing`);
    return;
  }
  if (VOWEL_CONSONANT.test(word)) {
    const doubled = word + word.slice(-1);
    forms.add(`${doubled}ed`);
    forms.add(`${doubled}ing`);
  }
  forms.add(`${word}ed`);
  forms.add(`${word}ing`);
}
