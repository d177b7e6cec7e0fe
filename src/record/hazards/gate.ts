/**
 * The gate: no step whose words point to a hazard goes out without the note. The author declares the hazard, or says in
 * `notHazard` why it does not apply.
 */
import type { PhotoUse, Step } from '../types.ts';
import { hazard } from './catalogue.ts';
import { type FoundHazard, match, withoutCovered } from './find.ts';
import { type Hazard, rank } from './hazard.ts';

/** Where a finding stands: a place of the chapter, or the captions' file alone. */
export type FindingPlace = { file: string; line?: number; column?: number };

/** What the gate reads of a chapter. */
export interface GateChapter {
  steps: readonly Pick<
    Step,
    'title' | 'number' | 'tools' | 'hazards' | 'notHazard' | 'prose' | 'place' | 'at'
  >[];
  photos: readonly Pick<PhotoUse, 'caption' | 'place'>[];
  /** Hazards that the chapter's notes show, its steps' and its <Safety>'s. */
  hazards: readonly string[];
  /** What is said on the recording, in order of time, and the file that it stands in. */
  spoken?: { file: string; cues: readonly { from: number; text: string }[] };
}

/** One thing that the gate has to say; the check words it as a problem, the command walks through it. */
export interface Finding {
  kind: 'missing' | 'missing caution' | 'idle exemption' | 'both';
  hazard: Hazard;
  /** The words that point to it, as written; empty for an exemption. */
  words: string;
  /** Number of the step, undefined for a caption outside steps. */
  step?: number;
  place: FindingPlace;
  /** What is wrong, then what to write. */
  message: string;
}

/** What the gate has to say of a chapter, in the order of its steps. */
export function gateFindings(chapter: GateChapter): Finding[] {
  const findings: Finding[] = [];
  const inSteps = new Set<string>();
  const { byStep, rest } = spokenBySteps(chapter);
  for (const step of chapter.steps) {
    for (const passage of step.prose) inSteps.add(passage.text);
    findings.push(...ofStep(step, byStep.get(step)));
  }
  const outside = (text: string, place: FindingPlace, where: string): void => {
    for (const found of ofText(text)) {
      const entry = hazard(found.hazard);
      if (entry === undefined || entry.signal === 'NOTICE' || chapter.hazards.includes(entry.id)) continue;
      findings.push(missing(entry, found, place, `Put <Safety hazards={["${entry.id}"]} /> ${where}.`));
    }
  };
  for (const photo of chapter.photos)
    if (photo.caption !== '' && !inSteps.has(photo.caption))
      outside(photo.caption, photo.place, 'beside the picture');
  if (rest !== '' && chapter.spoken) outside(rest, { file: chapter.spoken.file }, 'in the chapter');
  return findings;
}

/** What is said while a step is shown: from its `at` to the next one's. What is said before the first belongs to none. */
function spokenBySteps({ steps, spoken }: GateChapter) {
  const byStep = new Map<GateChapter['steps'][number], string>();
  const timed = steps.filter((step) => step.at !== undefined).sort((a, b) => (a.at ?? 0) - (b.at ?? 0));
  const before: string[] = [];
  for (const cue of spoken?.cues ?? []) {
    const step = timed.findLast((one) => (one.at ?? 0) <= cue.from);
    if (step === undefined) before.push(cue.text);
    else byStep.set(step, `${byStep.get(step) ?? ''} ${cue.text}`);
  }
  return { byStep, rest: before.join(' ') };
}

function ofStep(step: GateChapter['steps'][number], spoken = ''): Finding[] {
  const findings: Finding[] = [];
  const fields = [
    ...step.prose.map((passage, i) => ({ name: String(i), text: passage.text })),
    ...step.tools.map((text) => ({ name: 'tools', text })),
    ...(spoken === '' ? [] : [{ name: 'spoken', text: spoken }]),
  ];
  const all = match(fields);
  const found = withoutCovered(all, (id) => !step.notHazard.has(id));
  for (const one of found) {
    const entry = hazard(one.hazard);
    if (entry === undefined || entry.signal === 'NOTICE') continue;
    if (step.hazards.includes(entry.id) || step.notHazard.has(entry.id)) continue;
    const place = step.prose[Number(one.field)]?.place ?? step.place;
    const how = `Add "${entry.id}" to the step's hazards, or write in notHazard why it does not apply.`;
    findings.push({ ...missing(entry, one, place, how), step: step.number });
  }
  for (const id of step.notHazard.keys()) {
    const entry = hazard(id);
    if (entry === undefined) continue;
    if (step.hazards.includes(id))
      findings.push(
        exemption(
          'both',
          entry,
          step,
          `"${id}" is declared and ruled out in one step. Take it out of hazards or out of notHazard.`,
        ),
      );
    else if (!all.some((one) => one.hazard === id))
      findings.push(
        exemption(
          'idle exemption',
          entry,
          step,
          `Nothing in this step points to "${id}" any more. Take it out of notHazard.`,
        ),
      );
  }
  return findings;
}

const ofText = (text: string): FoundHazard[] => withoutCovered(match([{ name: 'text', text }]), () => true);

function missing(entry: Hazard, found: FoundHazard, place: FindingPlace, how: string): Finding {
  return {
    kind: rank(entry.signal) <= rank('WARNING') ? 'missing' : 'missing caution',
    hazard: entry,
    words: found.words,
    place,
    message: `The words "${found.words}" point to ${entry.signal}: ${entry.title}, and its note is not here. ${how}`,
  };
}

function exemption(
  kind: 'both' | 'idle exemption',
  entry: Hazard,
  step: GateChapter['steps'][number],
  message: string,
): Finding {
  return { kind, hazard: entry, words: '', step: step.number, place: step.place, message };
}

/** Hazards that authors ruled out, with their reasons: listed on the dev site and counted by the check. */
export interface Exemption {
  chapter: string;
  step: number;
  hazard: string;
  reason: string;
}

export function exemptionsOf(
  chapters: readonly { id: string; steps: readonly Pick<Step, 'number' | 'notHazard'>[] }[],
): Exemption[] {
  return chapters.flatMap((chapter) =>
    chapter.steps.flatMap((step) =>
      [...step.notHazard].map(([id, reason]) => ({
        chapter: chapter.id,
        step: step.number,
        hazard: id,
        reason,
      })),
    ),
  );
}
