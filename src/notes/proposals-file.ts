/** proposals.yaml beside a chapter: written once, then the author's to edit. New ones are added at its end. */
import { isMap, isSeq, parseDocument, stringify } from 'yaml';
import type { Kind, Proposal } from './write/proposals.ts';

const HEAD = `# Proposed from the notes. Nothing here is in a register yet.
# Set "accept: yes" on what you want, mend its row, then: npm run write-up -- --take CHAPTER
# (--all takes every one that is complete). "accept: never" puts a proposal aside for good.
`;

export interface Kept extends Proposal {
  accept: string;
  /** Where it was written, once taken. */
  done?: string;
}

const entry = ({ id, kind, place, words, because, row }: Proposal) => ({
  id,
  kind,
  accept: 'no',
  line: place,
  words,
  because,
  row,
});

export function proposalsText(proposals: readonly Proposal[], written = ''): string {
  const known = new Set(written === '' ? [] : readProposals(written).kept.map(({ id }) => id));
  const fresh = proposals.filter(({ id }) => !known.has(id));
  if (written !== '' && fresh.length === 0) return written;
  const list = fresh.length === 0 ? '' : stringify(fresh.map(entry), { lineWidth: 0 });
  const indented = list.replace(/^(?=.)/gm, '  ');
  if (written === '')
    return `${HEAD}proposals:${fresh.length === 0 ? ' []' : `\n${indented}`}\n`.replace(/\n+$/, '\n');
  return `${written.replace(/^proposals: \[\]\s*$/m, 'proposals:').replace(/\n*$/, '\n')}${indented}`;
}

export function readProposals(text: string): { kept: Kept[]; wrong?: string } {
  const doc = parseDocument(text);
  const [error] = doc.errors;
  if (error)
    return {
      kept: [],
      wrong: `proposals.yaml:${error.linePos?.[0].line ?? 1} is not YAML: ${error.message.split('\n')[0]}`,
    };
  const list = (doc.toJS() as { proposals?: unknown } | null)?.proposals;
  const text1 = (value: unknown): string => (value === null || value === undefined ? '' : String(value));
  const kept = (Array.isArray(list) ? list : []).map(
    (one: Record<string, unknown>): Kept => ({
      id: text1(one['id']),
      kind: text1(one['kind']) as Kind,
      accept: one['accept'] === true ? 'yes' : text1(one['accept'] ?? 'no'),
      place: text1(one['line']),
      words: text1(one['words']),
      because: text1(one['because']),
      row: Object.fromEntries(
        Object.entries((one['row'] as Record<string, unknown>) ?? {}).map(([name, value]) => [
          name,
          text1(value),
        ]),
      ),
      ...(one['done'] ? { done: text1(one['done']) } : {}),
    }),
  );
  return { kept };
}

/** The file with one proposal marked as taken; the author's comments and order stay. */
export function markDone(text: string, id: string, where: string): string {
  const doc = parseDocument(text);
  const list = doc.get('proposals');
  if (!isSeq(list)) return text;
  for (const item of list.items)
    if (isMap(item) && String(item.get('id')) === id) {
      item.set('accept', 'yes');
      item.set('done', where);
    }
  return doc.toString({ lineWidth: 0 });
}
