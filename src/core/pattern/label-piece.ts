import type { Issue, Phrase } from '../base/index.ts';
import { boundsOfPoints, measurePolyline } from '../math/index.ts';
import {
  type CellGrid,
  createCellGrid,
  isBoxFree,
  type Taken,
  takeBox,
  takeInside,
  takeLine,
} from './free-space.ts';
import { letterEdge, nameLevel, nameNotch } from './letter-edges.ts';
import { nameOfEdge } from './name-opening.ts';
import { phrase } from './phrases.ts';
import { findGrainPlaces, SHORTEST_GRAIN_SHARE } from './place-grain.ts';
import { type PlacedLabel, placeLabel } from './place-label.ts';
import type { Notch } from './place-notches.ts';
import { placeNotes } from './place-notes.ts';
import { boxOfPieceText, centreText } from './text-box.ts';
import type { LabelInfo, PieceInput, PieceLine, PieceText } from './types.ts';
import { type Wording, wordLabel } from './word-label.ts';

/** Side of a cell of the grid in which the label and the grain line look for room, mm. */
const CELL = 2.5;
/** mm kept free between texts and sew lines, level lines, the grain line. */
const SEW_CLEARANCE = 1;
const CUT_CLEARANCE = 0.7;
const LEVEL_CLEARANCE = 0.7;
const GRAIN_CLEARANCE = 3;
const TEXT_GAP = 1.5;
/** mm from the grain line to the sew line at least. */
const GRAIN_FROM_SEW = 6;
/** A complete label of this font size, mm, ends the search. */
const LARGE_LABEL = 6;
const GRAIN_WORD_SIZE = 4;

interface Lettering {
  readonly grainLine: Float64Array;
  readonly texts: readonly PieceText[];
  readonly issues: readonly Issue[];
}

/** A piece drafted so far. */
export interface DraftedLines {
  readonly input: PieceInput;
  readonly info: LabelInfo;
  /** Per edge, mm. */
  readonly allowances: readonly number[];
  /** Sew outline, ring n × 2. */
  readonly ring: Float64Array;
  readonly cutLine: Float64Array;
  readonly notches: readonly Notch[];
  readonly clips: readonly PieceLine[];
}

/**
 * All lettering of a piece, and its grain line, which has to share the room with it. Notch names come first
 * (they have the least choice), then seam letters; then the grain place that leaves the largest label wins.
 * What finds no legible room is left out with a warning.
 */
export function labelPiece(drafted: DraftedLines): Lettering {
  const taken = takenByLines(drafted);
  const issues: Issue[] = [];
  const texts = letterAllEdges(drafted, taken, issues);
  const choice = chooseGrain(drafted, taken);
  reportChoice(drafted, choice, issues);
  const lettered = [...texts, ...choice.texts];
  return {
    grainLine: choice.grainLine,
    texts: [...lettered, ...writeNotes(drafted, lettered, choice.grainLine, issues)],
    issues,
  };
}

/** What to do with the piece, where nothing else is yet. */
function writeNotes(
  { input, info, ring }: DraftedLines,
  texts: readonly PieceText[],
  grainLine: Float64Array,
  issues: Issue[],
): readonly PieceText[] {
  if (!input.notes) return [];
  const grid = createCellGrid(ring, CELL, SEW_CLEARANCE + 1);
  for (const { points } of input.levelLines) takeLine(grid, points, false, LEVEL_CLEARANCE + 0.8);
  for (const { points } of [...(input.cutouts ?? []), ...(input.stitchLines ?? [])])
    takeInside(grid, points, SEW_CLEARANCE + 1);
  for (const text of texts) takeBox(grid, boxOfPieceText(text), GRAIN_CLEARANCE);
  if (grainLine.length > 0) takeLine(grid, grainLine, false, GRAIN_CLEARANCE);
  const x = grid.left + (grid.columns * grid.cell) / 2;
  const y = grid.bottom + (grid.rows * grid.cell) / 2;
  const notes = placeNotes(grid, input.notes.map(info.say), x, y);
  if (!notes)
    issues.push(
      warning(input, 'notes-without-room', phrase('piece.no-room-for-notes', { piece: input.name })),
    );
  return notes ?? [];
}

