import type { Report } from '../report-to.ts';
import type { Lines } from '../text/lines.ts';
import { readGpx } from './gpx.ts';
import { isPointTable, readPointTable } from './point-table.ts';
import type { PointsText } from './points.ts';
import { readAloud } from './read-aloud.ts';
import type { RunText } from './run.ts';
import { readSpeedTable } from './speed-table.ts';

/** Named alone as a road test's file, it is the chapter's own. */
export const CHAPTER_CAPTIONS = 'captions.vtt';

type Reader = (lines: Lines, report: Report) => RunText | PointsText | undefined;

const READERS: Record<string, Reader> = {
  csv: (lines, report) => (isPointTable(lines) ? readPointTable : readSpeedTable)(lines, report),
  gpx: readGpx,
  vtt: readAloud,
  srt: readAloud,
  txt: readAloud,
};

/** The reader of a file of road-tests/ by its ending; undefined where none reads it. */
export const runReader = (name: string): Reader | undefined =>
  READERS[/\.([a-z]+)$/i.exec(name)?.[1]?.toLowerCase() ?? ''];
