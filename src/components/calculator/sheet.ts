/** A sheet at work: reads its boxes, solves, draws the answer, and keeps the address, as the reader types. */
import type { Answer } from '../../calc/answer.ts';
import type { Refusal, Values } from '../../calc/contract.ts';
import { type Figures, filled } from '../../calc/holes.ts';
import { stands, type Texts } from '../../calc/read-values.ts';
import { putInText } from './put-in.ts';
import { buttons } from './sheet-buttons.ts';
import type { SheetFacts } from './sheet-facts.ts';
import { type Box, type Line, linesOf, put, textOf } from './sheet-lines.ts';
import { TOLD } from './sheet-messages.ts';
import { partOf } from './sheet-parts.ts';
import { solveTexts } from './solve-texts.ts';
import { writeAddress } from './write-address.ts';

/** Long enough not to talk into somebody's typing. */
const PAUSE_ms = 900;

/** A running sheet, for its buttons. */
export interface Sheet {
  sheet: HTMLElement;
  facts: SheetFacts;
  lines: readonly Line[];
  /** The log's figures, with those of `texts` over them; what neither says is empty. */
  fillFrom: (texts?: Texts) => void;
  update: () => void;
}

export function startSheet(
  sheet: HTMLElement,
  facts: SheetFacts,
  carry: Readonly<Record<string, string>>,
  answer: (values: Values) => Answer | Refusal,
): void {
  const { fields } = facts;
  const part = (name: string) => partOf(sheet, name);
  const lines = linesOf(sheet, fields);
  const textsNow = (): Texts => Object.fromEntries(lines.map((line) => [line.field.name, textOf(line)]));

  function fillFrom(texts: Texts = {}): void {
    for (const line of lines) put(line, texts[line.field.name] ?? facts.texts[line.field.name] ?? '');
  }

  function solved(texts: Texts): Answer | Refusal {
    try {
      return solveTexts(facts, texts, answer);
    } catch (error) {
      console.error(error);
      return { ok: false, errors: [{ field: '', message: TOLD.impossible }] };
    }
  }

  /** The last answer that stood. */
  let held = solved(textsNow());
  const drawn: Record<string, string> = {};
  function draw(found: Answer): void {
    held = found;
    for (const [name, html] of Object.entries(found.parts))
      if (drawn[name] !== html) part(name).innerHTML = drawn[name] = html;
  }

  /** A box that a choice brings up empty starts with the present answer: the same setting, known by another figure. */
  function carryOver(): void {
    const texts = textsNow();
    for (const line of lines) {
      const { field } = line;
      if (held.ok && stands(field, texts) && !field.optional && !texts[field.name])
        put(line, filled(carry[field.name] ?? '', held.outputs as Figures));
    }
  }

  let pause = 0;
  function update(): void {
    const texts = textsNow();
    const found = solved(texts);
    /** Messages by field; what is left when each has taken its own belongs to none that is shown. */
    const wrong: Record<string, string> = {};
    if (!found.ok) for (const { field, message } of found.errors) wrong[field] ??= message;
    const said: string[] = [];
    for (const { field, line, number, unit } of lines) {
      const { name, label } = field;
      const text = texts[name] ?? '';
      // A unit typed behind the figure counts, so the list beside it has nothing to say.
      if (unit) unit.disabled = /[a-z°%"'′″]/i.test(number.value);
      line.hidden = !stands(field, texts);
      line.toggleAttribute('data-empty', !text);
      const message = (!line.hidden && wrong[name]) || '';
      if (message) {
        said.push(`${label}: ${message}`);
        delete wrong[name];
        // A message in a folded group would not be seen.
        (line.closest('details') as HTMLDetailsElement).open = true;
      }
      (line.querySelector('.wrong') as HTMLElement).textContent = message;
      number.ariaInvalid = String(message !== '');
      (line.querySelector('.put-in') as HTMLElement).textContent = putInText(field, text);
    }
    if (found.ok) draw(found);
    sheet.toggleAttribute('data-stale', !found.ok);
    const others = Object.values(wrong).join(' ');
    part('stale-why').textContent = others;

    const address = `${facts.page}?${writeAddress(fields, texts, facts.texts)}`;
    sheet.querySelector('[data-same]')?.setAttribute('href', address);
    part('address').textContent = new URL(address, location.href).href;
    clearTimeout(pause);
    pause = window.setTimeout(() => {
      part('status').textContent = found.ok ? spoken() : said.concat(others).join(' ');
      if (facts.own) history.replaceState(null, '', address);
    }, PAUSE_ms);
  }
  /** The answer in one sentence, for those who listen: the first few figures. */
  const spoken = () =>
    [...part('results').children]
      .slice(0, 4)
      .map((one) => `${one.firstChild?.textContent}: ${one.querySelector('b')?.textContent}`)
      .join('; ');

  const press = buttons({ sheet, facts, lines, fillFrom, update });
  sheet.addEventListener('input', ({ target }) => {
    const box = target as Box;
    if (lines.find((one) => one.number === box)?.field.kind === 'choice') carryOver();
    press(box.dataset['whose']);
    update();
  });
  sheet.addEventListener('change', ({ target }) => {
    // A unit or a ± typed into the figure goes to its own box once the field is left.
    const line = lines.find((one) => one.number === target);
    if (!line) return;
    put(line, textOf(line));
    update();
  });
  sheet.addEventListener('click', ({ target }) =>
    press((target as HTMLElement).closest<HTMLElement>('[data-do]')?.dataset['do']),
  );
  press('arrive');
  sheet.toggleAttribute('data-running', true);
}
