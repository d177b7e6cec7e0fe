import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, expect, test } from 'vitest';
import { calculators } from '../../src/calc/index.ts';
import { hazard } from '../../src/record/hazards/catalogue.ts';
import { BUILDS, pagesOf } from './built-site.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const place = join(root, '.oilway', 'drawn-in-a-chapter');
const [content, site] = [join(place, 'content'), join(place, 'site')];
const put = (file: string, text: string) => writeFileSync(join(content, file), text);
const page = (path: string) => readFileSync(join(site, path, 'index.html'), 'utf8');

beforeAll(() => {
  rmSync(place, { recursive: true, force: true });
  mkdirSync(place, { recursive: true });
  cpSync(join(root, 'tests/series/_base/content'), content, { recursive: true });
  mkdirSync(join(content, 'road-tests'));
  put(
    'chapters/02-second-look/chapter.mdx',
    `---
title: Second look
date: 2026-02-07
summary: What is wrong.
---

<Step title="Put the seat back" closes={["seat"]}>

Four of them.

<BoltTension thread="M8" grade="8.8" state="oiled" torque="22 Nm" />

</Step>

<RoadTest id="needle" />
`,
  );
  put(
    'road-tests/ride.vtt',
    'WEBVTT\n\n00:02.000 --> 00:05.000\nBy the old ford it shows forty.\n\n00:21.000 --> 00:24.000\nForty-five on the level.\n',
  );
  put(
    'road-tests.csv',
    'test,title,chapter,kind,file,said_in\nneedle,The needle,02-second-look,coast-down,ride.vtt,mph\n',
  );
  const { status, stdout, stderr } = spawnSync(
    'node',
    ['src/cli/main.ts', 'build', '--content', content, '--out', site],
    { cwd: root, encoding: 'utf8' },
  );
  if (status !== 0) throw new Error(stdout + stderr);
});

test('A calculator brings its own note, also in a step that declares no hazard', () => {
  const html = page('chapters/second-look');
  const sheet = html.slice(html.indexOf('data-calculator="bolt-tension"'), html.indexOf('id="needle'));
  const step = html.slice(0, html.indexOf('data-calculator="bolt-tension"'));
  expect(step).not.toContain('class="safety');
  expect(sheet).toContain('class="safety compact"');
  expect(sheet).toContain(hazard('overstretched-bolt')?.title);
  expect(sheet).toContain('The maker’s torque for this joint comes first');
});

test('Every sheet of the demo’s chapters has the note of each hazard that its calculator names', () => {
  const sheets = pagesOf(BUILDS[0].folder)
    .filter(({ file }) => file.startsWith('chapters/'))
    .flatMap(({ html }) => html.split('<section class="sheet"').slice(1));
  expect(sheets.length).toBeGreaterThanOrEqual(calculators.length);
  for (const sheet of sheets) {
    const id = /data-calculator="([a-z-]+)"/.exec(sheet)?.[1];
    const one = calculators.find((calculator) => calculator.id === id);
    expect(one, id).toBeDefined();
    for (const named of one?.hazards ?? []) expect(sheet, `${id}: ${named}`).toContain(`/hazards/#${named}"`);
    if (one && one.hazards.length > 0) expect(sheet).toContain('class="safety compact"');
  }
});

test.each(['chapters/second-look', 'road-tests'])('Points stand on %s as points, indicated', (path) => {
  const html = page(path);
  const shown = html.slice(html.indexOf('class="road-test"'));
  expect(shown).toMatch(/<b>Indicated\.<\/b>/);
  expect(shown).toContain('How far the instrument is off is not known');
  expect(shown).toContain('/calculators/speed-check/');
  expect(shown).toMatch(/40\smph/);
  expect(shown).toMatch(/64\skm\/h/);
  expect(shown).toContain('0:19');
  expect(shown).toMatch(/<b>Drag area and rolling resistance: cannot tell\.<\/b>/);
  expect(shown).toMatch(/<b>Times between speeds: cannot tell\.<\/b>/);
  expect(shown).not.toContain('Put right');
  expect(shown).toContain(`/hazards/#filming-driving"`);
});

test('No word that was said with a speed is anywhere in the site', () => {
  for (const { file, html } of pagesOf(site)) expect(html, file).not.toMatch(/old ford|By the old/);
});
