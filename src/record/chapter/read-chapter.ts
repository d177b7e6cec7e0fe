import type { DecimalMark } from '../money/decimal.ts';
import type { Place } from '../problem.ts';
import { readMapping } from '../read/yaml.ts';
import type { Report } from '../report-to.ts';
import type { Lines } from '../text/lines.ts';
import { nearest } from '../text/nearest.ts';
import { either, shown } from '../text/words.ts';
import type { Step } from '../types.ts';
import { CALCULATOR_COMPONENTS } from './calculators.ts';
import type { ChapterText, Use } from './chapter-text.ts';
import { COMPONENTS, type ComponentName } from './components.ts';
import { Element } from './element.ts';
import { CHAPTER, readFrontmatter } from './frontmatter.ts';
import { readMark, readMask } from './picture-marks.ts';
import { passageText, wordsIn } from './prose.ts';
import { slug } from './slug.ts';
import { bareTorque } from './torque.ts';
import { type MdxNode, ownNames, readTree } from './tree.ts';

/** Reads chapter.mdx: its frontmatter and, by one walk over its tree, everything that it declares and points to. */
export function readChapter(lines: Lines, mark: DecimalMark | undefined, report: Report): ChapterText {
  const { head } = readFrontmatter(lines, 'chapters/frontmatter', report);
  const text: ChapterText = {
    head: head && readMapping(head, 'chapters', CHAPTER, { report, mark }),
    steps: [],
    photos: [],
    figures: [],
    tables: [],
    prose: [],
    words: 0,
    calculators: [],
    uses: [],
    reckoned: [],
    sheets: [],
  };
  const tree = readTree(lines, report);
  if (tree) new Walk(lines, report, text, ownNames(tree)).children(tree, undefined);
  return text;
}

const MASK =
  'is no rectangle of the picture. Write left, top, width and height in hundredths, such as "12 30 20 15".';
const MARK =
  'is no mark. Write "circle 62 40 8: words" with middle and radius, or "arrow 20 30 45 52: words" from tail to tip, in hundredths of the picture.';

const PROSE = new Set(['paragraph', 'heading', 'tableCell', 'code']);

class Walk {
  readonly #lines: Lines;
  readonly #report: Report;
  readonly #chapter: ChapterText;
  readonly #own: Set<string>;
  readonly #ids = new Map<string, Place>();

  constructor(lines: Lines, report: Report, chapter: ChapterText, own: Set<string>) {
    this.#lines = lines;
    this.#report = report;
    this.#chapter = chapter;
    this.#own = own;
  }

  children(node: MdxNode, step: Step | undefined): void {
    for (const child of node.children ?? []) this.#node(child, step);
  }

  #node(node: MdxNode, step: Step | undefined): void {
    if (node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement') {
      const inside = this.#component(node, step);
      this.children(node, inside);
      return;
    }
    if (PROSE.has(node.type)) {
      const text = passageText(node);
      if (text !== '') {
        const place = this.#lines.at(node.position?.start.offset ?? 0);
        (step ?? this.#chapter).prose.push({ text, place });
        this.#chapter.words += wordsIn(text);
      }
    }
    this.children(node, step);
  }

