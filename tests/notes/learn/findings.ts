/** Learns from texts what their statements say, and tells how well on a text that was left out. */
import type { Statement } from '../../../src/notes/draft.ts';
import { share } from '../../../src/notes/say/weigh.ts';
import { after, START, stepFeatures } from '../../../src/notes/steps.ts';
import { type Example, learn, type Penalty } from './logistic.ts';
import { type Kind, meant, type Text } from './texts.ts';

export interface Model {
  bias: number;
  words: Map<string, number>;
}

export const PENALTY: Readonly<Record<Kind, Penalty>> = {
  faults: { l1: 0.000005, l2: 0.00034 },
  parts: { l1: 0.000005, l2: 0.00034 },
  costs: { l1: 0.00001, l2: 0.00034 },
  thanks: { l1: 0.000005, l2: 0.00034 },
  steps: { l1: 0.0008, l2: 0.0004 },
};

const sum = (features: readonly string[], { bias, words }: Model, count = 0): number => {
  let lone = 0;
  let classes = bias;
  for (const name of features)
    if (name.startsWith('[')) classes += words.get(name) ?? 0;
    else lone += words.get(name) ?? 0;
  return classes + lone * share(count);
};

/** Words of a statement, by its pairs: there are as many as words. */
const countOf = (features: readonly string[]): number =>
  features.filter((name) => !name.startsWith('[') && name.includes(' ')).length;

/** Log odds of a finding. */
export const likely = (features: readonly string[], model: Model): number =>
  sum(features, model, countOf(features));

/** A lone word counts if it comes in two texts at least. */
function common(
  texts: readonly Text[],
  of: (text: Text) => Iterable<readonly string[]>,
): (name: string) => boolean {
  const seen = new Map<string, Set<string>>();
  for (const text of texts)
    for (const features of of(text))
      for (const name of features) {
        const where = seen.get(name) ?? new Set();
        seen.set(name, where.add(text.name));
      }
  return (name) => name.startsWith('[') || (seen.get(name)?.size ?? 0) >= 2;
}

const HINT: Readonly<Record<Exclude<Kind, 'steps'>, RegExp>> = {
  faults: /^\[(?:wrong|much)/,
  parts: /^\[buying/,
  costs: /^\[(?:money|buying paid)/,
  thanks: /^\[thanks/,
};

export function learnFinding(texts: readonly Text[], kind: Exclude<Kind, 'steps'>): Model {
  const keep = common(texts, (text) => text.features.values());
  let model: Model | undefined;
  for (let round = 0; round < 2; round++) {
    const examples = texts.flatMap((text): Example[] => {
      const likely = (one: Statement): number => {
        const features = text.features.get(one) ?? [];
        return model
          ? sum(features, model, countOf(features))
          : features.filter((name) => HINT[kind].test(name)).length;
      };
      const { yes, maybe } = meant(text, kind, likely);
      return [...text.features].map(([one, features]) => ({
        features: features.filter(keep),
        share: share(countOf(features)),
        yes: yes.has(one),
        weight: yes.has(one) || !maybe.has(one) ? 1 : 0.3,
      }));
    });
    model = learn(examples, PENALTY[kind]);
  }
  return model ?? { bias: 0, words: new Map() };
}

export function learnSteps(all_: readonly Text[]): Model {
  const texts = all_.filter(({ bank }) => !bank);
  const told = (text: Text): { one: Statement; features: string[]; yes: boolean }[] => {
    const { yes } = meant(text, 'steps', (one) => (one.work ? 2 : 0) + (one.opens ? 1 : 0));
    let now = START;
    return text.statements.flatMap((one, at) => {
      const features = stepFeatures(one, now, text.statements[at + 1]);
      now = after(one, now, yes.has(one));
      return text.features.get(one)?.length && one.kind !== 'task' && one.kind !== 'row'
        ? [{ one, features, yes: yes.has(one) }]
        : [];
    });
  };
  const all = new Map(texts.map((text) => [text, told(text)]));
  const keep = common(texts, (text) => (all.get(text) ?? []).map(({ features }) => features));
  return learn(
    [...all.values()]
      .flat()
      .map(({ features, yes }) => ({ features: features.filter(keep), yes, weight: 1 })),
    PENALTY.steps,
  );
}

export interface Score {
  right: number;
  wanted: number;
  told: number;
}

export function scoreSteps(
  text: Text,
  model: Model,
  from: number,
): Score & { missed: string[]; extra: string[] } {
  let now = START;
  const found: Statement[] = [];
  for (const [at, one] of text.statements.entries()) {
    const begins =
      (text.features.get(one)?.length ?? 0) > 0 &&
      one.kind !== 'task' &&
      one.kind !== 'row' &&
      /[a-z]{2}/i.test(one.text) &&
      sum(stepFeatures(one, now, text.statements[at + 1]), model) >= from;
    now = after(one, now, begins);
    if (begins) found.push(one);
  }
  return compare(text, 'steps', found, (label, one) => Math.abs(label - one.line) <= 1);
}

function compare(
  text: Text,
  kind: Kind,
  found: readonly Statement[],
  fits: (line: number, one: Statement) => boolean,
): Score & { missed: string[]; extra: string[] } {
  const free = new Set(found);
  const open = new Set(text.labels[kind]);
  for (const best of [(line: number, one: Statement) => line === one.line, fits])
    for (const label of [...open]) {
      const hit = [...free].find((one) => best(label.line, one));
      if (!hit) continue;
      free.delete(hit);
      open.delete(label);
    }
  const missed = [...open].map(({ line, words }) => `${text.name}:${line} ${words ?? ''}`);
  return {
    right: text.labels[kind].length - missed.length,
    wanted: text.labels[kind].length,
    told: found.length,
    missed,
    extra: [...free].map((one) => `${text.name}:${one.line} ${one.text.slice(0, 160)}`),
  };
}
