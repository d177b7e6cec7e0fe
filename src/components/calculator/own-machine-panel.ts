/** The list of what this device keeps, and its ways in and out. Figures are shown as text only. */
import { MAX_FILE, readOwnMachine, writeOwnMachine } from './own-machine.ts';
import { CHANGED } from './own-machine-key.ts';
import { keepMachine, keptMachine } from './own-machine-store.ts';

const FILE_NAME = 'my-machine.json';

export function startOwnMachine(): void {
  const panel = document.querySelector<HTMLElement>('[data-own-machine]');
  if (!panel) return;
  const own = (name: string) => panel.querySelector(`[data-own="${name}"]`) as HTMLElement;
  const button = (name: string) => panel.querySelector(`[data-do="${name}"]`) as HTMLButtonElement;
  const file = panel.querySelector('input[type="file"]') as HTMLInputElement;
  const names = JSON.parse(own('names').textContent ?? '{}') as Record<string, string>;
  const tell = (text: string) => {
    own('told').textContent = text;
  };

  function show(): void {
    const figures = Object.entries(keptMachine()).sort(([a], [b]) => (a < b ? -1 : 1));
    const none = figures.length === 0;
    own('none').hidden = !none;
    own('some').hidden = none;
    button('export').disabled = none;
    button('clear').disabled = none;
    own('rows').replaceChildren(
      ...figures.map(([path, text]) => {
        const row = document.createElement('tr');
        const name = document.createElement('th');
        name.scope = 'row';
        name.textContent = Object.hasOwn(names, path) ? (names[path] ?? path) : path;
        const kept = document.createElement('td');
        kept.className = 'number';
        kept.textContent = text;
        row.append(name, kept);
        return row;
      }),
    );
  }

  button('export').addEventListener('click', () => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([writeOwnMachine(keptMachine())], { type: 'application/json' }));
    link.download = FILE_NAME;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
    tell(`Written to ${FILE_NAME}.`);
  });
  button('import').addEventListener('click', () => file.click());
  file.addEventListener('change', async () => {
    const chosen = file.files?.[0];
    file.value = '';
    if (!chosen) return;
    const read = chosen.size > MAX_FILE ? undefined : readOwnMachine(await chosen.text());
    if (!read || Object.keys(read.machine).length === 0) {
      tell('This file holds no machine that was taken along from here. What is kept stays as it was.');
      return;
    }
    const count = Object.keys(read.machine).length;
    const left = read.leftOut > 0 ? ` ${read.leftOut} could not be read and were left out.` : '';
    if (keepMachine({ ...keptMachine(), ...read.machine }, true))
      tell(`${count} figures were brought in.${left}`);
    else tell('This browser keeps nothing for this site, so the figures could not be kept.');
  });
  button('clear').addEventListener('click', () => {
    keepMachine({}, false);
    tell('Nothing is kept on this device any more.');
  });
  document.addEventListener(CHANGED, show);
  for (const live of panel.querySelectorAll<HTMLElement>('[data-live]')) live.hidden = false;
  show();
}
