/** Any text as one scalar of YAML 1.2 that reads back as the same characters. */

/** Written as it stands: begins with a letter and holds nothing that YAML could take for a mark. */
const BARE = /^\p{L}[\p{L}\p{N} _.,()/'-]*$/u;
/** Words that YAML takes for something else than text. */
const MEANT = /^(?:true|false|null|yes|no|on|off|y|n)$/i;

export function yamlText(text: string): string {
  if (BARE.test(text) && !text.endsWith(' ') && (!MEANT.test(text) || text === 'no')) return text;
  // JSON's quotes are YAML's; characters that YAML calls unprintable are written by number.
  return JSON.stringify(text).replace(
    /[\x7f-\x9f\u2028\u2029\ufeff\ufffe\uffff\ufdd0-\ufdef]/g,
    (one) => `\\u${one.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
