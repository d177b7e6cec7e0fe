import type { APIContext } from 'astro';
import { at } from '../components/address.ts';

/** Everything may be read by anyone; held chapters are not on the site at all. */
export function GET({ site }: APIContext): Response {
  const map = site && new URL(at('/sitemap-index.xml'), site).href;
  return new Response(`User-agent: *\nDisallow:\n${map ? `Sitemap: ${map}\n` : ''}`);
}
