/** "The water was at 74 degrees … Water 81": a bare number goes by the thing that it is said of, where the text has measured that thing in one unit. */
import { type Candidate, known } from './figure.ts';
import { standingOf } from './standing.ts';
import { at, type Token } from './tokens.ts';
import { MONEY } from './unit-words.ts';

/** What is measured in many ways, and what is no thing. */
const NO_THING = new Set(
  `about after again against all also and another around because before behind below beside between book bottom both could does done down each either else end ends even every exactly first four front from gets give gives good have here inside into it's just last left less like made make makes maybe measured more most near nearly need never next nothing now once only other outside over past perhaps place rather read reads rear right roughly said same says second should show shows side some still take takes than that that's their them then there there's these they thing third this three through till time times today too top twice under until upon want wants week well were what when where which while with without works would your`.split(
    ' ',
  ),
);
const isThing = (token: Token | undefined): boolean =>
  token?.kind === 'word' && token.text.length > 3 && !NO_THING.has(token.text);

interface Measured {
  unit: string;
  values: { value: number; decimal: boolean }[];
}

export function settleAnchored(tokens: readonly Token[], all: readonly Candidate[], speech: boolean): void {
  let things: Map<string, Measured> | undefined;
  for (const one of all) {
    if (one.unit !== '' || one.fraction || one.pair || (one.word && one.value < 5)) continue;
    const names = thingsAt(tokens, one);
    if (names.length === 0 || standingOf(tokens, one, speech) === 'no') continue;
    things ??= thingsMeasured(tokens, all);
    for (const name of names) {
      const found = things.get(name);
      if (!found || found.unit === '' || !found.values.some((other) => like(other, one))) continue;
      one.unit = found.unit;
      one.shared = true;
      one.carried = true;
      break;
    }
  }
}

const like = (a: { value: number; decimal: boolean }, b: Candidate): boolean =>
  a.value / b.value < 2 && b.value / a.value < 2 && (a.decimal || !b.decimal);

/** "Water 81", "97 on the tank". */
function thingsAt(tokens: readonly Token[], one: Candidate): string[] {
  const before = tokens[one.from - 1];
  const out: string[] = [];
  if (before && isThing(before) && (tokens[one.from]?.gap ?? 3) < 2) out.push(before.text);
  if (/^(?:on|at|in|by)$/.test(at(tokens, one.to)) && at(tokens, one.to + 1) === 'the') {
    const after = tokens[one.to + 2];
    if (after && isThing(after)) out.push(after.text);
  }
  return out;
}

function thingsMeasured(tokens: readonly Token[], all: readonly Candidate[]): Map<string, Measured> {
  const out = new Map<string, Measured>();
  for (const one of all) {
    if (!known(one) || one.carried || MONEY.has(one.unit)) continue;
    const note = (token: Token): void => {
      if (!isThing(token)) return;
      const text = token.text.replace(/['’]s$/, '');
      const before = out.get(text);
      if (!before) out.set(text, { unit: one.unit, values: [one] });
      else if (before.unit === one.unit) before.values.push(one);
      else before.unit = '';
    };
    // Within its clause
    for (let k = one.from - 1; k >= one.from - 6; k--) {
      const token = tokens[k];
      if (!token || (tokens[k + 1]?.gap ?? 3) === 3 || /^[,.!?;:()]$/.test(token.text)) break;
      note(token);
    }
    for (let k = one.to; k < one.to + 4; k++) {
      const token = tokens[k];
      if (!token || token.gap === 3 || /^[,.!?;:()]$/.test(token.text)) break;
      note(token);
    }
  }
  return out;
}
