/** Calculators that a chapter draws where its words raise their question. */
import type { MachineValue } from '../../record/types.ts';
import type { Statement } from '../draft.ts';

/** Calculators whose question the words raise. The machine's sheet fills what the words do not say. */
export function calculatorsFor(
  said: readonly Statement[],
  machine?: ReadonlyMap<string, MachineValue>,
): string[] {
  const text = ` ${said.map((one) => one.text.toLowerCase()).join(' ')} `;
  const figures = said.flatMap((one) => one.figures);
  const has = (path: string): boolean => machine?.has(path) ?? false;
  const out: string[] = [];
  if (
    /before top dead cent|\bbtdc\b|\btdc\b|firing mark|ignition timing|\badvance\b/.test(text) &&
    has('engine.stroke') &&
    has('engine.rod')
  ) {
    const figure = figures.find(({ unit }) => unit === 'deg');
    const travel = figures.find(({ unit, value }) => unit === 'mm' && value < 15);
    if (figure && figure.value > 0 && figure.value < 90) out.push(`<Timing advance="${figure.value} deg" />`);
    else if (travel) out.push(`<Timing known="travel" travel="${travel.value} mm" />`);
  }
  const ratio = figures.find(({ unit, value }) => unit === 'ratio' && value >= 10 && value <= 100);
  if (ratio && /\boil\b|mix|two-?stroke|petrol|fuel/.test(text))
    out.push(`<Premix ratio="${ratio.value}:1" />`);
  const speed = figures.find(({ unit }) => unit === 'km/h' || unit === 'mph');
  if (
    speed &&
    /\b(?:first|second|third|top|gear|gears)\b/.test(text) &&
    /gear|sprocket|rpm|revs/.test(text) &&
    has('gearbox.first') &&
    has('drive.axle_sprocket')
  )
    out.push('<Gearing />');
  return out;
}
