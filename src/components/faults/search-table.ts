import type { Fault, FaultEvent, Suspect } from '../../record/types.ts';

export type Finding = 'out' | 'in' | undefined;

export interface Check {
  /** Number of the event in the fault's life, from 1. */
  number: number;
  event: FaultEvent;
}

export interface SearchRow {
  suspect: Suspect;
  /** What each check said of this suspect, in the order of the checks. */
  findings: Finding[];
  verdict: 'the cause' | 'points to it' | 'ruled out' | 'not yet tried';
}

export interface Search {
  checks: Check[];
  rows: SearchRow[];
}

/**
 * The search as suspects × checks: only events that rule something in or out are checks. A later finding wins over an
 * earlier one; what was ruled in last before the cure is the cause.
 */
export function searchOf(fault: Fault): Search {
  const checks = fault.events
    .map((event, place) => ({ number: place + 1, event }))
    .filter(({ event }) => event.rulesIn.length + event.rulesOut.length > 0);
  const rows = fault.suspects.map((suspect): SearchRow => {
    const findings = checks.map(({ event }): Finding => {
      if (event.rulesIn.includes(suspect.id)) return 'in';
      return event.rulesOut.includes(suspect.id) ? 'out' : undefined;
    });
    const last = findings.findLastIndex((one) => one !== undefined);
    const finding = findings[last];
    if (finding === undefined) return { suspect, findings, verdict: 'not yet tried' };
    if (finding === 'out') return { suspect, findings, verdict: 'ruled out' };
    return {
      suspect,
      findings,
      verdict: curedFrom(fault, checks[last]) ? 'the cause' : 'points to it',
    };
  });
  return { checks, rows };
}

/** Whether the life in which the check was made ended in a cure, at the check or after it. */
function curedFrom(fault: Fault, check: Check | undefined): boolean {
  const rest = check ? fault.events.slice(check.number - 1) : [];
  const end = rest.find(({ what }, place) => what === 'cured' || (what === 'came back' && place > 0));
  return end?.what === 'cured';
}
