import rss from '@astrojs/rss';
import type { APIContext } from 'astro';
import { at } from '../components/address.ts';
import { feedEntries } from '../components/feeds/entries.ts';
import { siteOrigin } from '../components/feeds/site-origin.ts';
import { currentSeries } from '../record/current.ts';

/** RSS asks for whole addresses: without the site's there is no feed. */
export const getStaticPaths = () =>
  siteOrigin(currentSeries(), import.meta.env.SITE) ? [{ params: { feed: 'feed' } }] : [];

const escaped = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');

export function GET({ site }: APIContext): Promise<Response> {
  const series = currentSeries();
  const origin = siteOrigin(series, site);
  if (origin === undefined) throw new Error('The feed needs the address of the site.');
  const whole = (path: string) => new URL(path, origin).href;
  return rss({
    title: series.title,
    description: series.summary,
    site: whole(at('/')),
    xmlns: { atom: 'http://www.w3.org/2005/Atom' },
    customData: [
      `<language>${escaped(series.language)}</language>`,
      `<atom:link rel="self" type="application/rss+xml" href="${escaped(whole(at('/feed.xml')))}"/>`,
    ].join(''),
    items: feedEntries(series).map((one) => ({
      title: one.title,
      description: one.summary,
      ...(one.safety.html === '' ? {} : { content: `<p>${escaped(one.summary)}</p>${one.safety.html}` }),
      link: whole(one.path),
      pubDate: new Date(`${one.date}T00:00:00Z`),
      customData: `<guid isPermaLink="false">${escaped(whole(one.id))}</guid>`,
    })),
  });
}
