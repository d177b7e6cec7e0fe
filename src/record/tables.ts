/**
 * The author's tables, one entry a column: reader, check, row types and guide follow from it. To add a column, add one
 * entry; to add a table, add one const and one line in `TABLES`.
 */
import { type Fields, hidden, needed, optional } from './read/field.ts';
import {
  amount,
  choice,
  clock,
  currency,
  day,
  figure,
  figureInUnit,
  id,
  line,
  link,
  name,
  names,
  whole,
  words,
  written,
  yesOrNo,
} from './read/kinds.ts';

const basis = choice(['value', 'weight', 'customs value', 'even']);

export const ORDERS = {
  order: needed(id, 'Order', 'A short name for the order; ledger rows point to it.'),
  date: needed(day, 'Date', 'The day you ordered.'),
  supplier: needed(line, 'Supplier', 'Who sold it.'),
  freight_by: optional(
    basis,
    'Freight shared by',
    'How freight is shared over the parts. Left empty: by value.',
  ),
  duty_by: optional(
    basis,
    'Duty shared by',
    'How duty is shared over the parts. Left empty: by customs value.',
  ),
  fee_by: optional(basis, 'Fees shared by', 'How fees are shared over the parts. Left empty: evenly.'),
  note: optional(words, 'Note', 'Published with the order.'),
};

export const LEDGER = {
  date: needed(day, 'Date', 'The day you paid or were paid.'),
  kind: needed(
    choice(['part', 'consumable', 'tool', 'outside work', 'freight', 'duty', 'fee', 'refund', 'sale']),
    'Kind',
    'What the money was for. Refunds and sales came back to you.',
  ),
  item: needed(line, 'Item', 'What it was, in words.'),
  part: optional(name, 'Part', 'The part of parts.csv that it was for.'),
  order: optional(name, 'Order', 'The order of orders.csv that it came with.'),
  supplier: optional(line, 'Supplier', 'Who was paid; left empty, the order’s supplier.'),
  qty: optional(
    figure({ from: 0, what: 'a quantity' }),
    'Quantity',
    'How many; left empty, one. Of a refund, how many were sent back; 0 where money came back and nothing went.',
  ),
  amount: needed(amount, 'Amount', 'The row’s total as paid, tax included, without a sign.'),
  currency: optional(currency, 'Currency', 'Left empty: the home currency.'),
  rate: optional(
    written('a rate, such as 25.12'),
    'Rate',
    'What one unit of home money bought, such as 25.12, or written out as 1 GBP = 1.17 EUR; left empty, the newest of rates.csv.',
  ),
  weight: optional(
    figure({ above: 0, what: 'a weight in kilograms' }),
    'Weight (kg)',
    'Of the whole row, for sharing freight by weight.',
  ),
  chapter: optional(name, 'Chapter', 'The chapter whose costs it belongs to.'),
  private_note: hidden(words, 'Private note', 'For you alone.'),
};

export const PARTS = {
  part: needed(id, 'Part', 'A short name; chapters and ledger rows point to it.'),
  name: needed(line, 'Name', 'As a reader would say it: "Front brake shoes".'),
  system: needed(line, 'System', 'Where it belongs: engine, ignition, brakes.'),
  maker_number: optional(line, 'Maker’s number', 'As the maker’s parts list has it.'),
  qty: optional(whole, 'Quantity', 'How many are needed; left empty, one.'),
  status: needed(
    choice(['wanted', 'ordered', 'arrived', 'fitted', 'returned']),
    'Status',
    'How far it has come.',
  ),
  origin: optional(
    choice(['bought', 'own stock', 'donor', 'made', 'given']),
    'Origin',
    'Left empty: bought.',
  ),
  fitted_in: optional(name, 'Fitted in', 'The chapter in which it was fitted.'),
  estimate: optional(
    written('an amount or a range, such as 40-60'),
    'Estimate',
    'What all that is still to be paid of it will cost: one amount, or a range such as 40-60.',
  ),
  currency: optional(currency, 'Currency', 'Of the estimate; left empty, the home currency.'),
  needed_for: optional(names, 'Needed for', 'Faults and refit lines that wait for it, parted by spaces.'),
  note: optional(words, 'Note', 'Published with the part.'),
};

