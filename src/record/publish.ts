import type { Chapter, Fault, LedgerLine, Order, Part, RefitLine, Series, Supporter } from './types.ts';

/**
 * What may be seen by readers: without held chapters and everything that hangs on them, without private notes, and
 * without supporters who did not agree to be named. Build and pages only ever see this; dev shows held chapters, marked.
 */
export function asPublished(series: Series): Series {
  const chapters = series.chapters.filter((chapter) => !chapter.held);
  const released = new Set(chapters.map((chapter) => chapter.id));
  const held = new Set(series.chapters.filter((chapter) => chapter.held).map((chapter) => chapter.id));
  const out = (id: string | undefined): boolean => id !== undefined && held.has(id);

  const lines = new Map(series.ledger.map((line) => [line, publishedLine(line, out)]));
  const ledger = series.ledger.flatMap((line) => lines.get(line) ?? []);
  const linesOf = (of: Order | Part): LedgerLine[] => of.lines.flatMap((line) => lines.get(line) ?? []);
  const onlyHeld = (order: Order): boolean =>
    order.lines.length > 0 && order.lines.every((line) => out(line.chapter));

  const faults = series.faults.flatMap((fault) => publishedFault(fault, out) ?? []);
  const refit = series.refit
    .filter((line) => !out(line.opened.chapter))
    .map((line) => {
      if (!line.closed || !out(line.closed.chapter)) return line;
      const { closed: _closed, how: _how, ...open } = line;
      return open;
    });
  const mentioned = new Set(chapters.flatMap((chapter) => chapter.parts.map((mention) => mention.to)));

  return {
    ...series,
    published: true,
    chapters: chapters.map(publishedChapter),
    ledger,
    orders: series.orders
      .filter((order) => !onlyHeld(order))
      .map((order) => ({ ...order, lines: linesOf(order) })),
    parts: series.parts.flatMap((part) => {
      const lines = linesOf(part).filter((line) => line.part === part.id);
      return publishedPart(part, lines, { out, mentioned, faults, refit });
    }),
    faults,
    supporters: series.supporters
      .filter((one) => one.consent)
      .map((one) => ({ ...one, chapters: one.chapters.filter((id) => released.has(id)) })),
    unnamedSupporters: series.supporters.filter((one) => !one.consent).length,
    refit,
    corrections: series.corrections.filter((one) => !out(one.chapter)),
    measurements: series.measurements.filter((one) => !out(one.chapter)),
    due: series.due
      .filter((item) => !out(item.since))
      .map((item) => {
        if (!out(item.doneIn)) return item;
        const { doneIn: _done, ...open } = item;
        return open;
      }),
    odometer: series.odometer.filter((one) => !out(one.chapter)),
    roadTests: series.roadTests.filter((one) => !out(one.chapter)),
  };
}

type Held = (id: string | undefined) => boolean;

/**
 * A row of a held chapter is left out. One that came with an order stays as a nameless amount: without it the freight and
 * duty of the other parts would be shared wrongly.
 */
function publishedLine(line: LedgerLine, out: Held): LedgerLine | undefined {
  const { privateNote: _note, ...open } = line;
  if (!out(line.chapter)) return open;
  if (line.order === undefined) return undefined;
  const { chapter: _chapter, part: _part, ...rest } = open;
  return { ...rest, item: 'Not yet published' };
}

interface Around {
  out: Held;
  /** Parts that released chapters link to. */
  mentioned: ReadonlySet<string>;
  faults: readonly Fault[];
  refit: readonly RefitLine[];
}

/** A part that only held chapters tell of is left out; one that a held chapter fitted has, for readers, only arrived. */
function publishedPart(part: Part, lines: LedgerLine[], { out, mentioned, faults, refit }: Around): Part[] {
  const heldOnly =
    out(part.fittedIn) || (part.lines.length > 0 && part.lines.every((line) => out(line.chapter)));
  if (heldOnly && lines.length === 0 && !mentioned.has(part.id)) return [];
  const { fittedIn, neededFor, ...rest } = part;
  const waits = neededFor?.filter(
    (id) => faults.some((one) => one.id === id) || refit.some((one) => one.id === id),
  );
  const shown = { ...rest, lines, ...(waits === undefined ? {} : { neededFor: waits }) };
  if (fittedIn === undefined) return [shown];
  if (!out(fittedIn)) return [{ ...shown, fittedIn }];
  return [rest.status === 'fitted' ? { ...shown, status: 'arrived' } : shown];
}

function publishedFault(fault: Fault, out: Held): Fault | undefined {
  const events = fault.events
    .filter((event) => !out(event.chapter))
    .map(({ waitsFor: _waits, ...event }) => event);
  if (events.length === 0 && fault.events.length > 0) return undefined;
  const whole = events.length === fault.events.length;
  return {
    ...fault,
    events,
    suspects: fault.suspects.map((suspect) => {
      if (!out(suspect.step?.chapter)) return suspect;
      const { step: _step, ...rest } = suspect;
      return rest;
    }),
    // The story is written as a whole; while a part of the fault is held, so is the story.
    story: whole ? fault.story : '',
  };
}

function publishedChapter(chapter: Chapter): Chapter {
  return { ...chapter, paidBy: chapter.paidBy.map(disclosed) };
}

/** That somebody paid must be said, also where the name may not be. */
function disclosed(supporter: Supporter): Supporter {
  if (supporter.consent) return supporter;
  const { link: _link, ...rest } = supporter;
  return { ...rest, name: '', credit: 'A supporter who does not wish to be named', what: '' };
}
