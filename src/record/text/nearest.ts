/**
 * The choice that a mistyped name most likely meant: fewest letters changed, added, dropped or swapped, and never more
 * than a third of the longer name. Names that differ only in their number ("ch-17", "ch-07") count as near.
 */
export function nearest(name: string, choices: Iterable<string>): string | undefined {
  const wanted = name.toLowerCase();
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const choice of choices) {
    const other = choice.toLowerCase();
    const most = Math.max(1, Math.floor(Math.max(wanted.length, other.length) / 3));
    if (other !== wanted && Math.abs(wanted.length - other.length) > most && !sameWords(wanted, other))
      continue;
    const distance = sameWords(wanted, other) ? Math.min(1, changes(wanted, other)) : changes(wanted, other);
    if (distance <= most && distance < least) {
      least = distance;
      best = choice;
    }
  }
  return best;
}

/** "3-bores-and-rings" and "03-bores-and-rings", "bores-and-rings" and "03-bores-and-rings". */
function sameWords(a: string, b: string): boolean {
  const bare = (text: string) => text.replace(/^\d+-/, '');
  return bare(a).length > 2 && bare(a) === bare(b);
}

/** Optimal string alignment distance: a swap of two neighbours is one change. */
function changes(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (above[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      row.push(least);
    }
    before = above;
    above = row;
  }
  return above[b.length] ?? 0;
}
