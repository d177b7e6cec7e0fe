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
  chapter: Pick<Chapter, 'id' | 'hazards' | 'steps' | 'quantities' | 'sums' | 'settings'>,
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
  const noted = new Set(chapter.steps.flatMap((step) => step.hazards));
  const printed = [
    ...chapter.hazards.filter((id) => !noted.has(id)).map((id) => `hazard ${id}`),
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
      const kept = steps.texts(key).flatMap(({ text }) => text ?? []);
      const told = (figure: string): boolean =>
        corrections.some(
          (one) =>
            one.chapter === chapter.id &&
            (one.step === undefined || key === '-' || one.step === key) &&
            holds(plain(one.was), plain(figure)),
        );
      const where = key === '-' ? { file: chapter.file } : places;
      const inStep = key === '-' ? '' : ` in step "${key}"`;
      for (const text of kept) {
        const { name, figure } = parted(text);
        if (current.includes(text) || told(figure)) continue;
        const replaced = current.find((one) => parted(one).name === name);
        report.add(
          'released/changed',
          where,
          `${shown(text)} was released${inStep} and ${replaced ? `is now ${shown(parted(replaced).figure)}` : 'is gone'}. Add a row to corrections.csv whose "was" holds ${shown(figure)}, or put it back.`,
        );
      }
      // One of several alike, such as the limit of one reading out of eight: the old figure still stands beside the new one.
      for (const text of current) {
        const { name, figure } = parted(text);
        const alike = kept.filter((one) => parted(one).name === name);
        const [first] = alike;
        if (first === undefined || kept.includes(text)) continue;
        if (alike.some((one) => !current.includes(one) || told(parted(one).figure))) continue;
        report.add(
          'released/changed',
          where,
          `${shown(first)} was released${inStep} and ${shown(figure)} stands beside it now. Add a row to corrections.csv whose "was" holds ${shown(parted(first).figure)}, or put it back.`,
        );
      }
    }
  }
}

/** Whether the words hold the figure as a whole: "22 Nm" does not hold "2 Nm". */
function holds(words: string, figure: string): boolean {
  for (let at = words.indexOf(figure); at >= 0; at = words.indexOf(figure, at + 1))
    if (!/[\d.,]$/.test(words.slice(0, at)) && !/^[\d]/.test(words.slice(at + figure.length))) return true;
  return false;
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