  /** Handles one component and gives the step in which its children stand. */
  #component(node: MdxNode, step: Step | undefined): Step | undefined {
    const name = node.name ?? '';
    if (/^[a-z]/.test(name) || name === '' || this.#own.has(name)) return step;
    const element = new Element(node, this.#lines, this.#report);
    const calculator = CALCULATOR_COMPONENTS.get(name);
    if (calculator) {
      element.check({}, calculator.fields);
      this.#sheet(calculator.id, element, calculator.fields);
      if (!this.#chapter.calculators.includes(calculator.id)) this.#chapter.calculators.push(calculator.id);
      return step;
    }
    if (!Object.hasOwn(COMPONENTS, name)) {
      const known = Object.keys(COMPONENTS);
      const near = nearest(name, [...known, ...CALCULATOR_COMPONENTS.keys()]);
      this.#report.add(
        'chapters/component',
        element.place,
        `There is no component ${shown(`<${name}>`)}. ${near ? `The nearest is "<${near}>".` : `Known are ${either(known, 'and')}, and each calculator by its name.`}`,
      );
      return step;
    }
    return this.#known(name as ComponentName, element, step);
  }

  #known(name: ComponentName, element: Element, step: Step | undefined): Step | undefined {
    const others = name === 'Figure' && element.has('of') ? this.#figureFields(element) : [];
    if (!element.check(COMPONENTS[name].attributes, others)) return step;
    switch (name) {
      case 'Step':
        return this.#step(element, step);
      case 'Photo':
        this.#photo(element, step);
        break;
      case 'Figure':
        this.#figure(element, step);
        break;
      case 'Table':
        this.#table(element);
        break;
      case 'Qty':
      case 'Sum': {
        const of = element.filled('of');
        const to = name === 'Sum' ? element.filled('to') : '';
        if (of !== undefined && to !== undefined)
          this.#chapter.reckoned.push({
            kind: name === 'Qty' ? 'quantity' : 'sum',
            of,
            to,
            place: element.at('of'),
          });
        break;
      }
      case 'Part':
      case 'FaultLink': {
        const to = element.filled('id');
        if (to !== undefined)
          this.#use({ kind: name === 'Part' ? 'part' : 'fault', to, place: element.at('id') }, step);
        break;
      }
      case 'RoadTest': {
        const to = element.filled('id');
        if (to !== undefined) this.#use({ kind: 'road test', to, place: element.at('id') }, step);
        break;
      }
      case 'Earlier': {
        const to = element.filled('chapter');
        const toStep = element.text('step');
        if (to !== undefined)
          this.#use(
            {
              kind: 'earlier',
              to,
              place: element.at('chapter'),
              ...(toStep ? { toStep, stepPlace: element.at('step') } : {}),
            },
            step,
          );
        break;
      }
      case 'Choice':
        this.#say(step, element, ['title', 'gains', 'loses']);
        break;
      case 'Safety':
        this.#useAll('hazard', element, 'hazards', undefined);
        break;
      case 'Ledger':
      case 'Faults':
        break;
      default:
        name satisfies never;
    }
    return step;
  }

  #step(element: Element, outer: Step | undefined): Step | undefined {
    if (outer)
      this.#report.add(
        'chapters/step-in-step',
        element.place,
        `This step stands inside step ${outer.number}, ${shown(outer.title)}. Close that one first.`,
      );
    const title = element.filled('title');
    if (title === undefined) return outer;
    const bare = bareTorque(element.text('torque') ?? '');
    if (bare !== undefined)
      this.#report.add(
        'chapters/torque',
        element.at('torque'),
        `${shown(element.text('torque') ?? '')} is no torque: ${bare} has no unit of one. Write "${bare} N m", or the unit in which the maker gives it.`,
      );
    const helper = element.note('helper');
    const at = element.time('at');
    const optional = {
      ...pick('torque', element.text('torque')),
      ...(helper === undefined ? {} : { helper }),
      ...pick('expect', element.text('expect')),
      ...pick('otherwise', element.text('otherwise')),
      ...(at === undefined ? {} : { at }),
    };
    const step: Step = {
      id: this.#id(element, title),
      title,
      number: this.#chapter.steps.length + 1,
      tools: element.texts('tools'),
      hazards: element.texts('hazards'),
      notHazard: element.reasons('notHazard'),
      opens: element.texts('opens'),
      closes: element.texts('closes'),
      ...optional,
      prose: [],
      place: element.place,
    };
    this.#chapter.steps.push(step);
    this.#say(step, element, ['title', 'torque', 'helper', 'expect', 'otherwise']);
    this.#useAll('hazard', element, 'hazards', step);
    for (const to of step.notHazard.keys())
      this.#use({ kind: 'ruled out', to, place: element.at('notHazard') }, undefined);
    this.#useAll('opens', element, 'opens', step);
    this.#useAll('closes', element, 'closes', step);
    return step;
  }

  #photo(element: Element, step: Step | undefined): void {
    const src = element.filled('src');
    const alt = element.text('alt') ?? '';
    if (alt === '')
      this.#report.add(
        'chapters/alt',
        element.at('alt'),
        'The alt text is empty. Write what the picture shows, for those who cannot see it.',
      );
    if (src === undefined) return;
    const caption = element.text('caption') ?? '';
    const credit = element.text('credit') ?? '';
    if (credit !== '' && !element.text('permission'))
      this.#report.add(
        'chapters/permission',
        element.at('credit'),
        `The photo is credited to ${shown(credit)} and lacks "permission". Write how they agreed, such as permission="letter of 2 May 2026"; it is not published.`,
      );
    const number = this.#nextFigure();
    this.#chapter.photos.push({
      src,
      alt,
      caption,
      credit,
      masks: this.#laidOver(element, 'mask', readMask, MASK),
      marks: this.#laidOver(element, 'marks', readMark, MARK),
      number,
      place: element.at('src'),
    });
    this.#say(step, element, ['caption']);
  }

  /** What is laid over a photo, each told where it cannot be read. */
  #laidOver<Read>(
    element: Element,
    name: string,
    read: (text: string) => Read | undefined,
    wanted: string,
  ): Read[] {
    return element.texts(name).flatMap((text) => {
      const found = read(text);
      if (found === undefined)
        this.#report.add('chapters/attribute-value', element.at(name), `${shown(text)} ${wanted}`);
      return found ?? [];
    });
  }

  #figure(element: Element, step: Step | undefined): void {
    const title = element.filled('title');
    const src = element.text('src');
    const of = element.text('of');
    if (title === undefined) return;
    if ((src === undefined) === (of === undefined)) {
      this.#report.add(
        'chapters/attribute-missing',
        element.place,
        'A <Figure> needs either "src", a picture file, or "of", a calculator. Write one of them.',
      );
      return;
    }
    const alt = element.text('alt');
    if (src !== undefined && !alt)
      this.#report.add(
        'chapters/alt',
        element.at('alt'),
        'The alt text is empty. Write what the picture shows, for those who cannot see it.',
      );
    if (of !== undefined) {
      this.#use({ kind: 'calculator', to: of, place: element.at('of') }, step);
      const fields = this.#figureFields(element);
      if (fields !== 'any') this.#sheet(of, element, fields);
    }
    this.#chapter.figures.push({
      id: this.#id(element, title),
      title,
      number: this.#nextFigure(),
      ...pick('src', src),
      ...pick('alt', alt),
      ...pick('of', of),
      place: element.at(src === undefined ? 'of' : 'src'),
    });
    this.#say(step, element, ['title']);
  }

  #sheet(calculator: string, element: Element, fields: readonly string[]): void {
    const figures = new Map<string, { text: string; place: Place }>();
    for (const name of fields) {
      const text = element.has(name) ? element.text(name) : undefined;
      if (text !== undefined) figures.set(name, { text, place: element.at(name) });
    }
    this.#chapter.sheets.push({ calculator, figures, place: element.place });
  }

  #table(element: Element): void {
    const title = element.filled('title');
    if (title === undefined) return;
    this.#chapter.tables.push({
      id: this.#id(element, title),
      title,
      number: this.#chapter.tables.length + 1,
      place: element.place,
    });
  }

  /** The author's id, or one made from the title; a second of the same is told and left as it is. */
  #id(element: Element, title: string): string {
    const written = element.text('id');
    if (written !== undefined && slug(written) !== written)
      this.#report.add(
        'chapters/attribute-value',
        element.at('id'),
        `${shown(written)} cannot stand in an address. Write small letters, digits and hyphens, such as "${slug(written) || 'brake-drum'}".`,
      );
    const id = written || slug(title) || 'step';
    const before = this.#ids.get(id);
    if (before)
      this.#report.add(
        'chapters/id-twice',
        element.at(written === undefined ? 'title' : 'id'),
        `${shown(id)} is already the id of what stands in line ${before.line}. Write another id="…" for one of them.`,
      );
    else this.#ids.set(id, element.place);
    return id;
  }

  #figureFields(element: Element): readonly string[] | 'any' {
    const of = element.text('of');
    const calculator = [...CALCULATOR_COMPONENTS.values()].find((one) => one.id === of);
    return calculator?.fields ?? 'any';
  }

  #nextFigure(): number {
    return this.#chapter.photos.length + this.#chapter.figures.length + 1;
  }

  #use(use: Use, step: Step | undefined): void {
    this.#chapter.uses.push(step ? { ...use, step } : use);
  }

  #useAll(kind: Use['kind'], element: Element, name: string, step: Step | undefined): void {
    for (const to of element.texts(name)) this.#use({ kind, to, place: element.at(name) }, step);
  }

  /** Words that stand in attributes are prose like others: the gates and the search read them. */
  #say(step: Step | undefined, element: Element, names: readonly string[]): void {
    for (const name of names) {
      if (!element.has(name)) continue;
      const text = name === 'gains' || name === 'loses' ? element.texts(name).join('; ') : element.note(name);
      if (text) (step ?? this.#chapter).prose.push({ text, place: element.at(name) });
    }
  }
}

function pick<K extends string>(key: K, text: string | undefined): { [P in K]?: string } {
  return (text ? { [key]: text } : {}) as { [P in K]?: string };
}
