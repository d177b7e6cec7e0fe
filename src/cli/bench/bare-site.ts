import { cp, mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/**
 * A bare Astro + MDX project with the same chapters as a series: the yardstick for the build's and the dev server's budget.
 * Its components draw the same prose and pictures and know nothing else; `extraPages` plain pages make up for the pages that
 * the series has besides its chapters. Lies inside the project so that it finds the same packages.
 */
export async function writeBareSite(folder: string, content: string, extraPages: number): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  const put = async (path: string, text: string) => {
    await mkdir(join(folder, path, '..'), { recursive: true });
    await writeFile(join(folder, path), text);
  };
  for (const chapter of await readdir(join(content, 'chapters'))) {
    await cp(
      join(content, 'chapters', chapter, 'chapter.mdx'),
      join(folder, 'src/chapters', `${chapter}.mdx`),
    );
  }
  await put('package.json', '{ "type": "module" }\n');
  await put(
    'astro.config.mjs',
    `import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
export default defineConfig({ integrations: [mdx()], markdown: { syntaxHighlight: false }, trailingSlash: 'always' });
`,
  );
  await put(
    'src/Frame.astro',
    `---
const { title } = Astro.props;
---
<!doctype html>
<html lang="en"><head><meta charset="utf-8" /><title>{title}</title><link rel="icon" href="/icon.svg" /></head>
<body><main><h1>{title}</h1><slot /></main></body></html>
`,
  );
  await put(
    'src/Section.astro',
    '---\nconst { title } = Astro.props;\n---\n<section><h2>{title}</h2><slot /></section>\n',
  );
  await put(
    'src/Picture.astro',
    '---\nconst { src, alt } = Astro.props;\n---\n<img {src} {alt} width="800" height="600" />\n',
  );
  await put('src/Inline.astro', '---\nconst { of } = Astro.props;\n---\n<span>{of}<slot /></span>\n');
  await put(
    'src/pages/chapters/[chapter].astro',
    `---
import Frame from '../../Frame.astro';
import Section from '../../Section.astro';
import Picture from '../../Picture.astro';
import Inline from '../../Inline.astro';
export function getStaticPaths() {
  const found = import.meta.glob('../../chapters/*.mdx');
  return Object.entries(found).map(([path, load]) => ({
    params: { chapter: path.split('/').at(-1).replace('.mdx', '') }, props: { load },
  }));
}
const { default: Content, frontmatter } = await Astro.props.load();
const components = {
  Step: Section, Choice: Section, Table: Section, Photo: Picture, Figure: Picture, Qty: Inline, Sum: Inline, Part: Inline,
  FaultLink: Inline, Earlier: Inline, Safety: Inline, Ledger: Inline, Faults: Inline, Timing: Inline, Premix: Inline,
  Gearing: Inline, Hills: Inline,
};
---
<Frame title={frontmatter.title}><Content components={components} /></Frame>
`,
  );
  await put(
    'src/pages/more/[page].astro',
    `---
import Frame from '../../Frame.astro';
export function getStaticPaths() {
  return Array.from({ length: ${extraPages} }, (_, at) => ({ params: { page: String(at) }, props: { at } }));
}
const { at } = Astro.props;
---
<Frame title={'Page ' + at}>{Array.from({ length: 6 }, () => <p>The bolt came out with its thread, and the hole wants a new one.</p>)}</Frame>
`,
  );
}
