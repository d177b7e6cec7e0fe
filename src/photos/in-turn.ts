/** Does the work for every item, `at` of them at once, and gives the results in the items' order. */
export async function inTurn<Item, Result>(
  items: readonly Item[],
  at: number,
  work: (item: Item, index: number) => Promise<Result>,
): Promise<Result[]> {
  const results: Result[] = new Array(items.length);
  const waiting = items.entries();
  const worker = async () => {
    for (const [index, item] of waiting) results[index] = await work(item, index);
  };
  await Promise.all(Array.from({ length: Math.min(at, items.length) }, worker));
  return results;
}
