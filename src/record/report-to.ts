import type { Place, Problem } from './problem.ts';
import { type RuleId, severityOf } from './rules/written.ts';

/** Where a problem stands: a place, or a file alone where no line can be named. */
export type Where = Place | { file: string; line?: number; column?: number };

/** Collects problems while reading: everything is told, nothing is thrown. */
export class Report {
  readonly problems: Problem[] = [];

  /** Full sentences: what is wrong with the value shown, then what to write. */
  add(rule: RuleId, where: Where, message: string): undefined {
    const { file, line, column } = where;
    this.problems.push({
      file,
      ...(line === undefined ? {} : { line }),
      ...(column === undefined ? {} : { column }),
      rule,
      severity: severityOf(rule),
      message,
    });
    return undefined;
  }
}
