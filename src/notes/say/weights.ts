/** What each class of the vocabulary (in brackets) and each word weighs for a finding, in log odds; learned from the labelled texts. */
import type { Feature } from './features.ts';
import { share, type Weights } from './weigh.ts';
import learned from './weights.json' with { type: 'json' };

type Finding = 'fault' | 'part' | 'cost' | 'thanks';

const { step, ...findings } = learned as Readonly<Record<Finding | 'step', Weights>>;

export const WEIGHTS: Readonly<Record<Finding, Weights>> = findings;
export const STEP_WEIGHTS: Weights = step;

const ORDER = Object.keys(findings) as Finding[];
/** For each word what it weighs for every finding, in one place: a source has millions of them to look up. */
const byName = new Map<string, Float64Array>();
for (const [at, finding] of ORDER.entries())
  for (const [name, weight] of Object.entries(findings[finding].words)) {
    const list = byName.get(name) ?? new Float64Array(ORDER.length);
    list[at] = weight;
    byName.set(name, list);
  }

/** Whether a word bears on any finding. */
export const weighed = (name: string): boolean => byName.has(name);

/** The findings that a statement is held to say; as `weigh` of each, in one pass. */
export function findingsIn(features: readonly Feature[], count: number): Finding[] {
  const classes = new Float64Array(ORDER.length);
  const lone = new Float64Array(ORDER.length);
  for (const { name } of features) {
    const weights = byName.get(name);
    if (!weights) continue;
    const sum = name.startsWith('[') ? classes : lone;
    for (let k = 0; k < weights.length; k++) sum[k] = (sum[k] ?? 0) + (weights[k] ?? 0);
  }
  const counted = share(count);
  return ORDER.filter((finding, k) => {
    const { bias, from } = findings[finding];
    return bias + (classes[k] ?? 0) + (lone[k] ?? 0) * counted >= from;
  });
}
