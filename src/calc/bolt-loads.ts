import { ROWS } from './thread-table.ts';

export { CLASSES } from './thread-table.ts';

export interface Thread {
  name: string;
  diameter_m: number;
  area_m2: number;
  /** By `CLASSES`. */
  proof_N: readonly number[];
}

const THREADS = ROWS.split('\n').map((row) => row.split(' ').map(Number));

/** What is wrong with a thread's name, and what the sentence for it says. */
export interface NoThread {
  wrong: 'noThread' | 'pitch' | 'untabled';
  says: Record<'size' | 'pitches' | 'pitch', string | undefined>;
}

/**
 * The thread that a text names: "M8", "M12x1.25", "m10 × 1"; or why the table has none.
 * @example
 * threadNamed('M12x1.25').area_m2 // => 92.1e-6 m²
 */
export function threadNamed(text: string): Thread | NoThread {
  const [, size, pitch] = /^m\s*([\d.,]+)(?:\s*[x×*-]\s*([\d.,]+))?$/i.exec(text.trim()) ?? [];
  const [d, p] = [size, pitch].map((t) => Number((t ?? '').replace(',', '.')));
  const same = THREADS.filter(([diameter]) => diameter === d);
  const [row] = same.filter(([, own]) => !pitch || own === p);
  if (!row) {
    const pitches = same.map(([, own]) => own).join(' or ');
    return {
      wrong: !size ? 'noThread' : same.length ? 'pitch' : 'untabled',
      says: { size: same.length ? String(d) : size, pitches, pitch },
    };
  }
  const [diameter = 0, own = 0, area = 0, ...proof] = row;
  return {
    name: `M${diameter}${row === same[0] ? '' : `×${own}`}`,
    diameter_m: diameter / 1e3,
    area_m2: area / 1e6,
    proof_N: proof.map((hundreds) => Math.round(hundreds * 100)),
  };
}
