/** What an author may write in a chapter, by name: the one map that MDX is given. */
import { calculatorComponents } from '../calculators/index.ts';
import RoadTest from '../road-tests/RoadTest.astro';
import Choice from './Choice.astro';
import Earlier from './Earlier.astro';
import FaultLink from './FaultLink.astro';
import Faults from './Faults.astro';
import Figure from './Figure.astro';
import Ledger from './Ledger.astro';
import MarkdownLink from './MarkdownLink.astro';
import MarkdownTable from './MarkdownTable.astro';
import Part from './Part.astro';
import Photo from './Photo.astro';
import Qty from './Qty.astro';
import Safety from './Safety.astro';
import Step from './Step.astro';
import Sum from './Sum.astro';
import Table from './Table.astro';
import TaskMark from './TaskMark.astro';

export const chapterComponents = {
  ...calculatorComponents,
  Choice,
  Earlier,
  FaultLink,
  Faults,
  Figure,
  Ledger,
  Part,
  Photo,
  Qty,
  RoadTest,
  Safety,
  Step,
  Sum,
  Table,
  a: MarkdownLink,
  input: TaskMark,
  table: MarkdownTable,
};
