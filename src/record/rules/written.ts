import { CHAPTER_RULES } from './chapter.ts';
import { FILE_RULES } from './file.ts';
import { HAZARD_RULES } from './hazards.ts';
import { MONEY_RULES } from './money.ts';
import { ROAD_TEST_RULES } from './road-tests.ts';
import { STATE_RULES } from './state.ts';

/** One rule of the check. Ids are permanent: an author may search the web or the guide for one. */
export interface Rule {
  /** A heading of the guide: "A quote is never closed". */
  title: string;
  /** Why it matters to the author or the readers. */
  why: string;
  severity: 'error' | 'warning';
  /** Folder of tests/series that shows it. */
  fixture: string;
}

/** Rules that are not about the value of one column or key; those follow from the fields themselves (see rules.ts). */
export const WRITTEN_RULES = {
  ...FILE_RULES,
  ...CHAPTER_RULES,
  ...HAZARD_RULES,
  ...STATE_RULES,
  ...MONEY_RULES,
  ...ROAD_TEST_RULES,
} satisfies Record<string, Rule>;

/** "ledger/amount": the rule of one field. Made only by `fieldRule`. */
export type FieldRule = string & { readonly ofAField: true };

/** A rule id; a mistyped one does not compile. */
export type RuleId = keyof typeof WRITTEN_RULES | FieldRule;

/** The rule under which a wrong value of a column or key is told. */
export function fieldRule(area: string, field: string): FieldRule {
  return `${area}/${field}` as FieldRule;
}

/** A wrong value of a field is always an error; the other rules say it themselves. */
export function severityOf(rule: RuleId): 'error' | 'warning' {
  const written: Record<string, Rule> = WRITTEN_RULES;
  return written[rule]?.severity ?? 'error';
}
