import { type DisplayUnit, type Phrase, type Say, verbatim } from '../base/index.ts';
import {
  type Drawing,
  type DrawingItem,
  foldText,
  makeLayer,
  makePath,
  makeText,
  pageFromUpright,
} from '../drawing/index.ts';
import { boundsOfPolyline } from '../math/index.ts';
import { materialInWords, nameBoth, nameOfEdge, type Piece } from '../pattern/index.ts';
import type { ToldPiece } from './choose-drawn.ts';
import { phrase, type SheetPhrases } from './phrases.ts';
import type { TileGrid } from './plan-tiles.ts';
import type { PrintInfo } from './types.ts';

const WORDS = 3.4;
const ROW = 4.7;
/** Room of a sketch, and how far beside it the words begin, mm. */
const SKETCH = 44;
const BESIDE = 62;
/** A line counts as upright or level when its ends differ by no more, mm. */
const STRAIGHT = 0.1;

/** Pieces that are told alike, on one entry. */
interface Entry {
  readonly pieces: readonly Piece[];
  readonly told: ToldPiece;
}

/**
 * Pages that stand for drawings: first what is cut like a drawn piece, then every rectangle and circle as a small sketch with its sides,
 * seams, notches and lines in numbers. Empty when nothing is told.
 */
export function drawNumbers(
  told: readonly ToldPiece[],
  nameOfDrawn: (id: string) => Phrase,
  grid: TileGrid,
  info: PrintInfo,
  pageHeight: number,
): Drawing[] {
  if (told.length === 0) return [];
  const { margin, pageWidth } = grid;
  const { say } = info;
  const entries = gatherEntries(told, nameOfDrawn);
  const flow = createFlow(grid, info, pageHeight);
  for (const text of foldText(say(phrase('numbers.how')), WORDS, pageWidth - 2 * margin))
    flow.putRow(text, margin);
  flow.skip(2);
  for (const entry of entries.filter(({ told: { how } }) => 'of' in how)) {
    const words = say(wordFollower(entry, nameOfDrawn));
    const [first, ...rest] = foldText(words, WORDS, pageWidth - 2 * margin - 6);
    flow.putRow(first, margin + 6, true);
    for (const text of rest) flow.putRow(text, margin + 6);
  }
  flow.skip(4);
  const sketches = entries
    .filter(({ told: { how } }) => !('of' in how))
    .map((entry) => ({ entry, words: wordSketch(entry, info) }))
    .sort((a, b) => a.words.length - b.words.length);
  for (const { entry, words } of sketches) putSketch(flow, entry, words, info, margin, pageWidth - margin);
  return flow.finish();
}

function gatherEntries(told: readonly ToldPiece[], nameOfDrawn: (id: string) => Phrase): Entry[] {
  const entries = new Map<string, { told: ToldPiece; pieces: Piece[] }>();
  for (const one of told) {
    const { how, piece } = one;
    const shape =
      how.kind === 'rectangle'
        ? [how.width.toFixed(1), how.height.toFixed(1), linesInShort(piece)]
        : how.kind === 'circle'
          ? [how.diameter.toFixed(1), linesInShort(piece)]
          : how.kind === 'cover'
            ? [JSON.stringify(nameOfDrawn(how.of.id)), how.allowance.toFixed(0)]
            : [JSON.stringify(nameOfDrawn(how.of.id)), how.hasLine];
    const key = [how.kind, piece.material, ...shape].join('|');
    const entry = entries.get(key);
    if (entry) entry.pieces.push(piece);
    else entries.set(key, { told: one, pieces: [piece] });
  }
  return [...entries.values()];
}

/** What tells one rectangle or circle from another of the same size. */
function linesInShort({ sewLines, notches, levelLines }: Piece): string {
  const names = [...sewLines, ...notches].map(({ name }) => name);
  return `${names.join()}|${levelLines.length}`;
}

function nameOfEntry({ pieces }: Entry): Phrase {
  return nameBoth(pieces.map(({ name }) => name));
}

/** How many, and whether they are a right and a left. */
function countOf({ pieces }: Entry): { readonly count: number; readonly areSides: boolean } {
  const areSides = pieces.length === 2 && pieces[0].side === 'right' && pieces[1].side === 'left';
  return { count: pieces.length, areSides };
}

function wordFollower(entry: Entry, nameOfDrawn: (id: string) => Phrase): Phrase {
  const { how, piece } = entry.told;
  const head = {
    piece: nameOfEntry(entry),
    material: materialInWords(piece.material),
    ...countOf(entry),
  };
  if (how.kind === 'cover')
    return phrase('numbers.cover', {
      ...head,
      of: nameOfDrawn(how.of.id),
      allowance: Math.round(how.allowance),
      hasHoles: piece.draft?.input.clipLines !== undefined,
    });
  if (how.kind === 'layer')
    return phrase('numbers.layer', { ...head, of: nameOfDrawn(how.of.id), hasLine: how.hasLine });
  return phrase('numbers.piece', head);
}

