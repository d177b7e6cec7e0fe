/** "17 mm free and it should be 18", "twelve hundredths, and the book wants six to ten": a bare number takes the unit of the figure that it is set against. */
import { type Candidate, known } from './figure.ts';
import type { Leaning } from './leaning.ts';
import { inFull } from './said.ts';
import { at, joins, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

/** Words that a reading stands behind. */
const READS =
  /^(?:is|was|are|were|be|been|being|reads?|reading|says?|said|wants?|wanted|wanting|limit|limits|min|max|minimum|maximum|get|gets|got|getting|find|found|measures?|measured|measuring|show|shows|showed|showing|had|have|has|having|make|makes|made|give|gives|gave|given|go|goes|went|going|from|to|than|between|and|or|at|now|then|call|it|it's|that's|thats|its|they're|there's|down|up|under|over|nearly|allows?|allowed|comes?|came|new|old|left|right|top|bottom|middle|centre|center|front|rear|back|inside|outside|inner|outer|side|lead|leading|trail|trailing|other|inlet|exhaust|nearside|offside|near|reckon|reckons|reckoned|only|just|like|until|till|after|before|exactly|need|needs|needed|want|not|no|took|takes|ought|standard|nominal|original|started|start|worn|settled|held|holds|drops?|dropped|fell|rose|climbed|risen|left-hand|right-hand|one|two|three|four|five|six|second|third|first|reach|reached|say|spec|specification|book|figure|tolerance|supposed|read)$/;
/** The strongest of them: what follows is set against a figure. */
const AGAINST = /^(?:be|wants?|wanted|limit|limits|min|max|minimum|maximum|says?|said|allows?|allowed|reads?|than|between|from|to|not|spec|was|standard|nominal|goes|shows?|showed|reckoned|measures?|measured|get|got)$/;
/** Between the two: "it should be about", "the limit is only". */
const LOOSE = /^(?:about|around|only|just|roughly|nearly|say|exactly|a|the|to|be|of|more|like|maybe|well|still|really|at|actually|probably|another|than|or|:|=|~|±|\(|min|max)$/;
/** What may follow a figure that carries no unit of its own. */
const MAY_FOLLOW =
  /^(?:[.,;:!?)|/–—+&(-]|inside|outside|and|or|at|on|in|so|but|to|when|with|without|is|was|the|cold|hot|warm|front|rear|left|right|too|all|indicated|now|then|before|after|by|which|it|if|i|that|that's|this|for|as|there|here|from|than|where|while|because|since|until|till|each|either|both|every|again|dead|new|old|max|min|maximum|minimum|limit|not|no|yes|who|what|we|you|he|she|they|it's|i'm|i've|i'd|there's|he's|we've|they're|or|odd|ish|plus|less|instead|rather|only|just|exactly|though|still|even|across|along|down|up|off|out|over|under|near|nearly|about|side|goes|says|reads|wants|would|should|could|will|can|may|must|top|middle|bottom|centre|inner|outer|book|has|had|have|were|are|be|goes|went|afterwards|today|yesterday|tonight|overnight|per|also|okay|ok|right|free|measured|nominal|standard|total|unloaded|loaded|fully|ignition|engine|idling|tickover|leading|trailing|lead|trail|o\/s|n\/s|l\/h|r\/h)$/;
/** Readings do not count nouns: "four bolts", "ten strokes". */
const COUNTS =
  /^(?:of|off|times|bolt|screw|nut|strand|stud|plate|pair|click|day|week|month|year|people|mile|seat|wire|pull|kick|coat|drop|link|seal|spring|gear|hole|way|end|bit|piece|hundred|thousand|more|o'clock|am|pm|stroke|speed|wheel|wheeled|legged|pot|cylinder|pin|post|start|sided|spanner|socket|weight|grade|core|ply|stage|spoke|hex|jaw|lobe|feet|men|children|teeth|threads?|inch)$/;

/** Units that are never lent over a distance. */
const OWN = /^(?:ratio|%|h|min|s|d|week|month|year|click|m|km|mi|kg|pitch|hp|W|A|Ah|Shore|mm2)$/;

interface Source {
  unit: string;
  value: number;
  token: number;
  part?: number;
}

export function carryUnits(tokens: readonly Token[], all: readonly Candidate[], leaning: Leaning): void {
  const named = namedUnits(tokens);
  let firstName = 0;
  for (const [i, one] of all.entries()) {
    if (one.unit !== '' || (one.value === 1 && one.word && !one.decimal)) continue;
    while (firstName < named.length && (named[firstName]?.token ?? 0) < one.from - 60) firstName += 1;
    const fits = standing(tokens, one);
    if (fits === 'no') continue;
    const source = nearest(tokens, all, i, fits, leaning) ?? headed(tokens, named, firstName, one, fits);
    if (!source) continue;
    if (source.part !== undefined && source.part >= 10 && !one.decimal && !one.fraction && one.value >= 1 && source.value < 1) {
      one.value /= source.part;
      one.digits = inFull(one.value);
      one.part = source.part;
    } else settlePair(one, source.value);
    one.unit = source.unit;
    one.shared = true;
    one.carried = true;
  }
}

/** "fifty four oh five" beside 53.93 mm is 54.05. */
function settlePair(one: Candidate, beside: number): void {
  if (!one.pair) return;
  const decimals = one.pair.high + one.pair.low / 100;
  if (Math.abs(Math.log(decimals / beside)) < Math.abs(Math.log(one.value / beside))) {
    one.value = decimals;
    one.digits = decimals.toFixed(2);
    one.decimal = true;
  }
}

type Standing = 'no' | 'weak' | 'reads' | 'against';

function standing(tokens: readonly Token[], one: Candidate): Standing {
  const next = tokens[one.to];
  const after = next && next.gap <= 1 ? next.text : '';
  if (after !== '' && (COUNTS.test(after) || COUNTS.test(after.replace(/e?s$/, '')))) return 'no';
  if (after === '-' && joins(tokens, one.to) && joins(tokens, one.to + 1) && tokens[one.to + 1]?.kind === 'word') return 'no';
  const plural = next?.kind === 'word' && next.gap <= 1 && after.length > 3 && /[^s]s$/.test(after) && !MAY_FOLLOW.test(after);
  if (plural && !one.decimal) return 'no';
  if (next?.kind === 'word' && next.gap === 0) return 'no';
  let k = one.from - 1;
  let strong = false;
  for (let steps = 0; steps < 4 && k >= 0 && LOOSE.test(at(tokens, k)); steps++, k--) if (AGAINST.test(at(tokens, k))) strong = true;
  const word = at(tokens, k);
  const apart = (tokens[k + 1]?.gap ?? 3) >= 2;
  if (!apart && AGAINST.test(word)) strong = true;
  const follows = after === '' || MAY_FOLLOW.test(after) || next?.kind === 'sign' || next?.kind === 'number';
  if (one.decimal) return strong ? 'against' : 'reads';
  if (!follows && !(strong && next?.kind === 'word')) return 'no';
  const small = one.word && one.value <= 4 && !one.fraction && !one.pair;
  if (small) return strong && follows ? 'against' : 'no';
  if (strong) return follows ? 'against' : 'weak';
  if (!apart && (READS.test(word) || /^[,/:=–—(|+-]$/.test(word))) return 'reads';
  return apart && follows ? 'weak' : 'no';
}

/** The figure nearest by words whose size fits. Stops and line ends count as distance. */
function nearest(tokens: readonly Token[], all: readonly Candidate[], i: number, fits: Standing, leaning: Leaning): Source | undefined {
  const one = all[i];
  if (!one) return undefined;
  const reach = one.decimal ? 45 : fits === 'against' ? 32 : fits === 'reads' ? 18 : 6;
  let best: { source: Source; far: number } | undefined;
  for (const way of [-1, 1]) {
    for (let k = i + way, seen = 0; k >= 0 && k < all.length && seen < 6; k += way, seen++) {
      const other = all[k];
      if (!other) break;
      const far = way < 0 ? distance(tokens, other.to, one.from) : distance(tokens, one.to, other.from) * 1.4 + 2;
      if (far > reach || (best && far >= best.far)) break;
      if (!known(other) || MONEY.has(other.unit) || !lends(one, other, fits, far)) continue;
      best = { far, source: { unit: other.unit, value: other.value, token: other.from, ...(other.part === undefined ? {} : { part: other.part }) } };
      break;
    }
  }
  void leaning;
  return best?.source;
}

function lends(one: Candidate, other: Candidate, fits: Standing, far: number): boolean {
  if (OWN.test(other.unit) && !(fits === 'against' && far < 9) && far > 3) return false;
  if (/^(?:ratio|pounds\?|teeth|turn|click)$/.test(other.unit) && (one.decimal || fits !== 'against' || far > 14)) return false;
  const part = other.part !== undefined && other.part >= 10 && other.value < 1 && !one.decimal && !one.fraction;
  const size = part ? other.value * (other.part ?? 1) : other.value;
  const own = one.pair ? closest(one, size) : one.value;
  const scale = Math.abs(own / size);
  const span = one.decimal ? 6 : fits === 'against' ? 4 : 2.2;
  if (one.decimal && other.unit === 'rpm') return false;
  return scale < span && scale > 1 / span;
}

const closest = (one: Candidate, size: number): number => {
  const decimals = (one.pair?.high ?? 0) + (one.pair?.low ?? 0) / 100;
  return Math.abs(Math.log(decimals / size)) < Math.abs(Math.log(one.value / size)) ? decimals : one.value;
};

function distance(tokens: readonly Token[], from: number, to: number): number {
  let far = 0;
  for (let k = from; k <= to && far < 60; k++) {
    const token = tokens[k];
    if (!token) continue;
    if (k < to) far += token.kind === 'sign' ? (/^[.!?;]$/.test(token.text) ? 6 : 0.5) : 1;
    if (token.gap >= 2) far += token.gap === 3 ? 7 : 3;
  }
  return far;
}

/** Units that head a column or a list without a number: "all in mm:", "| found (mm) |". */
function namedUnits(tokens: readonly Token[]): Source[] {
  const out: Source[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const unit = HEADING.get(at(tokens, i));
    if (!unit) continue;
    const before = at(tokens, i - 1);
    const after = at(tokens, i + 1);
    const heads = (/^(?:in|all|readings|figures|\(|\[|,)$/.test(before) && /^(?:[)\]:,.;|]|)$/.test(after)) || (before === 'in' && /^(?:all|the|top|front|left|now)$/.test(after) && unit !== 'in');
    if (heads) out.push({ unit, value: 0, token: i });
  }
  return out;
}

const HEADING: ReadonlyMap<string, string> = new Map([
  ...(['mm', 'cm', 'thou', 'bar', 'psi', 'rpm'] as const).map((unit): [string, string] => [unit, unit]),
  ['millimetres', 'mm'],
  ['millimeters', 'mm'],
  ['volts', 'V'],
  ['v', 'V'],
  ['inches', 'in'],
  ['nm', 'N m'],
]);

function headed(tokens: readonly Token[], named: readonly Source[], from: number, one: Candidate, fits: Standing): Source | undefined {
  for (let k = from; k < named.length; k++) {
    const source = named[k];
    if (!source || source.token > one.from) return undefined;
    const cell = /^(?:[|:/,])?$/.test(at(tokens, one.from - 1)) || joins(tokens, one.from, 2) === false;
    if (one.decimal || (fits !== 'weak' && cell)) return source;
  }
  return undefined;
}