export const RATES = {
  date: needed(day, 'Date', 'The day of the rate.'),
  base: needed(currency, 'Base', 'One of this currency …'),
  quote: needed(currency, 'Quote', '… is the rate in this one.'),
  rate: needed(figure({ above: 0, what: 'a rate' }), 'Rate', 'In the direction that the source publishes.'),
  source: needed(line, 'Source', 'Who published it.'),
};

export const REFIT = {
  line: needed(id, 'Line', 'A short name; steps open and close it by this name.'),
  removed_in: optional(
    name,
    'Removed in',
    'Chapter, or chapter/step, that took it off; left empty where a step opens it.',
  ),
  what: needed(line, 'What', 'In words: "Front brake drum".'),
  action: needed(
    choice(['removed', 'loosened', 'drained', 'disconnected']),
    'Action',
    'What was done to it.',
  ),
  system: optional(line, 'System', 'For the check-list by system.'),
  closed_in: optional(
    name,
    'Closed in',
    'Chapter, or chapter/step, that closed it; left empty where a step closes it.',
  ),
  how: optional(choice(['refitted', 'renewed', 'filled', 'left off']), 'How', 'How it was closed.'),
  why: optional(words, 'Why', 'Why it was left off, or why it may stay open when the engine first runs.'),
};

export const CORRECTIONS = {
  date: needed(day, 'Date', 'The day of the correction.'),
  chapter: needed(name, 'Chapter', 'The chapter that was wrong.'),
  step: optional(name, 'Step', 'The step that was wrong.'),
  was: needed(words, 'Was', 'What was published.'),
  now: needed(words, 'Now', 'What is right.'),
  why: needed(words, 'Why', 'How it came about.'),
  can_hurt: needed(yesOrNo, 'Can hurt', 'Whether somebody who followed the old words can come to harm.'),
};

const reading = figureInUnit();
const doubt = figureInUnit({ above: 0 });

export const MEASUREMENTS = {
  date: needed(day, 'Date', 'The day it was measured.'),
  chapter: needed(name, 'Chapter', 'The chapter that tells of it.'),
  item: needed(line, 'Item', 'What was measured: "Bore, front cylinder".'),
  position: optional(line, 'Position', 'Where on it: "top, along the crank".'),
  found: needed(reading, 'As found', 'The figure as found.'),
  found_pm: optional(doubt, '±', 'How far the figure may be off.'),
  new: optional(reading, 'New', 'The figure when new.'),
  min: optional(reading, 'Least', 'The lower limit.'),
  max: optional(reading, 'Most', 'The upper limit.'),
  limit_pm: optional(doubt, 'Limit ±', 'In place of a lower and upper limit: as new, give or take this.'),
  left: optional(reading, 'As left', 'The figure when the work was done.'),
  unit: needed(written('a unit, such as mm'), 'Unit', 'Of every figure of the row that has none of its own.'),
  source: optional(line, 'Source', 'Where the limits come from.'),
  note: optional(words, 'Note', 'Published with the measurement.'),
};

export const DUE = {
  what: needed(line, 'What', 'What is to be done again: "Re-tension the chain".'),
  after: needed(
    written('a distance, hours or days, such as 300 km'),
    'After',
    'A distance, hours or days: "300 km", "10 h", "30 days".',
  ),
  since: needed(name, 'Since', 'The chapter from which it counts.'),
  done_in: optional(name, 'Done in', 'The chapter in which it was done.'),
  source: optional(line, 'Source', 'Where the interval comes from.'),
};

export const ODOMETER = {
  date: needed(day, 'Date', 'The day of the reading.'),
  chapter: needed(name, 'Chapter', 'The chapter that it belongs to.'),
  reading: needed(figure({ from: 0, what: 'a reading' }), 'Reading', 'As the instrument shows it.'),
  unit: needed(choice(['km', 'mi', 'h']), 'Unit', 'Kilometres, miles, or hours run.'),
};

