import type { Figure, Output, Values } from './contract.ts';

export type Computed = Readonly<Record<string, number | undefined>>;

/** A linear ± is shown while the two sides differ from it by no more than this share of it. */
const LINEAR = 0.1;

/** Below this share of a figure a difference is arithmetic noise. */
const NOISE = 1e-12;

/**
 * Every way to move one doubtful input by its ±, up and down. The cells of one column of a table move together, since one
 * instrument read them.
 */
function moved(values: Values): [Values, Values][] {
  const pairs: [Values, Values][] = [];
  for (const [name, value] of Object.entries(values)) {
    if (typeof value !== 'object') continue;
    const table: readonly (readonly Figure[])[] = 'si' in value ? [[value]] : value;
    for (const j of table[0]?.keys() ?? []) {
      if (!table.some((row) => row[j]?.pm)) continue;
      const shifted = (sign: number): Values => {
        const rows = table.map((row) => row.map((f, k) => (k === j ? { si: f.si + sign * (f.pm ?? 0) } : f)));
        return { ...values, [name]: 'si' in value ? rows[0]?.[0] : rows };
      };
      pairs.push([shifted(1), shifted(-1)]);
    }
  }
  return pairs;
}

/**
 * Carries every input's ± to every output. Inputs are taken as independent and their shares add by squares; each share
 * is half the difference between the answers at + and −, which is the linear law where the answer is nearly straight.
 * Where the two sides differ by more than 10 % (near top dead centre 0.02 ± 0.02 mm is 0 to 2.5°) the output
 * gets the interval instead: the sides added by squares, each on its own.
 * Source: JCGM 100:2008, 5.1.2 and note (finite differences); the interval is our own reading of where that ends.
 * @param compute pure; returns SI figures by name, undefined where there is no answer
 */
export function spread(compute: (values: Values) => Computed, values: Values): Record<string, Output> {
  const middle = compute(values);
  const sides = moved(values).map(([up, down]) => [compute(up), compute(down)] as const);
  const outputs: Record<string, Output> = {};
  for (const [name, si] of Object.entries(middle)) {
    if (si === undefined || !Number.isFinite(si)) continue;
    let straight = 0;
    let above = 0;
    let below = 0;
    for (const [up, down] of sides) {
      let u = (up[name] ?? Number.NaN) - si;
      let d = (down[name] ?? Number.NaN) - si;
      if (!Number.isFinite(u)) u = -d;
      if (!Number.isFinite(d)) d = -u;
      if (!Number.isFinite(u)) continue;
      straight += ((u - d) / 2) ** 2;
      above += Math.max(u, d, 0) ** 2;
      below += Math.min(u, d, 0) ** 2;
    }
    const pm = Math.sqrt(straight);
    const [high, low] = [Math.sqrt(above), Math.sqrt(below)];
    const bent = Math.max(Math.abs(high - pm), Math.abs(low - pm)) > LINEAR * pm;
    if (Math.max(high, low) <= NOISE * Math.abs(si)) outputs[name] = { si };
    else if (bent) outputs[name] = { si, pm, interval: { low: si - low, high: si + high } };
    else outputs[name] = { si, pm };
  }
  return outputs;
}
