/** Sums of a statement as rows of the ledger: what each was for, how many, and the total. */
import { isMoney, type Statement } from '../../draft.ts';
import type { TaggedWord } from '../../say/words.ts';
import { COUNTS, capital, isMeasureWord, type Noun, nounsIn, solid } from './nouns.ts';

export interface Sum {
  kind: string;
  /** What was paid for; empty where no thing is named. */
  item: string;
  qty?: number;
  /** Of the whole row. */
  amount: string;
  currency: string;
  supplier?: string;
  /** Index among the statement's sums. */
  at: number;
}

const KINDS: readonly (readonly [kind: string, words: RegExp])[] = [
  ['refund', /\b(?:refund(?:ed)?|money back|paid (?:me )?back)\b/],
  ['freight', /\b(?:post|postage|posted|freight|carriage|shipping|delivery|courier|p ?& ?p)\b/],
  ['duty', /\b(?:duty|customs|import tax)\b/],
  ['fee', /\b(?:fees?|handling|commission|for having collected|for collecting|card charge)\b/],
];
const TOOLS =
  /\b(?:wrench|spanners?|compressor|drill|gauge|puller|hammer|socket|sockets|multimeter|reamer|micrometer|calipers?|charger|grinder|vice|trolley jack|axle stands?|soldering iron)$/i;
const CONSUMED =
  /\b(?:oil|grease|petrol|fuel|paint|primer|thinners|rags?|sandpaper|emery|fluid|dot 4|cleaner|antifreeze|coolant|gloves|masks?|solder|flux|sealant|tape|heatshrink|cotton|soda|acid|paste|polish|undercoat|rust remover|copper grease)\b/i;

/** A sum as fields of the ledger. */
export const costRow = (
  { kind, item, qty, amount, currency, supplier }: Sum,
  { chapter, date }: { chapter: string; date: string },
): Record<string, string> => ({
  date,
  kind,
  item,
  ...(qty ? { qty: String(qty) } : {}),
  amount,
  currency,
  ...(supplier ? { supplier } : {}),
  chapter,
});

/** What a sum was for, by the words around it and the thing's name: freight, duty, a tool … */
export function costKind(words: string, name: string, otherwise: 'part' | 'sale' = 'part'): string {
  const told = words.toLowerCase().replace(POST_WITHIN, ' ');
  const kind = KINDS.find(([, pattern]) => pattern.test(told))?.[0] ?? otherwise;
  if (kind !== 'part') return kind;
  if (TOOLS.test(name)) return 'tool';
  return CONSUMED.test(name.replace(NAMED_AFTER, ' ')) ? 'consumable' : 'part';
}

/** "650 with the post in it" is no freight. */
const POST_WITHIN =
  /\b(?:with(?: the)?|incl(?:\.|uding|usive of)?(?: the)?|and(?: the)?) (?:post|postage|freight|carriage|shipping|delivery)(?: in it| in| included| paid)?\b|\b(?:post|postage|freight|carriage|shipping|delivery)(?: is| was)? (?:incl(?:uded|\.)?|paid|free|in it)(?=\W|$)/g;
/** Called after what runs through it or stands in it, and no such thing itself. */
const NAMED_AFTER =
  /\b(?:grease (?:nipples?|guns?|caps?)|oil (?:seals?|filters?|caps?|pumps?|cans?|pipes?)|fuel (?:pipes?|hoses?|taps?|pumps?|lines?|filters?|caps?)|petrol (?:pipes?|hoses?|taps?|caps?)|paint ?brush(?:es)?|coolant (?:hoses?|caps?)|brake fluid reservoirs?|acid bottles?)\b/gi;

/** A sum of sums, or what is left to spend. */
const TOTAL =
  /\b(?:all in all|in all|total|altogether|money for|comes? to|came to|so far|in the tin|tin says|left over|budget|all told|call it|sum tonight|month|year)\b/;
/** Who or where it was bought is not what was bought. */
const SELLERS =
  /^(?:bank|card|bill|man|woman|lady|lad|shop|club|stores?|carrier|sale|jumble|stall|counter|quote|reader|uncle|aunt)s?$/;

const EACH =
  /^\s*(?:each|ea\b|apiece|a ?piece|per\b|a (?:metre|meter|litre|foot|pair|kilo)|the metre|\/ ?(?:m|ea|pc)\b)/;

