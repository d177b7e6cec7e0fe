import type { FaultText } from '../files/faults.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import { meant, shown } from '../text/words.ts';
import type { Fault, Suspect } from '../types.ts';
import type { References } from './references.ts';

/** Joins one fault's file to its chapters and checks that its events make a life. */
export function joinFault(id: string, text: FaultText, refer: References, report: Report): Fault {
  const suspects = new Map<string, Suspect>();
  for (const row of text.suspects) {
    if (suspects.has(row.id)) {
      report.add(
        fieldRule('suspects', 'id'),
        row.at('id'),
        `The suspect ${shown(row.id)} stands twice. Give each its own id.`,
      );
      continue;
    }
    const spot =
      row.step === undefined
        ? undefined
        : refer.spot(row.step, fieldRule('suspects', 'step'), row.at('step'));
    if (spot && spot.step === undefined)
      report.add(
        fieldRule('suspects', 'step'),
        row.at('step'),
        `${shown(row.step ?? '')} names no step. Write chapter/step.`,
      );
    const step = spot?.step === undefined ? undefined : { chapter: spot.chapter, step: spot.step };
    suspects.set(row.id, { id: row.id, name: row.name, ...(step ? { step } : {}), place: row.place });
  }
  const known = new Map<string, number>();
  for (const { row } of text.events) {
    const chapter = refer.chapter(row.chapter, fieldRule('faults', 'chapter'), row.at('chapter'));
    if (chapter) known.set(row.chapter, chapter.number);
    for (const column of ['rules_out', 'rules_in'] as const)
      for (const to of row[column] ?? [])
        if (!suspects.has(to))
          report.add(
            fieldRule('faults', column),
            row.at(column),
            `There is no suspect ${shown(to)} in this fault. ${meant(to, suspects.keys(), 'Add it under "suspects:".')}`,
          );
  }
  checkOrder(text, known, report);
  checkLife(text, report);
  return {
    id,
    title: text.head.title,
    system: text.head.system,
    symptom: text.head.symptom,
    suspects: [...suspects.values()],
    events: text.events.map(({ event }) => event),
    get story() {
      return text.story();
    },
    place: text.place,
  };
}

/** Events stand in the order of their chapters, and their dates never run backwards. */
function checkOrder({ events }: FaultText, numbers: ReadonlyMap<string, number>, report: Report): void {
  for (const [at, { row }] of events.entries()) {
    const before = events[at - 1]?.row;
    if (!before) continue;
    const [number, last] = [numbers.get(row.chapter), numbers.get(before.chapter)];
    if (number !== undefined && last !== undefined && number < last)
      report.add(
        'faults/order',
        row.at('chapter'),
        `"${row.what}" in ${shown(row.chapter)} stands after "${before.what}" in ${shown(before.chapter)}, a later chapter. Put the events in the order in which they happened.`,
      );
    else if (row.date < before.date)
      report.add(
        'faults/order',
        row.at('date'),
        `"${row.what}" of ${row.date} stands after "${before.what}" of ${before.date}. Put the events in the order in which they happened.`,
      );
  }
}

/** Found first, cured only while open, back only after a cure. */
function checkLife({ events }: FaultText, report: Report): void {
  let state: 'unknown' | 'open' | 'cured' = 'unknown';
  for (const { row } of events) {
    const wrong = (message: string) => report.add('faults/life', row.at('what'), message);
    const { what } = row;
    if (what === 'found') {
      if (state === 'open')
        wrong('The fault is found although it is already open. Write "tried", "worse" or "better".');
      if (state === 'cured') wrong('The fault is found again after its cure. Write "came back".');
      if (row.severity === undefined)
        report.add(
          'faults/severity-missing',
          row.at('what'),
          'The fault is found without a severity. Write "do not drive", "drive with care" or "nuisance".',
        );
      state = 'open';
    } else if (what === 'came back') {
      if (state === 'unknown')
        wrong('The fault came back before it was found. Write the event that found it first.');
      if (state === 'open')
        wrong('The fault came back although it was not cured. Write "worse", or the cure before it.');
      state = 'open';
    } else if (state === 'unknown') {
      wrong(`The fault is ${said(what)} before it was found. Write the event that found it first.`);
      state = what === 'cured' ? 'cured' : 'open';
    } else if (state === 'cured') {
      wrong(`The fault is ${said(what)} although it was cured. Write "came back" before it.`);
    } else if (what === 'cured') state = 'cured';
    if (row.review !== undefined && what !== 'put off')
      report.add(
        fieldRule('faults', 'review'),
        row.at('review'),
        `A review date belongs to what is put off, not to "${what}". Move or remove it.`,
      );
    if (row.review !== undefined && row.review < row.date)
      report.add(
        fieldRule('faults', 'review'),
        row.at('review'),
        `The review date ${row.review} lies before ${row.date}. Write a later day.`,
      );
  }
}

function said(what: string): string {
  return what === 'tried' ? 'tried at' : what === 'worse' || what === 'better' ? `said to be ${what}` : what;
}
