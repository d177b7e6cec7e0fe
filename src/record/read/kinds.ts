import { clockSeconds } from '../captions.ts';
import { readDay } from '../day.ts';
import { currencyProblem } from '../money/currencies.ts';
import { type DecimalMark, decimalText, type Read, readDecimal } from '../money/decimal.ts';

import { either, meant, shown } from '../text/words.ts';
import type { Day } from '../types.ts';
import type { Kind } from './field.ts';

/** Words on one line; line breaks inside a quoted cell become spaces. */
export const line: Kind<string> = {
  says: 'words',
  free: true,
  read: (text) => text.replace(/\s*\n\s*/g, ' '),
};

/** Words, with line breaks kept. */
export const words: Kind<string> = { says: 'words, also on several lines', free: true, read: (text) => text };

/** Words of a form that is checked once the rest of the row is known. */
export const written = (says: string): Kind<string> => ({ says, read: line.read });

export const day: Kind<Day> = {
  says: 'a date, such as 2026-05-02',
  read(text, { wrong }) {
    const read = readDay(text);
    return 'day' in read ? read.day : wrong(read.wrong);
  },
};

/** A figure as canonical text with a decimal point, every digit kept: "0.40". The sign is ours, the rest the money reader's. */
export function readFigure(text: string, mark: DecimalMark | undefined, what = 'a number'): Read<string> {
  const sign = /^\s*[-−]\s*(?=[\d.,])/.exec(text);
  const read = readDecimal(sign ? text.slice(sign[0].length) : text, mark, what);
  if (!read.ok) return sign ? { ok: false, message: read.message.replace(/^"/, '"-') } : read;
  return { ok: true, value: (sign ? '-' : '') + decimalText(read.value) };
}

interface Range {
  /** Excluded. */
  above?: number;
  from?: number;
  to?: number;
  /** "a weight": with its article. */
  what?: string;
}

export function figure({ above, from, to, what = 'a number' }: Range = {}): Kind<string> {
  return {
    says: `${what}, such as 12.5`,
    numeric: true,
    read(text, { mark, wrong }) {
      const read = readFigure(text, mark, what);
      if (!read.ok) return wrong(read.message);
      const value = Number(read.value);
      if (value < 0 && (above ?? from) === 0)
        return wrong(`${shown(text)} is negative. Write it without the sign.`);
      if (above !== undefined && !(value > above))
        return wrong(`${shown(text)} is too small. Write ${what} above ${above}.`);
      if (from !== undefined && !(value >= from))
        return wrong(`${shown(text)} is too small. Write ${from} or more.`);
      if (to !== undefined && !(value <= to))
        return wrong(`${shown(text)} is too large. Write ${to} or less.`);
      return read.value;
    },
  };
}

/** A figure that may bring its own unit: "54.15", "2.132 in". */
export interface FigureInUnit {
  text: string;
  unit?: string;
}

export function figureInUnit(range: Range = {}): Kind<FigureInUnit> {
  const bare = figure({ ...range, what: 'a figure' });
  return {
    says: 'a figure, such as 54.15, with a unit where it differs from the row’s',
    numeric: true,
    read(text, reading) {
      const found = /^(.*?\d)\s*([A-Za-z°µ%"″][^\d]*[23]?)$/.exec(text);
      const value = bare.read(found?.[1] ?? text, reading);
      if (value === undefined) return undefined;
      return found?.[2] === undefined ? { text: value } : { text: value, unit: found[2].trim() };
    },
  };
}

/** An amount as written; it becomes money once its row's currency is known. */
export interface AmountText {
  text: string;
  mark: DecimalMark | undefined;
}

/** An amount of money. The sign comes from the kind of the row. */
export const amount: Kind<AmountText> = {
  says: 'an amount, such as 12.50',
  numeric: true,
  read(text, { mark, wrong }) {
    const read = readDecimal(text, mark, 'an amount');
    if (read.ok) return { text, mark };
    const negative = / is negative\./.test(read.message);
    return wrong(
      negative ? `${read.message} The kind says whether money went out or came back.` : read.message,
    );
  },
};

export const currency: Kind<string> = {
  says: 'a currency code of three letters, such as EUR',
  read(text, { wrong }) {
    const problem = currencyProblem(text);
    return problem === undefined ? text : wrong(problem);
  },
};

export const whole: Kind<number> = {
  says: 'a whole number',
  numeric: true,
  read(text, { wrong }) {
    if (/^[=@]/.test(text))
      return wrong(`${shown(text)} is a formula, not a whole number. Write the figure that it comes to.`);
    if (!/^\d{1,9}$/.test(text))
      return wrong(`${shown(text)} is not a whole number. Write digits alone, such as 2.`);
    return Number(text);
  },
};

/** One of a short list. */
export function choice<const T extends string>(choices: readonly T[]): Kind<T> {
  return {
    says: either(choices.map((one) => `"${one}"`)),
    read(text, { wrong }) {
      const plain = text.toLowerCase().replace(/[\s_]+/g, ' ');
      const found = choices.find((one) => one.toLowerCase() === plain);
      return found ?? wrong(`${shown(text)} is none of the choices. ${meant(text, choices)}`);
    },
  };
}

/** A place in a recording, in seconds. */
export const clock: Kind<number> = {
  says: 'minutes and seconds of the recording, such as 12:30',
  read(text, { wrong }) {
    const seconds = clockSeconds(text);
    return (
      seconds ?? wrong(`${shown(text)} is no time of a recording. Write minutes and seconds, such as 12:30.`)
    );
  },
};

const YES = ['yes', 'true'];
const NO = ['no', 'false'];

export const yesOrNo: Kind<boolean> = {
  says: '"yes" or "no"',
  read(text, { wrong }) {
    const plain = text.toLowerCase();
    if (YES.includes(plain)) return true;
    if (NO.includes(plain)) return false;
    return wrong(`${shown(text)} is neither "yes" nor "no". Write one of them.`);
  },
};

const ID = /^[a-z0-9]+(?:[-.][a-z0-9]+)*$/;

/** A name that other files point to: small letters, digits and hyphens. */
export const id: Kind<string> = {
  says: 'a short name of small letters, digits and hyphens, such as shoes-front',
  read(text, { wrong }) {
    if (ID.test(text)) return text;
    const made = text
      .normalize('NFKD')
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '');
    return wrong(
      `${shown(text)} cannot be used as a name that others point to. Write small letters, digits and hyphens${made ? `, such as "${made}"` : ''}.`,
    );
  },
};

/** A name defined elsewhere; whether it exists is checked once everything is read. */
export const name: Kind<string> = { says: 'a name defined elsewhere', points: true, read: (text) => text };

/** Several names, parted by spaces, commas or semicolons. */
export const names: Kind<string[]> = {
  says: 'names parted by spaces',
  several: true,
  read: (text) => text.split(/[\s,;]+/).filter((one) => one !== ''),
};

/** An address on the web. Only http and https: anything else could run code in a reader's browser. */
export const link: Kind<string> = {
  says: 'an address that starts with https://',
  read(text, { wrong }) {
    const right = URL.canParse(text) && /^https?:\/\/[^\s"'<>]+$/i.test(text);
    return right
      ? text
      : wrong(`${shown(text)} is not a web address. Write it in full, such as https://example.org/.`);
  },
};
