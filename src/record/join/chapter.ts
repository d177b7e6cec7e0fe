import { dirname } from 'node:path';
import { CALCULATOR_COMPONENTS } from '../chapter/calculators.ts';
import type { ChapterText, Use } from '../chapter/chapter-text.ts';
import type { SeriesFile } from '../files/series-file.ts';
import type { DecimalMark } from '../money/decimal.ts';
import { given } from '../read/field.ts';
import type { PictureStore } from '../read/pictures.ts';
import { type Recording, readRecording } from '../recording-file.ts';
import type { Report } from '../report-to.ts';
import { shown } from '../text/words.ts';
import type { Chapter, Fault, Machine, Mention, Part, PhotoUse, Supporter } from '../types.ts';
import { checkSheets, settingsOf } from './calculator-sheets.ts';
import { checkHazards } from './gate.ts';
import { HAZARD_RANK } from './hazards.ts';
import { reckon } from './reckoned.ts';
import type { References } from './references.ts';
import type { ChapterFile } from './series.ts';

/** What a chapter is joined to. */
export interface Surroundings {
  refer: References;
  machine: Machine | undefined;
  mark: DecimalMark | undefined;
  faults: ReadonlyMap<string, Fault>;
  parts: ReadonlyMap<string, Part>;
  supporters: readonly Supporter[];
  /** Chapter of each road test. */
  roadTests: ReadonlyMap<string, string>;
  settings: SeriesFile | undefined;
}

/** Joins a chapter to everything that it points to; undefined where its frontmatter cannot be read. */
export async function joinChapter(
  file: ChapterFile,
  around: Surroundings,
  pictures: PictureStore,
  report: Report,
): Promise<Chapter | undefined> {
  const { text } = file;
  const folder = dirname(file.path);
  const mentions = followUses(file, around, report);
  const photos: PhotoUse[] = [];
  for (const photo of text.photos) {
    const found = await pictures.find(photo.src, folder, file.names, photo.place, report, false);
    if (found) photos.push({ ...photo, ...found });
  }
  const figures = [];
  for (const figure of text.figures) {
    if (figure.src === undefined) {
      figures.push(figure);
      continue;
    }
    const found = await pictures.find(figure.src, folder, file.names, figure.place, report, true);
    if (found) figures.push({ ...figure, path: found.path });
  }
  checkSheets(text.sheets, around.machine, report);
  const spoken = { file: file.file.replace(/chapter\.mdx$/, 'captions.vtt'), cues: file.cues };
  checkHazards({ steps: text.steps, photos, hazards: mentions.hazards, spoken }, report);
  const reckoned = reckon(text.reckoned, around, report);
  const { head } = text;
  if (!head) return undefined;
  return {
    id: file.id,
    slug: file.slug,
    number: file.number,
    title: head.title,
    date: head.date,
    summary: head.summary,
    held: head.held ?? false,
    path: file.path,
    file: file.file,
    steps: text.steps,
    photos,
    figures,
    tables: text.tables,
    ...mentions,
    calculators: text.calculators,
    settings: settingsOf(text.sheets, around.machine),
    ...reckoned,
    prose: text.prose,
    words: text.words,
    cues: file.cues,
    paidBy: around.supporters.filter((one) => one.kind === 'paid' && one.chapters.includes(file.id)),
    firstStart: head.first_start ?? false,
    firstDrive: head.first_drive ?? false,
    ...given({
      hours: head.hours === undefined ? undefined : Number(head.hours),
      recording: recordingOf(head, file, report),
      captions: file.captions ? file.path.replace(/chapter\.mdx$/, 'captions.vtt') : undefined,
    }),
  };
}

function recordingOf(
  head: NonNullable<ChapterText['head']>,
  { path, names }: ChapterFile,
  report: Report,
): Recording | undefined {
  if (head.recording === undefined) return undefined;
  const read = readRecording(head.recording, dirname(path), names);
  return 'wrong' in read
    ? report.add('chapters/recording', head.at('recording'), read.wrong)
    : read.recording;
}

