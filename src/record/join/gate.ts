import { type Finding, type GateChapter, gateFindings } from '../hazards/gate.ts';
import type { Report } from '../report-to.ts';
import type { RuleId } from '../rules/written.ts';

const RULES: Record<Finding['kind'], RuleId> = {
  missing: 'hazards/missing',
  'missing caution': 'hazards/missing-caution',
  'idle exemption': 'hazards/idle-exemption',
  both: 'hazards/both',
};

/** What was found in the steps of one text, and with which captions and notes beside them. */
const known = new WeakMap<GateChapter['steps'], { beside: string; findings: Finding[] }>();

/** Tells every hazard that a chapter's words point to and whose note is not shown, and every idle exemption. */
export function checkHazards(chapter: GateChapter, report: Report): void {
  const beside = JSON.stringify([
    chapter.photos.map((photo) => [photo.caption, photo.place]),
    chapter.hazards,
    chapter.spoken,
  ]);
  let made = known.get(chapter.steps);
  if (made?.beside !== beside) {
    made = { beside, findings: gateFindings(chapter) };
    known.set(chapter.steps, made);
  }
  for (const { kind, place, message } of made.findings) report.add(RULES[kind], place, message);
}
