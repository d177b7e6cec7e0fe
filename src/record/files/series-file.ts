import { needed, optional, type Row } from '../read/field.ts';
import { amount, choice, currency, day, line, link, whole, words, yesOrNo } from '../read/kinds.ts';
import { type Mapping, readMapping } from '../read/yaml.ts';
import type { Report } from '../report-to.ts';
import { fieldRule } from '../rules/written.ts';
import type { Aim } from '../types.ts';

/** series.yaml, one entry a key. */
export const SERIES = {
  title: needed(line, 'Title', 'The name of the series.'),
  summary: needed(words, 'Summary', 'What it is about, in a sentence or two.'),
  byline: needed(line, 'By', 'How you sign.'),
  language: needed(
    {
      says: 'a language tag, such as en-GB',
      read: (text, { wrong }) => {
        const right = /^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$/.test(text);
        return right ? text : wrong(`"${text}" is not a language tag. Write one such as en-GB.`);
      },
    },
    'Language',
    'The language that you write in.',
  ),
  home_currency: needed(currency, 'Home currency', 'The money that you count in.'),
  budget: optional(amount, 'Budget', 'What you mean to spend, in home money.'),
  units_first: optional(choice(['metric', 'imperial']), 'Units first', 'Left empty: metric.'),
  licence: optional(line, 'Licence', 'On what terms others may use your words and pictures.'),
  publish_ledger: optional(
    choice(['lines', 'totals', 'nothing']),
    'Ledger as published',
    'Left empty: lines.',
  ),
  decimal: optional(choice(['comma', 'point']), 'Decimal mark', 'How you write 12.50 in content/.'),
  gallon: optional(
    choice(['imperial', 'US']),
    'Gallon',
    'Which gallon and pint your notes mean; left empty, a write-up asks.',
  ),
  rate_max_days: optional(
    whole,
    'Oldest rate',
    'How many days old a rate may be when it is used; left empty, 10.',
  ),
  as_of: optional(day, 'As of', 'The day that counts as today; left empty, the newest released chapter’s.'),
  finished: optional(yesOrNo, 'Finished', 'Whether the rebuild is done.'),
  address: optional(link, 'Address', 'Where the site is published.'),
};

/** One aim, one entry a key. */
export const AIM = {
  what: needed(line, 'Aim', 'What is to be reached: "Starts from cold".'),
  before: needed(line, 'Before', 'How it was: "not at all".'),
  after: optional(line, 'After', 'How it is now: "second kick".'),
};

export type SeriesFile = Row<typeof SERIES> & { aims: Aim[] };

export function readSeriesFile(mapping: Mapping, report: Report): SeriesFile | undefined {
  const mark =
    mapping.text('decimal') === 'comma' ? ',' : mapping.text('decimal') === 'point' ? '.' : undefined;
  const row = readMapping(mapping, 'series', SERIES, { report, mark, others: ['aims'] });
  const aims = mapping.mappings('aims').flatMap(({ item, place }) => {
    if (!item) {
      report.add(
        fieldRule('series', 'aims'),
        place,
        'An aim needs the keys "what" and "before". Write them under the hyphen.',
      );
      return [];
    }
    const aim = readMapping(item, 'aims', AIM, { report, mark });
    return aim
      ? [{ what: aim.what, before: aim.before, ...(aim.after === undefined ? {} : { after: aim.after }) }]
      : [];
  });
  return row && { ...row, aims };
}
