/** Drawings as markup with holes. Never in a browser. */
import type { Block } from './answer.ts';
import type { SaidPicture, Words } from './says.ts';
import { escaped, WIDTH } from './svg.ts';

const inMarkup = (words: Words): string[] => [words].flat().map(escaped);

/** Sentences parted by blanks. */
const sentences = (words: Words): string[] => inMarkup(words).map((text, i) => (i > 0 ? ` ${text}` : text));

/** The start of a drawing; title and description are for those who cannot see it. */
export const opening = (height: number, title: Words, desc: Words): string[] => [
  `<svg xmlns="http://www.w3.org/2000/svg" class="calc-drawing" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label="`,
  ...inMarkup(title),
  '" font-size="11"><title>',
  ...inMarkup(title),
  '</title><desc>',
  ...sentences(desc),
  '</desc>',
];

export const pictureBlock = ({ name, title, desc, height, parts, each = [] }: SaidPicture): Block => ({
  name,
  open: [...opening(height, title, desc), ...parts],
  each,
  close: ['</svg>'],
});

/** A drawing with its title under it. */
export const figured = ({ open, close = [], ...block }: Block, title: Words): Block => ({
  ...block,
  open: ['<figure class="sheet-drawing">', ...open],
  close: [...close, '<figcaption>', ...inMarkup(title), '</figcaption></figure>'],
});
