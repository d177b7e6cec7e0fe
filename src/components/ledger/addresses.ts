import { at } from '../address.ts';

/** A part's own page, with its history; `atPart` of the site leads to its row in the list. */
export const atPartHistory = (id: string): string => at(`/parts/${id}/`);

/** An order worked out line by line. */
export const atOrder = (id: string): string => at(`/costs/orders/${id}/`);
