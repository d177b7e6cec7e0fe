/**
 * Speech as prose: what is said while thinking is left out, and commas stand where clauses meet. No other word is touched; what is left
 * out stays in the source, and its place has the home of the words round it.
 */

/** Said to begin with, and meaning nothing where more follows. */
const OPENERS =
  /^(?:okay|ok|right|alright|all right|anyway|anyhow|oh|ah|yeah|you know|i mean|you see|basically|well|so|and|now)(?:,? (?:then|so|well|now|yeah|okay|right))?,?\s+/i;
/** What must follow an opener for it to be one: "right side", "so tight" and "well worn" are none. */
const BEGINS =
  /^(?:i|i'm|i've|i'll|i'd|we|we're|we've|we'll|it|it's|he|he's|she|she's|they|they're|you|you're|you've|that|that's|this|there|there's|here|here's|these|those|what|what's|how|the|a|an|my|his|her|our|their|your|if|when|where|once|before|after|first|next|today|then|let's|lets|to|on|at|behind|underneath|inside|both|all|one|another|some|nothing|somebody|anybody|okay|ok|right|alright|anyway|well|yeah|you know|i mean|so|now|oh|evening|morning|hello|not|no|with|in|for|because|another|new|same|every|each|take|put|get|give|keep|mind|don't)\b/i;
const SOFT = /^(?:so|and|now)\b/i;
/** "Right angle", "well the other": what an opener may not be parted from. */
const NOT_OPENING =
  /^(?:so (?:far|much|many|long|that(?!'))\b|now (?:and|it|it's)\b|right (?:side|hand|one|front|rear|way|up|down|round|through|at|on|in|off|away|out|back|into|to|across|under|over|behind|here|there)\b|well (?:worn|used|known|\w+ed|in|to|on|inside|before|after|over|with|not|and)\b|and (?:no|not|not|with|in|for|a|an|to|another|new|the same|one|all|both|on|at)\b(?! i\b)|(?:okay|ok) (?:to|for|with|if|in|on|at)\b|all right (?:to|for|with|in|on|at)\b)/i;

const CLOSERS =
  /[,\s]+(?:you know|you see|i mean|sort of|kind of|or whatever|and so on|and that|and so|and|but|so|okay|ok|yeah|um|uh)[.,]?$/i;
/** "The impeller's okay": the word is what is said of it. */
const NEEDS_MORE =
  /(?:'s|'re|\b(?:a|the|some|this|what|of|and|on|in|is|are|was|were|looks?|looked|feels?|felt|be|it's|all|not|seems?|kept))$/i;
const MIDDLE =
  /(?<=[\p{L}\p{N}\ufdd1]) (?:you know|i mean)(?= (?:it|it's|the|i|i'm|we|they|that|that's|there|you)\b)/giu;
const TWICE =
  /\b(the|a|an|i|i'm|i've|it's|it|and|that's|so|we|my|you|but|they|he|she|there's|because|if|when|this is|it is|there is)(?:,? \1)+\b/gi;

/** `begins` is false where the words go on with the sentence before, `ends` where the next goes on with them. */
export function spokenText(text: string, begins: boolean, ends: boolean): string {
  let out = text.replace(TWICE, '$1').replace(MIDDLE, '');
  for (let n = 0; begins && n < 3; n++) {
    const found = OPENERS.exec(out);
    const rest = found ? out.slice(found[0].length) : '';
    if (!found || NOT_OPENING.test(out) || words(rest) < 3) break;
    if (SOFT.test(found[0]) && !BEGINS.test(rest)) break;
    if (/^(?:right|well|okay|ok|oh|ah)\b/i.test(found[0]) && !BEGINS.test(rest) && words(rest) < 5) break;
    out = rest;
  }
  for (let n = 0; ends && n < 2; n++) {
    const rest = out.replace(CLOSERS, '');
    if (rest === out || words(rest) < 3 || NEEDS_MORE.test(rest)) break;
    out = rest;
  }
  return withCommas(withStops(out));
}

const words = (text: string): number => text.split(/\s+/).filter((one) => /[\p{L}\p{N}]/u.test(one)).length;

/** "I checked the rod it's right": a new sentence where nothing leads over to it. */
const ANEW =
  / (?=(?:it's|it isn't|it wasn't|it won't|it doesn't|there's|there isn't|they're|i'm not)(?! (?:in|on|off|at|from|for|to)(?: |$)) )/giu;
const LEADS_OVER =
  /(?:^|\s)(?:that|think|thought|say|said|says|bet|if|so|and|but|because|cause|cos|when|like|know|see|sure|hope|what|where|how|as|than|reckon|suppose|means?|with|the|a|an|which|who|why|until|till|while|before|after|once|since|unless|though|although|whether|or|not|of|to|is|was|then|now|yes|no|oh|well|guess|believe|swear|afraid|course|maybe|perhaps|anyway|all|everything|anything|whatever|time|tell|told|first|just|only|check|checked|checking|ensure|feel|felt|hear|heard|watch|meant|mind|notice|noticed|find|found|want|show|shows|doubt|pray|forget|remember|realised?|reason|moment|minute|day|way|part|place|point|day|look|looks|proves?|hoping|wish)$/i;

function withStops(text: string): string {
  return text.replace(ANEW, (found, at: number) => {
    const before = text.slice(0, at);
    const clause = before.slice(before.search(/[^.,;:!?–—]*$/u));
    if (
      words(clause) < 3 ||
      words(text.slice(at)) < 3 ||
      LEADS_OVER.test(before) ||
      /[.,;:!?–—]$/.test(before)
    )
      return found;
    return '. ';
  });
}

/** "and it", "but the": a clause of its own, where enough stands before it. */
const MEETS =
  / (?:but (?=\p{L})|(?:and|so) (?=(?:i|we|it|he|she|they|there|you|that)(?:'(?:s|m|ve|ll|re|d))? \p{L})|and (?=(?:the|my|his|this|one) [\p{L}-]+ (?:is|isn't|was|wasn't|has|hasn't|wants|won't|are|were|came|went)\b)|which (?=(?:is|was|isn't|has|i|it|took|means)\b))/giu;
const NOT_BEFORE =
  /\b(?:and|or|is|was|not|be|are|ever|even|do|did|in|of|to|on|from|by|with|nothing|all|anything|up|just)$/i;

function withCommas(text: string): string {
  return text.replace(MEETS, (found, at: number) => {
    const before = text.slice(0, at);
    const clause = before.slice(before.search(/[^.,;:!?–—]*$/u));
    const enough = / (?:but|which)/.test(found) ? 3 : 4;
    if (words(clause) < enough || NOT_BEFORE.test(before) || /[.,;:!?–—]$/.test(before)) return found;
    return `,${found}`;
  });
}
