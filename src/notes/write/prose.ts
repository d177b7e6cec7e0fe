/** A statement as it stands in a chapter: the author's words, with capitals and stops where speech has none, and its figures marked. */
import { unitNamed } from '../../record/quantity/unit-named.ts';
import type { Statement } from '../draft.ts';
import { plain } from './plain.ts';
import { spokenText } from './spoken.ts';

/** Said while thinking; left out of the prose and kept in the source. */
const FILLER = /(?:^|(?<=\s))(?:uh+|um+|er+m?|hmm+)[,]?(?:\s+|$)/gi;

const PRINTED: Readonly<Record<string, string>> = { 'N m': 'Nm' };

/** As it was written last: the chapter and the memory of it hold the same words. */
const written = new WeakMap<
  Statement,
  Pick<Statement, 'figures' | 'flow'> & { source: string; text: string }
>();

export function proseOf(one: Statement, source: string): string {
  const known = written.get(one);
  if (known && known.source === source && known.figures === one.figures && known.flow === one.flow)
    return known.text;
  const text = newProse(one, source);
  const { figures, flow } = one;
  written.set(one, { figures, source, text, ...(flow ? { flow } : {}) });
  return text;
}

function newProse(one: Statement, source: string): string {
  const parts: string[] = [];
  let at = one.start;
  let row = false;
  for (const figure of one.figures) {
    if (figure.start < at || figure.end > one.end) continue;
    const inRow = row;
    // A row's unit stands on the figure behind it; a carried unit says nothing of the next figure.
    row = figure.shared === true && figure.carried !== true;
    if (inRow) continue;
    const marked = marking(figure, source.slice(figure.start, figure.end));
    if (!marked) continue;
    parts.push(clean(source.slice(at, figure.start)), marked);
    at = figure.end;
  }
  parts.push(clean(source.slice(at, one.end)));
  return sentence(parts.join(''), one);
}

/** A figure as <Qty>, where it has a unit of its own that the chapter's reader knows. */
function marking(
  { value, unit, shared, digits }: Statement['figures'][number],
  written: string,
): string | undefined {
  if (shared || value < 0 || /[\n]/.test(written)) return undefined;
  const name = PRINTED[unit] ?? unit;
  if (
    !/^(?:mm|cm|m|km|in|thou|ft|L|mL|cm3|mm2|km\/h|mph|rpm|N m|lbf ft|psi|bar|kPa|kg|g|lb|degC|degF|V|A|W|kW|Ah|ohm|(?:imp|US) (?:gal|qt|pt|fl oz|mpg))$/.test(
      unit,
    ) ||
    !unitNamed(name)
  )
    return undefined;
  const text = /^\d+(?:\.\d+)?$/.test(digits) ? digits : String(Math.round(value * 1e4) / 1e4);
  if (!/^\d+(?:\.\d+)?$/.test(text) || Math.abs(Number(text) - value) > 1e-4) return undefined;
  return `\ufdd0${text} ${name}\ufdd1`;
}

const clean = (text: string): string =>
  text
    .replace(/[\ufdd0\ufdd1]/g, '\ufffd')
    // "centre-" at a line's end goes on in the next line; "two- and three-pin" does not.
    .replace(/(?<=\p{Ll}-)\r?\n[ \t]*(?=\p{Ll})(?!(?:and|or|to)\b)/gu, '')
    .replace(/\s+/g, ' ')
    .replace(FILLER, '');

function sentence(raw: string, one: Statement): string {
  const begins = one.flow?.begins !== false;
  const ends = one.flow?.ends === undefined;
  let text = raw.trim();
  // Who speaks stands in the captions; in the middle of a line it parts nothing.
  if (one.kind === 'speech')
    text = text.replace(/<\/?(?:[biuc]|v|lang|ruby|rt|font)(?:[.\s][^<>\n]*)?>/gi, '').trim();
  // "It's um, it's two screws": said again by what goes on with it.
  if (one.flow?.without !== undefined && text.endsWith(` ${one.flow.without}`))
    text = text.slice(0, -one.flow.without.length - 1);
  if (one.kind === 'speech') text = spokenText(text, begins, ends).trim();
  text = text.replace(/\bi\b(?=$|[ ',’])/g, 'I');
  if (one.kind !== 'row' && one.kind !== 'heading' && one.kind !== 'other') {
    if (begins) text = text.replace(/^\p{Ll}(?!\p{Lu}|\.)/u, (letter) => letter.toUpperCase());
    if (one.kind !== 'prose' || one.text === one.text.toLowerCase())
      text = text.replace(/(?<=[\p{L}\p{N})\ufdd1]{2}[.!?] )\p{Ll}/gu, (letter) => letter.toUpperCase());
    if (!ends) text += one.flow?.ends ?? '';
    else if (/[\p{L}\p{N}\ufdd1)%"]$/u.test(text)) text += '.';
  }
  return text
    .split(/(\ufdd0[^\ufdd1]*\ufdd1)/)
    .map((part) => (part.startsWith('\ufdd0') ? `<Qty of="${part.slice(1, -1)}" />` : keepEnds(part)))
    .join('');
}

/** Escaped, with the blanks at its ends kept. */
function keepEnds(part: string): string {
  if (part.trim() === '') return part === '' ? '' : ' ';
  return `${/^\s/.test(part) ? ' ' : ''}${plain(part)}${/\s$/.test(part) ? ' ' : ''}`;
}

/** The same words as plain text, for the gate and the proposals. */
export const wordsOf = (one: Statement): string =>
  one.text
    .replace(FILLER, '')
    .replace(/\bi\b(?=$|[ ',’])/g, 'I')
    .trim();
