import type { Entry } from './journal.ts';

export interface SheetPicture {
  number: number;
  entry: Entry;
  /** Address of the small picture, from the sheet. */
  small: string;
  /** "Step 4.2, Find top dead centre", or another chapter. */
  fits?: string;
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

const STYLE = `
:root{color-scheme:light dark}
body{font:15px/1.4 Georgia,serif;margin:1.5rem;max-width:80rem;color:light-dark(#1d1f21,#e8e6e0);background:light-dark(#fbfaf6,#191b1c)}
h1{font-size:1.3rem;font-weight:600;margin:0 0 .25rem}p{margin:.25rem 0 1rem;max-width:46rem}
ol{list-style:none;margin:0;padding:0;display:grid;grid-template-columns:repeat(auto-fill,minmax(9.5rem,1fr));gap:1.2rem 1rem}
figure{margin:0;break-inside:avoid}
.frame{height:9.5rem;display:flex;align-items:end;border-bottom:1px solid currentColor}
img{max-width:100%;max-height:9.5rem;display:block}
b{font:600 1.05rem/1.2 system-ui,sans-serif;font-variant-numeric:tabular-nums;margin-right:.4rem}
figcaption{padding-top:.3rem;overflow-wrap:anywhere}small{display:block;font-size:.82rem}
.near{outline:3px double light-dark(#8a3a12,#e0a070);outline-offset:3px}
@media print{body{margin:0;font-size:9pt}ol{grid-template-columns:repeat(4,1fr)}}
`;

/** The sheet to choose from: every picture with its number, name, time and what it was called. For the author's eyes only. */
export function contactSheet(title: string, pictures: readonly SheetPicture[]): string {
  const items = pictures.map(({ number, entry, small, fits }) => {
    const { wall, from } = entry.takenAt;
    const near = entry.state === 'near';
    const notes = [
      `${wall.replace('T', ' ')}${from === 'file' ? ' (time of the file; the camera noted none)' : ''}`,
      `from ${entry.original}`,
      ...(fits === undefined ? [] : [`fits ${fits}`]),
      ...(near ? [`not taken in: nearly the same as ${entry.near ?? ''}`] : []),
    ];
    return `<li><figure><div class="frame"><img${near ? ' class="near"' : ''} src="${escaped(small)}" alt="Picture ${number}, not yet described"></div><figcaption><b>${number}</b>${escaped(near ? 'waits for your answer' : entry.name)}${notes.map((note) => `<small>${escaped(note)}</small>`).join('')}</figcaption></figure></li>`;
  });
  return `<!doctype html>
<html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Contact sheet: ${escaped(title)}</title>
<style>${STYLE}</style>
<h1>Contact sheet: ${escaped(title)}</h1>
<p>Numbers are those that the command asks for. A double outline marks a picture that is nearly the same as another and waits for your answer. This page is never published.</p>
<ol>
${items.join('\n')}
</ol>
</html>
`;
}
