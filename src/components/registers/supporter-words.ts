import type { Supporter } from '../../record/types.ts';
import { atChapter } from '../address.ts';
import { type Markup, markup } from '../markup.ts';
import { chapterById } from '../record-index.ts';

/** What a supporter did and where, with the mark of one who paid. */
export function supporterWords({ kind, what, chapters }: Supporter): Markup {
  const paid = kind === 'paid' && markup`<b>Paid.</b> `;
  const how = kind !== 'paid' && markup` <span class="soft">(${kind})</span>`;
  const where = chapters
    .map(chapterById)
    .filter((chapter) => chapter !== undefined)
    .map((chapter) => markup`, <a class="nowrap" href="${atChapter(chapter)}">chapter ${chapter.number}</a>`);
  return markup`${paid}${what.replace(/\.$/, '')}${how}${where}`;
}
