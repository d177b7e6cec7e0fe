import type { Place } from '../problem.ts';
import { given } from '../read/field.ts';
import { refitOpenAt } from '../refit-list.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import { nearest } from '../text/nearest.ts';
import { meant, shown } from '../text/words.ts';
import type { RefitLine } from '../types.ts';
import type { References } from './references.ts';
import type { Parsed } from './series.ts';

interface Spot {
  chapter: string;
  step?: string;
  number: number;
  /** Steps of one chapter in their order; a row without a step counts as its end. */
  order: number;
  place: Place;
}

interface Draft {
  /** Where it was opened is written, and does not exist. */
  unknown?: true;
  opened: Spot[];
  closed: Spot[];
}

/**
 * Joins the refit list from steps (`opens`, `closes`) and refit.csv: every line is opened once, closed at most once and
 * later, and nothing is open unnoticed where the engine first runs or the machine is first driven.
 */
export function joinRefit(parsed: Parsed, refer: References, report: Report): RefitLine[] {
  const drafts = collect(parsed, refer, report);
  const rows = new Map(parsed.tables.refit.map((row) => [row.line, row]));
  const lines: RefitLine[] = [];
  for (const [id, { opened, closed, unknown }] of drafts) {
    if (unknown) continue;
    const row = rows.get(id);
    const [first, again] = opened;
    if (!first) {
      for (const spot of closed.length > 0 ? closed : row ? [{ place: row.at('line') }] : [])
        report.add(
          'refit/never-opened',
          spot.place,
          `Nothing opens the refit line ${shown(id)}. ${meant(
            id,
            [...drafts].flatMap(([other, draft]) => (draft.opened.length > 0 ? [other] : [])),
            'Write opens={["…"]} at the step that takes it off.',
          )}`,
        );
      continue;
    }
    if (!row) {
      const near = nearest(id, rows.keys());
      report.add(
        'refit/no-row',
        first.place,
        `No row of refit.csv has the line ${shown(id)}, so readers are told of it as "${inWords(id)}, removed". ${near === undefined ? `Add a row, such as ${id},${inWords(id)},removed under line,what,action.` : `The nearest is "${near}"; else add a row.`}`,
      );
    }
    if (again)
      report.add(
        'refit/opened-twice',
        again.place,
        `The refit line ${shown(id)} is already opened in ${spotText(first)}. Use another name for this one.`,
      );
    const [close, second] = closed;
    if (second && close)
      report.add(
        'refit/closed-twice',
        second.place,
        `The refit line ${shown(id)} is already closed in ${spotText(close)}. Close it once.`,
      );
    if (close && isBefore(close, first))
      report.add(
        'refit/order',
        close.place,
        `The refit line ${shown(id)} is closed in ${spotText(close)} before it is opened in ${spotText(first)}.  Look at both.`.replace(
          '  ',
          ' ',
        ),
      );
    if (row?.how === 'left off' && row.why === undefined)
      report.add(
        'refit/left-off',
        row.at('how'),
        `${shown(row.what)} is left off and nothing says why. Write it under "why".`,
      );
    if (row?.how !== undefined && !close && row.closed_in === undefined)
      report.add(
        fieldRule('refit', 'how'),
        row.at('how'),
        `The line says "${row.how}" and nothing closes it. Write "closed_in", or closes={["${id}"]} at the step.`,
      );
    lines.push(
      given({
        id,
        what: row?.what ?? inWords(id),
        action: row?.action ?? 'removed',
        system: row?.system,
        opened: given({ chapter: first.chapter, step: first.step }),
        closed: close && given({ chapter: close.chapter, step: close.step }),
        how: row?.how ?? (close ? ('refitted' as const) : undefined),
        why: row?.why,
        place: row?.place ?? first.place,
      }),
    );
  }
  checkStarts(parsed, lines, report);
  return lines;
}

function collect(parsed: Parsed, refer: References, report: Report): Map<string, Draft> {
  const drafts = new Map<string, Draft>();
  const draft = (id: string): Draft => {
    const known = drafts.get(id) ?? { opened: [], closed: [] };
    drafts.set(id, known);
    return known;
  };
  for (const chapter of parsed.chapters)
    for (const use of chapter.text.uses) {
      if ((use.kind !== 'opens' && use.kind !== 'closes') || !use.step) continue;
      const spot = {
        chapter: chapter.id,
        step: use.step.id,
        number: chapter.number,
        order: use.step.number,
        place: use.place,
      };
      draft(use.to)[use.kind === 'opens' ? 'opened' : 'closed'].push(spot);
    }
  const seen = new Map<string, number>();
  for (const row of parsed.tables.refit) {
    const before = seen.get(row.line);
    if (before !== undefined) {
      report.add(
        fieldRule('refit', 'line'),
        row.at('line'),
        `${shown(row.line)} already stands in line ${before}. Give each its own name.`,
      );
      continue;
    }
    seen.set(row.line, row.place.line);
    for (const [column, list] of [
      ['removed_in', 'opened'],
      ['closed_in', 'closed'],
    ] as const) {
      const written = row[column];
      const known = draft(row.line);
      if (written === undefined) continue;
      const spot = refer.spot(written, fieldRule('refit', column), row.at(column));
      if (!spot) {
        // A line whose own place is wrong is told once, not again as never opened.
        if (list === 'opened') known.unknown = true;
        continue;
      }
      const steps = refer.chapters.get(spot.chapter)?.text.steps ?? [];
      const order =
        steps.find((step) => step.id === spot.step)?.number ?? (list === 'opened' ? 0 : steps.length + 1);
      const same = known[list].some(
        (one) => one.chapter === spot.chapter && (one.step === spot.step || spot.step === undefined),
      );
      if (!same) known[list].push({ ...spot, order, place: row.at(column) });
    }
  }
  return drafts;
}

/**
 * Where the engine first runs or the machine is first driven, every line that is open at the chapter's head is closed by
 * the chapter itself or has its reason.
 */
function checkStarts(parsed: Parsed, lines: readonly RefitLine[], report: Report): void {
  const numbers = new Map(parsed.chapters.map((chapter) => [chapter.id, chapter.number]));
  for (const { id, text, number } of parsed.chapters) {
    const { head } = text;
    if (!head) continue;
    for (const [key, what] of [
      ['first_start', 'The engine is to run'],
      ['first_drive', 'The machine is to be driven'],
    ] as const) {
      if (!head[key]) continue;
      const open = refitOpenAt(lines, numbers, { before: number }).filter(
        (line) => line.why === undefined && line.closed?.chapter !== id,
      );
      if (open.length === 0) continue;
      const names = open.map((line) => shown(line.what)).join(', ');
      const one = open.length === 1;
      report.add(
        'refit/open-at-start',
        head.at(key),
        `${what} while ${one ? 'a refit line is' : `${open.length} refit lines are`} open: ${names}. Close ${one ? 'it' : 'them'} in an earlier chapter or in this one, or write the reason of each under "why" in refit.csv.`,
      );
    }
  }
}

function isBefore(a: Spot, b: Spot): boolean {
  return a.number < b.number || (a.number === b.number && a.order < b.order);
}

function spotText({ chapter, step }: Spot): string {
  return `"${step === undefined ? chapter : `${chapter}/${step}`}"`;
}

function inWords(id: string): string {
  const words = id.replace(/[-.]+/g, ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