export const SUPPORTERS = {
  name: needed(line, 'Name', 'Their name; published only with their consent.'),
  credit: optional(line, 'Credit', 'How they wish to be named; left empty, their name.'),
  kind: needed(choice(['help', 'gift', 'loan', 'paid']), 'Kind', 'Whether they paid you must be said.'),
  what: needed(line, 'What', 'What they did or gave.'),
  from: optional(day, 'From', 'First day.'),
  until: optional(day, 'Until', 'Last day.'),
  chapters: optional(names, 'Chapters', 'The chapters concerned, parted by spaces.'),
  consent: needed(yesOrNo, 'Consent', 'Whether they agreed to be named.'),
  link: optional(link, 'Link', 'Their page, if they wish.'),
};

const withUnit = (example: string) => written(`a figure with its unit, such as ${example}`);

export const ROAD_TESTS = {
  test: needed(
    id,
    'Test',
    'A short name; runs with the same name are drawn, and where they coast fitted, together.',
  ),
  title: optional(line, 'Title', 'As readers see it, in the first row of a test; left out, the kind.'),
  chapter: needed(name, 'Chapter', 'The chapter that tells of it.'),
  kind: needed(
    choice(['coast-down', 'acceleration', 'hill', 'cruise']),
    'Kind',
    'What was tried. Of a coast-down, with the engine uncoupled, drag and rolling resistance are worked out.',
  ),
  file: needed(
    line,
    'File',
    'The recording in the folder road-tests, such as there-1.csv or loop.gpx, or its captions, such as ride.vtt, in which speeds are read aloud; captions.vtt alone is the chapter’s own. Its name is not published.',
  ),
  from: optional(
    clock,
    'From',
    'Of captions: speeds that are read aloud from this time of the recording on …',
  ),
  until: optional(clock, 'Until', '… to this one. Left out, all of them.'),
  said_in: optional(
    choice(['km/h', 'mph']),
    'Said in',
    'Of captions: the unit of speeds that are said without one, as the instrument’s dial has it.',
  ),
  direction: optional(
    choice(['there', 'back']),
    'Direction',
    'Of a coast-down: which way along the road; both ways are needed.',
  ),
  mass: optional(withUnit('480 ± 8 kg'), 'Mass', 'As it rolled, driver and load aboard, with its ±.'),
  rotating: optional(
    withUnit('18 ± 4 kg'),
    'Rotating mass',
    'What wheels, drums and shafts that turn with them add to the mass that is slowed down.',
  ),
  fastest: optional(withUnit('40 km/h'), 'Fastest', 'A coast-down is read from this speed down …'),
  slowest: optional(withUnit('12 km/h'), 'Slowest', '… to this one.'),
  speed_doubt: optional(
    withUnit('2 %'),
    'Doubt of speed',
    'How far all recorded speeds may be off alike; left out, 3 %.',
  ),
  temperature: optional(withUnit('14 °C'), 'Temperature', 'Of the air; left out, 15 °C with more doubt.'),
  altitude: optional(withUnit('60 m'), 'Altitude', 'Of the road, never published; left out, sea level.'),
  whole: optional(
    yesOrNo,
    'Whole',
    'Whether readers may see more than a kilometre of the run. Places are never published.',
  ),
  note: optional(words, 'Note', 'Published with the test.'),
};

export const TABLES = {
  orders: ORDERS,
  ledger: LEDGER,
  parts: PARTS,
  rates: RATES,
  refit: REFIT,
  corrections: CORRECTIONS,
  measurements: MEASUREMENTS,
  due: DUE,
  odometer: ODOMETER,
  supporters: SUPPORTERS,
  'road-tests': ROAD_TESTS,
} satisfies Record<string, Fields>;

export type TableName = keyof typeof TABLES;

/** Heading of each table by its file's name, in the order of its entries: "ledger.csv" → date, kind, item … */
export function tableHeadings(): Record<string, string[]> {
  return Object.fromEntries(
    Object.entries(TABLES).map(([name, fields]) => [`${name}.csv`, Object.keys(fields)]),
  );
}
