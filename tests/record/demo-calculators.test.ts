import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { calculators } from '../../src/calc/index.ts';
import { readSeries } from '../../src/record/read-series.ts';

const { series } = await readSeries(fileURLToPath(new URL('../../content', import.meta.url)));
const released = series?.chapters.filter((chapter) => !chapter.held) ?? [];

test('every calculator stands in a released chapter of the demo', () => {
  const placed = new Set(released.flatMap((chapter) => chapter.calculators));
  expect(calculators.map((one) => one.id).filter((id) => !placed.has(id))).toEqual([]);
});

/** A setting of a calculator in a chapter, as text: "22.9 mL ± 0.2 mL". */
const setting = (chapter: string, name: string) =>
  released
    .find((one) => one.id === chapter)
    ?.settings.find((one) => one.startsWith(`${name} = `))
    ?.replace(`${name} = `, '') ?? '';
const figure = (text: string) => Number.parseFloat(text);
/** A figure of machine.yaml; a ratio such as "6.8:1" stands there as text. */
function sheet(path: string): number {
  const value = series?.machine.values.get(path);
  return figure(value?.asBuilt?.text ?? value?.text ?? '');
}

test('the room above the piston, the ports and the swept volume of the demo fit one another', () => {
  const area_cm2 = (Math.PI / 4) * (sheet('engine.bore') / 10) ** 2;
  const room = figure(setting('03-bores-and-rings', 'compression-ratio.poured'));
  expect(1 + (area_cm2 * sheet('engine.stroke')) / 10 / room).toBeCloseTo(sheet('engine.compression'), 1);
  expect(figure(setting('09-first-start', 'compression-test.room'))).toBe(room);
  const port = sheet('engine.exhaust_port');
  expect(figure(setting('02-taking-it-down', 'port-timing.exhaust'))).toBe(port);
  expect(figure(setting('09-first-start', 'compression-test.swept'))).toBeCloseTo((area_cm2 * port) / 10, 0);
});
