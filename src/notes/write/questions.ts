/** What the notes leave open about units, asked once a chapter, and the author's answers put to use. */
import type { Draft, Statement } from '../draft.ts';
import { findFigures } from '../figures/find.ts';
import type { ReadSource } from '../read/source.ts';

export interface Answers {
  gallon?: 'imperial' | 'US';
  ton?: 'long' | 'short' | 'metric';
  speed?: 'km/h' | 'mph';
}

export type Asked = keyof Answers;

interface Question {
  id: string;
  ask: string;
  /** Each answer with the ways in which it may be written. */
  answers: Readonly<Record<string, RegExp>>;
}

export const QUESTIONS: Readonly<Record<Asked, Question>> = {
  gallon: {
    id: 'which-gallon',
    ask: 'Which gallon, quart or pint is meant? Write imperial or US.',
    answers: { imperial: /^(?:imp(?:erial)?|uk|british)\.?$/i, US: /^(?:u\.?s\.?(?:a\.?)?|american)$/i },
  },
  ton: {
    id: 'which-ton',
    ask: 'Which ton is meant? Write long (2240 lb), short (2000 lb) or metric (1000 kg).',
    answers: {
      long: /^(?:long|imperial|uk)$/i,
      short: /^(?:short|u\.?s\.?)$/i,
      metric: /^(?:metric|tonne|t)$/i,
    },
  },
  speed: {
    id: 'which-speed',
    ask: 'In which unit did the instrument show these speeds? Write km/h or mph.',
    answers: { 'km/h': /^(?:km ?\/ ?h|kmh|kph)$/i, mph: /^(?:mph|miles? (?:an|per) hour)$/i },
  },
};

const ASKED = Object.keys(QUESTIONS) as Asked[];

export const askedBy = (id: string): Asked | undefined => ASKED.find((one) => QUESTIONS[one].id === id);

/** What an answer means; undefined where it is none that the question has. */
export const readAnswer = (asked: Asked, said: string): string | undefined =>
  Object.entries(QUESTIONS[asked].answers).find(([, pattern]) => pattern.test(said.trim()))?.[0];

const IN_GALLONS = new Set(['gal', 'pt', 'qt', 'fl oz', 'mpg']);
const TONS: Readonly<Record<string, string>> = { long: 'long ton', short: 'short ton', metric: 't' };

/** Words beside which a bare number may be a speed; the reader of figures has the last word. */
const SPEED_TALK =
  /\b(?:on the (?:level|flat|clock|speedo|straight|dial)|indicated|flat out|downhill|uphill|doing|needle|clock(?:ed)?|speedo|in (?:top|third|second|first))\b/i;

/** Figures whose question is answered get their unit; the questions left open come with the statements that raise them. */
export function settleUnits(
  draft: Draft,
  reads: readonly ReadSource[],
  answers: Answers,
): { open: Map<Asked, Statement[]>; answered: Map<Statement, Set<Asked>> } {
  const answered = new Map<Statement, Set<Asked>>();
  const settle = (asked: Asked, one: Statement): void => {
    answered.set(one, (answered.get(one) ?? new Set()).add(asked));
  };
  const open = new Map<Asked, Statement[]>();
  const ask = (asked: Asked, one: Statement): void => {
    const list = open.get(asked) ?? [];
    if (!list.includes(one)) open.set(asked, [...list, one]);
  };
  const masked = new Map(reads.map((read) => [read.source.name, read.masked]));
  for (const one of draft.statements) {
    for (const figure of one.figures) {
      if (IN_GALLONS.has(figure.unit)) {
        if (answers.gallon) {
          figure.unit = `${answers.gallon === 'US' ? 'US' : 'imp'} ${figure.unit}`;
          settle('gallon', one);
        } else ask('gallon', one);
      } else if (figure.unit === 'ton') {
        const ton = answers.ton && TONS[answers.ton];
        if (ton) {
          figure.unit = ton;
          settle('ton', one);
        } else ask('ton', one);
      }
    }
    if (!SPEED_TALK.test(one.text) || one.figures.some(({ unit }) => unit === 'km/h' || unit === 'mph'))
      continue;
    const bare = speedsIn(one, masked.get(one.source) ?? '', answers.speed ?? 'km/h');
    if (bare.length === 0) continue;
    if (answers.speed) {
      one.figures = [...one.figures, ...bare].sort((a, b) => a.start - b.start);
      one.said.set('speed', 'a speed');
      settle('speed', one);
    } else ask('speed', one);
  }
  return { open, answered };
}

/** Bare numbers of a statement that are speeds, as if the series said in which unit. */
function speedsIn(one: Statement, masked: string, speed: 'km/h' | 'mph'): Statement['figures'] {
  return findFigures(masked.slice(one.start, one.end), { speed })
    .map((figure) => ({
      ...figure,
      start: figure.start + one.start,
      end: figure.end + one.start,
      line: one.line,
      shared: false,
    }))
    .filter(
      ({ unit, start, end }) =>
        unit === speed && !one.figures.some((other) => other.start < end && start < other.end),
    );
}
