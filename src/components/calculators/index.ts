/** What a chapter may write for each calculator of the index: `<Timing … />`. Made from the index; nothing to add here. */
import type { AstroComponentFactory } from 'astro/runtime/server/index.js';
import { calculators } from '../../calc/index.ts';
import Calculator from '../calculator/Calculator.astro';

/** What the site's generator makes of an .astro file; its own types show only the props. */
const draw = Calculator as unknown as AstroComponentFactory;

/** By the name that an author writes. */
export const calculatorComponents: Readonly<Record<string, AstroComponentFactory>> = Object.fromEntries(
  calculators.map(({ id, component }) => {
    const named: AstroComponentFactory = (result, props, slots) =>
      draw(result, { ...props, calculator: id, own: false }, slots);
    return [component, Object.assign(named, { isAstroComponentFactory: true, moduleId: draw.moduleId })];
  }),
);
