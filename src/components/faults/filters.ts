/** Hides the faults of the register that the reader did not ask for. The choice is kept in the address. */
const form = document.querySelector<HTMLFormElement>('#fault-filters');

if (form) {
  const entries = [...document.querySelectorAll<HTMLLIElement>('.register > li')];
  const asked = new URLSearchParams(location.search);
  for (const field of form.querySelectorAll<HTMLSelectElement | HTMLInputElement>('select, input')) {
    const value = asked.get(field.name);
    if (field instanceof HTMLInputElement) field.checked = value === field.value;
    else if (value !== null && [...field.options].some((one) => one.value === value)) field.value = value;
  }

  const show = () => {
    const chosen = [...new FormData(form)].filter(([, value]) => value !== '') as [string, string][];
    let shown = 0;
    for (const entry of entries) {
      entry.hidden = chosen.some(([name, value]) => entry.dataset[name] !== value);
      if (!entry.hidden) shown += 1;
    }
    for (const group of document.querySelectorAll<HTMLElement>('.register-group'))
      group.hidden = group.querySelector('li:not([hidden])') === null;
    const output = form.querySelector('output');
    if (output) output.value = `${shown} of ${entries.length} shown`;
    const query = new URLSearchParams(chosen).toString();
    history.replaceState(null, '', query === '' ? location.pathname : `?${query}`);
  };

  form.hidden = false;
  form.addEventListener('change', show);
  show();
}
