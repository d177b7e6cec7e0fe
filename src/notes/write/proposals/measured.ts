/** Figures of a statement as rows of the measurements: what was measured, where, as found, and its limits. */
import type { Statement } from '../../draft.ts';
import type { TaggedWord } from '../../say/words.ts';
import { capital, nounsIn } from './nouns.ts';

export interface Measured {
  item: string;
  position: string;
  found: string;
  /** The figure of a new one, and the figure when the work was done. */
  new?: string;
  left?: string;
  min?: string;
  max?: string;
  unit: string;
}

const UNITS = /^(?:mm|in|thou|cm|um|V|bar|psi)$/;
/** What a dimension is of stands before it: "springs, free length". */
const DIMENSION =
  /^(?:free |wall |end |side |radial |axial |total )?(?:length|width|depth|gap|play|float|wall|bore|diameter|thickness|clearance|height|run-?out|wear|rock|lift|stroke)$/i;
/** Said of what shall be, or of a tool. */
const MEANT =
  /\b(?:will be|would be|shall be|going to|set (?:it|them|that)(?: at| to)?|i'?ll set|aim|drill(?:ed)?(?: to)?|cut (?:to|at)|bought|ordered|need)\b[^,;.]*$/i;
const LIMIT_BEFORE =
  /\b(min(?:imum)?|max(?:imum)?|limit|book|allow(?:s|ed)?|wants? to be|should be|ought to be|supposed to be|not (?:less|more) than|at (?:least|most)|up to|no more than|spec)\b[^;.]*$/i;
const SPANNER = /^\s*(?:across|a\/?f\b|spanner|socket|hd\b|head|bolts?|nuts?|drill|studs?|thread|hose clip)/i;

/** What it was measured with, or read in. */
const INSTRUMENT =
  /\b(?:micrometer|calip(?:er|ers)|feelers?|gauge|rulers?|rule|tape|clock|dial|book|paper|sheet|thumb|nail|fingernail|finger|apron|grinder|drill|socket|scales?|string|eye|instruments?|straight edge|meter)$/i;

/** "A new one's eight", "new would be 15 in": before the figure. "1.0 mm new": behind it. */
const OF_NEW =
  /\b(?:new(?: ones?)?|mine was new|it was new)(?:'s| is| are| was| were| would be| they are)?(?: about)?\s*$/i;
const NEW_BEHIND =
  /^\s*(?:mm|cm|in|thou|millimet(?:re|er)s?|inch(?:es)?)?\s*(?:when )?new\b(?! (?:one|shim|seal|bush|hose))/i;
/** "Was 4 mm, now 12": as left. */
const AS_LEFT =
  /\b(?:now|and now|after|now it's|now they are|down to|brought to)(?: it's| they're| at)?\s*$/i;
const AS_FOUND = /\b(?:was|were|had been|before)\b/i;
/** Names no thing that could be measured. */
const NO_ITEM =
  /^(?:measure|measured|round|hair|bottom|top|middle|places?|no\.?|tack|spots?|bore the|readings?|new ones?|others?|heads? of)$/i;

const number = (value: number): string => String(Math.round(value * 1e6) / 1e6);

export function measuredIn(
  one: Statement,
  text: string,
  words: readonly TaggedWord[],
  thing: string,
): Measured[] {
  const figures = one.figures.filter(({ unit }) => UNITS.test(unit));
  const nouns = nounsIn(words, text);
  const rows: (Measured & { at: number })[] = [];
  const limits: { at: number; value: number; unit: string; side: 'min' | 'max' | 'limit' }[] = [];
  const fresh: { value: number; unit: string }[] = [];
  let item = '';
  let from = 0;
  let meant = false;
  for (const [at, figure] of figures.entries()) {
    const start = figure.start - one.start;
    const end = figure.end - one.start;
    const next = figures[at + 1];
    const until = next ? next.start - one.start : text.length;
    const before = text.slice(from, start);
    const after = text.slice(end, until);
    const comma = after.search(/[,;/]|\.(?:\s|$)|\b(?:and|but|so|or)\b/);
    const where = (comma < 0 ? after : after.slice(0, comma)).trim();
    from = end + (comma < 0 ? (next ? 0 : after.length) : comma);
    const goesOn =
      limits.at(-1)?.at === at - 1 &&
      /^\s*(?:to|-|–)\s*$/.test(text.slice((figures[at - 1]?.end ?? 0) - one.start, start));
    const side =
      (goesOn ? 'limit' : undefined) ??
      figure.limit ??
      (/\b(?:min|at least|not less)/i.test(before)
        ? 'min'
        : /\b(?:max|at most|not more|no more|up to|allow)/i.test(before)
          ? 'max'
          : LIMIT_BEFORE.test(before)
            ? 'limit'
            : undefined);
    if (side) {
      limits.push({ at, value: figure.value, unit: figure.unit, side });
      continue;
    }
    if (OF_NEW.test(before) || NEW_BEHIND.test(text.slice(end))) {
      fresh.push({ value: figure.value, unit: figure.unit });
      continue;
    }
    const found = rows.at(-1);
    if (
      found &&
      found.left === undefined &&
      found.unit === figure.unit &&
      AS_LEFT.test(before) &&
      AS_FOUND.test(text.slice(0, start))
    ) {
      found.left = number(figure.value);
      continue;
    }
    const between = text.slice((figures[at - 1]?.end ?? one.start) - one.start, start);
    if (meant && /^\s*(?:to|-|–)\s*$/.test(between)) continue;
    meant = MEANT.test(before);
    if (meant || SPANNER.test(after) || /^\s*from\b/.test(after)) continue;
    const named = nouns.filter(
      (noun) =>
        noun.end <= start &&
        noun.start >= start - before.length &&
        !INSTRUMENT.test(noun.text) &&
        !NO_ITEM.test(noun.text) &&
        !/\b(?:with|by|on|from|against|under|behind|through|at|to) (?:the |a |an |my |his |her )?$/i.test(
          text.slice(Math.max(0, noun.start - 12), noun.start),
        ),
    );
    const last = named.at(-1);
    if (last) {
      const earlier = named.at(-2)?.text ?? (rows.length === 0 ? thing : '');
      item =
        DIMENSION.test(last.text) && earlier && earlier !== last.text
          ? `${earlier}, ${last.text}`
          : last.text;
    } else if (item === '') item = thing;
    if (/\boval\b/i.test(before)) item = `${thing}, out of round`;
    rows.push({
      at,
      item: capital(item.replace(/^measured /i, '')),
      position: positionOf(where),
      found: number(figure.value),
      unit: figure.unit,
    });
  }
  const real = rows.filter((row) => row.item !== '');
  for (const limit of limits) {
    // A limit is of the size of what it limits, or it limits something else.
    const theirs = real.filter(
      (row) =>
        row.unit === limit.unit &&
        limit.value / Number(row.found) < 20 &&
        Number(row.found) / limit.value < 20,
    );
    const pairs = limits.filter((other) => other.unit === limit.unit && other.side === 'limit');
    for (const row of theirs) {
      const side =
        limit.side !== 'limit'
          ? limit.side
          : pairs.length === 2
            ? limit === pairs[0]
              ? 'min'
              : 'max'
            : sideFor(row.item, Number(row.found), limit.value);
      row[side] ??= number(limit.value);
    }
  }
  for (const one of fresh)
    for (const row of real)
      if (row.unit === one.unit && one.value / Number(row.found) < 5 && Number(row.found) / one.value < 5)
        row.new ??= number(one.value);
  const byItem = Map.groupBy(real, (row) => row.item);
  return real.map(({ at: _, ...row }) => {
    const list = byItem.get(row.item) ?? [];
    if (list.length < 2 || row.position !== '') return row;
    return { ...row, position: `reading ${list.findIndex((other) => other.at === _) + 1}` };
  });
}

/** "at the widest", "lead", "inside": a few words behind a figure that tell where. */
function positionOf(where: string): string {
  const words = where.replace(/^(?:the |on the |at the |in the )?/i, (lead) => lead.toLowerCase()).trim();
  if (words === '' || words.split(/\s+/).length > 5) return '';
  return /^(?:at|in|on|near|top|bottom|middle|inside|outside|lead|leading|trail|trailing|left|right|front|rear|inner|outer|l\/h|r\/h|across|along|the other|other|cold|hot)\b/i.test(
    words,
  )
    ? words
    : '';
}

/** Which way a bare "limit" is meant: what wears thin has a least, what wears wide a most. */
export function sideFor(item: string, found: number, limit: number): 'min' | 'max' {
  if (/lining|brush|plate|disc|pad|wall|tread|thick|washer|shoe|tooth|teeth|spring|free length/i.test(item))
    return 'min';
  if (/play|clearance|float|oval|run-?out|wear|gap|drum|bore|rock|slack|taper|bend/i.test(item)) return 'max';
  return found <= limit ? 'max' : 'min';
}
