/** How a statement is built, as far as it bears on what it says: who does something, what a thing does not do, what is ordered or asked. */
import type { TaggedWord } from './words.ts';

const PERSONS = new Set(['i', 'we', 'you', 'he', 'she', 'they', "i'm", "i've", "i'll", "i'd", 'who']);
const THINGS = new Set(['it', 'that', 'this', 'they', 'which', 'these', 'those', 'one', 'ones', 'nothing']);
const STATES =
  /^(?:is|'s|are|'re|was|were|looks?|looked|feels?|felt|seems?|seemed|gets|got|goes|went|gone|has|had|sounds?|sounded)$/;

/** Contractions that quick hands write without the apostrophe. */
const JOINED =
  /^(?:isnt|arent|wasnt|werent|dont|doesnt|didnt|wont|wouldnt|cant|couldnt|shouldnt|hasnt|havent|hadnt|aint)$/;

export function grammarOf(words: readonly TaggedWord[]): Set<string> {
  const out = new Set<string>();
  const real = words.filter(({ pos }) => pos !== 'PUNCT' && pos !== 'SPACE');
  const first = real.find(({ pos }) => pos !== 'INTJ' && pos !== 'CCONJ' && pos !== 'ADV');
  if (first?.pos === 'VERB' && first.text === first.lemma) out.add('ordered');
  if (first && first.pos === 'VERB' && /ed$/.test(first.text)) out.add('done, without who');
  if (words.some(({ text }) => text === '?') || /^(?:what|why|how|where|who)$/.test(real[0]?.text ?? ''))
    out.add('asked');
  for (const [at, word] of real.entries()) {
    const next = real[at + 1];
    const before = real[at - 1];
    const joined = JOINED.test(word.text);
    const denied = joined || next?.text === "n't" || next?.text === 'not';
    if (
      (joined ||
        word.pos === 'AUX' ||
        /^(?:wo|would|does|do|did|is|was|are|ca|can|could)$/.test(word.text)) &&
      denied
    ) {
      const verb = real
        .slice(at + 2, at + 5)
        .find(({ pos }) => pos === 'VERB' || pos === 'NOUN' || pos === 'ADJ');
      const person = before !== undefined && PERSONS.has(before.text) && before.text !== 'they';
      if (verb)
        out.add(person ? 'somebody does not' : verb.pos === 'ADJ' ? 'a thing is not' : 'a thing does not');
      if (word.text === 'ca' || word.text === 'can' || word.text === 'could') out.add('cannot');
    }
    if (word.text === 'too' && next?.pos === 'ADJ') out.add('too much so');
    if (word.text === 'no' && next?.pos === 'NOUN') out.add('none of it');
    if (word.text === 'only' && next && (next.pos === 'NUM' || next.pos === 'DET')) out.add('only so much');
    if (/^(?:should|supposed|meant|ought|wants|limit|minimum|maximum|min|max|spec|book)$/.test(word.text))
      out.add('what it should be');
    if (PERSONS.has(word.text) && next?.pos === 'VERB')
      out.add(word.text === 'you' ? 'you do' : /^(?:he|she|who)$/.test(word.text) ? 'somebody does' : 'i do');
    if ((THINGS.has(word.text) || word.pos === 'NOUN') && next && STATES.test(next.text)) {
      const state = real
        .slice(at + 2, at + 5)
        .find(({ pos }) => pos === 'ADJ' || pos === 'VERB' || pos === 'NOUN' || pos === 'DET');
      if (state)
        out.add(
          `a thing is ${state.pos === 'DET' ? 'something' : state.pos === 'NOUN' ? 'a thing' : state.pos === 'VERB' && /ed$|en$/.test(state.text) ? 'done to' : 'so'}`,
        );
    }
    if (word.pos === 'ADJ' && /^(?:NOUN|PROPN)$/.test(before?.pos ?? '') && !next) out.add('thing, so');
  }
  // "The left one doesn't."
  if (
    real.length > 2 &&
    /^(?:n't|not|isnt|wasnt|doesnt|didnt|wont|cant|hasnt)$/.test(real.at(-1)?.text ?? '')
  )
    out.add('ends denied');
  if (real.length > 0 && !real.some(({ pos }) => pos === 'VERB' || pos === 'AUX')) out.add('no verb');
  return out;
}
