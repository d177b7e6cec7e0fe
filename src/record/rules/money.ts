import type { Rule } from './written.ts';

/** What holds between rows of the ledger. */
export const MONEY_RULES = {
  'orders/charge-alone': {
    title: 'A charge has no goods to be shared over',
    why: 'Freight, duty and fees of an order belong to what came with it; with nothing there, the cost would hang in the air.',
    severity: 'error',
    fixture: 'freight-without-part',
  },
  'orders/weight-missing': {
    title: 'A weight is missing',
    why: 'A charge that is shared by weight would fall on the other rows alone.',
    severity: 'error',
    fixture: 'weight-missing',
  },
  'ledger/refund-above-paid': {
    title: 'More came back than was paid',
    why: 'Either amount may have slipped, and the part would seem to have cost less than nothing.',
    severity: 'warning',
    fixture: 'refund-above-paid',
  },
  'ledger/sent-back-too-many': {
    title: 'More pieces were sent back than were bought',
    why: 'How much freight left with them would be wrong.',
    severity: 'warning',
    fixture: 'sent-back-too-many',
  },
  'ledger/refund-order': {
    title: 'A refund does not say which order it belongs to',
    why: 'The part was bought more than once, and each order has its own freight.',
    severity: 'warning',
    fixture: 'refund-without-order',
  },
} satisfies Record<string, Rule>;

export type MoneyRule = keyof typeof MONEY_RULES;