function takenByLines({ input, ring, cutLine, notches, clips }: DraftedLines): Taken {
  return {
    ring,
    lines: [
      { points: ring, closed: true, clearance: SEW_CLEARANCE },
      { points: cutLine, closed: true, clearance: CUT_CLEARANCE },
      ...notches.flatMap(({ slits }) => slits.map(({ points }) => ({ points, closed: false, clearance: 1 }))),
      ...clips.map(({ points }) => ({ points, closed: false, clearance: CUT_CLEARANCE })),
      ...input.levelLines.map(({ points }) => ({ points, closed: false, clearance: LEVEL_CLEARANCE })),
      ...(input.stitchLines ?? []).map(({ points }) => ({ points, closed: true, clearance: SEW_CLEARANCE })),
      ...(input.cutouts ?? []).map(({ points }) => ({ points, closed: true, clearance: CUT_CLEARANCE })),
    ],
    boxes: [],
  };
}

function letterAllEdges(drafted: DraftedLines, taken: Taken, issues: Issue[]): PieceText[] {
  const { input, info, allowances, notches } = drafted;
  const piece = input.name;
  const texts: PieceText[] = [];
  for (const notch of notches) {
    const text = nameNotch(notch, allowances[input.edges.indexOf(notch.edge)], taken, info.say);
    if (text) {
      texts.push(text);
      taken.boxes.push(boxOfPieceText(text));
    } else {
      const message = phrase('piece.no-room-for-notch', { piece, notch: notch.words });
      issues.push(warning(input, 'mark-without-room', message));
    }
  }
  for (const edge of input.edges) {
    const letters = letterEdge(edge, taken, info.say);
    texts.push(...letters);
    if (letters.length === 0) {
      const message = phrase('piece.no-room-for-letter', { piece, edge: nameOfEdge(edge) });
      issues.push(warning(input, 'letter-without-room', message));
    }
  }
  return texts;
}

function reportChoice({ input, cutLine }: DraftedLines, choice: GrainChoice, issues: Issue[]): void {
  const piece = input.name;
  const limit = heightOf(cutLine) * SHORTEST_GRAIN_SHARE;
  const measured = measurePolyline(choice.grainLine);
  if (measured < limit) {
    const message = phrase('piece.grain-line-short', { piece, wanted: limit, found: measured });
    issues.push({ ...warning(input, 'grain-line-short', message), measured, limit });
  }
  for (const level of choice.unnamedLevels)
    issues.push(warning(input, 'level-without-room', phrase('piece.no-room-for-level', { piece, level })));
  if (!choice.label)
    issues.push(warning(input, 'label-without-room', phrase('piece.no-room-for-label', { piece })));
  else if (choice.label.rank.brevity > 0)
    issues.push(warning(input, 'label-shortened', phrase('piece.label-shortened', { piece })));
}

function warning(input: PieceInput, code: string, message: Phrase): Issue {
  return { code, path: `pieces.${input.id}`, message, severity: 'warning' };
}

interface GrainChoice {
  readonly grainLine: Float64Array;
  readonly texts: readonly PieceText[];
  readonly unnamedLevels: readonly Phrase[];
  readonly label: PlacedLabel | null;
}

