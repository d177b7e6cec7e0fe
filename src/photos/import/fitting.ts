/** Which chapter, and which step of it, a photo was taken for: by its day, and by the recording that ran. */

export interface FitChapter {
  id: string;
  title: string;
  /** Its day. */
  date: string;
  number: number;
  steps: readonly { id: string; title: string; number: number; at?: number }[];
}

/**
 * The chapter of that day; else the next one after it, since work is written up after it was done; else the last.
 * Undefined only without chapters.
 */
export function chapterThatFits(wall: string, chapters: readonly FitChapter[]): FitChapter | undefined {
  const day = wall.slice(0, 10);
  const inOrder = [...chapters].sort((a, b) =>
    a.date === b.date ? a.number - b.number : a.date < b.date ? -1 : 1,
  );
  return inOrder.find((one) => one.date >= day) ?? inOrder.at(-1);
}

/** The step whose time in the recording the photo falls into. */
export function stepThatFits(
  wall: string,
  began: string,
  steps: FitChapter['steps'],
): FitChapter['steps'][number] | undefined {
  const into_s = (Date.parse(`${wall}Z`) - Date.parse(`${began}Z`)) / 1000;
  if (into_s < 0) return undefined;
  return steps
    .filter((one) => one.at !== undefined && one.at <= into_s)
    .reduce<FitChapter['steps'][number] | undefined>(
      (best, one) => ((one.at ?? 0) >= (best?.at ?? 0) ? one : best),
      undefined,
    );
}
