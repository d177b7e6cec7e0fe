/** Units that a torque is given in, as books and wrenches write them. */
const UNIT =
  /(?:\d|\b)\s*(?:N\s?[·⋅.*-]?\s?m|da\s?N\s?[·⋅.]?\s?m|kgf?\s?[·⋅.-]?\s?c?m|c?m\s?[·⋅.-]?\s?kgf?|kpm|mkp|(?:lbs?f?|pounds?)[\s·⋅.-]?(?:ft|feet|foot|ins?|inch(?:es)?)|(?:ft|feet|foot|ins?|inch(?:es)?)[\s·⋅.-]?(?:lbs?f?|pounds?)|newton[\s-]?met(?:re|er)s?)(?![a-z])/i;
/** Figures that are no torque: threads, property classes, angles, page numbers, counts of bolts. */
const OTHER =
  /\bM\d+(?:\s?[×x]\s?[\d.,]+)?|\b(?:4\.6|5\.8|8\.8|9\.8|10\.9|12\.9)\b|[\d.,/]+\s*(?:°|deg(?:rees?)?\b|turns?\b|of a turn\b|flats?\b|mm\b|rounds?\b)|\b(?:page|p\.|table|step|figure|chapter|number|no\.|nuts?|bolts?)\s*\d+/gi;
/** What may stand behind a figure that is a torque without a unit, or with the unit of something else. */
const BARE =
  /(\d+(?:[.,]\d+)?)\s*(?:$|[,;:)–-]|(?:then|to|and|or|dry|oiled|greased|cold|hot|by|maker|book|±|N|kg|lbs?|bar)(?![\p{L}·])|\.(?:\s|$))/iu;

/**
 * The figure of a step's torque that has no unit of torque: "40", "8, 15, then 22". Undefined where each has one, or where
 * the words give no figure ("two M6 nuts, snug").
 * @example
 * bareTorque('40') // => '40'
 */
export function bareTorque(text: string): string | undefined {
  if (UNIT.test(text)) return undefined;
  return BARE.exec(text.replace(OTHER, ' '))?.[1];
}
