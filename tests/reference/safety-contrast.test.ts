import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const css = readFileSync(fileURLToPath(new URL('../../src/styles/safety.css', import.meta.url)), 'utf8');
const [screen = '', print = ''] = css.split('@layer print');

/** Relative luminance and contrast ratio, WCAG 2.2, definitions "relative luminance" and "contrast ratio" (memory). */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const hexes = (text: string) =>
  [...text.matchAll(/#[0-9a-f]{6}\b|#[0-9a-f]{3}\b/gi)].map(([hex]) =>
    hex.length === 4 ? `#${[...hex.slice(1)].map((digit) => digit + digit).join('')}` : hex,
  );

/** Value of a token for light (0) and dark (1), and on paper. */
function token(name: string, where: 'light' | 'dark' | 'print'): string {
  const written = new RegExp(`--${name}:\\s*([^;]+);`).exec(where === 'print' ? print : screen)?.[1] ?? '';
  const colours = hexes(written);
  const found = where === 'dark' ? (colours[1] ?? colours[0]) : colours[0];
  if (found === undefined) throw new Error(`no colour --${name} for ${where}`);
  return found;
}

test('the formula gives the ratios that WCAG names: 21:1 for black on white, 4.54:1 for #767676 on white', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});

describe.each(['light', 'dark', 'print'] as const)('In %s', (where) => {
  test.each([
    ['danger-ink', 'danger-field'],
    ['warning-ink', 'warning-field'],
    ['caution-ink', 'caution-field'],
    ['notice-ink', 'notice-field'],
    ['safety-ink', 'safety-paper'],
    ['safety-link', 'safety-paper'],
    ['sign-ink', 'sign-field'],
    ['sign-wear-ink', 'sign-wear-field'],
  ])('%s on %s has at least 4.5:1 (WCAG 2.2, 1.4.3)', (ink, field) => {
    expect(contrast(token(ink, where), token(field, where))).toBeGreaterThanOrEqual(4.5);
  });

  test('the border of the note stands off its paper by at least 3:1 (WCAG 2.2, 1.4.11)', () => {
    expect(contrast(token('safety-edge', where), token('safety-paper', where))).toBeGreaterThanOrEqual(3);
  });
});

test('on paper the four signal words have four borders, and need no background', () => {
  const borders = ['danger', 'warning', 'caution', 'notice'].map(
    (word) => new RegExp(`signal-${word}\\) \\{\\s*border: ([^;]+);`).exec(print)?.[1],
  );
  expect(borders.every((border) => border !== undefined)).toBe(true);
  expect(new Set(borders).size).toBe(4);
});

test('a note is never split on paper, nor parted from what follows it', () => {
  const rule = /\n {2}\.safety \{([^}]*)\}/.exec(screen)?.[1] ?? '';
  expect(rule).toContain('break-inside: avoid');
  expect(rule).toContain('break-after: avoid');
  expect(rule).toContain('break-before: avoid');
});
