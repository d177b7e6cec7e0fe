/** Many short rows of whole numbers in one piece of memory: a text walks hundreds of them, and this keeps them within a processor's reach. */
export interface Rows {
  /** Row k is `numbers` from starts[k] up to, without, starts[k + 1]. */
  starts: Int32Array;
  numbers: Int32Array;
}

export function rowsOf(lists: readonly (readonly number[])[]): Rows {
  const starts = new Int32Array(lists.length + 1);
  lists.forEach((list, k) => {
    starts[k + 1] = (starts[k] ?? 0) + list.length;
  });
  const numbers = new Int32Array(starts[lists.length] ?? 0);
  lists.forEach((list, k) => {
    numbers.set(list, starts[k]);
  });
  return { starts, numbers };
}

/** For each number below `count` the rows that have it, rising; rows that `isWanted` refuses are left out. */
export function rowsWith(
  lists: readonly (readonly number[])[],
  count: number,
  isWanted: (row: number) => boolean,
): Rows {
  const starts = new Int32Array(count + 1);
  const wanted = lists.map((list, row) => (isWanted(row) ? list : []));
  for (const list of wanted) for (const number of list) starts[number + 1] = (starts[number + 1] ?? 0) + 1;
  for (let k = 0; k < count; k++) starts[k + 1] = (starts[k + 1] ?? 0) + (starts[k] ?? 0);
  const free = starts.slice();
  const numbers = new Int32Array(starts[count] ?? 0);
  wanted.forEach((list, row) => {
    for (const number of list) {
      const at = free[number] ?? 0;
      numbers[at] = row;
      free[number] = at + 1;
    }
  });
  return { starts, numbers };
}
