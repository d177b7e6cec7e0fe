import rehypeSanitize from 'rehype-sanitize';
import rehypeStringify from 'rehype-stringify';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import { unified } from 'unified';

const pipeline = unified()
  .use(remarkParse)
  .use(remarkGfm)
  .use(remarkRehype)
  .use(rehypeSanitize)
  .use(rehypeStringify)
  .freeze();

/** Markdown that is data, as HTML. Raw markup, code and unsafe addresses in it are left out: data never becomes either. */
export function markdownHtml(markdown: string): string {
  return markdown.trim() === '' ? '' : String(pipeline.processSync(markdown));
}
