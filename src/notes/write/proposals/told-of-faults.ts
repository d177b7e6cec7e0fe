/** What a statement or a table's row tells of a fault, proposed: the fault, a finding of it, that it was put off or cured. */
import type { Statement } from '../../draft.ts';
import { wordsOf } from '../prose.ts';
import type { Collector } from './collector.ts';
import { type Faults, severityOf, type TextFault } from './faults.ts';
import { beyond, measuredRows } from './measured-row.ts';
import type { Proposal } from './proposal.ts';
import { putOffIn } from './put-off.ts';

/** A new fault, or a finding of one that is known; the proposal of a new one. */
export function faultAs(
  one: Statement,
  { fault, fresh }: { fault: TextFault; fresh: boolean },
  { because, system, base }: { because: string; system: string; base: Record<string, string> },
  out: Collector,
): Proposal | undefined {
  const text = wordsOf(one);
  if (fresh)
    return out.add(one, 'fault', because, {
      file: fault.file,
      title: fault.title,
      system,
      symptom: text,
      severity: severityOf(one.text, one.area),
      ...base,
    });
  if (putOffIn(one) === undefined && !one.said.has('cured'))
    out.add(one, 'finding', because, { fault: fault.file, what: 'tried', ...base, text });
  return undefined;
}

/** What a statement says of a fault besides that it is there: put off, cured, or tried. */
export function afterwards(
  one: Statement,
  fault: TextFault,
  base: Record<string, string>,
  out: Collector,
): void {
  const { said } = one;
  const text = wordsOf(one);
  if (fault.cured) return;
  const putOff = putOffIn(one);
  if (putOff !== undefined) out.add(one, 'put off', putOff, { fault: fault.file, ...base, text, review: '' });
  else if (said.has('cured')) {
    fault.cured = true;
    out.add(one, 'finding', said.get('cured') ?? '', { fault: fault.file, what: 'cured', ...base, text });
  } else if (said.has('tried'))
    out.add(one, 'finding', said.get('tried') ?? '', { fault: fault.file, what: 'tried', ...base, text });
}

/** A row of a table is a measurement, and a fault where that lies beyond its limit. */
export function fromRow(
  one: Statement,
  head: readonly string[] | undefined,
  base: Record<string, string>,
  out: Collector,
  faults: Faults,
  at: number,
): void {
  let faulty = false;
  for (const [n, row] of measuredRows(one, head).entries()) {
    const { item, position, found, min, max, unit } = row;
    out.add(
      one,
      'measurement',
      'a row of a table',
      { ...base, item, position, found, ...(min ? { min } : {}), ...(max ? { max } : {}), unit },
      n === 0 ? '' : String(n),
    );
    if (!beyond(row)) continue;
    faulty = true;
    const what = position === '' ? item : `${item}, ${position}`;
    const symptom = `${what}: ${found} ${unit} found, ${min && Number(found) < Number(min) ? `at least ${min}` : `at most ${max}`} ${unit} allowed.`;
    const told = faults.told({ ...one, text: `${what} beyond its limit` }, '', at, '');
    if (told.fresh)
      out.add(
        one,
        'fault',
        'beyond its limit',
        {
          file: told.fault.file,
          title: `${what} beyond its limit`,
          system: one.area ?? 'whole machine',
          symptom,
          severity: severityOf(one.text, one.area),
          ...base,
        },
        n === 0 ? '' : String(n),
      );
  }
  const because = one.said.get('fault');
  if (faulty || because === undefined) return;
  // "| top hose | 240 mm | soft and swollen |": told in words.
  const text = (one.cells ?? [])
    .map((cell) => cell.trim())
    .filter((cell) => /\p{L}{3}/u.test(cell))
    .join(', ');
  const told = faults.told({ ...one, text }, because, at, '');
  if (told.fresh)
    out.add(one, 'fault', because, {
      file: told.fault.file,
      title: told.fault.title,
      system: one.area ?? 'whole machine',
      symptom: text,
      severity: severityOf(text, one.area),
      ...base,
    });
}
