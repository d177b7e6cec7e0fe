/**
 * Overall diameters in mm where the rule is known to be off. Source: UN Regulation No. 30, 02 series, Annex 5, from memory,
 * ± 3 mm.
 */
export const TYRES: Readonly<Record<string, number>> = {
  '125R13': 536,
  '135R13': 548,
  '145R13': 566,
  '155R13': 578,
  '165R13': 596,
  '145R10': 492,
  '145R12': 542,
  '145R15': 616,
  '5.20-10': 508,
  '5.20-13': 582,
  '5.60-13': 600,
};
