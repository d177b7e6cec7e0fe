/**
 * The English that the gate needs: every form in which a base word is met, and back from a form to the words that may have made it.
 * Over-generating forms ("jackes") costs nothing, as nobody writes them.
 */
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
const irregularBases = Map.groupBy(
  IRREGULAR.flatMap(([base = '', ...rest]) => rest.map((form) => ({ base, form }))),
  ({ form }) => form,
);

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
const SPELT_OTHERWISE = new RegExp(SPELLINGS.map(([from]) => from.source).join('|'));
const OTHERWISE = new RegExp(SPELLINGS.map(([, to]) => to).join('|'));

const VOWEL_CONSONANT = /[^aeiou][aeiou][bdfgklmnprt]$/;

/** Every form of a base word: plural, third person, past, -ing, irregular, British and American. "=word" stands for itself alone. */
export function formsOf(base: string): string[] {
  if (base.startsWith('=')) return [base.slice(1)];
  const forms = new Set<string>();
  inflect(base, forms);
  if (SPELT_OTHERWISE.test(base))
    for (const [from, to] of SPELLINGS) if (from.test(base)) inflect(base.replace(from, to), forms);
  return [...forms];
}

/** Endings that inflect() adds, and what the base has in their place. */
const ENDINGS: readonly (readonly [string, string])[] = [
  ['s', ''],
  ['es', ''],
  ['ies', 'y'],
  ['ied', 'y'],
  ['ying', 'y'],
  ['ying', 'ie'],
  ['d', ''],
  ['ed', ''],
  ['ing', ''],
  ['ing', 'e'],
];

/** The words that formsOf() may have made this form of, some of them twice, and some that it did not: few enough to ask it of each. */
export function possibleBasesOf(form: string): string[] {
  const bases = [form, `=${form}`];
  for (const { base } of irregularBases.get(form) ?? []) bases.push(base);
  for (const [ending, instead] of ENDINGS) {
    if (!form.endsWith(ending)) continue;
    const stem = form.slice(0, -ending.length);
    bases.push(stem + instead);
    if (stem.at(-1) === stem.at(-2)) bases.push(stem.slice(0, -1));
  }
  return bases.flatMap((word) => (OTHERWISE.test(word) ? [word, ...spellingsOf(word)] : [word]));
}

/** A word in the spellings of SPELLINGS' first column. */
function spellingsOf(word: string): string[] {
  const spelt: string[] = [];
  for (const [from, to] of SPELLINGS)
    for (let at = word.indexOf(to); at >= 0; at = word.indexOf(to, at + 1))
      spelt.push(word.slice(0, at) + from.source.replace('$', '') + word.slice(at + to.length));
  return spelt;
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
