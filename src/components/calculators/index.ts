/** What a chapter may write for each calculator of the index: `<Timing … />`. Made from the index; nothing to add here. */
import type { createComponent } from 'astro/runtime/server/index.js';
import { calculators } from '../../calc/index.ts';
import Calculator from '../calculator/Calculator.astro';

type Component = ReturnType<typeof createComponent>;

/** By the name that an author writes. */
export const calculatorComponents: Readonly<Record<string, Component>> = Object.fromEntries(
  calculators.map(({ id, component }) => {
    const of: Component = Object.assign(
      (...[result, props, slots]: Parameters<Component>) =>
        Calculator(result, { ...props, calculator: id, own: false }, slots),
      {
        isAstroComponentFactory: true as const,
        moduleId: Calculator.moduleId,
        propagation: Calculator.propagation,
      },
    );
    return [component, of];
  }),
);