/** Words and lines put on page after page. */
interface Flow {
  /** Makes sure that so much height is left on the page, or begins another; returns where it begins, mm from the top. */
  readonly reserve: (height: number) => number;
  /** One row of words at the present height, with a box to tick off where asked. */
  readonly putRow: (text: string, x: number, hasBox?: boolean, size?: number) => void;
  readonly put: (layer: 'cut' | 'sew' | 'mark' | 'text', items: readonly DrawingItem[]) => void;
  readonly skip: (height: number) => void;
  readonly at: () => number;
  readonly goTo: (y: number) => void;
  readonly finish: () => Drawing[];
}

function createFlow({ margin, pageWidth }: TileGrid, { project, say }: PrintInfo, pageHeight: number): Flow {
  type Page = Record<'cut' | 'sew' | 'mark' | 'text', DrawingItem[]>;
  const pages: Page[] = [];
  let y = 0;
  const begin = (): void => {
    const heading = phrase(pages.length === 0 ? 'numbers.heading' : 'numbers.heading-continued');
    pages.push({ cut: [], sew: [], mark: [], text: [makeText(margin, margin + 6, say(heading), 6)] });
    y = margin + 15;
  };
  begin();
  const page = (): Page => pages[pages.length - 1];
  const bottom = pageHeight - margin;
  return {
    at: () => y,
    goTo: (to) => {
      y = to;
    },
    skip: (height) => {
      y += height;
    },
    reserve: (height) => {
      if (y + height > bottom && y > margin + 15) begin();
      return y;
    },
    putRow: (text, x, hasBox = false, size = WORDS) => {
      if (y > bottom - 1) begin();
      page().text.push(makeText(x, y, text, size));
      if (hasBox) page().mark.push(makeBox(x - 6, y - 3));
      y += ROW;
    },
    put: (layer, items) => page()[layer].push(...items),
    finish: () =>
      pages.map((layers) => ({
        width: pageWidth,
        height: pageHeight,
        title: say(phrase('numbers.title', { project })),
        layers: (['cut', 'sew', 'mark', 'text'] as const).map((name) => makeLayer(name, layers[name])),
      })),
  };
}

/** A box to tick off. */
function makeBox(x: number, y: number): DrawingItem {
  return makePath([x, y, x + 3.4, y, x + 3.4, y + 3.4, x, y + 3.4], { closed: true });
}

/** All that is told of a rectangle or circle, a paragraph each. */
function wordSketch(entry: Entry, { say, unit = 'cm' }: PrintInfo): string[] {
  const { piece, how } = entry.told;
  return [
    say(wordFollower(entry, verbatim)),
    ...wordSize(how, unit).map(say),
    ...wordSeams(piece, unit).map(say),
    ...wordNotches(piece, how, unit, say),
    ...wordLines(piece, unit, say),
    ...(piece.draft?.input.notes ?? []).map(say),
  ];
}

function putSketch(
  flow: Flow,
  { told: { piece, how } }: Entry,
  words: readonly string[],
  { say, unit = 'cm' }: PrintInfo,
  left: number,
  right: number,
): void {
  const x = left + BESIDE;
  const rows = words.flatMap((text) => foldText(text, WORDS, right - x));
  const height = Math.max(SKETCH + 12, rows.length * ROW + 6);
  const top = flow.reserve(height);
  drawSketch(flow, piece, how, unit, say, left + 6, top);
  flow.goTo(top + 1);
  for (const [i, text] of rows.entries()) flow.putRow(text, x, i === 0);
  flow.goTo(Math.max(flow.at(), top + SKETCH + 12) + 5);
}

/** The outline, its seams and lines, small, with its sides beside it. */
function drawSketch(
  flow: Flow,
  piece: Piece,
  how: ToldPiece['how'],
  unit: DisplayUnit,
  say: Say,
  x0: number,
  y0: number,
): void {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(piece.cutLine);
  const scale = SKETCH / Math.max(maxX - minX, maxY - minY);
  const place = (points: Float64Array): Float64Array =>
    pageFromUpright(points, 0, 0).map((v, i) =>
      i % 2 === 0 ? x0 + (v - minX) * scale : y0 + (v + maxY) * scale,
    );
  flow.put('cut', [makePath(place(piece.cutLine), { id: `sketch/${piece.id}`, closed: true })]);
  flow.put(
    'sew',
    piece.sewLines.map(({ points }) => makePath(place(points))),
  );
  flow.put(
    'mark',
    [...piece.levelLines, ...piece.notches].map(({ points }) => makePath(place(points))),
  );
  const [width, height] = [(maxX - minX) * scale, (maxY - minY) * scale];
  const across = say(phrase('numbers.length', { length: maxX - minX, unit }));
  if (how.kind === 'circle') {
    flow.put('text', [
      makeText(x0 + width / 2, y0 + height + 4.5, `⌀ ${across}`, WORDS, { anchor: 'middle' }),
    ]);
    return;
  }
  const up = say(phrase('numbers.length', { length: maxY - minY, unit }));
  flow.put('text', [
    makeText(x0 + width / 2, y0 + height + 4.5, across, WORDS, { anchor: width > 24 ? 'middle' : 'start' }),
    makeText(x0 + width + 4, y0 + height / 2, up, WORDS, {
      anchor: 'middle',
      angle: -Math.PI / 2,
    }),
  ]);
}

