import { describe, expect, test } from 'vitest';
import { clock } from '../../src/components/chapter/clock.ts';
import { counted, dayInWords, daysBetween, listed } from '../../src/components/day-words.ts';
import { asHtml, markup } from '../../src/components/markup.ts';

describe('Days', () => {
  test('a day in the series’ language, whatever zone the machine keeps', () => {
    expect(dayInWords('2026-05-02', 'en-GB')).toBe('2 May 2026');
    expect(dayInWords('2026-05-02', 'de')).toBe('2. Mai 2026');
  });
  test('days between, over a leap day and over the change of the clocks', () => {
    expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2);
    expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2);
  });
  test('one is one, none and many are many', () => {
    expect([0, 1, 2].map((count) => counted(count, 'day'))).toEqual(['0 days', '1 day', '2 days']);
  });
  test('a list ends in and', () => {
    expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
  });
  test('a place in a recording, with hours only where there are some', () => {
    expect([5, 751, 3905].map(clock)).toEqual(['0:05', '12:31', '1:05:05']);
  });
});

describe('Markup', () => {
  test('values are escaped in text and in attributes', () => {
    const { html } = markup`<a href="${'/?a&b="'}">${'<script>'}</a>`;
    expect(html).toBe('<a href="/?a&amp;b=&quot;">&lt;script&gt;</a>');
  });
  test('markup in markup stays markup, alone and in a list', () => {
    expect(markup`<p>${markup`<b>${'&'}</b>`}${[asHtml('<i>x</i>'), ' y']}</p>`.html).toBe(
      '<p><b>&amp;</b><i>x</i> y</p>',
    );
  });
  test('what is not there leaves nothing behind', () => {
    expect(markup`a${undefined}${false}b`.html).toBe('ab');
  });
});
