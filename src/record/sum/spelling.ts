/** A machine value, or a word of letters as units have them. */
const WORD = /machine(?:\.[A-Za-z0-9_-]+)+|[A-Za-zµΩ°%]+[23]?/g;

/** Letters that the parser takes for parts of a name, for signs that it does not. */
const LETTERS: Record<string, string> = { '%': 'þ', '°': 'ð', µ: 'μ' };

/**
 * The author's text in the parser's spelling, character for character, so that every place stays: spaces for line ends,
 * its signs for − × ·, and letters where it would see an operator: the inch ("in"), %, and a hyphen or leading digit in
 * the key of a machine value.
 */
export function spelt(text: string): string {
  return text
    .replace(/\s/g, ' ')
    .replaceAll('−', '-')
    .replace(/[×·]/g, '*')
    .replace(WORD, (word) => {
      if (word.startsWith('machine.'))
        return word
          .replaceAll('-', 'ƚ')
          .replace(/\.(\d)/g, (_, digit: string) => `.${String.fromCharCode(0x100 + Number(digit))}`);
      return word === 'in' ? 'ïn' : word.replace(/[%°µ]/g, (letter) => LETTERS[letter] ?? letter);
    });
}
