/** Which hazards the words of a step point to. */
import { hazard, hazards } from './catalogue.ts';
import { CLASSES, SAYINGS } from './lexicon.ts';
import { compile, type Field, type Matcher } from './words.ts';

/** What the gate reads of a step; a caption or a calculator outside a step is a text of its own. */
export interface StepWords {
  text: string;
  title?: string;
  tools?: readonly string[];
  torque?: string;
  captions?: readonly string[];
}

export interface FoundHazard {
  hazard: string;
  /** As written: "jack … van". */
  words: string;
  /** "title", "text", "captions" … */
  field: string;
  /** Characters from the start of that field (of the entry, for captions and tools). */
  offset: number;
}

let matcher: Matcher | undefined;

/** Hazards that the step's words and figures point to, worst first, each once. */
export function findHazards(step: StepWords): FoundHazard[] {
  const found = findAll(step);
  return found.length < 2 ? found : withoutCovered(found, () => true);
}

/** As findHazards, with those that another's note covers. */
export function findAll(step: StepWords): FoundHazard[] {
  return match(fieldsOf(step));
}

/** Hazards of several texts that belong together; the field of each finding is its text's name. */
export function match(fields: readonly Field[]): FoundHazard[] {
  matcher ??= compile(
    hazards.map((entry) => entry.words),
    CLASSES,
    SAYINGS,
  );
  return matcher(fields).map(({ hazard: index, words, field, offset }) => ({
    hazard: hazards[index]?.id ?? '',
    words,
    field,
    offset,
  }));
}

/** Leaves out what the note of another finding covers, where `stands` says that the other's note is shown. */
export function withoutCovered(
  found: readonly FoundHazard[],
  stands: (id: string) => boolean,
): FoundHazard[] {
  return found.filter(
    (one) =>
      !hazard(one.hazard)?.coveredBy?.some(
        (other) => stands(other) && found.some((more) => more.hazard === other),
      ),
  );
}

function fieldsOf(step: StepWords): Field[] {
  const fields: Field[] = [];
  if (step.title) fields.push({ name: 'title', text: step.title });
  fields.push({ name: 'text', text: step.text });
  for (const text of step.captions ?? []) fields.push({ name: 'captions', text });
  for (const text of step.tools ?? []) fields.push({ name: 'tools', text });
  if (step.torque) fields.push({ name: 'torque', text: step.torque });
  return fields;
}
