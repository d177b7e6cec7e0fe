/** proposals.yaml beside a chapter: written once, then the author's to edit. New ones are added at its end. */
import { isMap, isSeq, LineCounter, parseDocument } from 'yaml';
import type { Kind, Proposal } from './write/proposals.ts';
import { type Answers, askedBy, QUESTIONS, readAnswer } from './write/questions.ts';
import { yamlText } from './write/yaml-text.ts';

const HEAD = `# Proposed from the notes. Nothing here is in a register yet.
# Set "accept: yes" on what you want, mend its row, then: npm run write-up -- --take CHAPTER
# (--all takes every one that is complete). "accept: never" puts a proposal aside for good.
# A question is answered behind "answer:"; the answer is used by the next write-up or --take.
`;

export interface Kept extends Proposal {
  accept: string;
  /** Where it was written, once taken. */
  done?: string;
  /** Where it stands in proposals.yaml. */
  line: number;
}

/** What is wrong in the file, with its place. */
export interface Wrong {
  line: number;
  column: number;
  message: string;
}

const entry = ({ id, kind, place, also, words, because, row }: Proposal): string => {
  const pairs = (of: Record<string, string>, indent: string): string =>
    Object.entries(of)
      .map(([key, value]) => `${indent}${key}: ${yamlText(value)}\n`)
      .join('');
  return `  - id: ${yamlText(id)}\n${pairs({ kind, accept: 'no', line: place, ...(also ? { also: also.join(', ') } : {}), words, because }, '    ')}    row:\n${pairs(row, '      ')}`;
};

/** The file with what is new at its end; with nothing new it stays as it is. */
export function proposalsText(proposals: readonly Proposal[], written = ''): string {
  const known = new Set(written === '' ? [] : readProposals(written).kept.map(({ id }) => id));
  const list = proposals
    .filter(({ id }) => !known.has(id))
    .map(entry)
    .join('');
  if (written === '') return `${HEAD}proposals:${list === '' ? ' []\n' : `\n${list}`}`;
  if (list === '') return written;
  return `${written.replace(/^proposals:[ \t]*\[\][ \t]*$/m, 'proposals:').replace(/\n*$/, '\n')}${list}`;
}

export interface ReadProposals {
  kept: Kept[];
  /** Set where the file is not YAML, or is no list of proposals. */
  wrong?: Wrong;
  /** Answers that are not used yet. */
  answers: Answers;
  wrongAnswers: Wrong[];
}

export function readProposals(text: string): ReadProposals {
  const counter = new LineCounter();
  const doc = parseDocument(text, { lineCounter: counter });
  const none = { kept: [], answers: {}, wrongAnswers: [] };
  const [error] = doc.errors;
  if (error) {
    const place = counter.linePos(error.pos[0]);
    return {
      ...none,
      wrong: {
        line: place.line,
        column: place.col,
        message: `This is not YAML: ${error.message.split('\n')[0]}`,
      },
    };
  }
  const list = isMap(doc.contents) ? doc.get('proposals', true) : undefined;
  if (!isSeq(list)) {
    if (text.trim() === '' || (isMap(doc.contents) && doc.get('proposals') === null)) return none;
    return { ...none, wrong: { line: 1, column: 1, message: 'There is no list under "proposals:".' } };
  }
  const out: ReadProposals = { kept: [], answers: {}, wrongAnswers: [] };
  for (const item of list.items) {
    if (!isMap(item)) continue;
    const one = item.toJS(doc) as Record<string, unknown>;
    const row = one['row'] !== null && typeof one['row'] === 'object' ? one['row'] : {};
    const kept: Kept = {
      id: asText(one['id']),
      kind: asText(one['kind']) as Kind,
      accept: one['accept'] === true ? 'yes' : asText(one['accept'] ?? 'no'),
      place: asText(one['line']),
      words: asText(one['words']),
      because: asText(one['because']),
      row: Object.fromEntries(Object.entries(row).map(([name, value]) => [name, asText(value)])),
      ...(one['done'] ? { done: asText(one['done']) } : {}),
      line: counter.linePos(item.range?.[0] ?? 0).line,
    };
    out.kept.push(kept);
    const asked = askedBy(kept.id);
    const said = kept.row['answer']?.trim() ?? '';
    if (!asked || said === '' || kept.done) continue;
    const answer = readAnswer(asked, said);
    if (answer !== undefined) {
      Object.assign(out.answers, { [asked]: answer });
      continue;
    }
    const node = item.getIn(['row', 'answer'], true) as { range?: [number, number, number] } | undefined;
    const place = counter.linePos(node?.range?.[0] ?? item.range?.[0] ?? 0);
    out.wrongAnswers.push({
      line: place.line,
      column: place.col,
      message: `"${said}" is no answer to "${QUESTIONS[asked].ask.split('?')[0]}?" Write ${choices(Object.keys(QUESTIONS[asked].answers))}.`,
    });
  }
  return out;
}

const choices = (list: readonly string[]): string =>
  `${list.slice(0, -1).join(', ')} or ${list.at(-1) ?? ''}`;

const asText = (value: unknown): string => (value === null || value === undefined ? '' : String(value));

/** The file with some proposals marked as taken; the author's comments and order stay. `places` are by id. */
export function markDone(text: string, places: ReadonlyMap<string, string>): string {
  const doc = parseDocument(text);
  const list = doc.get('proposals');
  if (!isSeq(list) || places.size === 0) return text;
  for (const item of list.items) {
    if (!isMap(item)) continue;
    const where = places.get(String(item.get('id')));
    if (where === undefined) continue;
    item.set('accept', 'yes');
    item.set('done', where);
  }
  return doc.toString({ lineWidth: 0 });
}

const UNSETTLED = /^(?:gal|pt|qt|fl oz|mpg|ton|)$/;

/** Rows that waited for an answer get their unit; what the author wrote into them stays. */
export function settleRows(text: string, proposals: readonly Proposal[]): string {
  const doc = parseDocument(text);
  const list = doc.get('proposals');
  if (!isSeq(list)) return text;
  const now = new Map(proposals.map((one) => [one.id, one.row]));
  let changed = false;
  for (const item of list.items) {
    if (!isMap(item) || item.get('done')) continue;
    const unit = now.get(String(item.get('id')))?.['unit'];
    if (!unit || item.getIn(['row', 'unit']) === unit) continue;
    if (!UNSETTLED.test(asText(item.getIn(['row', 'unit'])))) continue;
    item.setIn(['row', 'unit'], unit);
    changed = true;
  }
  return changed ? doc.toString({ lineWidth: 0 }) : text;
}