/** Every grain place is tried until the label is large; the place with the best label and level names wins. */
function chooseGrain(drafted: DraftedLines, taken: Taken): GrainChoice {
  const { input, info, allowances, ring, cutLine } = drafted;
  const open = createCellGrid(ring, CELL, SEW_CLEARANCE + 1);
  for (const { points } of input.levelLines) takeLine(open, points, false, LEVEL_CLEARANCE + 0.8);
  for (const box of taken.boxes) takeBox(open, box, TEXT_GAP);
  const forGrain = createCellGrid(ring, CELL, GRAIN_FROM_SEW);
  for (const box of taken.boxes) takeBox(forGrain, box, GRAIN_CLEARANCE);
  for (const { points } of [...(input.cutouts ?? []), ...(input.stitchLines ?? [])]) {
    takeInside(open, points, SEW_CLEARANCE + 1);
    takeInside(forGrain, points, SEW_CLEARANCE + 1);
  }
  const wordings = wordLabel(input, info, allowances);

  const places = findGrainPlaces(forGrain, heightOf(cutLine));
  const word = info.say(input.grainWord ?? phrase('piece.grain'));
  let best: GrainChoice | null = null;
  for (const grainLine of places) {
    best = letterAround(drafted, grainLine, word, open, wordings, taken, best) ?? best;
    const rank = best?.label?.rank;
    if (rank && rank.brevity === 0 && rank.size >= LARGE_LABEL && best?.unnamedLevels.length === 0) break;
  }
  // A piece without its name, or with one hardly to be read, is worse than an arrow without a word.
  const isPoor = best !== null && (best.label === null || best.label.rank.brevity === 4);
  for (const grainLine of isPoor ? places : [])
    best = letterAround(drafted, grainLine, '', open, wordings, taken, best) ?? best;
  const none = { grainLine: new Float64Array(0), texts: [], unnamedLevels: [], label: null };
  return best ?? letterAround(drafted, none.grainLine, '', open, wordings, taken, null) ?? none;
}

/** Level names and label round one grain line with its word, if any; null when that is no better than the `best` so far. */
function letterAround(
  { input, info }: Pick<DraftedLines, 'input' | 'info'>,
  grainLine: Float64Array,
  grainWord: string,
  open: CellGrid,
  wordings: readonly Wording[],
  taken: Taken,
  best: GrainChoice | null,
): GrainChoice | null {
  const grid = { ...open, taken: open.taken.slice() };
  const grain = { points: grainLine, closed: false, clearance: GRAIN_CLEARANCE };
  const local: Taken = { ...taken, lines: [...taken.lines, grain], boxes: [...taken.boxes] };
  const texts: PieceText[] = [];
  const put = (text: PieceText): void => {
    texts.push(text);
    const box = boxOfPieceText(text);
    local.boxes.push(box);
    takeBox(grid, box, TEXT_GAP);
  };

  // 1. The word beside the grain line, names on the level lines.
  if (grainLine.length > 0) {
    takeLine(grid, grainLine, false, GRAIN_CLEARANCE);
    const word = grainWord && wordGrain(grainLine, local, grainWord);
    if (word) put(word);
  }
  const unnamedLevels: Phrase[] = [];
  for (const { name, points } of input.levelLines) {
    const words = info.say(name);
    if (words === '') continue;
    const text = nameLevel(words, points, local);
    if (text) put(text);
    else unnamedLevels.push(name);
  }

  // 2. The label, in the middle if it can. A complete label counts first, then named levels, then its size.
  const fewer = best ? best.unnamedLevels.length - unnamedLevels.length : 1;
  const size = fewer > 0 ? 0 : fewer < 0 ? Number.POSITIVE_INFINITY : (best?.label?.rank.size ?? 0);
  const toBeat = best?.label ? { brevity: best.label.rank.brevity, size } : null;
  const x = grid.left + (grid.columns * grid.cell) / 2;
  const y = grid.bottom + (grid.rows * grid.cell) / 2;
  const label = placeLabel(grid, wordings, x, y, toBeat);
  if (!label && best && (best.label || fewer <= 0)) return null;
  return { grainLine, texts: label ? [...texts, ...label.texts] : texts, unnamedLevels, label };
}

/** A word along the line, on whichever side and height is free. */
function wordGrain(grainLine: Float64Array, taken: Taken, word: string): PieceText | null {
  const [x, y0, , y1] = grainLine;
  for (const share of [0.5, 0.35, 0.65, 0.2, 0.8]) {
    for (const side of [-1, 1]) {
      const text = centreText(
        x + side * (GRAIN_CLEARANCE + 0.1 + GRAIN_WORD_SIZE / 2),
        y0 + share * (y1 - y0),
        word,
        GRAIN_WORD_SIZE,
        Math.PI / 2,
      );
      if (isBoxFree(taken, boxOfPieceText(text), 1)) return text;
    }
  }
  return null;
}

function heightOf(cutLine: Float64Array): number {
  const bounds = boundsOfPoints([cutLine]);
  return bounds ? bounds.maxY - bounds.minY : 0;
}
