/** Takes root/camera into root/chapter as a process of its own, to be killed by the test. */
import { join } from 'node:path';
import { addLines } from '../../../src/photos/import/chapter-lines.ts';
import { findPictures } from '../../../src/photos/import/find-pictures.ts';
import { Journal } from '../../../src/photos/import/journal.ts';
import { takeIn } from '../../../src/photos/import/take-in.ts';

const root = process.argv[2] ?? '';
const chapter = join(root, 'chapter');
const scratch = join(root, 'scratch');
const journal = await Journal.open(join(scratch, 'journal.jsonl'), chapter);
const { pictures } = await findPictures(join(root, 'camera'));
process.stdout.write('.');
await takeIn(pictures, { chapter, scratch, journal, longest_px: 400, clock_s: 0 });
await addLines(journal, { folder: chapter });
