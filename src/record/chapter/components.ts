/**
 * What a chapter may be written with, one entry a component and attribute: reader, check and guide follow from it.
 * Calculators are components too; their attributes are their fields (see calculators.ts).
 */
export interface Attribute {
  kind: 'text' | 'texts' | 'reasons' | 'note' | 'time' | 'id';
  needed?: true;
  help: string;
}

export interface Component {
  help: string;
  attributes: Record<string, Attribute>;
}

const text = (help: string): Attribute => ({ kind: 'text', help });
const must = (help: string): Attribute => ({ kind: 'text', needed: true, help });
const texts = (help: string): Attribute => ({ kind: 'texts', help });
const id = (help: string): Attribute => ({ kind: 'id', help });

export const COMPONENTS = {
  Step: {
    help: 'One numbered action.',
    attributes: {
      title: must('What is done, as an instruction.'),
      id: id('Name in its address; left out, made from the title.'),
      tools: texts('Tools of this step.'),
      torque: text('Torque with its unit, such as 40 N m; words without a figure will do too.'),
      hazards: texts('Hazards, by id of the catalogue.'),
      notHazard: {
        kind: 'reasons',
        help: 'Hazards that the words point to and that do not apply, each with the reason.',
      },
      helper: { kind: 'note', help: 'What a second person does.' },
      expect: text('What you should see.'),
      otherwise: text('What to do if you do not.'),
      opens: texts('Refit lines that this step opens.'),
      closes: texts('Refit lines that this step closes.'),
      at: { kind: 'time', help: 'Where it stands in the recording, such as 12:31.' },
    },
  },
  Photo: {
    help: 'A numbered photo.',
    attributes: {
      src: must('File beside the chapter, such as ./rim.jpg.'),
      alt: must('What it shows, for those who cannot see it.'),
      caption: text('Words below it.'),
      credit: text('Who took it, if not you; then also permission.'),
      permission: text(
        'How whoever took it agreed to its use, such as a letter and its day; never published.',
      ),
      mask: texts(
        'Rectangles burnt out of every size: left, top, width and height in hundredths, such as 12 30 20 15.',
      ),
      marks: texts('Numbered marks drawn on it: circle 62 40 8: words, or arrow 20 30 45 52: words.'),
    },
  },
  Figure: {
    help: 'A numbered drawing: a picture file, or a calculator’s own diagram.',
    attributes: {
      id: { kind: 'id', needed: true, help: 'Name in its address.' },
      title: must('Words below it.'),
      alt: text('What it shows; needed with src.'),
      src: text('Picture file beside the chapter.'),
      of: text('Calculator whose diagram is drawn.'),
    },
  },
  Table: {
    help: 'A numbered table.',
    attributes: {
      id: { kind: 'id', needed: true, help: 'Name in its address.' },
      title: must('Words above it.'),
    },
  },
  Qty: {
    help: 'A quantity in the author’s unit and the reader’s.',
    attributes: { of: must('Figure and unit, or machine.section.key.') },
  },
  Sum: {
    help: 'A sum worked out with its units checked.',
    attributes: { of: must('The formula.'), to: must('The unit of the result.') },
  },
  Part: { help: 'A link to a part.', attributes: { id: must('Its name in parts.csv.') } },
  FaultLink: { help: 'A link to a fault.', attributes: { id: must('Its file’s name in faults/.') } },
  Earlier: {
    help: 'A link to an earlier chapter or step.',
    attributes: { chapter: must('The chapter’s folder.'), step: text('The step’s id.') },
  },
  Choice: {
    help: 'What a conversion gains and loses.',
    attributes: {
      title: must('The choice.'),
      gains: texts('What it gains.'),
      loses: texts('What it loses.'),
    },
  },
  Safety: {
    help: 'Safety notes of the chapter.',
    attributes: { hazards: { kind: 'texts', needed: true, help: 'Hazards, by id.' } },
  },
  Ledger: { help: 'The chapter’s costs.', attributes: {} },
  RoadTest: {
    help: 'A road test: its runs, drawn, with what was fitted to them, or its single points as indicated; and its safety note.',
    attributes: { id: must('Its name in the column "test" of road-tests.csv.') },
  },
  Faults: { help: 'The faults carried over and onward.', attributes: {} },
} satisfies Record<string, Component>;

export type ComponentName = keyof typeof COMPONENTS;
