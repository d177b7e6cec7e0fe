/** What the notes say that belongs in a register: proposed, each with its line, and taken only when the author says so. */
import { createHash } from 'node:crypto';
import { slug } from '../../record/chapter/slug.ts';
import type { Draft, Statement } from '../draft.ts';
import { isMoney } from '../draft.ts';
import { wordsOf } from './prose.ts';
import { type Asked, QUESTIONS } from './questions.ts';

export type Kind =
  | 'fault'
  | 'finding'
  | 'put off'
  | 'refit'
  | 'measurement'
  | 'part'
  | 'cost'
  | 'thanks'
  | 'road-test point'
  | 'question';

export interface Proposal {
  id: string;
  kind: Kind;
  /** "bench-notes.md:5". */
  place: string;
  words: string;
  /** The words that told it. */
  because: string;
  /** Fields of the register, as they would be written. */
  row: Record<string, string>;
}

/** An open fault of the register. */
export interface KnownFault {
  id: string;
  title: string;
  system: string;
  symptom: string;
}

export interface Known {
  faults?: readonly KnownFault[];
  /** Those who have agreed to be named. */
  named?: readonly string[];
  chapter: string;
  date: string;
  currency: string;
}

export function proposalsOf(
  draft: Draft,
  to: Known,
  open: ReadonlyMap<Asked, readonly Statement[]> = new Map(),
  wanted?: ReadonlySet<Statement>,
): { proposals: Proposal[]; told: Set<Statement> } {
  const out: Proposal[] = [];
  const told = new Set<Statement>();
  /** How often a stem was taken: the same words twice are two proposals. */
  const taken = new Map<string, number>();
  const add = (
    one: Statement,
    kind: Kind,
    because: string,
    row: Record<string, string>,
    more = '',
  ): string => {
    told.add(one);
    const stem = createHash('sha256')
      .update(`${kind}\n${one.source}\n${one.text}\n${more}`)
      .digest('hex')
      .slice(0, 8);
    const times = (taken.get(stem) ?? 0) + 1;
    taken.set(stem, times);
    const id = times === 1 ? stem : `${stem}-${times}`;
    out.push({ id, kind, place: `${one.source}:${one.line}`, words: wordsOf(one), because, row });
    return id;
  };
  for (const one of draft.statements) {
    if (wanted && !wanted.has(one)) continue;
    const { said, area } = one;
    const system = area ?? 'whole machine';
    const base = { chapter: to.chapter, date: to.date };
    const fault = said.get('fault');
    if (fault) {
      const slugged = slug(short(one, 5, fault)) || 'fault';
      add(one, 'fault', fault, {
        file: slugged,
        title: capital(short(one, 7, fault)),
        system,
        symptom: wordsOf(one),
        severity: severityOf(one.text, area),
        ...base,
      });
      if (said.has('put off'))
        add(one, 'put off', said.get('put off') ?? '', {
          fault: slugged,
          ...base,
          text: wordsOf(one),
          review: '',
        });
      if (said.has('cured'))
        add(one, 'finding', said.get('cured') ?? '', {
          fault: slugged,
          what: 'cured',
          ...base,
          text: wordsOf(one),
        });
      else if (said.has('tried'))
        add(one, 'finding', said.get('tried') ?? '', {
          fault: slugged,
          what: 'tried',
          ...base,
          text: wordsOf(one),
        });
    } else if (said.has('put off'))
      add(one, 'put off', said.get('put off') ?? '', { fault: '', ...base, text: wordsOf(one), review: '' });
    else if (said.has('tried'))
      add(one, 'finding', said.get('tried') ?? '', { fault: '', what: 'tried', ...base, text: wordsOf(one) });
    const off = one.deed
      ? /^(?:Take the (.+) (?:off|out|apart)|(Remove|Drain|Disconnect|Slacken|Loosen) (?:the )?(.+))$/.exec(
          one.deed,
        )
      : null;
    if (off) {
      const what = capital(off[1] ?? off[3] ?? '');
      const action =
        off[2] === 'Drain'
          ? 'drained'
          : off[2] === 'Disconnect'
            ? 'disconnected'
            : /^(?:Slacken|Loosen)$/.test(off[2] ?? '')
              ? 'loosened'
              : 'removed';
      add(one, 'refit', one.deed ?? '', {
        line: slug(what) || 'part',
        what,
        action,
        system,
        removed_in: to.chapter,
      });
    }
    if (said.has('measurement') && one.kind !== 'row') {
      const lengths = one.figures.filter(
        ({ unit, limit }) => /^(?:mm|in|thou|cm|V|bar)$/.test(unit) && !limit,
      );
      const [first] = lengths;
      const limit = one.figures.find((each) => each.limit && each.unit === first?.unit);
      if (first)
        for (const [at, each] of lengths.filter(({ unit }) => unit === first.unit).entries())
          add(
            one,
            'measurement',
            'a figure',
            {
              ...base,
              item: capital(short(one, 4)),
              position: lengths.length > 1 ? `reading ${at + 1}` : '',
              found: number(each.value),
              ...(limit ? { [limit.limit === 'min' ? 'min' : 'max']: number(limit.value) } : {}),
              unit: first.unit,
            },
            String(at),
          );
    }
    if (one.kind === 'row' && !one.head && one.cells) row(one, add, base, draft);
    if (said.has('part') && one.kind !== 'row') {
      const got = /ordered|ord'?d|on order/.test(one.text.toLowerCase())
        ? 'ordered'
        : said.get('part') === 'list' ||
            one.kind === 'task' ||
            /need|find|want|replace|buy/.test(said.get('part') ?? '')
          ? 'wanted'
          : 'arrived';
      const name = partName(one);
      add(one, 'part', said.get('part') ?? '', {
        part: slug(name) || 'part',
        name: capital(name),
        system,
        status: got,
        qty: '1',
      });
    }
    if (said.has('cost'))
      for (const [at, sum] of one.figures.filter(({ unit }) => isMoney(unit)).entries()) {
        const before = one.text.slice(0, Math.max(0, one.text.length)).toLowerCase();
        const near = nearText(one, sum.start);
        const kind = /post|freight|carriage|shipping/.test(near)
          ? 'freight'
          : /duty|customs/.test(near)
            ? 'duty'
            : /\bfee\b/.test(near)
              ? 'fee'
              : /refund/.test(near)
                ? 'refund'
                : /\bsold\b/.test(before)
                  ? 'sale'
                  : 'part';
        add(
          one,
          'cost',
          said.get('cost') ?? '',
          {
            date: to.date,
            kind,
            item: capital(/freight|duty|fee/.test(kind) ? kind : partName(one)),
            amount: sum.value.toFixed(sum.unit === 'JPY' ? 0 : 2),
            currency: sum.unit,
            chapter: to.chapter,
          },
          String(at),
        );
      }
    if (said.has('thanks'))
      add(one, 'thanks', said.get('thanks') ?? '', {
        ...agreed(nameIn(one.text), to.named ?? []),
        kind: /\bpaid\b/.test(one.text.toLowerCase())
          ? 'paid'
          : /\b(?:lent|lend|lends|loan|borrowed)\b/.test(one.text.toLowerCase())
            ? 'loan'
            : /\b(?:gave|gift|donated)\b/.test(one.text.toLowerCase())
              ? 'gift'
              : 'help',
        what: wordsOf(one),
        chapters: to.chapter,
      });
    for (const figure of one.figures) {
      if (figure.unit === 'km/h' || figure.unit === 'mph')
        add(
          one,
          'road-test point',
          'a speed',
          { value: number(figure.value), unit: figure.unit, standing: 'indicated' },
          String(figure.start - one.start),
        );
    }
  }
  for (const [asked, statements] of open) {
    const [one] = statements;
    if (!one) continue;
    const { id, ask } = QUESTIONS[asked];
    out.push({
      id,
      kind: 'question',
      place: `${one.source}:${one.line}`,
      words: wordsOf(one),
      because: asked,
      row: {
        ask,
        asked_in: statements
          .slice(0, 12)
          .map(({ source, line }) => `${source}:${line}`)
          .join(', '),
        answer: '',
      },
    });
  }
  return { proposals: out, told };
}

