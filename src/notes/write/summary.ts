/** A chapter's summary from the things that its steps work on. */
import type { Draft } from '../draft.ts';
import { isThingWord, withArticle } from '../say/phrase.ts';
import { withoutNames } from './consent.ts';

const MOST = 4;

/** `names` are left out, whoever they belong to. */
export function summaryOf(draft: Draft, names: RegExp | undefined): string {
  const weights = new Map<string, { name: string; words: number; at: number }>();
  for (const [at, step] of draft.steps.entries()) {
    if (step.statements.length === 0) continue;
    const name = objectOf(step.title);
    const last = name.split(' ').at(-1) ?? '';
    if (last.length < 3 || /^(?:both|two|three|four)$/.test(name)) continue;
    // A part of the machine says more of a chapter than a rag or a hole.
    const words =
      step.statements.reduce((sum, one) => sum + one.text.split(' ').length, 0) * (isThingWord(last) ? 3 : 1);
    // "The left track rod end" and "the track rod end" are one thing to name.
    const key = name.split(' ').at(-1)?.replace(/s$/, '') ?? name;
    const known = weights.get(key);
    if (known) known.words += words;
    else weights.set(key, { name, words, at });
  }
  const chief = [...weights.values()]
    .sort((a, b) => b.words - a.words || a.at - b.at)
    .slice(0, MOST)
    .sort((a, b) => a.at - b.at)
    .map(({ name }) => withoutNames(name, names))
    .filter((name) => name !== '')
    .map(withArticle);
  if (chief.length === 0) return 'Written up from the notes, a first cut.';
  const list = chief.length === 1 ? chief[0] : `${chief.slice(0, -1).join(', ')} and ${chief.at(-1)}`;
  return `Work on ${list}${weights.size > MOST ? ', among other things' : ''}: a first cut from the notes.`;
}

/** The thing of a title: "Put the new points in" → "new points". */
function objectOf(title: string): string {
  const words = title.replace(/, .*$/, '').split(' ').slice(1);
  const from = words.findIndex((word) =>
    /^(?:the|a|an|its|both|all|two|three|four|five|six|eight)$/.test(word),
  );
  if (from < 0) return '';
  const out: string[] = [];
  for (const word of words.slice(/^(?:the|a|an|its)$/.test(words[from] ?? '') ? from + 1 : from)) {
    if (
      /^(?:off|out|up|down|back|in|on|apart|together|over|away|through|home|to|from|into|onto|with|under|round|against|for|at|behind|beneath|across|between|of|on)$/.test(
        word,
      )
    )
      break;
    out.push(word);
  }
  return out.join(' ').toLowerCase();
}
