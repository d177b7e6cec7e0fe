import { basename, extname } from 'node:path';
import type { Chapter } from '../../record/types.ts';
import { at } from '../address.ts';

/** Whether a chapter has a page of its recording: something to play, or words to read. */
export const hasRecording = (chapter: Pick<Chapter, 'recording' | 'cues'>): boolean =>
  chapter.recording !== undefined || chapter.cues.length > 0;

/** The page of a chapter's recording, at a step's place in it. */
export const atRecording = (chapter: { slug: string }, step?: string): string =>
  at(`/chapters/${chapter.slug}/recording/${step === undefined ? '' : `#${step}`}`);

/** Name of a chapter's own recording among the published files: "first-start.mp4"; undefined where it lies elsewhere. */
export const recordingName = ({
  slug,
  recording,
}: Pick<Chapter, 'slug' | 'recording'>): string | undefined =>
  recording?.kind === 'file' ? `${slug}${extname(basename(recording.path)).toLowerCase()}` : undefined;

export const atRecordingFile = (name: string): string => at(`/recordings/${name}`);

/** Where a place in a recording is opened: our file, or the page elsewhere. Source: Media Fragments URI 1.0, W3C, 4.2.1. */
export function atMoment(chapter: Pick<Chapter, 'slug' | 'recording'>, seconds: number): string | undefined {
  const name = recordingName(chapter);
  const fragment = `#t=${Math.floor(seconds)}`;
  if (name !== undefined) return `${atRecordingFile(name)}${fragment}`;
  return chapter.recording?.kind === 'link'
    ? `${chapter.recording.href.replace(/#.*$/, '')}${fragment}`
    : undefined;
}
