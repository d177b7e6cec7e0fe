/** Hazards that a step of a chapter declares, in its opening tag. */
import { attributeSpans } from '../../record/chapter/opening-tag.ts';

/** Where hazards are declared in the opening tag that begins at a place; undefined where it is written in another way. */
export function declaredIn(
  written: string,
  start: number,
): { text: string; name: number; list?: number; empty?: boolean } | undefined {
  const spans = attributeSpans(written, start);
  const name = start + '<Step'.length;
  const end = written.indexOf('>', spans.at(-1)?.value ?? name);
  const text = written.slice(start, end < 0 ? undefined : end);
  const hazards = spans.find((one) => one.name === 'hazards');
  if (!hazards) return spans.some((one) => one.name === '') ? undefined : { text, name };
  const list = /^\[((?:\s*"[\w-]*"\s*,?)*)\s*\]/.exec(written.slice(hazards.value));
  if (!list) return undefined;
  const inside = (list[1] ?? '').replace(/\s+$/, '');
  return {
    text,
    name,
    list: hazards.value + 1 + inside.length,
    empty: inside.trim() === '' || inside.endsWith(','),
  };
}
