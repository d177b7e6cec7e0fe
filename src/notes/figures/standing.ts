/** How a bare number stands among its words: set against a figure, read off something, or only counting. */
import type { Candidate } from './figure.ts';
import { isNumberName } from './number-names.ts';
import { around, at, joins, type Token } from './tokens.ts';

const words = (list: string): ReadonlySet<string> => new Set(list.split(' '));

export type Standing = 'no' | 'weak' | 'reads' | 'against';

/** Words that a reading stands behind. */
const READS = words(
  `is was are were be been being reads read reading says say said wants want wanted wanting limit limits min max minimum maximum get gets got getting find found measures measure measured measuring show shows showed showing had have has having make makes made give gives gave given go goes went going from to than between and or at now then call down up under over nearly allows allow allowed comes come came new old left right top bottom middle centre center front rear back inside outside inner outer out fronts rears side lead leading trail trailing other inlet exhaust nearside offside near reckon reckons reckoned only just like until till after before exactly need needs needed not no took takes ought standard nominal original started start worn settled held holds drops drop dropped fell rose climbed risen left-hand right-hand one two three four five six second third first reach reached spec specification book figure tolerance supposed another by perhaps possibly off past towards through set sat sits stood stands settles ran runs ended stayed stays feeler bore of every against moves moved does did used btm bot instead good cut cutting drained used`,
);
/** The strongest of them: what follows is set against a figure. */
const AGAINST = words(
  `be been told wants want wanted limit limits min max minimum maximum says say said allows allow allowed reads read than between from to not spec was is standard nominal goes shows show showed reckoned measures measure measured get got another or until till now asks asked calls book specifies against weigh weighs weighed took takes waited hold holds make makes instead stamped moves moved does used`,
);
/** Between the two: "it should be about", "the limit is only". */
const LOOSE = words(
  `about around only just roughly nearly say exactly a the be of more like maybe well still really at actually probably me us than what er um uh : = ~ ± ( min max perhaps for stamped under over`,
);
/** What may follow a figure that carries no unit of its own. */
const MAY_FOLLOW = words(
  `. , ; : ! ? ) | / – — + & ( - inside outside and or at on in so but to when with without nothing is was the cold hot warm front rear left right too all indicated now then before after by which it if i that that's this for as there here from than where while because since until till each either both every again dead new old max min maximum minimum limit not no yes who what we you he she they it's i'm i've i'd there's he's we've they're ish plus less instead rather only just exactly though still even across along down up off out over under near nearly about side goes says reads wants would should could will can may must top middle bottom centre inner outer book has had have were are be went afterwards back today yesterday tonight overnight per also okay ok won't doesn't wouldn't didn't btm bot lh rh ns os frt f r l free measured nominal standard total unloaded loaded fully engine idling leading trailing lead trail long wide deep thick high tall apart odd real flat fine good perfect spot bang low short between through same my his her our your their a an one uh um er`,
);
/** Readings do not count nouns: "four bolts", "ten strokes". */
const COUNTS = words(
  `of times bolt screw nut strand stud plate pair click day week month year people mile seat wire pull kick coat drop link seal spring gear hole way end bit piece hundred thousand more o'clock am pm stroke speed wheel wheeled legged pot cylinder pin start sided spanner socket weight grade core ply stage spoke hex jaw lobe feet men children teeth threads thread inch person thing time side hand leaf pack washer ball roller fin fins tin box bag paper mesh octane gauge`,
);
/** What a small number, which mostly counts, is set against a figure by. */
const STRICT = words(
  `be wants limit limits min max minimum maximum says said than between reads spec standard nominal shows showed allows measures under over not or another took takes gap it's its that's`,
);
const ABOUT = /^(?:about|only|just|nearly|around|to)$/;
const PLURAL_BUT_NO_NOUN = words(
  `fronts rears lefts rights goes says reads wants this less across plus always was its it's perhaps thus towards sometimes yes gets makes gives shows comes takes needs unless afterwards besides upwards downwards is has does looks sits holds works runs feels means seems moves stays stops starts turns pulls that's there's he's she's what's here's let's`,
);

