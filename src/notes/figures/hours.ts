/** Hours of the day and years: they date, and measure nothing. */
import type { Reading } from './figure.ts';
import { at, type Token } from './tokens.ts';

/** "quarter to nine", "twenty past six", and "ten to six" where a time of day is asked for. */
export function isHour(tokens: readonly Token[], read: Reading): boolean {
  const hour = Number.isInteger(read.value) && read.value >= 1 && read.value <= 12;
  const word = at(tokens, read.from - 1);
  if (hour && /^(?:to|past)$/.test(word)) {
    const minutes = at(tokens, read.from - 2);
    if (/^(?:quarter|half)$/.test(minutes) && (word === 'past' || minutes === 'quarter')) return true;
    if (MINUTES.test(minutes) && (word === 'past' || TELLS_HOUR.test(at(tokens, read.from - 3)))) return true;
  }
  if (!MINUTES.test(at(tokens, read.to - 1)) || !/^(?:to|past)$/.test(at(tokens, read.to))) return false;
  return (
    HOURS.test(at(tokens, read.to + 1)) &&
    (at(tokens, read.to) === 'past' || TELLS_HOUR.test(at(tokens, read.from - 1))) &&
    /^(?:|[.,;)!?]|and|when|so|in|on|at|the|we|i|before|by|now|already)$/.test(at(tokens, read.to + 2))
  );
}

const MINUTES = /^(?:five|ten|twenty|5|10|20|25)$/;
const HOURS = /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[1-9]|1[0-2])$/;
const TELLS_HOUR = /^(?:it's|its|it|is|was|at|till|until|by|about|nearly|almost|only|just|already|and)$/;

const YEAR_BEFORE =
  /^(?:in|since|of|from|year|back|a|the|before|after|until|till|by|circa|built|made|registered|about|around|spring|summer|autumn|winter)$/;

export function isYear(tokens: readonly Token[], read: Reading): boolean {
  if (read.pair && /^(?:18|19|20)$/.test(String(read.pair.high)) && read.pair.low >= 10)
    return (
      YEAR_BEFORE.test(at(tokens, read.from - 1)) || /^(?:something|model|vintage)$/.test(at(tokens, read.to))
    );
  return (
    !read.decimal &&
    !(read.pair && !read.pair.oh && read.pair.low < 10) &&
    read.value >= 1890 &&
    read.value <= 2060 &&
    Number.isInteger(read.value) &&
    /^(?:in|since|of|from|year|a|the|before|after|until|till|by|circa|ca|,|june|july|april|march|may|august|september|october|november|december|january|february|spring|summer|autumn|winter|\()$/.test(
      at(tokens, read.from - 1),
    )
  );
}
