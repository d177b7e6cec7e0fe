/** Which reader a source needs, and what is no source at all. */
import { readCaptions } from './captions.ts';
import { readMarkdown } from './markdown.ts';
import type { ReadSource, Source } from './source.ts';
import { isTimed, readTimed } from './timed.ts';

export type Opened = { ok: true; source: Source } | { ok: false; message: string };

/** Bytes as text, every character kept: byte-order mark and line ends too. */
export function openSource(name: string, bytes: Uint8Array): Opened {
  if (bytes.length > 40_000_000)
    return { ok: false, message: `${name} is larger than 40 MB. Part it into several files.` };
  const nul = bytes.indexOf(0);
  if (nul >= 0)
    return {
      ok: false,
      message: `${name} holds a NUL byte after ${nul} bytes, so it is no text. Save it again as plain UTF-8 text.`,
    };
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return {
      ok: false,
      message: `${name} is not UTF-8 text: it was probably saved in an older encoding. Save it as UTF-8.`,
    };
  }
  if (text.replace(/^\ufeff/, '').trim() === '')
    return { ok: false, message: `${name} is empty. There is nothing to write up.` };
  return { ok: true, source: { name, text } };
}

export function readSource(source: Source): ReadSource {
  const captions =
    /^\ufeff?WEBVTT/.test(source.text) ||
    /\.(?:vtt|srt)$/i.test(source.name) ||
    /^\s*\d+\s*\r?\n\s*\d\d:\d\d:\d\d,\d{3}\s*-->/.test(source.text);
  if (captions) return readCaptions(source);
  return isTimed(source.text) ? readTimed(source) : readMarkdown(source);
}
