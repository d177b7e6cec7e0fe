import type { QuantityText } from '../../record/types.ts';
import { type Markup, markup } from '../markup.ts';

/** The other unit: in brackets, or in the margin of a large screen, where the figure is said again before it. */
export const otherUnit = ({ text, also }: QuantityText): Markup | undefined =>
  also === undefined
    ? undefined
    : markup`<span class="other"><span class="bracket"> (</span><span class="again" aria-hidden="true">${text} = </span><span class="quantity-figure">${also}</span><span class="bracket">)</span></span>`;

export const quantityMarkup = (quantity: QuantityText): Markup =>
  markup`<span class="quantity"><span class="quantity-figure">${quantity.text}</span>${otherUnit(quantity)}</span>`;