type Add = (
  one: Statement,
  kind: Kind,
  because: string,
  row: Record<string, string>,
  more?: string,
) => string;

/** A table's row with headings such as "found" and "limit" is a measurement. */
function row(one: Statement, add: Add, base: { chapter: string; date: string }, draft: Draft): void {
  const head = draft.statements.find(
    (other) => other.kind === 'row' && other.head && other.source === one.source && other.line < one.line,
  );
  const columns = (head?.cells ?? []).map((cell) => cell.toLowerCase());
  const found = columns.findIndex((cell) => /found|measured|now|actual|reading/.test(cell));
  const limit = columns.findIndex((cell) => /limit|max|min|allowed/.test(cell));
  const figure = /^(?:about |~)?(-?[\d.,]+)\s*([a-zµ%°Ω/ ]+)?$/i.exec(one.cells?.[found] ?? '');
  if (found < 0 || !figure) return;
  const limits = /(min|max)?[^\d]*([\d.,]+)/i.exec(one.cells?.[limit] ?? '');
  add(one, 'measurement', 'a row of a table', {
    ...base,
    item: capital(one.cells?.[0] ?? ''),
    found: (figure[1] ?? '').replace(',', '.'),
    ...(limits
      ? { [limits[1]?.toLowerCase() === 'min' ? 'min' : 'max']: (limits[2] ?? '').replace(',', '.') }
      : {}),
    unit: figure[2]?.trim() || 'mm',
  });
}

