/** Which turns of speech go on with the sentence before them, so that prose does not break where a breath was taken. */
import type { Statement } from '../draft.ts';

/** A sentence that two turns make is no longer than this, in words. */
const LONGEST = 24;
/** Nothing ends with one of these. */
const HANGS =
  /\b(?:until|till|unless|whether|make sure|and now|but now|and then|so then|and yeah|because|otherwise|and|but|so|if|when|the|a|an|to|of|with|it's|that's|which|or|is|was|are|for|i|we|my|than|as|like the|where|while)$/i;

/** `only` are the statements that are written now; what stood before is not gone on with. */
export function settleFlow(statements: readonly Statement[], only?: ReadonlySet<Statement>): void {
  let before: Statement | undefined;
  let length = 0;
  for (const one of statements) {
    const words = one.text.split(' ').length;
    if (before && goesOn(before, one, length + words) && (!only || (only.has(before) && only.has(one)))) {
      const said = bare(before.text);
      const again = / ([\p{L}']+)$/u.exec(said)?.[1] ?? '';
      const twice = again !== '' && one.text.toLowerCase().startsWith(`${again.toLowerCase()} `);
      before.flow = {
        ...before.flow,
        ends: HANGS.test(said) ? '' : comma(one.text),
        ...(twice ? { without: again } : {}),
      };
      one.flow = { begins: false };
      length += words;
    } else length = words;
    before = one;
  }
}

function goesOn(before: Statement, one: Statement, length: number): boolean {
  if (before.kind !== 'speech' || one.kind !== 'speech' || one.opens || one.source !== before.source)
    return false;
  if (before.home.kind !== one.home.kind || /[.!?…,]["'”’)]?$/.test(before.text)) return false;
  if (before.home.kind === 'step' && one.home.kind === 'step' && before.home.step !== one.home.step)
    return false;
  if (before.home.kind !== 'step' && before.home.kind !== 'prose') return false;
  if (!/^\p{Ll}/u.test(one.text)) return false;
  if (HANGS.test(bare(before.text))) return length <= LONGEST * 2;
  if (/^(?:or|because|which)\b/i.test(one.text)) return length <= LONGEST * 1.5;
  return /^(?:and|but|so)\b/i.test(one.text) && length <= LONGEST;
}

/** Without what is said while thinking of the next word. */
const bare = (text: string): string => text.replace(/(?:[\s,]+(?:um+|uh+|er+m?|hmm+))+$/i, '');

const comma = (text: string): string => (/^because\b/i.test(text) ? '' : ',');
