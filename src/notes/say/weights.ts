/** What each class of the vocabulary (in brackets) and each word weighs for a finding, in log odds; learned from the labelled texts. */
import type { Weights } from './weigh.ts';
import learned from './weights.json' with { type: 'json' };

type Finding = 'fault' | 'part' | 'cost' | 'thanks';

const { step, ...findings } = learned as Readonly<Record<Finding | 'step', Weights>>;

export const WEIGHTS: Readonly<Record<Finding, Weights>> = findings;
export const STEP_WEIGHTS: Weights = step;

const known = new Set(Object.values(findings).flatMap(({ words }) => Object.keys(words)));
/** Whether a word bears on any finding. */
export const weighed = (name: string): boolean => known.has(name);
