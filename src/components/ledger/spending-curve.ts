import { ticks } from 'd3-array';
import type { Account } from '../../record/money/account.ts';
import type { Day } from '../../record/types.ts';
import { drawn } from './printing.ts';

/** Where things stand in the drawing; units of the view box. */
export interface SpendingCurve {
  width: number;
  height: number;
  /** The running total as a path of steps. */
  path: string;
  amounts: { y: number; value: number }[];
  months: { x: number; month: string }[];
  chapters: { x: number; number: number }[];
  budget?: { y: number };
  end: { x: number; y: number };
  left: number;
  right: number;
  bottom: number;
}

const WIDTH = 480;
const HEIGHT = 250;
const EDGE = { left: 4, right: 56, top: 14, bottom: 40 };
const DAY_MS = 86_400_000;
const time = (day: Day): number => Date.parse(`${day}T00:00:00Z`) / DAY_MS;

/** The running total of a series from its first row to its last day, with the budget and the chapters' dates. */
export function spendingCurve(
  account: Account,
  asOf: Day,
  chapters: readonly { date: Day; number: number }[],
): SpendingCurve | undefined {
  const first = account.lines[0];
  const last = account.lines.at(-1);
  if (!first || !last) return undefined;
  const from = Math.min(time(first.date), ...chapters.map((one) => time(one.date)));
  const to = Math.max(time(last.date), time(asOf), from + 1);
  const totals = runningTotals(account);
  const { budget } = account.standing;
  const values = [
    ...totals.map((one) => one.total),
    0,
    ...(budget === undefined ? [] : [drawn(budget, account.home)]),
  ];
  const low = Math.min(...values);
  const high = Math.max(...values, low + 1);
  const x = (at: number) => round(EDGE.left + ((at - from) / (to - from)) * (WIDTH - EDGE.left - EDGE.right));
  const y = (value: number) =>
    round(HEIGHT - EDGE.bottom - ((value - low) / (high - low)) * (HEIGHT - EDGE.top - EDGE.bottom));
  let path = `M${x(totals[0]?.at ?? from)} ${y(0)}`;
  for (const { at, total } of totals) path += `H${x(at)}V${y(total)}`;
  const end = totals.at(-1)?.total ?? 0;
  return {
    width: WIDTH,
    height: HEIGHT,
    path: `${path}H${x(to)}`,
    amounts: ticks(low, high, 4).map((value) => ({ y: y(value), value })),
    months: monthsBetween(from, to).map(({ at, month }) => ({ x: x(at), month })),
    chapters: chapters.map((one) => ({ x: x(time(one.date)), number: one.number })),
    ...(budget !== undefined && { budget: { y: y(drawn(budget, account.home)) } }),
    end: { x: x(to), y: y(end) },
    left: EDGE.left,
    right: WIDTH - EDGE.right,
    bottom: HEIGHT - EDGE.bottom,
  };
}

const round = (value: number): number => Math.round(value * 10) / 10;

function runningTotals(account: Account): { at: number; total: number }[] {
  const totals: { at: number; total: number }[] = [];
  let sum = 0n;
  for (const line of account.lines) {
    sum += line.home.minor;
    const at = time(line.date);
    const last = totals.at(-1);
    const total = drawn(sum, account.home);
    if (last?.at === at) last.total = total;
    else totals.push({ at, total });
  }
  return totals;
}

/** First days of months, thinned to six at most so that their names do not meet. */
function monthsBetween(from: number, to: number): { at: number; month: string }[] {
  const found: { at: number; month: string }[] = [];
  const start = new Date(from * DAY_MS);
  for (let n = 1; ; n++) {
    const at = Date.UTC(start.getUTCFullYear(), start.getUTCMonth() + n, 1) / DAY_MS;
    if (at > to) break;
    found.push({ at, month: new Date(at * DAY_MS).toISOString().slice(0, 7) });
  }
  const step = Math.ceil(found.length / 6);
  return found.filter((_, at) => at % step === 0);
}
