import { type Document, parseDocument, stringify } from 'yaml';
import type { Place } from './problem.ts';
import type { Mapping } from './read/yaml.ts';
import type { Report } from './report-to.ts';
import { shown } from './text/words.ts';
import type { Chapter, Measurement, Series } from './types.ts';

/** Figures of one chapter that readers work by: by step id, and under "-" those outside steps. */
export type ReleasedFigures = Map<string, string[]>;

/** What the figures of chapters come from. */
export type Figured = Pick<Series, 'chapters' | 'measurements'>;

/** Torques, hazards, settings, limits and printed figures of a chapter as they stand now. */
export function figuresOf(
  chapter: Pick<Chapter, 'id' | 'steps' | 'quantities' | 'sums' | 'settings'>,
  measurements: readonly Measurement[],
): ReleasedFigures {
  const figures: ReleasedFigures = new Map();
  for (const step of chapter.steps) {
    const of = [
      ...(step.torque ? [`torque ${step.torque}`] : []),
      ...step.hazards.map((id) => `hazard ${id}`),
    ];
    if (of.length > 0) figures.set(step.id, of);
  }
  const printed = [
    ...[...chapter.quantities].map(([of, { text }]) => `${of} = ${plain(text)}`),
    ...[...chapter.sums].map(([of, { text }]) => `${of} = ${plain(text)}`),
    ...chapter.settings,
    ...limitsOf(measurements.filter((one) => one.chapter === chapter.id)),
  ];
  if (printed.length > 0) figures.set('-', printed);
  return figures;
}

/** What a reader holds a measurement against, once for each item: "most Bore, number one = 54.15 mm". */
function limitsOf(measurements: readonly Measurement[]): string[] {
  const limits = measurements.flatMap(({ item, asNew, min, max, limitPm, unit }) =>
    Object.entries({ new: asNew, least: min, most: max, '±': limitPm }).flatMap(([kind, figure]) =>
      figure === undefined ? [] : [`${kind} ${item} = ${figure} ${unit}`],
    ),
  );
  return [...new Set(limits)];
}

/** The text of released.yaml for a series as it stands. */
export function releasedText({ chapters, measurements }: Figured): string {
  const all = Object.fromEntries(
    chapters
      .filter((chapter) => !chapter.held)
      .map((chapter) => [chapter.id, Object.fromEntries(figuresOf(chapter, measurements))]),
  );
  return stringify(all, { lineWidth: 0 });
}

/** The text of released.yaml with one chapter's figures as they stand, everything else in it as it was. */
export function releasedWith(
  written: string,
  chapter: Chapter,
  measurements: readonly Measurement[],
): string {
  const document: Document = parseDocument(written);
  const figures = Object.fromEntries(figuresOf(chapter, measurements));
  if (document.contents === null) document.contents = document.createNode({});
  document.set(chapter.id, document.createNode(figures));
  return document.toString({ lineWidth: 0 });
}

/**
 * Tells every figure of a released chapter that differs from the one released and that no correction of the chapter names.
 * New figures and new hazards need none.
 */
export function checkReleased(
  released: Mapping,
  { chapters, corrections, measurements }: Figured & Pick<Series, 'corrections'>,
  report: Report,
): void {
  const ids = new Set(chapters.map((chapter) => chapter.id));
  for (const id of released.keys())
    if (!ids.has(id))
      report.add(
        'released/changed',
        released.keyPlace(id),
        `The chapter ${shown(id)} was released and is gone. Put its folder's name back, or take it out here.`,
      );
  for (const chapter of chapters) {
    if (chapter.held) continue;
    const steps = released.mapping(chapter.id);
    if (!steps) continue;
    const now = figuresOf(chapter, measurements);
    for (const key of steps.keys()) {
      const places: Place = chapter.steps.find((step) => step.id === key)?.place ?? {
        file: chapter.file,
        line: 1,
        column: 1,
      };
      const current = now.get(key) ?? [];
      for (const { text } of steps.texts(key)) {
        if (text === undefined || current.includes(text)) continue;
        const { name, figure } = parted(text);
        const was = plain(figure);
        const told = corrections.some(
          (one) =>
            one.chapter === chapter.id &&
            (one.step === undefined || key === '-' || one.step === key) &&
            plain(one.was).includes(was),
        );
        if (told) continue;
        const replaced = current.find((one) => parted(one).name === name);
        const where = key === '-' ? { file: chapter.file } : places;
        report.add(
          'released/changed',
          where,
          `${shown(text)} was released${key === '-' ? '' : ` in step "${key}"`} and ${replaced ? `is now ${shown(parted(replaced).figure)}` : 'is gone'}. Add a row to corrections.csv whose "was" holds ${shown(figure)}, or put it back.`,
        );
      }
    }
  }
}

function parted(text: string): { name: string; figure: string } {
  const found = /^(torque|hazard) (.*)$/.exec(text) ?? /^(.*) = (.*)$/.exec(text);
  const [, name = '', figure = text] = found ?? [];
  return { name: name === 'hazard' ? text : name, figure };
}

/** Spaces of any width and signs of multiplication do not make another figure. */
function plain(text: string): string {
  return text
    .replace(/[\s\u00a0\u202f]+/g, ' ')
    .replace(/·/g, '')
    .trim();
}