/** Whether a noun behind the number is counted by it. */
export function counts(tokens: readonly Token[], one: Candidate): boolean {
  const next = tokens[one.to];
  if (!next || next.gap > (one.word && !one.decimal ? 2 : 1)) return false;
  const after = next.text;
  // Over a line's end only what is plainly counted
  if (
    next.gap === 2 &&
    !/s$|^(?:of|more|hundred|thousand|people|men|children)$/.test(after) &&
    !isPlural(at(tokens, one.to + 1))
  )
    return false;
  if (COUNTS.has(after) || (after.length > 3 && COUNTS.has(after.replace(/e?s$/, ''))))
    return !(after === 'of' && one.decimal);
  if (after === '-' && next.gap === 0 && joins(tokens, one.to + 1) && tokens[one.to + 1]?.kind === 'word')
    return at(tokens, one.to + 1) !== 'ish';
  if (next.kind === 'word' && next.gap === 0) return true;
  if (one.decimal || next.kind !== 'word') return false;
  // "twenty six goes and my tea went cold"
  if (after === 'goes')
    return /^(?:and|to|at|of|before|later|till|until|with|,|\.)$/.test(at(tokens, one.to + 1));
  const noun = ADJECTIVE.test(after) ? one.to + 1 : one.to;
  if (
    noun > one.to &&
    (COUNTS.has(at(tokens, noun)) || at(tokens, noun) === 'm' || /^m\d+$/.test(at(tokens, noun)))
  )
    return true;
  if (joins(tokens, noun, 1) && isPlural(at(tokens, noun)) && !(noun > one.to && one.value > 12)) return true;
  // "four rubber mountings"
  const beyond = one.to + 1;
  return (
    one.value > 1 &&
    one.value <= 12 &&
    !MAY_FOLLOW.has(after) &&
    joins(tokens, beyond, 1) &&
    isPlural(at(tokens, beyond)) &&
    tokens[beyond]?.kind === 'word'
  );
}

const ADJECTIVE =
  /^(?:new|old|more|spare|used|good|bad|big|small|long|short|fresh|brass|steel|copper|plain|spring|rusty|bent|broken|loose|tiny|little)$/;

