/** The note without a page: as plain text for the feed's text and the terminal, and as bare HTML for feed readers. */
import { KIT } from './kit.ts';
import { type Block, mergeHazards, signalInText } from './merge.ts';

/** Headings of a note's parts, in the order of the standards; the component uses the same. */
export const PARTS = {
  avoid: 'How to avoid it',
  wear: 'What to wear',
  ifItHappens: 'If it happens',
  callLicensed: 'When to stop and call somebody licensed',
} as const;

/** "First come the label; the handbook." */
export const deference = (block: Block): string =>
  `This note does not replace, and gives way to: ${block.defersTo.join('; ')}.`;

export const wearWords = (block: Block): string[] =>
  block.wear.map((id) => `${KIT[id].name}, ${KIT[id].detail}`);

const parts = (block: Block): [string, readonly string[]][] =>
  (
    [
      [PARTS.avoid, block.avoid],
      [PARTS.wear, wearWords(block)],
      [PARTS.ifItHappens, block.ifItHappens],
      [PARTS.callLicensed, block.callLicensed],
    ] satisfies [string, readonly string[]][]
  ).filter(([, lines]) => lines.length > 0);

/** The whole note as plain text, lines ended by \n; empty where the catalogue knows none of the ids. */
export function noteText(ids: readonly string[], extra: readonly string[] = []): string {
  const block = mergeHazards(ids, extra);
  if (block === undefined) return '';
  const lines = block.hazards.map((entry) => `${entry.signal}: ${entry.title}. ${entry.harm}`);
  for (const [heading, items] of parts(block)) lines.push(`${heading}:`, ...items.map((item) => `- ${item}`));
  lines.push(deference(block));
  return `${lines.join('\n')}\n`;
}

/** The whole note as HTML without classes, styles or pictures, for a feed; all text escaped. */
export function noteHtml(ids: readonly string[], extra: readonly string[] = []): string {
  const block = mergeHazards(ids, extra);
  if (block === undefined) return '';
  const harms = block.hazards
    .map(
      (entry) =>
        `<p><strong>${entry.signal}: ${escapeText(entry.title)}.</strong> ${escapeText(entry.harm)}</p>`,
    )
    .join('');
  const lists = parts(block)
    .map(
      ([heading, items]) =>
        `<p>${heading}:</p><ul>${items.map((item) => `<li>${escapeText(item)}</li>`).join('')}</ul>`,
    )
    .join('');
  const name = `${signalInText(block.signal)}: ${block.hazards.map((entry) => entry.title).join('; ')}`;
  return `<section aria-label="${escapeText(name)}">${harms}${lists}<p>${escapeText(deference(block))}</p></section>`;
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};
const escapeText = (text: string): string => text.replace(/[&<>"]/g, (found) => ESCAPES[found] ?? found);
