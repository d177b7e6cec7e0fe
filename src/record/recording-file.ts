/** A chapter's recording: a file beside the chapter, or a page elsewhere that is opened only when the reader asks. */
import { closeSync, fstatSync, openSync, readSync, statSync } from 'node:fs';
import { extname, join } from 'node:path';
import { meant, shown } from './text/words.ts';

export type Recording =
  | { kind: 'file'; path: string; type: string; sound: boolean }
  | { kind: 'link'; href: string; host: string };

const TYPES: Record<string, { type: string; sound: boolean }> = {
  '.mp4': { type: 'video/mp4', sound: false },
  '.m4v': { type: 'video/mp4', sound: false },
  '.webm': { type: 'video/webm', sound: false },
  '.ogv': { type: 'video/ogg', sound: false },
  '.m4a': { type: 'audio/mp4', sound: true },
  '.mp3': { type: 'audio/mpeg', sound: true },
  '.ogg': { type: 'audio/ogg', sound: true },
  '.opus': { type: 'audio/ogg', sound: true },
  '.wav': { type: 'audio/wav', sound: true },
};
const ENDINGS = Object.keys(TYPES).join(', ');
/** A host of plain files seldom takes more, and a reader's phone line neither. */
const LARGEST_bytes = 300_000_000;

/** What `recording` of a chapter's head means, or what is wrong with it in a full sentence. */
export function readRecording(
  written: string,
  folder: string,
  names: readonly string[],
): { recording: Recording } | { wrong: string } {
  if (/^https?:\/\//i.test(written)) {
    const url = URL.parse(written);
    if (url === null || url.username !== '' || url.password !== '')
      return { wrong: `${shown(written)} is not a web address. Copy it from the recording's own page.` };
    return { recording: { kind: 'link', href: url.href, host: url.host } };
  }
  const name = written.replace(/^\.\//, '');
  if (/[\\/:]/.test(name) || name.startsWith('.'))
    return {
      wrong: `${shown(written)} lies outside the chapter's folder. Put the recording beside the chapter, or write its web address with https://.`,
    };
  const kind = TYPES[extname(name).toLowerCase()];
  if (!kind) return { wrong: `${shown(written)} does not end as a recording does. Use one of ${ENDINGS}.` };
  const path = join(folder, name);
  const facts = statSync(path, { throwIfNoEntry: false });
  if (!facts?.isFile()) {
    const recordings = names.filter((one) => TYPES[extname(one).toLowerCase()]);
    return {
      wrong: `There is no recording ${shown(written)}. ${meant(name, recordings, 'The chapter’s folder holds none.')}`,
    };
  }
  if (facts.size === 0) return { wrong: `${shown(written)} is empty. Copy the recording again.` };
  if (facts.size > LARGEST_bytes)
    return {
      wrong: `${shown(written)} has ${Math.round(facts.size / 1e6)} MB, more than ${LARGEST_bytes / 1e6}. Export it smaller, or publish it elsewhere and write its address.`,
    };
  if (tellsPlace(path))
    return {
      wrong: `${shown(written)} holds the place where it was recorded. Export it again without the place.`,
    };
  return { recording: { kind: 'file', path, type: kind.type, sound: kind.sound } };
}

/**
 * Marks under which cameras write the place: ©xyz and loci are boxes of ISO base media files (3GPP TS 26.244 for loci), the
 * third a key of the same family, the others tags of Matroska, ID3 and XMP. From memory; common practice for ©xyz.
 */
const PLACE_MARKS = [
  '\u00a9xyz',
  'loci',
  'location.ISO6709',
  'LOCATION',
  'GPSLatitude',
  'GPSCoordinates',
].map((mark) => Buffer.from(mark, 'latin1'));
const HEADS = new Set(['moov', 'meta', 'udta', 'uuid']);
const HEAD_bytes = 50_000_000;
const ENDS_bytes = 1_000_000;

/** Whether the file's own notes, not its sound or picture, name a place. */
function tellsPlace(path: string): boolean {
  const file = openSync(path, 'r');
  try {
    const { size } = fstatSync(file);
    const boxes = /\.(?:mp4|m4v|m4a)$/i.test(path) ? notesOf(file, size) : undefined;
    const parts = boxes ?? [
      { at: 0, size: Math.min(size, ENDS_bytes) },
      { at: Math.max(0, size - ENDS_bytes), size: Math.min(size, ENDS_bytes) },
    ];
    return parts.some((part) => {
      const bytes = Buffer.alloc(Math.min(part.size, HEAD_bytes));
      readSync(file, bytes, 0, bytes.length, part.at);
      return PLACE_MARKS.some((mark) => bytes.includes(mark));
    });
  } finally {
    closeSync(file);
  }
}

/** The boxes of an ISO base media file that hold notes; undefined where it is not built so. Source: ISO/IEC 14496-12, 4.2 (memory). */
function notesOf(file: number, size: number): { at: number; size: number }[] | undefined {
  const found: { at: number; size: number }[] = [];
  const head = Buffer.alloc(16);
  let at = 0;
  while (at + 8 <= size) {
    readSync(file, head, 0, 16, at);
    const short = head.readUInt32BE(0);
    const length = short === 1 ? Number(head.readBigUInt64BE(8)) : short === 0 ? size - at : short;
    if (length < 8) return undefined;
    if (HEADS.has(head.toString('latin1', 4, 8))) found.push({ at, size: Math.min(length, size - at) });
    at += length;
  }
  return found;
}
