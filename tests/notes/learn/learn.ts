/**
 * `node tests/notes/learn/learn.ts` learns the weights of src/notes/say/weights.json from the texts of tuning/ and first/. It prints how well
 * weights learned from the other texts do on a text that was left out, and chooses each threshold there. `--show KIND` lists what went wrong.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Weights } from '../../../src/notes/say/weigh.ts';
import { scoreAsProposed } from './as-proposed.ts';
import { readBank } from './bank.ts';
import { learnFinding, learnSteps, type Model, scoreSteps } from './findings.ts';
import { type Kind, readTexts, type Text } from './texts.ts';

const here = import.meta.dirname;
const texts = readTexts(['tuning', 'first', 'second'].map((folder) => join(here, '../labelled', folder)));
const bank = readBank(join(here, '../labelled/statements'));
/** Recall and precision aimed at; the threshold is set where both are met best. */
const AIM: Readonly<Record<Kind, readonly [recall: number, precision: number]>> = {
  faults: [0.85, 0.75],
  parts: [0.8, 0.75],
  costs: [0.85, 0.75],
  thanks: [0.8, 0.75],
  steps: [0.75, 0.75],
};
const NAMES = { faults: 'fault', parts: 'part', costs: 'cost', thanks: 'thanks' } as const;
const showing = process.argv[process.argv.indexOf('--show') + 1];

const learnOf = (kind: Kind, from: readonly Text[]): Model =>
  kind === 'steps' ? learnSteps(from) : learnFinding(from, kind);
const scoreOf = (kind: Kind, text: Text, model: Model, from: number) =>
  kind === 'steps' ? scoreSteps(text, model, from) : scoreAsProposed(text, kind, model, from);

const FOLDS = 8;
const out: Record<string, Weights> = {};
for (const kind of ['faults', 'parts', 'costs', 'thanks', 'steps'] as const) {
  const models = Array.from({ length: FOLDS }, (_, fold) =>
    learnOf(kind, [...texts.filter((_text, at) => at % FOLDS !== fold), ...bank]),
  );
  let best:
    | { from: number; quality: number; recall: number; precision: number; missed: string[]; extra: string[] }
    | undefined;
  for (let from = -2.4; from <= 0.6; from += 0.2) {
    const scores = texts.map((text, at) => scoreOf(kind, text, models[at % FOLDS] as Model, from));
    const total = (key: 'right' | 'wanted' | 'told'): number =>
      scores.reduce((sum, one) => sum + one[key], 0);
    const recall = total('right') / total('wanted');
    const precision = total('told') ? total('right') / total('told') : 0;
    const quality = Math.min(recall / AIM[kind][0], precision / AIM[kind][1]);
    if (!best || quality > best.quality)
      best = {
        from,
        quality,
        recall,
        precision,
        missed: scores.flatMap(({ missed }) => missed),
        extra: scores.flatMap(({ extra }) => extra),
      };
  }
  if (!best) continue;
  console.log(
    `${kind.padEnd(8)} left-out texts: recall ${best.recall.toFixed(3)}, precision ${best.precision.toFixed(3)}, F1 ${((2 * best.recall * best.precision) / (best.recall + best.precision)).toFixed(3)} at ${best.from.toFixed(1)}`,
  );
  if (showing === kind)
    console.log(`\nMISSED\n${best.missed.join('\n')}\n\nTOO MANY\n${best.extra.join('\n')}\n`);
  const model = learnOf(kind, [...texts, ...bank]);
  const words = [...model.words]
    .filter(([, weight]) => Math.abs(weight) >= (kind === 'steps' ? 0.05 : 0.1))
    .sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1));
  if (showing === kind) console.log(words.map(([name, weight]) => `${name} ${weight.toFixed(2)}`).join(', '));
  out[kind === 'steps' ? 'step' : NAMES[kind]] = {
    bias: Number(model.bias.toFixed(2)),
    from: Number(best.from.toFixed(1)),
    words: Object.fromEntries(words.map(([name, weight]) => [name, Number(weight.toFixed(2))])),
  };
}
writeFileSync(join(here, '../../../src/notes/say/weights.json'), `${JSON.stringify(out, undefined, 2)}\n`);
