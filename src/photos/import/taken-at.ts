import readExif from 'exif-reader';

export interface TakenAt {
  /** On the clock of the place, corrected: "2026-05-02T14:31:05". */
  wall: string;
  /** From UTC, where the camera noted it: "+02:00". */
  offset?: string;
  /** "file": the camera noted no time, so this is when the file was last written. */
  from: 'camera' | 'file';
}

const DAY_s = 86_400;

/**
 * When a photo was taken. The reader of EXIF gives the camera's wall time as if it were UTC; it is taken as wall time.
 * @param clock_s seconds to add to the camera's clock
 */
export function takenAt(exif: Buffer | undefined, written: Date, clock_s = 0): TakenAt {
  const noted = exif && note(exif);
  if (!noted) return { wall: wall(localAsUtc(written)), from: 'file' };
  return {
    wall: wall(new Date(noted.time.getTime() + clock_s * 1000)),
    ...(noted.offset && { offset: noted.offset }),
    from: 'camera',
  };
}

function note(exif: Buffer): { time: Date; offset?: string } | undefined {
  try {
    const { Photo, Image } = readExif(exif);
    const time = Photo?.DateTimeOriginal ?? Photo?.DateTimeDigitized ?? Image?.DateTime;
    // A camera without a set clock writes zeros.
    if (!(time instanceof Date) || !(time.getUTCFullYear() > 1980)) return undefined;
    const offset = Photo?.OffsetTimeOriginal ?? Photo?.OffsetTime;
    return {
      time,
      ...(typeof offset === 'string' && /^[+-]\d\d:\d\d$/.test(offset) && { offset }),
    };
  } catch {
    return undefined;
  }
}

const localAsUtc = (date: Date): Date => new Date(date.getTime() - date.getTimezoneOffset() * 60_000);
const wall = (date: Date): string => date.toISOString().slice(0, 19);

/**
 * Seconds of a clock correction as an author writes it: "+1:02:10", "-0:45", "+1h 2m 10s", "-3d".
 * Undefined where it is none.
 */
export function clockCorrection(written: string): number | undefined {
  const text = written.trim().replace(/−/g, '-');
  const sign = text.startsWith('-') ? -1 : 1;
  const rest = text.replace(/^[+-]/, '').trim();
  const clock = /^(\d{1,3}):([0-5]\d)(?::([0-5]\d))?$/.exec(rest);
  if (clock) return sign * (Number(clock[1]) * 3600 + Number(clock[2]) * 60 + Number(clock[3] ?? 0));
  const words = /^(?:(\d+)\s*d)?\s*(?:(\d+)\s*h)?\s*(?:(\d+)\s*m)?\s*(?:(\d+)\s*s)?$/.exec(rest);
  if (!words || rest === '') return undefined;
  const [, d, h, m, s] = words;
  return sign * (Number(d ?? 0) * DAY_s + Number(h ?? 0) * 3600 + Number(m ?? 0) * 60 + Number(s ?? 0));
}

/** "2026-05-02-143105", the name of a photo taken then. */
export const nameByTime = ({ wall }: TakenAt): string =>
  wall
    .replace('T', '-')
    .replaceAll(':', '')
    .replace(/^(\d{4})(\d\d)(\d\d)/, '$1-$2-$3');
