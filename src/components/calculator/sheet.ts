/** A sheet at work: reads its boxes, solves, draws the answer, and keeps the address, as the reader types. */
import type { Answer, Field, InputError, Refusal, Solve } from '../../calc/contract.ts';
import { printOutput } from '../../calc/print-figure.ts';
import { stands, type Texts } from '../../calc/read-values.ts';
import { answerParts } from './answer-parts.ts';
import { CHANGED, MACHINE_KEY } from './own-machine-key.ts';
import { partsOfText, textOfParts } from './parts-of-text.ts';
import { boxText, putInText } from './put-in.ts';
import { setUp } from './set-up.ts';
import type { SheetFacts } from './sheet-facts.ts';
import { solveTexts } from './solve-texts.ts';
import { writeAddress } from './write-address.ts';

/** Long enough not to talk into somebody's typing. */
const PAUSE_ms = 900;

type Box = HTMLInputElement;

/** A field on the sheet, with its boxes. */
export interface Line {
  field: Field;
  line: HTMLElement;
  number: Box;
  pm: Box | null;
  unit: Box | null;
}

/** A running sheet, for what it does only when asked. */
export interface Sheet {
  sheet: HTMLElement;
  facts: SheetFacts;
  lines: readonly Line[];
  part: (name: string) => HTMLElement;
  put: (line: Line, text: string) => void;
  /** The log's figures, with those of `texts` over them; what neither says is empty. */
  fillFrom: (texts?: Texts) => void;
  textOf: (line: Line) => string;
  /** Whether the figures that stand can be worked out. */
  fits: () => boolean;
  update: () => void;
  tell: (text: string) => void;
}

function keepsMachine(): boolean {
  try {
    return MACHINE_KEY in localStorage;
  } catch {
    return false;
  }
}