const number = (value: number): string => String(Math.round(value * 1e6) / 1e6);
const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
const nearText = (one: Statement, at: number): string => {
  const here = at - one.start;
  const before = one.text
    .slice(Math.max(0, here - 26), here)
    .toLowerCase()
    .split(/[,;+]/)
    .at(-1);
  const after = one.text
    .slice(here, here + 34)
    .toLowerCase()
    .replace(/^\S+/, '')
    .split(/[,;+]| plus | and /)
    .at(0);
  return `${before ?? ''}${after ?? ''}`;
};

/** A few words that name a statement. */
function short(one: Statement, most: number, because = ''): string {
  const pieces = wordsOf(one).split(/[,;:!?]\s|\.\s|\s(?:and|but|so)\s/);
  const said =
    because === ''
      ? undefined
      : pieces.find((piece) => piece.toLowerCase().includes(because) && piece.split(' ').length > 1);
  const text = (said ?? wordsOf(one))
    .trim()
    .replace(/^(?:and|so|but|right|okay|ok|now|then|well|there's|there is|it's|that's|the|a|an)\s+/gi, '')
    .replace(/^(?:the|a|an|and|so)\s+/i, '');
  const words = (/^[^,;.:!?(]*/.exec(text)?.[0] || text).split(' ').slice(0, most);
  while (
    words.length > 1 &&
    /^(?:and|the|a|an|of|at|in|on|with|to|for|so|is|it|but|which|that|has|if|when)$/i.test(words.at(-1) ?? '')
  )
    words.pop();
  return (
    words
      .join(' ')
      .replace(/[^\p{L}\p{N} /'-]/gu, '')
      .trim() || 'As noted'
  );
}

function partName(one: Statement): string {
  const lower = wordsOf(one);
  const after =
    /(?:ordered:?|ord'd|bought:?|need(?:s|ed)?|find|on order|a pair of|a set of|picked up|wanted|get|replace|has the)\s+(?:me\s+)?(?:a new |new |a |an |the |two |\d+ |some |one )*([\p{L}' /-]{3,40})/iu.exec(
      lower,
    )?.[1];
  const name =
    (after ?? short(one, 4))
      .trim()
      .split(/\s+(?:for|at|from|and|is|to|of the|that|which|on|in|with|because)\b/)[0] ?? '';
  return name.split(' ').slice(0, 5).join(' ').trim() || short(one, 4);
}

/** A name behind or before the thanks; empty where none is said, so that the author writes it. */
function nameIn(text: string): string {
  const said =
    /\b(?:thanks to|thank you,?|thank|cheers,?(?: to)?|from|thanks)\s+(?!you\b|the\b|him\b|her\b|them\b|to\b|properly\b)([\p{L}][\p{L}.'-]*)/iu.exec(
      text,
    )?.[1] ??
    /(?:^|[\s,.])(\p{Lu}[\p{L}.]*)(?=:|\s+(?:lent|gave|sent|paid|drove|came|helped|lends|has|brought))/u.exec(
      text,
    )?.[1] ??
    '';
  return /^(?:the|he|she|they|it|who|that|everybody|all|for|and|i|we)$/i.test(said) ? '' : capital(said);
}

/** Somebody who has agreed before is named as in the register; of anybody else the author has to ask. */
function agreed(name: string, named: readonly string[]): { name: string; consent: string } {
  const known = named.find(
    (full) => name.length > 2 && full.toLowerCase().split(' ').includes(name.toLowerCase()),
  );
  return known ? { name: known, consent: 'yes' } : { name, consent: '' };
}

function severityOf(text: string, area: string | undefined): string {
  const lower = text.toLowerCase();
  if (/no driving|not to be driven|do not drive|to the floor|no brake/.test(lower)) return 'do not drive';
  return area === 'brakes' ||
    area === 'wheels' ||
    area === 'front end' ||
    (area === 'fuel' && /leak|weep|drip|smell/.test(lower))
    ? 'do not drive'
    : area === 'body' || /wiper|horn|lamp|seat|door/.test(lower)
      ? 'nuisance'
      : 'drive with care';
}
