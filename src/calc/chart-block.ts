/** A line chart as markup with holes: axes with units in their labels, curves told apart by dash and by the word at their end. */
import type { Block } from './answer.ts';
import { BOTTOM, LEFT, RIGHT, TOP } from './chart-rows.ts';
import { opening } from './picture-block.ts';
import type { SaidChart } from './says.ts';
import { circle, lettering, path } from './svg.ts';

const HEIGHT = 242;
const GRID = 'stroke-opacity=".2"';

/** Stands at a curve's end or at a point: the word that it brings, or the declared one. */
const word = (text: string) => lettering('{wordX}', '{wordY}', text, '{anchor}');

export const chartBlock = ({ name, title, desc, x, y, curve = [], mark = [] }: SaidChart): Block => ({
  name,
  open: [
    ...opening(HEIGHT, title, desc),
    path(`M${LEFT} ${TOP}V${BOTTOM}H${RIGHT}`),
    ...[x].flat().map((text) => lettering(RIGHT, BOTTOM + 30, text, 'end')),
    ...[y].flat().map((text) => lettering(4, 12, text)),
  ],
  each: [
    path(`M{gridX} ${TOP}V${BOTTOM}`, GRID),
    path(`M${LEFT} {gridY}H${RIGHT}`, GRID),
    lettering('{tickX}', BOTTOM + 14, '{tick}', 'middle'),
    lettering(LEFT - 5, '{tickY}', '{tick}', 'end'),
    path('{curvePath}', 'stroke-dasharray="{dash}"'),
    path('{curvePath}', '{?!dash}stroke-width="2"'),
    circle('{markX}', '{markY}', 3.5, 'currentColor'),
    word('{word}'),
    ...[curve].flat().map((text) => word(`{?onCurve}{?!word}${text}`)),
    ...[mark].flat().map((text) => word(`{?onMark}{?!word}${text}`)),
  ],
  close: ['</svg>'],
});
