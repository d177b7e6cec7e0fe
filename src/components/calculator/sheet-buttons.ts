/** What a sheet does when it is asked to, or when an address or a kept machine came with the reader. */
import { filled } from '../../calc/holes.ts';
import { CHANGED } from './own-machine-key.ts';
import { keepMachine, keptMachine, usesOwnMachine } from './own-machine-store.ts';
import { readAddress } from './read-address.ts';
import type { Sheet } from './sheet.ts';
import { type Line, textOf } from './sheet-lines.ts';
import { TOLD } from './sheet-messages.ts';
import { partOf, tell } from './sheet-parts.ts';

const machineOf = ({ field }: Line) => ('machine' in field && field.machine) || '';

/** Takes the name of a button, or of what has happened; others do nothing. */
export function buttons({ sheet, facts, lines, fillFrom, update }: Sheet) {
  /** Whose figures fill the sheet is shown, and filled in where they are the reader's own. */
  function showWhose(fill: boolean): void {
    const kept = keptMachine();
    const count = Object.keys(kept).length;
    const used = usesOwnMachine();
    for (const choice of sheet.querySelectorAll<HTMLInputElement>('[data-whose]')) {
      const own = choice.dataset['whose'] === 'own';
      choice.checked = own === used;
      choice.disabled = own && count === 0;
      partOf(sheet, 'kept').textContent = count ? filled(TOLD.some, { count }) : TOLD.none;
    }
    if (!fill) return;
    const machine = used ? kept : {};
    const texts = lines.map((line) => [line.field.name, machine[machineOf(line)] ?? otherwise(line)]);
    fillFrom(Object.fromEntries(texts));
    update();
  }
  /** A figure that no machine has stays as it is. */
  const otherwise = (line: Line) => (machineOf(line) ? facts.texts[line.field.name] : textOf(line));

  const acts: Record<string, () => void> = {
    /** The page was opened: with a set-up in its address, or by a reader with a machine of their own. */
    arrive() {
      const { texts, unknown } = readAddress(facts.fields, facts.own ? location.search : '');
      const came = Object.keys(texts).length > 0;
      showWhose(!came && usesOwnMachine());
      if (came) fillFrom(texts);
      const names = unknown.map((name) => `“${name}”`).join(', ') || undefined;
      const said = `${came ? TOLD.came : ''} ${filled(TOLD.unknown, { names })}`.trim();
      tell(sheet, said);
      if (said) update();
    },
    log: () => void keepMachine(keptMachine(), false),
    own: () => void keepMachine(keptMachine(), true),
    keep() {
      const figures = lines.flatMap((line) => {
        const [machine, text] = [machineOf(line), textOf(line)];
        return machine && text && !line.line.hidden ? [[machine, text]] : [];
      });
      const reads = !sheet.hasAttribute('data-stale');
      const kept = reads && keepMachine({ ...keptMachine(), ...Object.fromEntries(figures) }, true);
      tell(sheet, !reads ? TOLD.unread : kept ? TOLD.kept : TOLD.unkept);
    },
    async copy() {
      const address = partOf(sheet, 'address').textContent ?? '';
      try {
        await navigator.clipboard.writeText(address);
        tell(sheet, TOLD.copied);
      } catch {
        tell(sheet, filled(TOLD.uncopied, { address }));
      }
    },
    print() {
      sheet.classList.add('sheet-card');
      window.addEventListener('afterprint', () => sheet.classList.remove('sheet-card'), { once: true });
      window.print();
    },
    reset() {
      fillFrom();
      tell(sheet, '');
      update();
    },
  };
  document.addEventListener(CHANGED, () => showWhose(true));
  return (name = '') => acts[name]?.();
}
