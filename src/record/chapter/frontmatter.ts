import { type Fields, needed, optional } from '../read/field.ts';
import { day, figure, line, words, yesOrNo } from '../read/kinds.ts';
import { type Mapping, readYaml } from '../read/yaml.ts';
import type { Report } from '../report-to.ts';
import type { RuleId } from '../rules/written.ts';
import type { Lines } from '../text/lines.ts';

/** A chapter's frontmatter, one entry a key. */
export const CHAPTER = {
  title: needed(line, 'Title', 'What the chapter is called.'),
  date: needed(day, 'Date', 'The day shown to readers.'),
  summary: needed(words, 'Summary', 'One sentence for lists and feeds.'),
  held: optional(yesOrNo, 'Held', 'Whether it is not yet released.'),
  first_start: optional(yesOrNo, 'First start', 'Whether the engine runs here for the first time.'),
  first_drive: optional(yesOrNo, 'First drive', 'Whether the machine is driven here for the first time.'),
  recording: optional(
    line,
    'Recording',
    'The recording: a file beside the chapter, such as ./evening.mp4, or its web address.',
  ),
  hours: optional(figure({ from: 0, what: 'a number of hours' }), 'Hours', 'Hours worked.'),
} satisfies Fields;

export interface Split {
  head: Mapping | undefined;
  /** Offset of the body in the file. */
  body: number;
}

/** Parts a file into its frontmatter and its body. The frontmatter stands between two lines of three hyphens. */
export function readFrontmatter(lines: Lines, rule: RuleId, report: Report): Split {
  const found = /^---[ \t]*\n([\s\S]*?)(?:^|\n)---[ \t]*(?:\n|$)/.exec(lines.text);
  if (!found) {
    const open = /^---[ \t]*\n/.test(lines.text);
    report.add(
      rule,
      lines.at(0),
      open
        ? 'The frontmatter is opened here and never closed. Write a line of three hyphens where it ends.'
        : 'The file has no frontmatter. Begin it with a line of three hyphens, the keys, and another line of three hyphens.',
    );
    return { head: undefined, body: open ? lines.text.length : 0 };
  }
  const start = lines.text.indexOf('\n') + 1;
  return { head: readYaml(lines, found[1] ?? '', start, report), body: found[0].length };
}
