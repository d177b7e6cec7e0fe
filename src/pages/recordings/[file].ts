/** The chapters' own recordings and their captions, as files. */
import { readFile } from 'node:fs/promises';
import type { APIRoute } from 'astro';
import { recordingName } from '../../components/recording/addresses.ts';
import { captionsFile } from '../../components/recording/captions.ts';
import { currentSeries } from '../../record/current.ts';
import type { Chapter } from '../../record/types.ts';

export function getStaticPaths() {
  return currentSeries().chapters.flatMap((chapter) => {
    const name = recordingName(chapter);
    if (name === undefined) return [];
    const captions = chapter.cues.length > 0 ? [`${chapter.slug}.vtt`] : [];
    return [name, ...captions].map((file) => ({ params: { file }, props: { chapter } }));
  });
}

export const GET: APIRoute<{ chapter: Chapter }> = async ({ params, props: { chapter } }) => {
  const { recording } = chapter;
  if (params['file']?.endsWith('.vtt') || recording?.kind !== 'file')
    return new Response(captionsFile(chapter.cues), {
      headers: { 'Content-Type': 'text/vtt; charset=utf-8' },
    });
  return new Response(new Uint8Array(await readFile(recording.path)), {
    headers: { 'Content-Type': recording.type },
  });
};
