import type { APIContext } from 'astro';
import { at } from '../components/address.ts';
import { feedEntries } from '../components/feeds/entries.ts';
import { siteOrigin } from '../components/feeds/site-origin.ts';
import { currentSeries } from '../record/current.ts';

export const getStaticPaths = () =>
  siteOrigin(currentSeries(), import.meta.env.SITE) ? [{ params: { feed: 'feed' } }] : [];

/** JSON Feed 1.1. */
export function GET({ site }: APIContext): Response {
  const series = currentSeries();
  const origin = siteOrigin(series, site);
  if (origin === undefined) throw new Error('The feed needs the address of the site.');
  const whole = (path: string) => new URL(path, origin).href;
  const feed = {
    version: 'https://jsonfeed.org/version/1.1',
    title: series.title,
    description: series.summary,
    home_page_url: whole(at('/')),
    feed_url: whole(at('/feed.json')),
    language: series.language,
    ...(series.byline && { authors: [{ name: series.byline }] }),
    items: feedEntries(series).map((one) => ({
      id: whole(one.id),
      url: whole(one.path),
      title: one.title,
      content_text: one.safety.text === '' ? one.summary : `${one.summary}\n\n${one.safety.text}`,
      date_published: `${one.date}T00:00:00Z`,
    })),
  };
  return new Response(`${JSON.stringify(feed, null, 2)}\n`, {
    headers: { 'Content-Type': 'application/feed+json; charset=utf-8' },
  });
}
