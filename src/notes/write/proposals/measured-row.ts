/** A table's row as measurements: one for each column that holds what was found, with the row's limits. */
import type { Statement } from '../../draft.ts';
import { findFigures } from '../../figures/find.ts';
import { type Measured, sideFor } from './measured.ts';
import { capital } from './nouns.ts';

const FOUND = /\b(?:found|measured|now|actual|reading|mine|ours)\b/;
const LIMIT = /limit|max|min|allowed|book|should|spec|new|wants?/;
const NO_FIGURE =
  /note|remark|verdict|state|comment|what|why|where|shop|from|price|cost|paid|qty|total|sum|each/;

interface Cell {
  found: string;
  unit: string;
}

export function measuredRows(one: Statement, head: readonly string[] | undefined): Measured[] {
  const cells = (one.cells ?? []).map((cell) => cell.trim());
  const columns = cells.map((_, at) => (head?.[at] ?? '').trim().toLowerCase());
  const item = capital(cells[0] ?? '');
  if (item === '' || !/\p{L}{2}/u.test(item)) return [];
  const limitAt = columns.findIndex((name) => LIMIT.test(name));
  const named = columns.flatMap((name, at) => (at > 0 && FOUND.test(name) ? [at] : []));
  // Without a heading that says so, what was found stands in the columns of sides and places; a limit must show that it is a table of measures.
  const at =
    named.length > 0
      ? named.slice(0, 1)
      : limitAt > 0
        ? columns.flatMap((name, k) =>
            k > 0 && k !== limitAt && !LIMIT.test(name) && !NO_FIGURE.test(name) ? [k] : [],
          )
        : [];
  const limits = limitAt > 0 ? limitsIn(cells[limitAt] ?? '', columns[limitAt] ?? '') : undefined;
  return at.flatMap((column): Measured[] => {
    const figure = figureIn(cells[column] ?? '', columns[column] ?? '', limits?.unit);
    if (!figure) return [];
    const sided = limits && limits.unit === figure.unit ? sides(item, Number(figure.found), limits) : {};
    const where = named.length > 0 || at.length === 1 ? '' : (columns[column] ?? '');
    return [{ item, position: where, ...figure, ...sided }];
  });
}

/** A cell's one figure; a bare number has the unit of the heading, or of the limit. */
function figureIn(cell: string, column: string, unit: string | undefined): Cell | undefined {
  const bare = /^(?:about |~)?(-?\d+(?:[.,]\d+)?)\s*([a-zµ%°Ω/]{0,7}(?: [a-z]{2,3})?)$/i.exec(cell);
  if (!bare) return undefined;
  const said =
    bare[2]?.trim() || /\b(mm|cm|in|thou|V|A|bar|psi|ohms?|Nm|kg)\b/.exec(column)?.[1] || unit || 'mm';
  return { found: (bare[1] ?? '').replace(',', '.'), unit: said };
}

interface Limits {
  min?: number;
  max?: number;
  /** Which way it is meant is not said. */
  one?: number;
  unit: string;
}

function limitsIn(cell: string, column: string): Limits | undefined {
  const figures = findFigures(cell, {});
  const number = /-?\d+(?:[.,]\d+)?/.exec(cell)?.[0]?.replace(',', '.');
  const unit = figures[0]?.unit ?? 'mm';
  const values = figures.length > 0 ? figures.map(({ value }) => value) : number ? [Number(number)] : [];
  const [a, b] = values;
  if (a === undefined) return undefined;
  const words = `${cell} ${/\b(?:min|max)/.exec(column)?.[0] ?? ''}`.toLowerCase();
  const least = /\bmin|at least|no less|not (?:under|less)|over\b/.test(words);
  const most = /\bmax|at most|no more|not (?:over|more)|under\b|up to/.test(words);
  // "246 mm, min 240 mm": as new, and how far it may wear.
  const bound = figures.find(({ limit }) => limit === 'min' || limit === 'max')?.value;
  if (least && !most) return { min: bound ?? values.at(-1) ?? a, unit };
  if (most && !least) return { max: bound ?? values.at(-1) ?? a, unit };
  if (
    b !== undefined &&
    values.length === 2 &&
    /\d\s*(?:mm|in|thou|V|bar|psi|s|kg)?\s*(?:-|–|to)\s*\d/.test(cell)
  )
    return { min: Math.min(a, b), max: Math.max(a, b), unit };
  return { one: a, unit };
}

const asText = (value: number): string => String(Math.round(value * 1e6) / 1e6);

function sides(item: string, found: number, { min, max, one }: Limits): { min?: string; max?: string } {
  if (one !== undefined) return { [sideFor(item, found, one)]: asText(one) };
  return {
    ...(min === undefined ? {} : { min: asText(min) }),
    ...(max === undefined ? {} : { max: asText(max) }),
  };
}

/** Whether a measurement lies beyond its limit. */
export const beyond = ({ found, min, max }: Measured): boolean =>
  (min !== undefined && Number(found) < Number(min)) || (max !== undefined && Number(found) > Number(max));
