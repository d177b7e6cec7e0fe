/** Names of people in a source, as far as the words beside them or a capital show them; in small letters. */

const BEFORE =
  /\b(?:thanks(?: (?:also|again))?(?: to)?|thank you|cheers|ta|thx|say hello|hello|called|named|mr|mrs|ms|miss|doctor|uncle|aunt|auntie|(?:my|our|his|her|your) (?:\w+ ){0,2}?(?:brother|sister|neighbour|neighbor|friend|mate|nephew|niece|cousin|son|daughter|wife|husband|partner|dad|mum|pal|lad)(?: in law|-in-law)?|young|bless you|sorry|come on)[ ,]+(\p{Ll}{3,}|\p{Lu}\p{Ll}{2,})/giu;
const CAPITAL = /(?<![.!?:\n>"“(#*|-]\s{0,3}|^[\s\-*#>|[\]x\d.:]{0,12})\b(\p{Lu}\p{Ll}{2,})\b/gmu;
/** At a sentence's beginning anything has a capital: what a person does must stand behind it. */
const BEGINNING =
  /(?:^|[.!?:"]\s+|^[\s\-*]+|\] )(\p{Lu}\p{Ll}{2,})(?=(?:,? (?:thank you|thanks|I owe you)| (?:lent|gave|sent|brought|drove|welded|wrote|rang|carried|paid|stayed|helped|said|proofread|did the|offered|posted|won'?t have|wouldn'?t (?:take|have)|gets a)\b))/gmu;
const INITIAL = /\b(\p{Lu})\.(?=\s+(?:\p{Ll}|held|lent|gave))/gu;

const list = (words: string): Set<string> => new Set(words.split(/\s+/).filter(Boolean));
/** Words that stand where a name could, or with a capital in the middle of a sentence. */
const NO_NAME = list(
  `the for you him her them and who all everybody everyone everything again god goodness that this these those it but with from very much now then there here just not
   monday tuesday wednesday thursday friday saturday sunday january february march april may june july august september october november december easter christmas
   english german dutch czech french japanese british american scots irish whitworth celsius fahrenheit newton phillips allen torx tarn carrier
   have has had was were are get got come came mate love ladies gents folks both one ones old little big people viewers readers watching reading listening
   neighbour neighbor brother sister friend nephew niece cousin uncle aunt law man lady woman lad boy girl chap fellow about know said says let
   what when where which while still also another other same next first last well right okay pulled made done went goes going off out over under into onto
   postman shop garage club machine engine van because today tomorrow yesterday forty inside outside properly lost show book car mister doctor gift sun whoever
   mon tue tues wed thu thur thurs fri sat jan feb mar apr jun jul aug sep sept oct nov dec xmas japan england scotland wales ireland states america germany france
   spain italy holland brno europe harbour hell earl mother father mum dad gran grandad
   say many heat post always never carried label sheet paper handbook manual only even very some most nothing nut cap she they his her our your what this somebody someone nobody everybody anyone both neither
   held lent gave paid rang taught bought brought sent came took told found made cut asked said helped welded pressed turned`,
);

export function namesIn(text: string): Set<string> {
  const out = new Set<string>();
  const put = (word: string | undefined): void => {
    const small = word?.toLowerCase();
    if (small && !NO_NAME.has(small)) out.add(small);
  };
  for (const found of text.matchAll(BEFORE)) put(found[1]);
  const capital = new Map<string, number>();
  for (const found of text.matchAll(CAPITAL))
    if (found[1]) capital.set(found[1], (capital.get(found[1]) ?? 0) + 1);
  const beginning = Array.from(text.matchAll(BEGINNING), ([, word = '']) => word);
  const inSmall = smallIn(text, capital.size + beginning.length);
  for (const word of [...capital.keys(), ...beginning]) if (!inSmall(word.toLowerCase())) put(word);
  for (const found of text.matchAll(INITIAL)) put(`${found[1]}.`);
  return out;
}

/** Tells whether a word stands in a text in small letters; where many are asked for, the text is gone through once. */
function smallIn(text: string, asked: number): (word: string) => boolean {
  const all = asked < 20 ? undefined : new Set(text.match(/\w+/g));
  return (word) => (all && /^\w+$/.test(word) ? all.has(word) : new RegExp(`\\b${word}\\b`).test(text));
}
