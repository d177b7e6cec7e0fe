/** `node tests/notes/labelled/measure.ts FOLDER [--show]`: recall and precision by kind over a folder's texts; `--show` lists misses, for tuning texts only. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { foundIn, type Labels, labelsOf, type Scores, same, score } from '../measure.ts';
import { hazard } from '../../../src/record/hazards/catalogue.ts';

const [folder = '', show] = process.argv.slice(2);
const KINDS = ['quantities', 'steps', 'faults', 'parts', 'costs', 'thanks', 'hazards'] as const;

/** Dangers and warnings alone: labels heard, and notes told that have a label of theirs within their step, give or take a line. */
const isGrave = (id: string): boolean => ['DANGER', 'WARNING'].includes(hazard(id)?.signal ?? '');
const grave = { heard: 0, wanted: 0, right: 0, told: 0, again: 0 };

const total = Object.fromEntries(KINDS.map((kind) => [kind, { right: 0, wanted: 0, told: 0 }])) as Scores;
for (const name of readdirSync(folder).filter((one) => one.endsWith('.labels.json')).sort()) {
  const stem = name.replace('.labels.json', '');
  const text = readdirSync(folder).find((one) => one.startsWith(`${stem}.`) && one !== name) ?? '';
  const found = foundIn(text, readFileSync(join(folder, text), 'utf8'));
  const labels = labelsOf(JSON.parse(readFileSync(join(folder, name), 'utf8')) as Record<string, unknown>);
  const scores = score(found, labels);
  for (const kind of KINDS) for (const key of ['right', 'wanted', 'told'] as const) total[kind][key] += scores[kind][key];
  const told = found.spans.filter((span) => span.kind === 'hazards' && isGrave(span.words));
  const answers = (span: { from: number; to: number; words: string }, label: Labels['hazards'][number]) => span.words === label.id && label.line >= span.from - 1 && label.line <= span.to + 1;
  const wantedHere = labels.hazards.filter((one) => isGrave(one.id));
  const needless = told.filter((span) => !wantedHere.some((one) => answers(span, one)));
  grave.wanted += wantedHere.length;
  grave.heard += wantedHere.filter((one) => told.some((span) => answers(span, one))).length;
  grave.told += told.length;
  grave.right += told.length - needless.length;
  grave.again += needless.filter((span) => wantedHere.some((one) => one.id === span.words)).length;
  if (show !== '--show') continue;
  console.log(`\n== ${text}`);
  for (const kind of ['faults', 'parts', 'costs', 'thanks', 'steps'] as const) {
    const fits = (a: number, b: number) => (kind === 'steps' ? Math.abs(a - b) <= 1 : a === b || found.spans.some((span) => span.kind === kind && span.at === b && a >= span.from && a <= span.to));
    console.log(kind, 'missed', labels[kind].filter((a) => !found[kind].some((b) => fits(a, b))).join(' '), '| too many', found[kind].filter((b) => !labels[kind].some((a) => fits(a, b))).join(' '));
  }
  const free = [...found.quantities];
  const missed = labels.quantities.filter((a) => {
    const hit = free.findIndex((b) => a.line >= b.first && a.line <= b.line && same(a, b));
    if (hit >= 0) free.splice(hit, 1);
    return hit < 0;
  });
  const shown = (some: readonly { line: number; value: number; unit: string }[]) => some.map((one) => `${one.line}:${one.value} ${one.unit}`).join(', ');
  console.log('quantities missed', shown(missed), '| too many', shown(free));
  console.log('hazards missed', labels.hazards.filter((one) => !found.spans.some((span) => span.kind === 'hazards' && span.words === one.id && one.line >= span.from - 1 && one.line <= span.to + 1)).map((one) => `${one.line}:${one.id}`).join(' '), '| too many', needless.map((span) => `${span.from}-${span.to}:${span.words}`).join(' '));
}
console.log('\nkind        recall  precision  F1      right/wanted/told');
for (const kind of KINDS) {
  const { right, wanted, told } = total[kind];
  const recall = wanted ? right / wanted : 1;
  const precision = told ? right / told : 1;
  console.log(`${kind.padEnd(12)}${recall.toFixed(3)}   ${kind === 'hazards' ? '  —  ' : precision.toFixed(3)}      ${kind === 'hazards' ? '  —  ' : ((2 * recall * precision) / (recall + precision || 1)).toFixed(3)}   ${right}/${wanted}/${told}`);
}
const part = (some: number, all: number): string => (all === 0 ? '  —  ' : (some / all).toFixed(3));
console.log(`dangers and warnings: recall ${part(grave.heard, grave.wanted)} (${grave.heard}/${grave.wanted}), precision ${part(grave.right, grave.told)} (${grave.right}/${grave.told}); ${grave.again} of the needless notes are on work that goes on from a label of theirs elsewhere in the text`);
