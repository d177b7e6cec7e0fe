import { HtmlValidate } from 'html-validate';
import { expect, test } from 'vitest';
import { BUILDS, pagesOf } from './built-site.ts';

const validator = new HtmlValidate({
  root: true,
  extends: ['html-validate:recommended'],
  rules: {
    // What the site generator writes, within the standard.
    'void-style': 'off',
    'doctype-style': 'off',
    'attribute-boolean-style': 'off',
    'attribute-empty-style': 'off',
    'no-trailing-whitespace': 'off',
    // A long title is a matter of taste, and print breaks lines where it must.
    'long-title': 'off',
    // The standard allows a dot in an id; a machine value's path is its id.
    'valid-id': ['error', { relaxed: true }],
    // Forms answer as the reader types; there is nothing to submit, and a button that does nothing would mislead.
    'wcag/h32': 'off',
    'no-inline-style': 'error',
  },
});

test('every page is valid HTML', async () => {
  const found: string[] = [];
  for (const page of pagesOf(BUILDS[0].folder)) {
    const report = await validator.validateString(page.html, page.file);
    for (const result of report.results) {
      for (const one of result.messages)
        found.push(
          `${page.file}:${one.line}:${one.column} ${one.ruleId} ${one.message} ${one.selector ?? ''}`,
        );
    }
  }
  expect(found).toEqual([]);
});
