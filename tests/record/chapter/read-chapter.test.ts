import { expect, test } from 'vitest';
import { readChapter } from '../../../src/record/chapter/read-chapter.ts';
import { Report } from '../../../src/record/report-to.ts';
import { Lines } from '../../../src/record/text/lines.ts';

const HEAD = '---\ntitle: T\ndate: 2026-01-17\nsummary: S\n---\n';
const read = (body: string) => {
  const report = new Report();
  const chapter = readChapter(new Lines('content/chapters/01-a/chapter.mdx', HEAD + body), undefined, report);
  return { chapter, problems: report.problems };
};

test('Steps are numbered in order and named after their titles, accents dropped', () => {
  const { chapter, problems } = read(
    '<Step title="Kühler öffnen & leeren">\n\nA.\n\n</Step>\n\n<Step title="Second" id="other">\n\nB.\n\n</Step>\n',
  );
  expect(problems).toEqual([]);
  expect(chapter.steps.map(({ id, number }) => [id, number])).toEqual([
    ['kuhler-offnen-leeren', 1],
    ['other', 2],
  ]);
});

test('Photos and drawn figures share one numbering; tables have their own', () => {
  const { chapter } = read(
    '<Photo src="./a.jpg" alt="A" />\n\n<Figure id="f" title="F" of="timing" />\n\n<Table id="t" title="T">\n\n| a |\n|---|\n| 1 |\n\n</Table>\n\n<Photo src="./b.jpg" alt="B" />\n',
  );
  expect(chapter.photos.map((photo) => photo.number)).toEqual([1, 3]);
  expect(chapter.figures.map((figure) => figure.number)).toEqual([2]);
  expect(chapter.tables.map((table) => table.number)).toEqual([1]);
});

test('The words of a step are its title, body, tables and attributes, each with its place', () => {
  const { chapter } = read(
    '<Step title="Lift it" torque="22 Nm" expect="It moves." helper>\n\nWith **both** hands.\n\n| a |\n|---|\n| one |\n\n</Step>\n\nOutside.\n',
  );
  const [step] = chapter.steps;
  expect(step?.prose.map(({ text }) => text)).toEqual([
    'Lift it',
    '22 Nm',
    'It moves.',
    'With both hands.',
    'a',
    'one',
  ]);
  expect(step?.prose[3]?.place).toMatchObject({ line: 8, column: 1 });
  expect(step?.helper).toBe('');
  expect(chapter.prose.map(({ text }) => text)).toEqual(['Outside.']);
});

test('What a step points to keeps the place of the attribute, over several lines', () => {
  const { chapter } = read(
    '<Step\n  title="Lift it"\n  hazards={["noise"]}\n  opens={["seat"]}\n>\n\nSee <Part id="shoes" />.\n\n</Step>\n',
  );
  expect(chapter.uses.map(({ kind, to, place }) => [kind, to, place.line, place.column])).toEqual([
    ['hazard', 'noise', 8, 12],
    ['opens', 'seat', 9, 10],
    ['part', 'shoes', 12, 15],
  ]);
});

test('A component that the chapter imports itself is its own affair', () => {
  const { problems } = read("import Wheel from './Wheel.astro'\n\n<Wheel turns={2 + 1} />\n");
  expect(problems).toEqual([]);
});
