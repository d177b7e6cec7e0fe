/**
 * Makes ledger tables sortable by their heads and filterable by words and by the columns that ask for it. Without this
 * script the tables are complete; so the controls are made here.
 */
interface Line {
  row: HTMLTableRowElement;
  words: string;
}

const textOf = (row: HTMLTableRowElement, column: number): string =>
  row.cells[column]?.textContent?.trim() ?? '';
const keyOf = (row: HTMLTableRowElement, column: number): string =>
  row.cells[column]?.dataset['key'] ?? textOf(row, column);

function make<K extends keyof HTMLElementTagNameMap>(tag: K, text = ''): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
}

function start(frame: HTMLElement): void {
  const table = frame.querySelector('table');
  if (!table?.tHead) return;
  const { ledger: currency = '', language = 'en', word = 'row' } = frame.dataset;
  const digits = Number(frame.dataset['digits']);
  const bodies = [...table.tBodies];
  const lines: Line[] = [...table.querySelectorAll<HTMLTableRowElement>('tbody tr:not(.system-head)')].map(
    (row) => ({
      row,
      words: row.textContent?.toLowerCase() ?? '',
    }),
  );
  const heads = [...(table.tHead.rows[0]?.cells ?? [])];
  const compare = new Intl.Collator(language, { numeric: true }).compare;
  const print = new Intl.NumberFormat(language, {
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });

  const tools = make('div');
  tools.className = 'ledger-tools';
  const labelled = <T extends HTMLElement>(words: string, field: T): T => {
    const label = make('label', words);
    label.append(field);
    tools.append(label);
    return field;
  };
  const search = labelled('Find', make('input'));
  search.type = 'search';
  const filters = heads.flatMap((head, column) => {
    if (!head.dataset['filter']) return [];
    const select = labelled(head.textContent?.trim() ?? '', make('select'));
    const values = [...new Set(lines.map(({ row }) => keyOf(row, column)))].filter(Boolean).sort(compare);
    select.append(new Option('all', ''), ...values.map((value) => new Option(value, value)));
    return [{ select, column }];
  });
  const order = labelled('In order of', make('select'));
  const told = make('output');
  tools.append(told);
  frame.before(tools);

  const filter = () => {
    const wanted = search.value.toLowerCase().split(/\s+/);
    let count = 0;
    let sum = 0n;
    for (const { row, words } of lines) {
      const shows =
        wanted.every((one) => words.includes(one)) &&
        filters.every(({ select, column }) => !select.value || keyOf(row, column) === select.value);
      row.hidden = !shows;
      if (!shows) continue;
      count++;
      const minor = row.cells[heads.length - 1]?.dataset['key'];
      if (minor) sum += BigInt(minor);
    }
    for (const body of bodies)
      body.hidden = ![...body.rows].some((row) => !row.hidden && row.className !== 'system-head');
    const part = sum === 0n ? '' : `, ${print.format(shift(sum, digits) as Intl.StringNumericLiteral)}`;
    told.textContent = count === lines.length ? '' : `${count} of ${lines.length} ${word}s${part}`;
  };

  const sort = (column: number, down: boolean) => {
    heads.forEach((head, at) => {
      if (at === column) head.ariaSort = down ? 'descending' : 'ascending';
      else head.removeAttribute('aria-sort');
    });
    const number = heads[column]?.dataset['sort'] === 'number';
    for (const body of bodies) {
      const rows = [...body.rows].filter((row) => row.className !== 'system-head');
      rows.sort((a, b) => {
        const [x, y] = [keyOf(a, column), keyOf(b, column)];
        return (down ? -1 : 1) * (number ? Number(x) - Number(y) : compare(x, y));
      });
      body.append(...rows);
    }
  };

  heads.forEach((head, column) => {
    const kind = head.dataset['sort'];
    if (!kind || kind === 'none') return;
    const name = head.textContent?.trim() ?? '';
    const button = make('button', name);
    button.type = 'button';
    button.onclick = () => sort(column, head.ariaSort === 'ascending');
    head.replaceChildren(button);
    order.append(new Option(name, `${column}`), new Option(`${name}, falling`, `-${column}`));
  });
  order.onchange = () => sort(Math.abs(Number(order.value)), order.value[0] === '-');
  search.oninput = filter;
  for (const { select } of filters) select.onchange = filter;
}

/** Minor units as a decimal, exactly. */
function shift(minor: bigint, digits: number): string {
  const text = String(minor < 0n ? -minor : minor).padStart(digits + 1, '0');
  return `${minor < 0n ? '-' : ''}${text.slice(0, text.length - digits)}.${text.slice(text.length - digits) || '0'}`;
}

for (const frame of document.querySelectorAll<HTMLElement>('[data-ledger]')) start(frame);

export {};
