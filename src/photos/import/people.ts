import { ASKED, type Asked, type Journal } from './journal.ts';

export const QUESTIONS: Record<Asked, { question: string; seen: string }> = {
  faces: { question: 'Which pictures show somebody’s face?', seen: 'faces' },
  plates: { question: 'Which show a number plate, on any vehicle?', seen: 'number plates' },
  fronts: {
    question: 'Which show a house front, a street sign or a view from a window?',
    seen: 'house fronts',
  },
};

/** Numbers of the contact sheet in an answer such as "3 7-9, 12" or "none"; a string tells what is wrong with it. */
export function numbersIn(answer: string, highest: number): number[] | string {
  const text = answer.trim().toLowerCase();
  if (text === 'none' || text === 'no' || text === '0') return [];
  const numbers = new Set<number>();
  for (const word of text.split(/[\s,;]+/)) {
    const range = /^(\d+)(?:[-–](\d+))?$/.exec(word);
    if (!range) return `"${word}" is no number of the contact sheet. Write numbers such as 3 7-9, or none.`;
    const from = Number(range[1]);
    const to = Number(range[2] ?? range[1]);
    if (from < 1 || to > highest || to < from)
      return `"${word}" is not on the contact sheet, which has 1 to ${highest}.`;
    for (let at = from; at <= to; at += 1) numbers.add(at);
  }
  return [...numbers].sort((a, b) => a - b);
}

/** Questions not yet answered, each with the pictures concerned. */
export function unanswered(journal: Journal): { asked: Asked; names: string[] }[] {
  const names = journal.inFolder().map((one) => one.name);
  return ASKED.map((asked) => ({
    asked,
    names: names.filter((name) => !journal.answers.get(asked)?.has(name)),
  })).filter((one) => one.names.length > 0);
}

/** Whether any answer says that the picture shows somebody or some place. */
export const toBeMasked = (name: string, journal: Journal): boolean =>
  ASKED.some((asked) => journal.answers.get(asked)?.get(name) === true);
