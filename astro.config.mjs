// @ts-check

import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { oilway } from './src/cli/site.ts';
import { alignmentClasses } from './src/components/chapter/alignment.ts';

export default defineConfig({
  base: process.env.OILWAY_BASE ?? '/',
  output: 'static',
  trailingSlash: 'always',
  compressHTML: true,
  build: { format: 'directory', inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  markdown: {
    syntaxHighlight: false,
    processor: satteri({ hastPlugins: [alignmentClasses] }),
  },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data:",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'none'",
      ],
    },
  },
  integrations: [mdx(), oilway({ content: process.env.OILWAY_CONTENT ?? 'content' })],
});
