/** What is said of figures that cannot be read; of several texts the first that finds what its holes ask for. */

const SPANS = ['between {low} and {high}', '{low} or more', '{high} or less'];

export const READING = {
  unit: [
    '“{text}” may be US or imperial, which differ by a fifth or less. Write {either}.',
    '“{text}” is no unit of {quantity}. Write the figure in {units}.',
    '“{text}” is no unit of {quantity}. Write the figure without a unit.',
  ],
  mark: ['“{text}” may be {point} or {none}. Write one of these.'],
  signed: ['Write a ± without a sign of its own.'],
  vague: ['The ± is as large as the figure itself.'],
  figure: ['“{text}” is not a figure. Write digits and one decimal mark, such as {sample}.'],
  needed: ['A figure is needed here, such as {start}.', 'A figure is needed here.'],
  long: ['Write at most 60 letters.'],
  choose: ['Choose {options}.'],
  range: [
    ...SPANS.map((span) => `{typed}? {likely} is likelier; this must be ${span}.`),
    ...SPANS.map((span) => `This must be ${span}; {typed} is not.`),
  ],
  whole: ['A whole number is wanted here: {below} or {above}.'],
  rows: ['At most {most} rows are taken here; there are {rows}.'],
  row: ['Row {row}: {wrong}'],
  columns: ['Row {row}: write {names}, such as {start}.'],
  empty: ['Write one row a line.'],
};
