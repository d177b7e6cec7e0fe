/** How often each id was asked for on a page that is being drawn. */
const asked = new WeakMap<object, Map<string, number>>();

/** A sheet's id on its page, the calculator's own and from the second of its kind on with a number, and that number. */
export function sheetId(page: object, id: string): { id: string; count: number } {
  const counts = asked.get(page) ?? new Map<string, number>();
  asked.set(page, counts);
  const count = (counts.get(id) ?? 0) + 1;
  counts.set(id, count);
  return { id: count === 1 ? id : `${id}-${count}`, count };
}

const tables = new WeakMap<object, Set<string>>();

/** Names of the tables that a page which is being drawn carries so far. */
export function tablesOn(page: object): Set<string> {
  const present = tables.get(page) ?? new Set();
  tables.set(page, present);
  return present;
}
