import type { Answer } from '../../calc/answer.ts';
import type { FormFacts, Refusal, Values } from '../../calc/contract.ts';
import { readFilled, type Texts } from '../../calc/read-values.ts';

/** Reads a form's texts, and solves once every figure of it can be read. Empty fields stay empty. */
export function solveTexts(
  form: Pick<FormFacts, 'fields'>,
  texts: Texts,
  solve: (values: Values) => Answer | Refusal,
): Answer | Refusal {
  const { values, errors } = readFilled(form, texts);
  return errors.length > 0 ? { ok: false, errors } : solve(values);
}
