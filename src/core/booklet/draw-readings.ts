import type { Say } from '../base/index.ts';
import { type Drawing, makePath, makeText } from '../drawing/index.ts';
import type { Form } from '../form/index.ts';
import { ASSUMED_DENSITY } from '../inside/index.ts';
import { FILLING_TOLERANCE } from '../simulate/index.ts';
import {
  type BookletPaper,
  flowPages,
  keepTogether,
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

/** Lines and words of a table over the whole width; the first two columns are wider. */
function drawTable(
  flow: PageFlow,
  { pageWidth, margin }: BookletPaper,
  rows: readonly (readonly string[])[],
): void {
  keepTogether(flow, rows.length * ROW);
  const width = pageWidth - 2 * margin;
  const columns = rows[0].length;
  const [first, second] = columns > 3 ? [0.22, 0.44] : [0.5, 0.8];
  const edges = [
    0,
    first,
    second,
    ...Array.from({ length: columns - 2 }, (_, i) => {
      return second + ((1 - second) * (i + 1)) / (columns - 2);
    }),
  ].map((share) => margin + share * width);
  const top = flow.y;
  rows.forEach((row, k) => {
    const y = top + k * ROW;
    putItems(flow, 'thin', [makePath([margin, y, margin + width, y])]);
    putItems(
      flow,
      'text',
      row.flatMap((words, i) =>
        words === '' ? [] : [makeText(edges[i] + 1.5, y + ROW / 2 + CELL / 3, words, CELL)],
      ),
    );
  });
  const bottom = top + rows.length * ROW;
  putItems(flow, 'thin', [
    makePath([margin, bottom, margin + width, bottom]),
    ...edges.map((x) => makePath([x, top, x, bottom])),
  ]);
  flow.y += rows.length * ROW + 4;
}
