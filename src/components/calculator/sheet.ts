/** A sheet at work: reads its boxes, solves, draws the answer, and keeps the address, as the reader types. */
import type { Answer, Field, Refusal, Solve } from '../../calc/contract.ts';
import { printOutput } from '../../calc/print-figure.ts';
import type { Texts } from '../../calc/read-values.ts';
import { readAddress, writeAddress } from './address-state.ts';
import { answerParts, spoken } from './answer-parts.ts';
import { CHANGED, keepMachine, keptMachine, usesOwnMachine } from './own-machine-store.ts';
import { partsOfText, textOfParts } from './parts-of-text.ts';
import { boxText, putInText } from './put-in.ts';
import type { SheetFacts } from './sheet-facts.ts';
import { solveTexts } from './solve-texts.ts';
import { setUp, stands } from './stands.ts';

/** Long enough not to talk into somebody's typing. */
const PAUSE_ms = 900;

type Box = HTMLInputElement;

export function startSheet(sheet: HTMLElement, facts: SheetFacts, solve: Solve): void {
  const { fields, outputs, texts: logs } = facts;
  const part = (name: string) => sheet.querySelector(`[data-part="${name}"]`) as HTMLElement;
  const lines = fields.map((field) => {
    const line = sheet.querySelector(`[data-field="${field.name}"]`) as HTMLElement;
    const box = (name: string) => line.querySelector<Box>(`[data-box="${name}"]`);
    const number = box('number') as Box;
    return { field, line, number, pm: box('pm'), unit: box('unit') };
  });
  type Line = (typeof lines)[number];

  const partsOf = ({ field, number, pm, unit }: Line) => ({
    number: number.value,
    pm: pm?.value ?? '',
    unit: (unit?.value ?? ('units' in field ? field.units[0] : undefined)) as never,
  });
  const textOf = (line: Line) =>
    line.field.kind === 'figure' ? textOfParts(line.field, partsOf(line)) : line.number.value;
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

    const address = `${facts.page}?${writeAddress(fields, setUp(fields, texts, logs))}`;
    for (const link of sheet.querySelectorAll<HTMLAnchorElement>('a[data-same]')) link.href = address;
    part('address').textContent = new URL(address, location.href).href;
    clearTimeout(pause);
    pause = window.setTimeout(() => {
      part('status').textContent = answer.ok
        ? spoken(outputs, answer)
        : answer.errors.map((one) => `${labelOf(one.field)}${one.message}`).join(' ');
      if (facts.own) history.replaceState(null, '', address);
    }, PAUSE_ms);
  }
  function labelOf(name: string): string {
    const label = fields.find((one) => one.name === name)?.label;
    return label === undefined ? '' : `${label}: `;
  }

  function fillFrom(texts: Texts): void {
    for (const line of lines) {
      const text = texts[line.field.name];
      if (text !== undefined) put(line, text);
    }
  }
  function tell(text: string): void {
    part('told').textContent = text;
    part('told').hidden = text === '';
  }

  /** Figures of the log's machine, or the reader's own where one is kept; others stay as they are. */
  function fillFromMachine(own: boolean): void {
    const kept = own ? keptMachine() : {};
    for (const line of lines) {
      const { machine, name } = line.field as Field & { machine?: string };
      if (machine !== undefined) put(line, kept[machine] ?? logs[name] ?? '');
    }
  }
  const whose = [...sheet.querySelectorAll<Box>('[data-whose]')];
  function showWhose(): void {
    const count = Object.keys(keptMachine()).length;
    for (const choice of whose) {
      const own = choice.dataset['whose'] === 'own';
      choice.checked = own === usesOwnMachine();
      if (own) choice.disabled = count === 0;
    }
    if (whose.length > 0) part('kept').textContent = count === 0 ? '(none kept)' : `(${count} kept)`;
  }
  const ownFigures = () =>
    Object.fromEntries(
      lines.flatMap((line) => {
        const { machine } = line.field as Field & { machine?: string };
        const text = textOf(line);
        return machine === undefined || text === '' || line.line.hidden ? [] : [[machine, text]];
      }),
    );

  const doing: Record<string, () => void | Promise<void>> = {
    async copy() {
      const address = part('address').textContent ?? '';
      try {
        await navigator.clipboard.writeText(address);
        tell('The address of this set-up is copied.');
      } catch {
        tell(`This browser does not let a page copy. The address of this set-up is ${address}`);
      }
    },
    print() {
      sheet.classList.add('sheet-card');
      window.addEventListener('afterprint', () => sheet.classList.remove('sheet-card'), { once: true });
      window.print();
    },
    reset() {
      fillFrom({ ...Object.fromEntries(fields.map((one) => [one.name, ''])), ...logs });
      tell('');
      update();
    },
    keep() {
      if (!solved(textsNow()).ok) tell('Nothing was kept: some of these figures cannot be read yet.');
      else if (keepMachine({ ...keptMachine(), ...ownFigures() }, true))
        tell('Kept on this device only, as your machine. Every calculator here can start from it.');
      else tell('This browser keeps nothing for this site, so the figures could not be kept.');
    },
  };

  sheet.addEventListener('input', (event) => {
    const box = event.target as Box;
    const line = lines.find((one) => one.number === box);
    if (line?.field.kind === 'choice') carryOver();
    if (box.dataset['whose'] !== undefined) keepMachine(keptMachine(), box.dataset['whose'] === 'own');
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
    if (name !== undefined) void doing[name]?.();
  });
  document.addEventListener(CHANGED, () => {
    showWhose();
    fillFromMachine(usesOwnMachine());
    update();
  });

  for (const live of sheet.querySelectorAll<HTMLElement>('[data-live]')) live.hidden = false;
  sheet.toggleAttribute('data-running', true);
  showWhose();
  const came = facts.own ? readAddress(fields, location.search) : { texts: {}, unknown: [] };
  if (Object.keys(came.texts).length > 0) {
    fillFrom({ ...Object.fromEntries(fields.map((one) => [one.name, ''])), ...logs, ...came.texts });
    tell('These figures came with the address.');
  } else if (usesOwnMachine()) fillFromMachine(true);
  if (came.unknown.length > 0) {
    const list = came.unknown.map((one) => `“${one}”`).join(', ');
    tell(
      `${part('told').textContent} The address also says ${list}, which this sheet does not know; it was left out.`,
    );
  }
  if (part('told').textContent !== '' || usesOwnMachine()) update();
}
