/**
 * What a sheet does when it is asked to, or when an address or a kept machine came with the reader: a script of its own,
 * since most readers only type figures.
 */
import { keepMachine, keptMachine, usesOwnMachine } from './own-machine-store.ts';
import { readAddress } from './read-address.ts';
import type { Line, Sheet } from './sheet.ts';

type Action = (sheet: Sheet) => void | Promise<void>;

const machineOf = ({ field }: Line) => ('machine' in field ? field.machine : undefined);

/** Figures of the log's machine, or the reader's own where one is kept; others stay as they are. */
function fillFromMachine({ facts, lines, put }: Sheet, own: boolean): void {
  const kept = own ? keptMachine() : {};
  for (const line of lines) {
    const machine = machineOf(line);
    if (machine !== undefined) put(line, kept[machine] ?? facts.texts[line.field.name] ?? '');
  }
}

function showWhose({ sheet, part }: Sheet): void {
  const count = Object.keys(keptMachine()).length;
  const whose = [...sheet.querySelectorAll<HTMLInputElement>('[data-whose]')];
  for (const choice of whose) {
    const own = choice.dataset['whose'] === 'own';
    choice.checked = own === usesOwnMachine();
    if (own) choice.disabled = count === 0;
  }
  if (whose.length > 0) part('kept').textContent = count === 0 ? '(none kept)' : `(${count} kept)`;
}

const ownFigures = ({ lines, textOf }: Sheet) =>
  Object.fromEntries(
    lines.flatMap((line) => {
      const machine = machineOf(line);
      const text = textOf(line);
      return machine === undefined || text === '' || line.line.hidden ? [] : [[machine, text]];
    }),
  );

const ACTIONS: Record<string, Action> = {
  /** The page was opened: with a set-up in its address, or by a reader with a machine of their own. */
  arrive(one) {
    const { facts, update, tell } = one;
    showWhose(one);
    const { texts, unknown } = facts.own
      ? readAddress(facts.fields, location.search)
      : { texts: {}, unknown: [] };
    const came = Object.keys(texts).length > 0;
    if (came) one.fillFrom(texts);
    else if (usesOwnMachine()) fillFromMachine(one, true);
    const list = unknown.map((name) => `“${name}”`).join(', ');
    const said = [
      came && 'These figures came with the address.',
      list !== '' && `The address also says ${list}, which this sheet does not know; it was left out.`,
    ].filter(Boolean);
    if (said.length > 0) tell(said.join(' '));
    if (said.length > 0 || usesOwnMachine()) update();
  },
  /** The kept machine, or whether it is used, has changed on this page. */
  changed(one) {
    showWhose(one);
    fillFromMachine(one, usesOwnMachine());
    one.update();
  },
  log: () => void keepMachine(keptMachine(), false),
  own: () => void keepMachine(keptMachine(), true),
  keep(one) {
    if (!one.fits()) one.tell('Nothing was kept: some of these figures cannot be read yet.');
    else if (keepMachine({ ...keptMachine(), ...ownFigures(one) }, true))
      one.tell('Kept on this device only, as your machine. Every calculator here can start from it.');
    else one.tell('This browser keeps nothing for this site, so the figures could not be kept.');
  },
  async copy({ part, tell }) {
    const address = part('address').textContent ?? '';
    try {
      await navigator.clipboard.writeText(address);
      tell('The address of this set-up is copied.');
    } catch {
      tell(`This browser does not let a page copy. The address of this set-up is ${address}`);
    }
  },
  print({ sheet }) {
    sheet.classList.add('sheet-card');
    window.addEventListener('afterprint', () => sheet.classList.remove('sheet-card'), { once: true });
    window.print();
  },
};

/** Does what a button or the page's opening asks for. */
export async function act(sheet: Sheet, name: string): Promise<void> {
  await ACTIONS[name]?.(sheet);
}
