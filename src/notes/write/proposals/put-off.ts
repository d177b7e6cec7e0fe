/** Whether words that put something off do: "till the bolts are in" tells when, and puts off nothing. */
import type { Statement } from '../../draft.ts';

const WHEN = /^(?:till|until|when) /;
const LEAVES =
  /\b(?:leav(?:e|es|ing)|left (?:it|that|them)|waits?|waiting|stays?|live with|keep(?:ing)?|not (?:now|today|tonight|doing|touching|to be)|won't|can't do|clip it|do(?:es)? for now|put off|later|another (?:day|time)|as it is|no driv|not driv|parked|shelved)/i;

export const putOffIn = (one: Statement): string | undefined => {
  const because = one.said.get('put off');
  if (because === undefined || !WHEN.test(because)) return because;
  return LEAVES.test(one.text) ? because : undefined;
};