export async function startSheet(sheet: HTMLElement, facts: SheetFacts, solve: Solve): Promise<void> {
  const { fields, outputs } = facts;
  const part = (name: string) => sheet.querySelector(`[data-part="${name}"]`) as HTMLElement;
  const lines = fields.map((field): Line => {
    const line = sheet.querySelector(`[data-field="${field.name}"]`) as HTMLElement;
    const box = (name: string) => line.querySelector<Box>(`[data-box="${name}"]`);
    return { field, line, number: box('number') as Box, pm: box('pm'), unit: box('unit') };
  });

  const textOf = ({ field, number, pm, unit }: Line) =>
    field.kind === 'figure'
      ? textOfParts(field, {
          number: number.value,
          pm: pm?.value ?? '',
          unit: (unit?.value ?? field.units[0]) as never,
        })
      : number.value;
  function put({ field, number, pm, unit }: Line, text: string): void {
    if (field.kind !== 'figure') {
      number.value = boxText(field, text);
      return;
    }
    const parts = partsOfText(field, text, (unit?.value || undefined) as never);
    number.value = pm || !parts.pm ? parts.number : text;
    if (pm) pm.value = parts.pm;
    if (unit) unit.value = parts.unit ?? '';
  }
  function fillFrom(texts: Texts = {}): void {
    for (const line of lines) put(line, texts[line.field.name] ?? facts.texts[line.field.name] ?? '');
  }
  const textsNow = (): Texts => Object.fromEntries(lines.map((line) => [line.field.name, textOf(line)]));

  function solved(texts: Texts): Answer | Refusal {
    try {
      return solveTexts(facts, texts, solve);
    } catch (error) {
      console.error(error);
      return { ok: false, errors: [{ field: '', message: 'These figures cannot be worked out together.' }] };
    }
  }

  /** The last answer that stood. */
  let held = solved(textsNow());
  const drawn: Record<string, string> = {};
  function draw(answer: Answer): void {
    held = answer;
    for (const [name, html] of Object.entries(answerParts(facts, answer))) {
      if (drawn[name] === html) continue;
      drawn[name] = html;
      const place = part(name);
      place.innerHTML = html;
      (place.closest('details') ?? place).hidden = html === '';
    }
  }

  /** A box that a choice brings up empty starts with the present answer: the same setting, known by another figure. */
  function carryOver(): void {
    const texts = textsNow();
    for (const line of lines) {
      const { field } = line;
      const output = outputs.find((one) => one.name === field.name);
      const figure = held.ok && held.outputs[field.name];
      if (output && figure && stands(field, texts) && !field.optional && texts[field.name] === '')
        put(line, printOutput(output, { si: figure.si })[0] ?? '');
    }
  }

  let pause = 0;
  function update(): void {
    const texts = textsNow();
    const answer = solved(texts);
    const wrong = new Map(answer.ok ? [] : answer.errors.map((one) => [one.field, one.message]));
    for (const { field, line, number, unit } of lines) {
      // A unit typed behind the figure counts, so the list beside it has nothing to say.
      if (unit) unit.disabled = /[a-z°%"'′″]/i.test(number.value);
      line.hidden = !stands(field, texts);
      line.toggleAttribute('data-empty', !texts[field.name]);
      const message = line.hidden ? '' : (wrong.get(field.name) ?? '');
      if (message) {
        wrong.delete(field.name);
        // A message in a folded group would not be seen.
        (line.closest('details') as HTMLDetailsElement).open = true;
      }
      (line.querySelector('.wrong') as HTMLElement).textContent = message;
      number.setAttribute('aria-invalid', String(message !== ''));
      (line.querySelector('.put-in') as HTMLElement).textContent = putInText(field, texts[field.name] ?? '');
    }
    for (const group of sheet.querySelectorAll<HTMLElement>('[data-group]'))
      group.hidden = !group.querySelector('[data-field]:not([hidden])');
    if (answer.ok) draw(answer);
    sheet.toggleAttribute('data-stale', !answer.ok);
    part('stale').hidden = answer.ok;
    part('stale-why').textContent = [...wrong.values()].join(' ');

    const address = `${facts.page}?${writeAddress(fields, setUp(fields, texts, facts.texts))}`;
    for (const link of sheet.querySelectorAll<HTMLAnchorElement>('a[data-same]')) link.href = address;
    part('address').textContent = new URL(address, location.href).href;
    clearTimeout(pause);
    pause = window.setTimeout(() => {
      part('status').textContent = answer.ok ? spoken() : answer.errors.map(said).join(' ');
      if (facts.own) history.replaceState(null, '', address);
    }, PAUSE_ms);
  }
  const said = ({ field, message }: InputError) => {
    const label = fields.find((one) => one.name === field)?.label;
    return label ? `${label}: ${message}` : message;
  };
  /** The answer in one sentence, for those who listen: the first few figures. */
  const spoken = () =>
    [...part('results').children]
      .slice(0, 4)
      .map((one) => `${one.firstChild?.textContent}: ${one.querySelector('b')?.textContent}`)
      .join('; ');
  function tell(text: string): void {
    part('told').textContent = text;
    part('told').hidden = text === '';
  }

  const fits = () => solved(textsNow()).ok;
  const me: Sheet = { sheet, facts, lines, part, put, fillFrom, textOf, fits, update, tell };
  /** What most readers never ask for is loaded when it is. */
  let actions: typeof import('./sheet-actions.ts') | undefined;
  async function act(name: string): Promise<void> {
    try {
      actions ??= await import('./sheet-actions.ts');
      await actions.act(me, name);
    } catch (error) {
      console.error(error);
      tell('This could not be done: a part of the page did not load. Load the page again.');
    }
  }

  sheet.addEventListener('input', (event) => {
    const box = event.target as Box;
    const line = lines.find((one) => one.number === box);
    if (line?.field.kind === 'choice') carryOver();
    if (box.dataset['whose']) void act(box.dataset['whose']);
    else update();
  });
  sheet.addEventListener('change', (event) => {
    // A unit or a ± typed into the figure goes to its own box once the field is left.
    const line = lines.find((one) => one.number === event.target);
    if (!line) return;
    put(line, textOf(line));
    update();
  });
  sheet.addEventListener('submit', (event) => event.preventDefault());
  sheet.addEventListener('click', (event) => {
    const name = (event.target as HTMLElement).closest<HTMLElement>('[data-do]')?.dataset['do'];
    if (name === 'reset') {
      fillFrom();
      tell('');
      update();
    } else if (name) void act(name);
  });
  document.addEventListener(CHANGED, () => void act('changed'));

  if ((facts.own && location.search) || keepsMachine()) await act('arrive');
  for (const live of sheet.querySelectorAll<HTMLElement>('[data-live]')) live.hidden = false;
  sheet.toggleAttribute('data-running', true);
}
