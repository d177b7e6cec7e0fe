/** Numbers as they are said: "two hundred and fifty", "three point four", "two and a quarter", "three eighths". */
const ONES =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const SMALL = new Map<string, number>([
  ...ONES.map((word, at) => [word, at] as const),
  ['nought', 0],
  ['naught', 0],
  ['oh', 0],
]);
const TENS = new Map(
  'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ').map((word, at) => [word, (at + 2) * 10]),
);
const PARTS: Readonly<Record<string, number>> = {
  half: 2,
  halves: 2,
  third: 3,
  thirds: 3,
  quarter: 4,
  quarters: 4,
  fifth: 5,
  fifths: 5,
  eighth: 8,
  eighths: 8,
  sixteenth: 16,
  sixteenths: 16,
  tenth: 10,
  tenths: 10,
  hundredth: 100,
  hundredths: 100,
  thousandth: 1000,
  thousandths: 1000,
  sixtyfourths: 64,
  'thirty-seconds': 32,
};

export interface Word {
  text: string;
  start: number;
  end: number;
}
export interface Said {
  value: number;
  /** Words used. */
  used: number;
  /** Tenths or hundredths of something. */
  part?: number;
  decimal?: boolean;
}

/** Whole numbers below a million. */
function whole(words: readonly Word[], at: number): Said | undefined {
  let total = 0;
  let now: number | undefined;
  let i = at;
  for (; i < words.length; i++) {
    const word = words[i]?.text ?? '';
    const small = SMALL.get(word);
    const tens = TENS.get(word);
    if (tens !== undefined) {
      if (now !== undefined && now % 100 !== 0) break;
      now = (now ?? 0) + tens;
    } else if (small !== undefined) {
      if (
        now !== undefined &&
        !(now % 100 === 0 && now > 0) &&
        !(now % 10 === 0 && now % 100 >= 20 && small > 0 && small < 10)
      )
        break;
      now = (now ?? 0) + small;
    } else if (word === 'hundred' && now !== undefined && now < 100 && now > 0) now *= 100;
    else if (word === 'hundred' && now === undefined && /^(?:a|one)$/.test(words[i - 1]?.text ?? ''))
      now = 100;
    else if (word === 'thousand' && now !== undefined) {
      total += now * 1000;
      now = undefined;
      if (
        !SMALL.has(words[i + 1]?.text ?? '') &&
        !TENS.has(words[i + 1]?.text ?? '') &&
        words[i + 1]?.text !== 'and'
      ) {
        i += 1;
        break;
      }
    } else if (
      word === 'and' &&
      ((now !== undefined && now >= 100 && now % 100 === 0) || (now === undefined && total > 0))
    ) {
      const next = words[i + 1]?.text ?? '';
      const after = words[i + 2]?.text ?? '';
      if ((!SMALL.has(next) && !TENS.has(next)) || after in PARTS) break;
    } else break;
  }
  if (now === undefined && total === 0) return undefined;
  return { value: total + (now ?? 0), used: i - at };
}

/** A number said in words that starts at a word; undefined where none does. */
export function saidAt(words: readonly Word[], at: number): Said | undefined {
  const text = (k: number): string => words[k]?.text ?? '';
  const first = text(at);
  // "half a", "a quarter of a", "quarter of a"
  const lead = first === 'a' && text(at + 1) in PARTS ? 1 : 0;
  if ((lead || first in PARTS) && !SMALL.has(first)) {
    const size = PARTS[text(at + lead)];
    let used = lead + 1;
    if (size === undefined || (size > 16 && size !== 1000 && size !== 100)) return undefined;
    if (text(at + used) === 'of') used += 1;
    if (/^an?$/.test(text(at + used))) return { value: 1 / size, used: used + 1, part: size };
    return lead && size >= 10 ? { value: 1 / size, used: lead + 1, part: size } : undefined;
  }
  if (first === 'a' && text(at + 1) === 'hundred') {
    const more = whole(words, at + 1);
    if (more) return tail(words, at, { value: more.value, used: more.used + 1 });
  }
  if (first === 'point' || ((first === 'oh' || first === 'nought') && text(at + 1) === 'point')) {
    const lead2 = first === 'point' ? 0 : 1;
    const digits = decimals(words, at + lead2 + 1);
    return digits
      ? tail(words, at, { value: Number(`0.${digits.text}`), used: lead2 + 1 + digits.used, decimal: true })
      : undefined;
  }
  if (first === 'oh') return undefined;
  const base = whole(words, at);
  if (!base) return undefined;
  const next = at + base.used;
  if (text(next) === 'point') {
    const digits = decimals(words, next + 1);
    if (digits)
      return tail(words, at, {
        value: Number(`${base.value}.${digits.text}`),
        used: base.used + 1 + digits.used,
        decimal: true,
      });
  }
  return tail(words, at, base);
}

function decimals(words: readonly Word[], at: number): { text: string; used: number } | undefined {
  let text = '';
  let i = at;
  for (; i < words.length && text.length < 4; i++) {
    const word = words[i]?.text ?? '';
    const small = SMALL.get(word);
    const tens = TENS.get(word);
    if (tens !== undefined && text === '') {
      const one = SMALL.get(words[i + 1]?.text ?? '');
      text += one !== undefined && one > 0 && one < 10 ? tens + one : tens;
      if (one !== undefined && one > 0 && one < 10) i += 1;
      i += 1;
      break;
    }
    if (small === undefined) break;
    text += small;
    if (small > 9) {
      i += 1;
      break;
    }
  }
  return text === '' ? undefined : { text, used: i - at };
}

/** "… and a half", "one and three quarter", "three eighths of an", "five hundredths of a". */
function tail(words: readonly Word[], at: number, base: Said): Said {
  const text = (k: number): string => words[at + base.used + k]?.text ?? '';
  if (text(0) === 'and' && /^an?$/.test(text(1)) && text(2) in PARTS && !/^(?:tenth|hundredth)/.test(text(2)))
    return { ...base, value: base.value + 1 / (PARTS[text(2)] ?? 1), used: base.used + 3 };
  const over = SMALL.get(text(1));
  if (text(0) === 'and' && over !== undefined && over > 0 && text(2) in PARTS)
    return { ...base, value: base.value + over / (PARTS[text(2)] ?? 1), used: base.used + 3 };
  const size = PARTS[text(0)];
  if (size !== undefined && text(0) !== 'half' && !(text(0) === 'third')) {
    const of = text(1) === 'of' && /^an?$/.test(text(2)) ? 3 : 1;
    return { value: base.value / size, used: base.used + of, part: size };
  }
  return base;
}
