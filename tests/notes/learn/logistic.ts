/** Logistic regression with an L1 and an L2 penalty (FISTA): what each word of the vocabulary weighs for a finding. */
export interface Example {
  features: readonly string[];
  yes: boolean;
  /** Weight of the example; 0 leaves it out. */
  weight: number;
  /** What a lone word counts in it. */
  share?: number;
}

export interface Penalty {
  l1: number;
  l2: number;
}

/** A class of the vocabulary was thought out before; a lone word has to prove itself. */
const costOf = (name: string): number => (name.startsWith('[') ? 0.25 : 1);

export function learn(
  examples: readonly Example[],
  { l1, l2 }: Penalty,
  rounds = 600,
): { bias: number; words: Map<string, number> } {
  const index = new Map<string, number>();
  for (const { features } of examples)
    for (const name of features) if (!index.has(name)) index.set(name, index.size);
  const names = [...index.keys()];
  const rows = examples.map(({ features }) =>
    Int32Array.from(new Set(features.map((name) => index.get(name) ?? 0))),
  );
  const n = names.length;
  const cost = Float64Array.from(names, costOf);
  const lone = Uint8Array.from(names, (name) => (name.startsWith('[') ? 0 : 1));
  const count = examples.reduce((sum, one) => sum + one.weight, 0);
  let w = new Float64Array(n + 1);
  let y = Float64Array.from(w);
  let t = 1;
  const shares = Float64Array.from(examples, (one) => one.share ?? 1);
  const weights = Float64Array.from(examples, (one) => one.weight / count);
  // The loss is no steeper than a quarter of the features' largest spread.
  const step = 1 / (0.26 * spread(rows, n, lone, shares, weights) + l2);
  for (let round = 0; round < rounds; round++) {
    const slope = new Float64Array(n + 1);
    for (const [at, row] of rows.entries()) {
      const example = examples[at];
      const weight = weights[at] ?? 0;
      if (!example || weight === 0) continue;
      const share = shares[at] ?? 1;
      let sum = y[n] ?? 0;
      for (const k of row) sum += (y[k] ?? 0) * (lone[k] ? share : 1);
      const off = (1 / (1 + Math.exp(-sum)) - (example.yes ? 1 : 0)) * weight;
      for (const k of row) slope[k] = (slope[k] ?? 0) + off * (lone[k] ? share : 1);
      slope[n] = (slope[n] ?? 0) + off;
    }
    const next = new Float64Array(n + 1);
    for (let k = 0; k <= n; k++) {
      const to = (y[k] ?? 0) - step * ((slope[k] ?? 0) + (k < n ? l2 * (y[k] ?? 0) : 0));
      const shrink = k < n ? step * l1 * (cost[k] ?? 1) : 0;
      next[k] = Math.sign(to) * Math.max(0, Math.abs(to) - shrink);
    }
    const t2 = (1 + Math.sqrt(1 + 4 * t * t)) / 2;
    const pull = (t - 1) / t2;
    y = next.map((value, k) => value + pull * (value - (w[k] ?? 0)));
    w = next;
    t = t2;
  }
  return {
    bias: w[n] ?? 0,
    words: new Map(
      names.map((name, k) => [name, w[k] ?? 0] as const).filter(([, weight]) => Math.abs(weight) > 1e-3),
    ),
  };
}

/** Largest eigenvalue of the weighted square of the features, by power iteration; the last place is the bias. */
function spread(
  rows: readonly Int32Array[],
  n: number,
  lone: Uint8Array,
  shares: Float64Array,
  weights: Float64Array,
): number {
  let v = new Float64Array(n + 1).fill(1 / Math.sqrt(n + 1));
  let size = 1;
  for (let round = 0; round < 30; round++) {
    const next = new Float64Array(n + 1);
    for (const [at, row] of rows.entries()) {
      const weight = weights[at] ?? 0;
      const share = shares[at] ?? 1;
      let sum = v[n] ?? 0;
      for (const k of row) sum += (v[k] ?? 0) * (lone[k] ? share : 1);
      for (const k of row) next[k] = (next[k] ?? 0) + sum * weight * (lone[k] ? share : 1);
      next[n] = (next[n] ?? 0) + sum * weight;
    }
    size = Math.sqrt(next.reduce((sum, x) => sum + x * x, 0));
    v = next.map((x) => x / (size || 1));
  }
  return size;
}