type Mentions = Pick<Chapter, 'hazards' | 'parts' | 'faultLinks' | 'earlier'>;

function followUses(file: ChapterFile, around: Surroundings, report: Report): Mentions {
  const { refer, parts, faults } = around;
  const hazards = new Set<string>();
  const mentions: Mentions = { hazards: [], parts: [], faultLinks: [], earlier: [] };
  const held = file.text.head?.held ?? false;
  for (const use of file.text.uses) {
    switch (use.kind) {
      case 'hazard':
      case 'ruled out': {
        const exists = refer.has(use.to, HAZARD_RANK, 'hazard', 'chapters/hazard', use.place);
        if (exists && use.kind === 'hazard') hazards.add(use.to);
        break;
      }
      case 'part':
        if (refer.has(use.to, parts, 'part', 'chapters/part', use.place))
          mentions.parts.push(mention(use, use.to));
        break;
      case 'fault':
        if (!refer.has(use.to, faults, 'fault', 'chapters/fault', use.place)) break;
        mentions.faultLinks.push(mention(use, use.to));
        if (!held && onlyHeld(faults.get(use.to), refer))
          report.add(
            'chapters/held-link',
            use.place,
            `The fault ${shown(use.to)} is told only in held chapters. Release one, or take the link out.`,
          );
        break;
      case 'road test': {
        const known = refer.has(use.to, around.roadTests, 'road test', 'road-tests/unknown', use.place);
        if (known && !held && refer.chapters.get(around.roadTests.get(use.to) ?? '')?.held)
          report.add(
            'chapters/held-link',
            use.place,
            `The road test ${shown(use.to)} belongs to a held chapter. Release it first, or take it out here.`,
          );
        break;
      }
      case 'earlier':
        followEarlier(file, use, held, mentions, refer, report);
        break;
      case 'calculator': {
        const ids = [...CALCULATOR_COMPONENTS.values()].map((one) => one.id);
        refer.has(use.to, new Set(ids), 'calculator', 'chapters/component', use.place);
        break;
      }
      case 'opens':
      case 'closes':
        break;
      default:
        use.kind satisfies never;
    }
  }
  const rank = (id: string) => HAZARD_RANK.get(id) ?? Number.POSITIVE_INFINITY;
  mentions.hazards = [...hazards].sort((a, b) => rank(a) - rank(b));
  return mentions;
}

function followEarlier(
  file: ChapterFile,
  use: Use,
  held: boolean,
  mentions: Mentions,
  refer: References,
  report: Report,
): void {
  if (use.to === file.id) {
    report.add(
      'chapters/itself',
      use.place,
      `${shown(use.to)} is this very chapter. Link to a step of it as [words](#${use.toStep ?? 'step-id'}).`,
    );
    return;
  }
  const chapter = refer.chapter(use.to, 'chapters/chapter', use.place);
  if (!chapter) return;
  if (chapter.number > file.number)
    report.add(
      'chapters/not-earlier',
      use.place,
      `${shown(use.to)} comes after this chapter. Name an earlier one.`,
    );
  else if (chapter.held && !held)
    report.add(
      'chapters/held-link',
      use.place,
      `${shown(use.to)} is held. Release it first, or take the link out.`,
    );
  if (use.toStep === undefined) mentions.earlier.push(mention(use, use.to));
  else if (refer.step(chapter, use.toStep, 'chapters/step', use.stepPlace ?? use.place))
    mentions.earlier.push(mention(use, `${use.to}/${use.toStep}`));
}

function onlyHeld(fault: Fault | undefined, refer: References): boolean {
  return fault?.events.every((event) => refer.chapters.get(event.chapter)?.held) ?? false;
}

function mention(use: Use, to: string): Mention {
  return given({ to, step: use.step?.number, place: use.place });
}
