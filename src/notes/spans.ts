/** The source cut into spans that join to it byte for byte, each with one home. Marks, times and blanks go with the words they stand before. */
import type { Statement } from './draft.ts';

export interface Span {
  start: number;
  end: number;
  line: number;
  home: string;
}

export function spansOf(text: string, statements: readonly Statement[]): Span[] {
  const sorted = [...statements].sort((a, b) => a.start - b.start);
  const spans = sorted.map((one, at): Span => {
    const home = one.home;
    return {
      start: at === 0 ? 0 : (sorted[at - 1]?.end ?? 0),
      end: at === sorted.length - 1 ? text.length : one.end,
      line: one.line,
      home: home.kind === 'step' ? `step ${home.step}` : home.kind,
    };
  });
  return spans.length > 0 ? spans : [{ start: 0, end: text.length, line: 1, home: 'not placed' }];
}

/** Where each line of a source went, in words: "14  step 3; proposals: cost, part". */
export function reportOf(
  text: string,
  statements: readonly Statement[],
  kinds: ReadonlyMap<number, readonly string[]>,
): string {
  const byLine = new Map<number, Set<string>>();
  for (const one of statements)
    for (let line = one.line; line <= one.lastLine; line++) {
      const home =
        one.home.kind === 'step'
          ? `step ${one.home.step}, "${one.deed ?? ''}"`.replace(', ""', '')
          : one.home.kind;
      byLine.set(line, (byLine.get(line) ?? new Set()).add(home));
    }
  return text
    .split('\n')
    .flatMap((line, at) => {
      if (line.trim() === '') return [];
      const homes = byLine.get(at + 1);
      const proposed = kinds.get(at + 1);
      const went = homes ? [...homes].join('; ') : 'a mark or a time: goes with the words beside it';
      return [
        `${String(at + 1).padStart(5)}  ${went}${proposed ? ` · proposed: ${[...new Set(proposed)].join(', ')}` : ''}`,
      ];
    })
    .join('\n');
}