function wordSize(how: ToldPiece['how'], unit: DisplayUnit): Phrase[] {
  if (how.kind === 'circle') return [phrase('numbers.circle', { diameter: how.diameter, unit })];
  if (how.kind === 'rectangle')
    return [phrase('numbers.rectangle', { width: how.width, height: how.height, unit })];
  return [];
}

/** How far inside the cut line the seams run. */
function wordSeams({ cutLine, draft }: Piece, unit: DisplayUnit): Phrase[] {
  const edges = draft?.input.edges ?? [];
  if (edges.length === 0) return [];
  const cut = boundsOfPolyline(cutLine);
  const sew = boundsOfPolyline(Float64Array.from(edges.flatMap(({ points }) => [...points])));
  const insets = {
    left: sew.minX - cut.minX,
    right: cut.maxX - sew.maxX,
    bottom: sew.minY - cut.minY,
    top: cut.maxY - sew.maxY,
  };
  const all = Object.values(insets);
  const isEven = Math.max(...all) - Math.min(...all) < STRAIGHT;
  if (isEven && insets.left < STRAIGHT) return [phrase('numbers.no-allowance')];
  return [
    isEven
      ? phrase('numbers.allowance', { allowance: insets.left })
      : phrase('numbers.allowances', { ...insets, unit }),
  ];
}

/** Where the notches are: along each side of a rectangle, round a circle as on a clock. */
function wordNotches(piece: Piece, how: ToldPiece['how'], unit: DisplayUnit, say: Say): string[] {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(piece.cutLine);
  return (piece.draft?.input.edges ?? []).flatMap((edge): string[] => {
    const marks = edge.marks.map((mark) => ({
      name: `${edge.letter}${mark.number}`,
      x: edge.points[2 * mark.index],
      y: edge.points[2 * mark.index + 1],
    }));
    if (how.kind === 'circle')
      return marks.map(({ name, x, y }) => {
        const angle = Math.atan2(x - 0.5 * (minX + maxX), y - 0.5 * (minY + maxY));
        const hour = (Math.round((angle * 6) / Math.PI) + 11) % 12;
        return say(phrase('numbers.notch-round', { name, hour: hour + 1 }));
      });
    const box = boundsOfPolyline(edge.points);
    const isUpright = box.maxX - box.minX < STRAIGHT;
    const side = isUpright
      ? box.minX < 0.5 * (minX + maxX)
        ? 'left'
        : 'right'
      : box.minY < 0.5 * (minY + maxY)
        ? 'bottom'
        : 'top';
    const notches = marks
      .map(({ name, x, y }) => ({ name, at: isUpright ? y - minY : x - minX }))
      .sort((a, b) => a.at - b.at);
    return [say(phrase('numbers.side', { side, edge: nameOfEdge(edge), notches, unit }))];
  });
}

type LineOfSketch = Omit<SheetPhrases['numbers.line'], 'unit'>;

function wordLines({ cutLine, levelLines, draft }: Piece, unit: DisplayUnit, say: Say): string[] {
  const { minX, minY } = boundsOfPolyline(cutLine);
  const lines = [...levelLines, ...(draft?.input.stitchLines ?? [])];
  const told = new Map<string, LineOfSketch>();
  for (const { name, points } of lines) {
    const [x0, y0] = [points[0] - minX, points[1] - minY];
    const [x1, y1] = [points[points.length - 2] - minX, points[points.length - 1] - minY];
    const isUpright = Math.abs(x1 - x0) < STRAIGHT;
    const [from, to] = (isUpright ? [y0, y1] : [x0, x1]).sort((a, b) => a - b);
    const at = isUpright ? x0 : y0;
    // Lines of one name at one place are told together.
    const key = [say(name), isUpright, at.toFixed(1)].join('|');
    const spans = [...(told.get(key)?.spans ?? []), { from, to }].sort((a, b) => a.from - b.from);
    told.set(key, { line: name, isUpright, at, spans });
  }
  return [...told.values()].map((line) => say(phrase('numbers.line', { ...line, unit })));
}
