/**
 * HTML put together as text, for words inside a sentence: a template's own line breaks would become white space before the
 * comma that follows. Whatever is not marked as HTML is escaped.
 */
export interface Markup {
  html: string;
}

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

export const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => ENTITIES[sign] ?? sign);

type Piece = Markup | string | number | false | undefined;

const written = (piece: Piece): string => {
  if (piece === undefined || piece === false) return '';
  return typeof piece === 'object' ? piece.html : escaped(String(piece));
};

/** Text that is HTML already: what a slot gave, MathML, a drawing. */
export const asHtml = (html: string): Markup => ({ html });

/**
 * A template whose values are escaped, unless they are markup themselves; `undefined` and `false` give nothing.
 * @example markup`<a href="${'/?a&b'}">${'5 < 6'}</a>`.html // '<a href="/?a&amp;b">5 &lt; 6</a>'
 */
export function markup(texts: TemplateStringsArray, ...pieces: (Piece | readonly Piece[])[]): Markup {
  const values = pieces.map((piece) =>
    Array.isArray(piece) ? piece.map(written).join('') : written(piece as Piece),
  );
  return { html: texts.map((text, place) => text + (values[place] ?? '')).join('') };
}
