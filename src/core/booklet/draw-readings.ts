import type { Say } from '../base/index.ts';
import { type Drawing, makePath, makeText, measureText } from '../drawing/index.ts';
import type { Form } from '../form/index.ts';
import { ASSUMED_DENSITY } from '../inside/index.ts';
import { FILLING_TOLERANCE } from '../simulate/index.ts';
import {
  type BookletPaper,
  breakWords,
  flowPages,
  keepTogether,
  LEADING,
  type PageFlow,
  pagesOfFlow,
  putItems,
  writeParagraph,
} from './flow-pages.ts';
import { type BookletColumn, phrase } from './phrases.ts';

const HEADING = 5.6;
const WORDS = 3.2;
const CELL = 3;
const ROW = 6.6;
const BESIDE_WORDS = 1.5;
const BELOW = 4;
/** Times each level is read: while it is filled, after a day, after a week, later. */
const READINGS = 4;

/** What every level is to measure and every zone takes, with room to write the readings; none for a draft. */
export function drawReadings(form: Form, paper: BookletPaper, say: Say): Drawing[] {
  const { targets = [], zones = [] } = form.making?.stuffing ?? {};
  if (targets.length === 0) return [];
  const flow = flowPages(say(phrase('booklet.readings')), paper);
  const column = (of: BookletColumn): string => say(phrase('booklet.column', { of }));
  const length = (mm: number): string => say(phrase('booklet.length', { length: mm }));
  const times = Array.from({ length: READINGS }, (_, i) => `${column('read')} ${i + 1}`);
  writeParagraph(flow, say(phrase('booklet.readings')), { size: HEADING, below: 2 });
  writeParagraph(flow, say(phrase('booklet.readings-how', { above: FILLING_TOLERANCE.girth.above })), {
    size: WORDS,
    below: 3,
  });
  for (const kind of ['girth', 'width', 'depth'] as const)
    drawTable(flow, paper, [
      [column('level'), column(kind), ...times],
      ...targets.map((target) => [say(target.name), length(target[kind]), ...times.map(() => '')]),
    ]);
  writeParagraph(
    flow,
    say(phrase('booklet.zones-how', { ...ASSUMED_DENSITY, isAssumed: form.inside?.fill.isAssumed ?? true })),
    {
      size: WORDS,
      below: 3,
    },
  );
  drawTable(flow, paper, [
    [column('zone'), column('filling'), column('weighed')],
    ...zones.map(({ name, low, high }) => [
      say(name),
      say(phrase('booklet.mass', { from: low, to: high })),
      '',
    ]),
  ]);
  return pagesOfFlow(flow);
}

/** Lines and words of a table over the whole width; names too long for their column go on below. */
function drawTable(
  flow: PageFlow,
  { pageWidth, margin }: BookletPaper,
  rows: readonly (readonly string[])[],
): void {
  const widths = widthsOf(rows, pageWidth - 2 * margin);
  const edges = [0, ...widths].map((_, i) => margin + widths.slice(0, i).reduce((a, b) => a + b, 0));
  const cells = rows.map((row) =>
    row.map((words, i) => (words === '' ? [] : breakWords(words, CELL, widths[i] - 2 * BESIDE_WORDS))),
  );
  const heights = cells.map((row) => {
    return ROW + LEADING * CELL * (Math.max(...row.map((broken) => broken.length)) - 1);
  });
  const total = heights.reduce((sum, height) => sum + height, 0);
  keepTogether(flow, total);
  const top = flow.y;
  cells.forEach((row, k) => {
    putItems(flow, 'thin', [makePath([margin, flow.y, edges[edges.length - 1], flow.y])]);
    const baseline = flow.y + ROW / 2 + CELL / 3;
    const texts = row.flatMap((broken, i) =>
      broken.map((words, n) => {
        return makeText(edges[i] + BESIDE_WORDS, baseline + n * LEADING * CELL, words, CELL);
      }),
    );
    putItems(flow, 'text', texts);
    flow.y += heights[k];
  });
  putItems(flow, 'thin', [
    makePath([margin, flow.y, edges[edges.length - 1], flow.y]),
    ...edges.map((x) => makePath([x, top, x, flow.y])),
  ]);
  flow.y += BELOW;
}

/** Of the columns: as wide as their words, the second with figures never narrower, the first with names narrowed where it must be. */
function widthsOf(rows: readonly (readonly string[])[], width: number): number[] {
  const longest = (column: number): number => {
    return Math.max(...rows.map((row) => measureText(row[column], CELL))) + 2 * BESIDE_WORDS;
  };
  const others = rows[0].length - 2;
  const [firstShare, secondShare] = others > 1 ? [0.22, 0.22] : [0.5, 0.3];
  const least = Math.max(...Array.from({ length: others }, (_, i) => longest(i + 2)));
  const second = Math.max(secondShare * width, longest(1));
  const first = Math.min(Math.max(firstShare * width, longest(0)), width - second - others * least);
  return [first, second, ...Array.from({ length: others }, () => (width - first - second) / others)];
}
