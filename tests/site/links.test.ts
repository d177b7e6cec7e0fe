import { describe, expect, test } from 'vitest';
import { attribute, BUILDS, filesOf, pagesOf } from './built-site.ts';

/** Attributes by which a page makes a browser fetch or open something. */
const REFERENCES = ['href', 'src', 'srcset', 'poster', 'action', 'data'];

describe.each(BUILDS)('The site built for $base', ({ folder, base }) => {
  const files = new Set(filesOf(folder));
  const pages = pagesOf(folder);
  const ids = new Map(
    pages.map((page) => [
      page.file,
      new Set(page.elements.map((one) => attribute(one, 'id')).filter((id) => id !== undefined)),
    ]),
  );

  /** Where a reference of a page points, as a file of the site; undefined if there is no such file. */
  const target = (page: string, reference: string) => {
    const url = new URL(reference, `http://series.example${base}${page.replace(/index\.html$/, '')}`);
    if (!url.pathname.startsWith(base)) return { file: undefined, id: '' };
    const path = decodeURIComponent(url.pathname.slice(base.length));
    const file = [path, `${path}index.html`, `${path}/index.html`].find((one) => files.has(one));
    return { file, id: decodeURIComponent(url.hash.slice(1)) };
  };

  test('has pages', () => expect(pages.length).toBeGreaterThan(15));

  test('has no link to a page, picture or place that is not there', () => {
    const broken: string[] = [];
    for (const page of pages) {
      for (const element of page.elements) {
        for (const name of REFERENCES) {
          const value = attribute(element, name);
          if (value === undefined) continue;
          const references =
            name === 'srcset' ? value.split(',').map((one) => one.trim().split(/\s+/)[0] ?? '') : [value];
          for (const reference of references) {
            if (/^(https?:|mailto:|data:)/.test(reference)) continue;
            const { file, id } = target(page.file, reference);
            if (file === undefined) broken.push(`${page.file}: ${reference}`);
            else if (id !== '' && file.endsWith('.html') && !ids.get(file)?.has(id))
              broken.push(`${page.file}: ${reference} (no such place)`);
          }
        }
      }
    }
    expect(broken).toEqual([]);
  });

  test('loads nothing from another host', () => {
    const elsewhere = pages.flatMap((page) =>
      page.elements
        .filter(
          (one) =>
            one.tagName !== 'a' &&
            attribute(one, 'rel') !== 'canonical' &&
            attribute(one, 'rel') !== 'license',
        )
        .flatMap((one) => REFERENCES.map((name) => attribute(one, name) ?? ''))
        .filter((value) => /^(https?:)?\/\//.test(value) && !value.startsWith('https://series.example'))
        .map((value) => `${page.file}: ${value}`),
    );
    expect(elsewhere).toEqual([]);
  });

  test('has no style attribute, inline handler or unhashed policy', () => {
    const found = pages.flatMap((page) =>
      page.elements
        .filter((one) => one.attrs.some(({ name }) => name === 'style' || name.startsWith('on')))
        .map((one) => `${page.file}: <${one.tagName}>`),
    );
    expect(found).toEqual([]);
    for (const page of pages) {
      const policy = page.elements.find(
        (one) => attribute(one, 'http-equiv')?.toLowerCase() === 'content-security-policy',
      );
      expect(policy && attribute(policy, 'content'), page.file).toBeDefined();
      expect(policy && attribute(policy, 'content'), page.file).not.toContain('unsafe-inline');
    }
  });

  test('has each id once on a page', () => {
    for (const page of pages) {
      const all = page.elements.map((one) => attribute(one, 'id')).filter((id) => id !== undefined);
      expect(
        all.filter((id, at) => all.indexOf(id) !== at),
        page.file,
      ).toEqual([]);
    }
  });
});
