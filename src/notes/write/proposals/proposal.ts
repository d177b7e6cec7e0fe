/** One thing that the notes say and a register could hold. */
export type Kind =
  | 'fault'
  | 'finding'
  | 'put off'
  | 'refit'
  | 'measurement'
  | 'part'
  | 'cost'
  | 'thanks'
  | 'road-test point'
  | 'question';

export interface Proposal {
  id: string;
  kind: Kind;
  /** "bench-notes.md:5". */
  place: string;
  words: string;
  /** Places of what else was said of it. */
  also?: readonly string[];
  /** The words that told it. */
  because: string;
  /** Fields of the register, as they would be written. */
  row: Record<string, string>;
}