const isPlural = (word: string): boolean =>
  word.length > 3 && /[^s'’]s$/.test(word) && !PLURAL_BUT_NO_NOUN.has(word) && !MAY_FOLLOW.has(word);

/** Said behind the number: "where six is allowed", "and nine on the other", "11 or so", "three hundred and eleven, near as makes no difference". */
function isSetAgainst(tokens: readonly Token[], one: Candidate): boolean {
  const behind = around(tokens, one.to, one.to + 3);
  if (/ (?:put in|poured in|took out|drained|left) $/.test(around(tokens, one.from - 2, one.from)))
    return /^ (?:[,.;!?]|and|so) /.test(behind);
  const lead = around(tokens, one.from - 4, one.from);
  if (/ (?:on|at|in) the (?:other|far|opposite) (?:side |end |one )?$/.test(lead))
    return one.value > 4 || one.decimal;
  if (/ and $/.test(lead) && /^ back /.test(behind)) return one.value > 4;
  if (/^ (?:is|are) (?:allowed|the limit|permitted|right|correct) /.test(behind)) return true;
  if (/^ (?:on|at|in|for|to) the (?:other|right|left|second|rear|back|front|nearside|offside) /.test(behind))
    return true;
  if (/^ (?:the other|on each) /.test(behind)) return one.value > 4 || !one.word;
  if (/^ (?:with|without) (?:it|the|them) /.test(behind)) return one.value > 4;
  if (/^ (?:won't|wouldn't|doesn't|didn't) /.test(behind)) return one.value > 4;
  return at(tokens, one.from - 1) === 'the' && at(tokens, one.from - 2) === 'not' && one.to > 0;
}

/** "Twenty four." said by itself is a reading, or an answer. */
export function isAlone(tokens: readonly Token[], one: Candidate): boolean {
  const [first, next] = [tokens[one.from], tokens[one.to]];
  const begins =
    (first?.gap ?? 3) >= 2 ||
    /^[.!?:]$/.test(at(tokens, one.from - 1)) ||
    (/^[-–—]$/.test(at(tokens, one.from - 1)) && (tokens[one.from - 1]?.gap ?? 3) >= 2);
  const ends =
    !next ||
    next.gap >= 2 ||
    /^[.!?]$/.test(next.text) ||
    (next.text === 'and' && isNumberName(at(tokens, one.to + 1))) ||
    (next.text === ',' && /^(?:so|and|but)$/.test(at(tokens, one.to + 1)));
  if (
    !begins ||
    !ends ||
    / many /.test(around(tokens, one.from - 8, one.from)) ||
    (one.word && one.value <= 4 && !one.fraction)
  )
    return false;
  // The number of an item in a list
  return one.word || one.decimal || !(next?.text === '.' && (first?.gap ?? 3) >= 2);
}

const bare = (word: string): string => word.replace(/(?<=limit|book|spec|standard)['’]s$/, '');

/** In running speech without stops anything may follow a reading, so `speech` asks less of what follows. */
export function standingOf(tokens: readonly Token[], one: Candidate, speech: boolean): Standing {
  if (counts(tokens, one)) return 'no';
  const next = tokens[one.to];
  const after = next && next.gap <= 1 ? next.text : '';
  const follows = after === '' || MAY_FOLLOW.has(after) || next?.kind !== 'word';
  let k = one.from - 1;
  let strong = false;
  let bounded = false;
  for (let steps = 0; steps < 4 && k >= 0 && LOOSE.has(at(tokens, k)); steps++, k--) {
    if (AGAINST.has(at(tokens, k))) strong = true;
    else if (/^(?:under|over)$/.test(at(tokens, k))) bounded = true;
  }
  const word = at(tokens, k);
  const apart = (tokens[k + 1]?.gap ?? 3) >= 2;
  if (
    !one.decimal &&
    /^(?:all|both|these|those|my|his|her|our|other|no|number|last|next|some)$/.test(word) &&
    word === at(tokens, one.from - 1)
  )
    return 'no';
  if (!apart && AGAINST.has(word)) strong = true;
  if (isSetAgainst(tokens, one)) return 'against';
  if (/^ (?:or so|near as|near enough|as near as) /.test(around(tokens, one.to, one.to + 3)) && one.value > 4)
    return 'reads';
  if (isAlone(tokens, one)) return 'reads';
  const isWord = /^(?:.+['’]s|its|thats|theres|heres|whats)$/.test(word) && word !== "let's";
  const bit = one.about === true && at(tokens, one.to - 1) === 'bit';
  if (one.decimal || one.pair?.oh || bit) return strong || isWord ? 'against' : 'reads';
  if (!follows && !speech) return strong && next?.kind === 'word' && one.value > 12 ? 'weak' : 'no';
  if (one.word && word === 'the' && Number.isInteger(one.value) && one.value < 13) return 'no';
  if (
    /^(?:want|need|got|had|have|wanted|needed|buy|bought|make|made)$/.test(word) &&
    /^(?:i|we|you|they|he|she|shall|will|'ll|i'll|we'll|i've|we've|i'd|we'd|to|who)$/.test(
      at(tokens, k - 1),
    ) &&
    !one.decimal &&
    one.value < 13 &&
    (one.word || /\p{L}/u.test(after))
  )
    return 'no';
  const small = one.word && one.value <= 4 && !one.fraction && !one.pair;
  if (small)
    return STRICT.has(
      bare(ABOUT.test(at(tokens, one.from - 1)) ? at(tokens, one.from - 2) : at(tokens, one.from - 1)),
    ) &&
      follows &&
      (!/^(?:a|an|the|one|of|and|to)$/.test(after) || at(tokens, one.from - 1) === 'between')
      ? 'against'
      : 'no';
  if (strong || isWord) return follows ? 'against' : 'reads';
  if (!apart && (bounded || READS.has(word) || /^[,/:=–—(|+-]$/.test(word)))
    return follows ? 'reads' : 'weak';
  return follows && (apart || one.value > 12) ? 'weak' : 'no';
}