/** `text` is the statement as long as it stands in its source; figures' places count from `one.start`. */
export function sumsOf(
  one: Statement,
  text: string,
  words: readonly TaggedWord[],
  before: readonly { text: string }[],
): Sum[] {
  const sums = one.figures.filter(({ unit }) => isMoney(unit));
  // Who sold it is no thing that was paid for.
  const nouns = solid(nounsIn(words, text)).filter(
    ({ start }) =>
      !/\b(?:from|by|out of|at) (?:the |a |his |her |my |our )?$/i.test(
        text.slice(Math.max(0, start - 14), start),
      ),
  );
  const out: Sum[] = [];
  const used = new Set<Noun>();
  for (const [at, sum] of sums.entries()) {
    const start = sum.start - one.start;
    const end = sum.end - one.start;
    const from = at === 0 ? 0 : (sums[at - 1]?.end ?? 0) - one.start;
    const until = sums[at + 1] ? (sums[at + 1]?.start ?? 0) - one.start : text.length;
    const cut = lastCut(text.slice(from, start));
    const left = text.slice(from + cut, start).toLowerCase();
    const right =
      /^[^,;+]*?(?=[,;+.]|\bplus\b|\band\b|$)/.exec(text.slice(end, until).toLowerCase())?.[0] ?? '';
    const last = out.at(-1);
    // "5.5 m at 2.10 = 11.55": what it came to is the row's amount.
    if (/=\s*[£€$¥]?\s*$/.test(left)) {
      if (last && sums[at - 1]?.unit === sum.unit && /(?:\bat|@|\bx|×|\/)/.test(text.slice(0, from)))
        last.amount = sum.value.toFixed(sum.unit === 'JPY' ? 0 : 2);
      continue;
    }
    if (TOTAL.test(left)) continue;
    const sold =
      /\bsold\b/.test(text.slice(0, start).toLowerCase()) && !/\b(?:bought|ordered|me)\b/.test(left);
    const kind = costKind(`${left} | ${right}`, '', sold ? 'sale' : 'part');
    const within = nouns.filter((noun) => noun.start >= from && noun.end <= start && !used.has(noun));
    const here = within.filter((noun) => noun.start >= from + cut);
    const behind = nouns.filter((noun) => noun.start >= end && noun.end <= end + right.length + 1);
    const named = /^\s*for\b/.test(right)
      ? (chiefOf(here, text) ?? chiefOf(behind, text))
      : (chiefOf(here, text) ?? chiefOf(within, text) ?? behind[0]);
    const thing =
      named && !(isMeasureWord(named.head) && !/ /.test(named.text)) && !SELLERS.test(named.head)
        ? named
        : undefined;
    if (thing) used.add(thing);
    const again = /\b(?:ones?|them|it|pair|set|two|three|four)\b/.test(left);
    const meant = before.at(again ? 0 : -1)?.text ?? '';
    const name =
      (thing && wholeName(thing, text)) ??
      (kind === 'part' || kind === 'sale'
        ? meant !== '' && again
          ? meant
          : asSaid(text.slice(from + cut, start)) || meant
        : '');
    const priced = EACH.test(text.slice(end).toLowerCase());
    const count =
      thing?.count ?? times(thing?.text ?? '') ?? countOf(left, right, priced ? text.slice(end, until) : '');
    const each = priced || (/(?:\bat|@)\s*(?:about\s*)?[£€$]?$/.test(left.trimEnd()) && (count ?? 1) > 1);
    const total = each && count ? sum.value * count : sum.value;
    const supplier =
      /\bfrom (?:the )?([\p{L}][\p{L}' ]{2,28}?)(?=[,.;:+]|$|\s(?:for|at|plus|and|in|with)\b)/iu.exec(
        text,
      )?.[1];
    out.push({
      kind: kind === 'part' ? costKind('', name) : kind,
      item: /freight|duty|fee/.test(kind) ? capital(kind === 'freight' ? 'Postage' : kind) : capital(name),
      ...(count !== undefined && count > 1 && !/freight|duty|fee/.test(kind) ? { qty: count } : {}),
      amount: total.toFixed(sum.unit === 'JPY' ? 0 : 2),
      currency: sum.unit,
      ...(supplier &&
      !/^(?:me|him|her|them|it|us|there|the drawer|last|before|jar|pocket|his pocket|her pocket|drawer|tin|card|christmas)\b/i.test(
        supplier,
      )
        ? { supplier: capital(supplier.trim()) }
        : {}),
      at,
    });
  }
  return out;
}

/** "lamp glass x2" is two. */
const times = (name: string): number | undefined => {
  const found = /\s[x×](\d{1,3})$/i.exec(name)?.[1];
  return found === undefined ? undefined : Number(found);
};

const OF_SEVERAL = /^ of (?:the |a )?[\p{L} -]+(?:, [\p{L} -]+)*(?: and [\p{L} -]+)?(?=[,.;:]|$)/u;

/** The thing with what its set is made of, without its count: "Repair set of bearing, spindle and seal". */
function wholeName(thing: Noun, text: string): string {
  const behind = text.slice(thing.end);
  const set = /^ (?:set|kit)s?(?= of\b)/.exec(behind)?.[0] ?? '';
  const several = set !== '' || /^(?:set|kit)s?$/.test(thing.head);
  const of = several ? `${set}${OF_SEVERAL.exec(behind.slice(set.length))?.[0] ?? ''}` : '';
  return `${thing.text}${of.length < 60 ? of : ''}`.replace(/\s[x×]\d{1,3}$/i, '');
}

const AMOUNT_OF =
  /\b(?:pair|set|bag|box|tin|can|bottle|tube|roll|length|sheet|pack|packet|litre|metre|m|l|kilo|kg|half|couple|foot|feet|centimetres|millilitres|ml|cm)s? of (?:the |new |old )?$/i;
const ASIDE =
  /(?:^|\s)(?:from|by|out of|at|in|on|off|over|across|around|near|with|w\/?|under|behind|between|since|until|till|to|of|like|about|as|into) (?:the |a |an |his |her |my |our |that |this |its )?$/i;

/** What a sum is for: what stands before a colon, else the first thing that is no place, source or addition. */
function chiefOf(nouns: readonly Noun[], text: string): Noun | undefined {
  const written = /\p{Ll}/u.test(text) && /\p{Lu}/u.test(text);
  const things = nouns.filter(
    ({ head, end, text: name }) =>
      !SELLERS.test(head) &&
      !(
        written &&
        end < text.length &&
        /^\p{Lu}\p{Ll}+$/u.test(name) &&
        !/^(?:new|old)\b/i.test(name) &&
        text.indexOf(name) > 0
      ),
  );
  const labelled = things.find(({ end }) => /^[^,;.]{0,14}:\s/.test(text.slice(end)));
  const main = things.filter(({ start }) => {
    const before = text.slice(Math.max(0, start - 24), start);
    return AMOUNT_OF.test(before) || !ASIDE.test(before);
  });
  return labelled ?? main.find(({ head }) => !isMeasureWord(head)) ?? main[0] ?? things.at(-1);
}

/** Behind a comma, more of the same thing: "hose, 6 mm bore", "drum, used", "pistons, with rings". */
const GOES_ON =
  /^(?:with|in|from|for|at|on|used|tested|turned|delivered|to|as|which|that|who|by|long|short|wide|black|red|green|blue|brown|white|both|cut|collected|inner|outer|plus quarter|half|the pair|\d[\d.,]* ?(?:mm|cm|m|l|litres?|ml|v|a|w|ah|kg|g|in|sheets?|pieces?|way|off)\b)/i;

/** Where the words for the next sum begin: behind the last stop, or a comma with words behind it. */
function lastCut(text: string): number {
  const found = [
    ...text.matchAll(/[;+]|[.:] |, (?=\p{L}|\d+ \p{L})|\bplus\b|\band (?=(?:an?|one|two|\d+|the|order)\b)/gu),
  ];
  for (const one of found.reverse()) {
    const at = one.index + one[0].length;
    if (/\b(?:set|kit)s? of [\p{L} ,]*$/u.test(text.slice(0, one.index))) continue;
    if (one[0].startsWith(',') && GOES_ON.test(text.slice(at))) continue;
    // A comma right before the sum parts it from its own thing.
    if (/\p{L}{3}/u.test(text.slice(at).replace(/\b(?:for|at|about|was|were|and|paid|cost)\b/g, '')))
      return at;
  }
  return 0;
}

/** The words before a sum as they stand, where they name no thing that is known: "10 m of 2.5 mm2 red". */
function asSaid(text: string): string {
  const bare = text
    .replace(/^[\s,;:.+&-]+/, '')
    .replace(/[\s,;:.@(-]*(?:\b(?:for|at|was|were|cost|costs|paid|came to|is|about|a|the)\b[\s,]*)*$/i, '')
    .replace(/^(?:and|plus|then|also|ordered|bought|paid|another|i|we)\b:?\s*/i, '')
    .trim();
  return /^\d.*\p{L}{3}|\p{L} of /u.test(bare) && bare.split(/\s+/).length <= 6 ? bare : '';
}

/** "x5", "four of them", "for the two". */
function countOf(left: string, right: string, after: string): number | undefined {
  const said =
    /\b(\w+) of (?:them|those)\b/.exec(left)?.[1] ??
    /(?<!\d ?)(?:\bx|×) ?(\d{1,3})\b/.exec(left)?.[1] ??
    /\b(\d{1,3}) ?m(?:et(?:re|er)s?)? of\b/.exec(/^\s*(?:a|per|the) met/.test(right) ? left : '')?.[1] ??
    /\b(\d{1,3})(?: off| of them| ?x)\b/.exec(left)?.[1] ??
    /\b(\w+) of them\b/.exec(after.toLowerCase())?.[1] ??
    /\bfor (?:the |all )?(two|three|four|five|six|eight)\b/.exec(right)?.[1];
  if (said === undefined) return undefined;
  return COUNTS.get(said) ?? (/^\d+$/.test(said) ? Number(said) : undefined);
}
