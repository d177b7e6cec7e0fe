/** Hides the faults of the register that the reader did not ask for. The choice is kept in the address. */
const filters = document.querySelector<HTMLElement>('#fault-filters');

if (filters) {
  const entries = [...document.querySelectorAll<HTMLLIElement>('.register > li')];
  const fields = [...filters.querySelectorAll<HTMLSelectElement | HTMLInputElement>('select, input')];
  const asked = new URLSearchParams(location.search);
  for (const field of fields) {
    const value = asked.get(field.name);
    if (field instanceof HTMLInputElement) field.checked = value === field.value;
    else if ([...field.options].some((one) => one.value === value)) field.value = value ?? '';
  }

  const show = () => {
    const chosen = fields
      .filter((field) => (field instanceof HTMLInputElement ? field.checked : field.value !== ''))
      .map((field) => [field.name, field.value] as [string, string]);
    let shown = 0;
    for (const entry of entries) {
      entry.hidden = chosen.some(([name, value]) => entry.dataset[name] !== value);
      if (!entry.hidden) shown += 1;
    }
    for (const group of document.querySelectorAll<HTMLElement>('.register-group'))
      group.hidden = group.querySelector('li:not([hidden])') === null;
    const output = filters.querySelector('output');
    if (output) output.value = `${shown} of ${entries.length} shown`;
    const query = new URLSearchParams(chosen).toString();
    history.replaceState(null, '', query === '' ? location.pathname : `?${query}`);
  };

  filters.hidden = false;
  filters.addEventListener('change', show);
  show();
}
