/** The small decisions of taking photos in: time, names, likeness, fitting, answers, lines. */
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { contactSheet } from '../../../src/photos/import/contact-sheet.ts';
import { chapterThatFits, stepThatFits } from '../../../src/photos/import/fitting.ts';
import type { Entry } from '../../../src/photos/import/journal.ts';
import { difference, likeness, NEARLY } from '../../../src/photos/import/likeness.ts';
import { numbersIn } from '../../../src/photos/import/people.ts';
import { photoLines } from '../../../src/photos/import/photo-lines.ts';
import { clockCorrection, nameByTime, takenAt } from '../../../src/photos/import/taken-at.ts';
import { bands } from '../made-picture.ts';

const exifOf = async (time: string, offset?: string) =>
  (
    await sharp(
      await bands(40, 30)
        .withExif({ IFD2: { DateTimeOriginal: time, ...(offset && { OffsetTimeOriginal: offset }) } })
        .jpeg()
        .toBuffer(),
    ).metadata()
  ).exif;

test('a photo keeps the time on the wall when it was taken, with its distance from UTC', async () => {
  const exif = await exifOf('2026:05:02 23:59:30', '+02:00');
  expect(takenAt(exif, new Date(0))).toEqual({
    wall: '2026-05-02T23:59:30',
    offset: '+02:00',
    from: 'camera',
  });
});

test('a camera that is an hour and a minute slow is put right, across midnight and into a leap day', async () => {
  const slow = clockCorrection('+1:01') ?? Number.NaN;
  expect(takenAt(await exifOf('2026:05:02 23:59:30'), new Date(0), slow).wall).toBe('2026-05-03T01:00:30');
  expect(takenAt(await exifOf('2028:02:28 23:30:00'), new Date(0), slow).wall).toBe('2028-02-29T00:31:00');
});

test.each([
  ['+1:02:10', 3730],
  ['-0:45', -2700],
  ['−0:45', -2700],
  ['+1h 2m 10s', 3730],
  ['-1d', -86400],
  ['2m', 120],
])('a correction of %s is %i seconds', (written, seconds) => expect(clockCorrection(written)).toBe(seconds));

test.each(['', '+', 'an hour', '1:75', '1h30'])('"%s" is no correction', (written) =>
  expect(clockCorrection(written)).toBeUndefined(),
);

test('a photo without a noted time, or with a broken note, is dated by its file and says so', async () => {
  const written = new Date(2026, 4, 2, 8, 5, 9);
  for (const exif of [undefined, Buffer.from('Exif\0\0nonsense'), await exifOf('0000:00:00 00:00:00')])
    expect(takenAt(exif, written, 3600)).toEqual({ wall: '2026-05-02T08:05:09', from: 'file' });
});

test('a photo is named by its second', () =>
  expect(nameByTime({ wall: '2026-05-02T14:31:05', from: 'camera' })).toBe('2026-05-02-143105'));

test('the same picture, smaller and pressed harder, is nearly the same; another is not', async () => {
  const scene = (shift: number) =>
    sharp(
      Buffer.from(
        `<svg xmlns="http://www.w3.org/2000/svg" width="900" height="600"><rect width="900" height="600" fill="#445"/><circle cx="${250 + shift}" cy="300" r="180" fill="#dca"/><rect x="${560 - shift}" y="80" width="200" height="420" fill="#161"/><path d="M0 560L900 ${400 + shift}" stroke="#fff" stroke-width="30"/></svg>`,
      ),
    ).flatten();
  const one = await likeness(scene(0));
  const pressed = await likeness(sharp(await scene(0).resize(300).jpeg({ quality: 30 }).toBuffer()));
  const other = await likeness(scene(260));
  expect(difference(one, pressed)).toBeLessThanOrEqual(NEARLY);
  expect(difference(one, other)).toBeGreaterThan(NEARLY);
  expect(difference('f'.repeat(128), '0'.repeat(128))).toBe(512);
});

const chapters = [
  { id: '01-down', title: 'Down', date: '2026-02-07', number: 1, steps: [] },
  {
    id: '02-up',
    title: 'Up',
    date: '2026-03-07',
    number: 2,
    steps: [
      { id: 'a', title: 'Lift', number: 1, at: 60 },
      { id: 'b', title: 'Bolt', number: 2, at: 300 },
      { id: 'c', title: 'Paint', number: 3 },
    ],
  },
];

test.each([
  ['2026-02-07T10:00:00', '01-down'],
  ['2026-02-08T00:00:00', '02-up'],
  ['2025-01-01T00:00:00', '01-down'],
  ['2027-01-01T00:00:00', '02-up'],
])('a photo of %s fits chapter %s', (wall, id) => expect(chapterThatFits(wall, chapters)?.id).toBe(id));

test('a photo fits the step that was being recorded', () => {
  const steps = chapters[1]?.steps ?? [];
  const at = (time: string) => stepThatFits(`2026-03-07T${time}`, '2026-03-07T14:00:05', steps)?.title;
  expect(at('14:00:00')).toBeUndefined();
  expect(at('14:01:04')).toBeUndefined();
  expect(at('14:01:05')).toBe('Lift');
  expect(at('14:59:00')).toBe('Bolt');
});

test('an answer names pictures of the contact sheet, ranges included, or none', () => {
  expect(numbersIn('3 7-9, 12', 12)).toEqual([3, 7, 8, 9, 12]);
  expect(numbersIn(' None ', 12)).toEqual([]);
  expect(numbersIn('13', 12)).toBe('"13" is not on the contact sheet, which has 1 to 12.');
  expect(numbersIn('all', 12)).toBe(
    '"all" is no number of the contact sheet. Write numbers such as 3 7-9, or none.',
  );
});

const entry = (name: string): Entry => ({
  hash: 'aa',
  state: 'taken',
  name,
  original: 'IMG <1>.jpg',
  likeness: '0000000000000000',
  takenAt: { wall: '2026-03-07T14:00:00', from: 'camera' },
  width: 4,
  height: 3,
});

test('a line has an empty alt, and a credit cannot become markup', () => {
  const lines = photoLines(2, [
    { entry: entry('a.jpg'), facts: { masked: false } },
    {
      entry: entry('b.jpg'),
      facts: {
        masked: true,
        credit: 'A "B" <script>{x}</script>',
        permission: 'letter',
        step: { id: 's', title: 'Do */ it', number: 3 },
      },
    },
  ]);
  expect(lines).toBe(
    [
      '<Photo src="./a.jpg" alt="" caption="" />',
      '',
      '{/* Taken during step 2.3, Do * / it */}',
      '',
      '<Photo src="./b.jpg" alt="" caption="" credit={"A \\"B\\" <script>{x}</script>"} permission="letter" mask={["? ? ? ?"]} />',
      '',
    ].join('\n'),
  );
});

test('a name of a file cannot become markup on the contact sheet', () => {
  const page = contactSheet('02-up', [{ number: 1, entry: entry('a.jpg'), small: 'aa.jpg' }]);
  expect(page).toContain('from IMG &lt;1&gt;.jpg');
});
