/** How well a finding is told at a threshold, by what would be proposed: statements of one fault are one, and a sum is what makes a cost. */
import type { Statement } from '../../../src/notes/draft.ts';
import type { Saying } from '../../../src/notes/say/tell.ts';
import { proposalsOf } from '../../../src/notes/write/proposals.ts';
import { type Found, findings, KNOWN, type Score, score } from '../measure.ts';
import { likely, type Model } from './findings.ts';
import type { Kind, Text } from './texts.ts';

const SAYING = { faults: 'fault', parts: 'part', costs: 'cost', thanks: 'thanks' } as const satisfies Partial<
  Record<Kind, Saying>
>;

export function scoreAsProposed(
  text: Text,
  kind: keyof typeof SAYING,
  model: Model,
  from: number,
): Score & { missed: string[]; extra: string[] } {
  const saying = SAYING[kind];
  const statements = text.statements.map((one): Statement => {
    const features = text.features.get(one) ?? [];
    const said = new Map(one.said);
    said.delete(saying);
    const can =
      kind === 'costs'
        ? features.includes('[money]')
        : kind !== 'thanks' || !features.includes('[no thanks]');
    if (features.length > 0 && can && likely(features, model) >= from)
      said.set(saying, one.said.get(saying) ?? 'as noted');
    return { ...one, said };
  });
  const none: number[] = [];
  const found: Found = {
    quantities: [],
    steps: none,
    faults: [],
    parts: [],
    costs: [],
    thanks: [],
    hazards: [],
    spans: [],
  };
  findings(
    proposalsOf({ statements, steps: [] }, KNOWN, { reads: text.read ? [text.read] : [] }).proposals,
    statements,
    found,
  );
  const lines = text.labels[kind].map(({ line }) => line);
  const labels = {
    quantities: [],
    steps: [],
    faults: [],
    parts: [],
    costs: [],
    thanks: [],
    hazards: [],
    [kind]: lines,
  };
  const fits = (label: number, told: number): boolean =>
    label === told ||
    found.spans.some(
      (span) => span.kind === kind && span.at === told && label >= span.from && label <= span.to,
    );
  const words = (line: number): string =>
    statements.find((one) => one.line <= line && line <= one.lastLine)?.text.slice(0, 160) ?? '';
  return {
    ...score(found, labels)[kind],
    missed: lines
      .filter((line) => !found[kind].some((told) => fits(line, told)))
      .map((line) => `${text.name}:${line} ${words(line)}`),
    extra: found[kind]
      .filter((told) => !lines.some((line) => fits(line, told)))
      .map((line) => `${text.name}:${line} ${words(line)}`),
  };
}
