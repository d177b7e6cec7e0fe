/** How well the gate hears: recall and precision on labelled sentences, in all and by hazard. */
import { hazard, hazardIds } from './catalogue.ts';
import { findHazards, type StepWords } from './find.ts';
import { rank } from './hazard.ts';

/** A step with the hazards that it must call, and those that it may. */
export interface Labelled extends StepWords {
  must: readonly string[];
  may: readonly string[];
}

export interface Score {
  /** Must be called: called, and missed. */
  heard: number;
  missed: number;
  /** Called and allowed (must or may), and called without cause. */
  right: number;
  wrong: number;
}

export interface Measured {
  sentences: number;
  /** Dangers and warnings. */
  grave: Score;
  cautions: Score;
  byHazard: Map<string, Score>;
}

export const recall = (score: Score): number | undefined =>
  score.heard + score.missed === 0 ? undefined : score.heard / (score.heard + score.missed);
export const precision = (score: Score): number | undefined =>
  score.right + score.wrong === 0 ? undefined : score.right / (score.right + score.wrong);

/** Counts what the gate calls against what the labels ask. Notices are left out: the gate never asks for them. */
export function measure(rows: readonly Labelled[]): Measured {
  const byHazard = new Map<string, Score>(
    hazardIds
      .filter((id) => hazard(id)?.signal !== 'NOTICE')
      .map((id) => [id, { heard: 0, missed: 0, right: 0, wrong: 0 }]),
  );
  for (const row of rows) {
    const called = findHazards(row).map((one) => one.hazard);
    for (const id of row.must) {
      const score = byHazard.get(id);
      if (score) score[called.includes(id) ? 'heard' : 'missed'] += 1;
    }
    for (const id of called) {
      const score = byHazard.get(id);
      if (score) score[row.must.includes(id) || row.may.includes(id) ? 'right' : 'wrong'] += 1;
    }
  }
  const isGrave = (id: string) => rank(hazard(id)?.signal ?? 'NOTICE') <= rank('WARNING');
  const sum = (wanted: (id: string) => boolean): Score => {
    const total = { heard: 0, missed: 0, right: 0, wrong: 0 };
    for (const [id, score] of byHazard) {
      if (!wanted(id)) continue;
      for (const key of ['heard', 'missed', 'right', 'wrong'] as const) total[key] += score[key];
    }
    return total;
  };
  return { sentences: rows.length, grave: sum(isGrave), cautions: sum((id) => !isGrave(id)), byHazard };
}

/** The rows of a file of labelled sentences, one JSON object a line. */
export const labelledRows = (text: string): Labelled[] =>
  text
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.parse(line) as Labelled);
