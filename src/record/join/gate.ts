import { type Finding, type GateChapter, gateFindings } from '../hazards/gate.ts';
import type { Report } from '../report-to.ts';
import type { RuleId } from '../rules/written.ts';

const RULES: Record<Finding['kind'], RuleId> = {
  missing: 'hazards/missing',
  'missing caution': 'hazards/missing-caution',
  'idle exemption': 'hazards/idle-exemption',
  both: 'hazards/both',
};

/** Tells every hazard that a chapter's words point to and whose note is not shown, and every idle exemption. */
export function checkHazards(chapter: GateChapter, report: Report): void {
  for (const finding of gateFindings(chapter))
    report.add(RULES[finding.kind], finding.place, finding.message);
}
