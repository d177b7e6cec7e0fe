import { readFrontmatter } from '../chapter/frontmatter.ts';
import type { DecimalMark } from '../money/decimal.ts';
import type { Place } from '../problem.ts';
import { given, hidden, needed, optional, type Row } from '../read/field.ts';
import { choice, day, id, line, name, names, words } from '../read/kinds.ts';
import { markdownHtml } from '../read/markdown.ts';
import { type Mapping, readMapping } from '../read/yaml.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import type { Lines } from '../text/lines.ts';
import type { FaultEvent } from '../types.ts';

/** Head of a fault's file, one entry a key; suspects and events are lists of their own. */
export const FAULT = {
  title: needed(line, 'Title', 'The fault in a few words: "Front brake drags".'),
  system: needed(line, 'System', 'Where it belongs: engine, ignition, brakes.'),
  symptom: needed(words, 'Symptom', 'What the driver notices, in the driver’s words.'),
};

export const SUSPECT = {
  id: needed(id, 'Id', 'A short name; events rule it in or out by this name.'),
  name: needed(line, 'Name', 'The suspect in words: "Return spring tired".'),
  step: optional(name, 'Step', 'Your own slip: the step it happened in, as chapter/step.'),
};

export const EVENT = {
  chapter: needed(name, 'Chapter', 'The chapter that tells of it.'),
  date: needed(day, 'Date', 'The day it happened.'),
  what: needed(
    choice(['found', 'tried', 'put off', 'worse', 'better', 'cured', 'came back']),
    'What',
    'What happened to the fault.',
  ),
  text: needed(words, 'Text', 'What was seen or done, in a sentence or two.'),
  severity: optional(
    choice(['do not drive', 'drive with care', 'nuisance']),
    'Severity',
    'From this event on; needed where a fault is found.',
  ),
  rules_out: optional(names, 'Rules out', 'Suspects that this rules out.'),
  rules_in: optional(names, 'Rules in', 'Suspects that this speaks against.'),
  review: optional(day, 'Review', 'For what is put off: the day to look again.'),
  waits_for: hidden(
    line,
    'Waits for',
    'What the next move waits for: a measurement, a second person, a loan. For your bench list.',
  ),
};

/** A fault as its own file tells it. */
export interface FaultText {
  head: Row<typeof FAULT>;
  suspects: Row<typeof SUSPECT>[];
  events: { row: Row<typeof EVENT>; event: FaultEvent }[];
  /** The story as sanitised HTML; made when it is first asked for, which a check never does. */
  story(): string;
  place: Place;
}

export function readFault(
  lines: Lines,
  mark: DecimalMark | undefined,
  report: Report,
): FaultText | undefined {
  const { head, body } = readFrontmatter(lines, 'faults/frontmatter', report);
  if (!head) return undefined;
  const row = readMapping(head, 'faults', FAULT, { report, mark, others: ['suspects', 'events'] });
  const suspects = readList(head, 'suspects', report).flatMap(
    (item) => readMapping(item, 'suspects', SUSPECT, { report, mark }) ?? [],
  );
  const events = readList(head, 'events', report).flatMap((item) => {
    const event = readMapping(item, 'faults', EVENT, { report, mark });
    return event ? [{ row: event, event: asEvent(event) }] : [];
  });
  if (head.kind('events') === 'nothing')
    report.add(
      fieldRule('faults', 'events'),
      head.keyPlace('events'),
      'The fault has no events. Write at least the one that found it, under "events:".',
    );
  return (
    row && {
      head: row,
      suspects,
      events,
      story: once(() => markdownHtml(lines.text.slice(body))),
      place: row.place,
    }
  );
}

function readList(head: Mapping, key: string, report: Report): Mapping[] {
  const kind = head.kind(key);
  if (kind === 'text' || kind === 'mapping')
    report.add(
      fieldRule('faults', key),
      head.at(key),
      `"${key}" is no list. Write its entries under it, each after a hyphen.`,
    );
  return head.mappings(key).flatMap(({ item, place }) => {
    if (!item)
      report.add(
        fieldRule('faults', key),
        place,
        `This entry of "${key}" has no keys. Write them under the hyphen.`,
      );
    return item ?? [];
  });
}

function asEvent(row: Row<typeof EVENT>): FaultEvent {
  return given({
    chapter: row.chapter,
    date: row.date,
    what: row.what,
    text: row.text,
    severity: row.severity,
    rulesOut: row.rules_out ?? [],
    rulesIn: row.rules_in ?? [],
    review: row.review,
    waitsFor: row.waits_for,
    place: row.at('what'),
  });
}

function once(make: () => string): () => string {
  let made: string | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
