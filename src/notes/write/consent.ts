/** Names of those who have not agreed to be named: they go to the proposals, and nowhere else. */
import type { Draft, Statement } from '../draft.ts';

/** Why a statement that names somebody is no part of the chapter. */
export const NAMED = 'named without consent';

/** A pattern that finds any of the names, or any word of one; undefined where there are none. */
export function namesPattern(names: readonly string[]): RegExp | undefined {
  const words = [
    ...new Set(
      names.flatMap((name) => name.split(' ').filter((word) => word.replace(/[^\p{L}]/gu, '').length > 2)),
    ),
  ];
  if (words.length === 0) return undefined;
  const any = words.map((word) => word.replace(/[^\p{L}]/gu, '.')).join('|');
  return new RegExp(`(?<!\\p{L})(?:${any})(?!\\p{L})`, 'iu');
}

/** A statement that names one of them becomes a proposal of thanks; a title that does loses the name. */
export function keepNamesOut(draft: Draft, names: readonly string[]): void {
  const pattern = namesPattern(names);
  if (!pattern) return;
  const hidden = new Set<Statement>();
  for (const one of draft.statements)
    if (pattern.test(one.text)) {
      hidden.add(one);
      one.home = { kind: 'proposal' };
      one.said.set('thanks', NAMED);
    }
  for (const step of draft.steps) {
    if (step.statements.some((one) => hidden.has(one)))
      step.statements = step.statements.filter((one) => !hidden.has(one));
    step.title = withoutNames(step.title, pattern) || 'See to it';
  }
}

export const withoutNames = (text: string, pattern: RegExp | undefined): string =>
  pattern?.test(text)
    ? text
        .replace(new RegExp(`${pattern.source}(?:['’]s(?!\\p{L}))?`, 'giu'), '')
        .replace(/\s+/g, ' ')
        .replace(/^[\s,:–—-]+|[\s,:–—-]+$/g, '')
    : text;
