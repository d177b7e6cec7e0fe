/** Text that comes out of a chapter as the characters it is: nothing in it is a mark, a tag, an expression or an import. */
const entity = (character: string): string => `&#${character.codePointAt(0)};`;

/** One paragraph of text for the body of a chapter. */
export function plain(text: string): string {
  const line = text
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .replace(/ +/g, ' ')
    .trim()
    .replace(/[\\`*_{}[\]<>#|~&$^@=]/g, entity)
    .replace(/(https?|ftp|mailto|xmpp):/gi, '$1&#58;')
    .replace(/\bwww\./gi, (found) => `${found.slice(0, -1)}&#46;`);
  return line
    .replace(/^(?:[-+=:!]|\d+(?=[.)](?:\s|$)))/, (found) => [...found].map(entity).join(''))
    .replace(/^(?:import|export)\b/, (found) => entity(found[0] ?? '') + found.slice(1));
}

/** A text for an attribute in double quotes. */
export const quoted = (text: string): string =>
  `"${text
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .replace(/&/g, '&amp;')
    .replace(/"/g, '&quot;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/\{/g, '&#123;')
    .replace(/\}/g, '&#125;')}"`;
