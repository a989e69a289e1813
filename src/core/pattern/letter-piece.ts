import type { Issue } from '../base/index.ts';
import { boundsOfPoints } from '../drawing/index.ts';
import { measurePolyline } from '../math/index.ts';
import { type CellGrid, createCellGrid, isBoxFree, type Taken, takeBox, takeLine } from './free-space.ts';
import { letterEdge, nameLevel, nameNotch } from './letter-edges.ts';
import { findGrainPlaces, SHORTEST_GRAIN_SHARE } from './place-grain.ts';
import { type PlacedLabel, placeLabel } from './place-label.ts';
import type { Notch } from './place-notches.ts';
import { boxOfPieceText, centreText } from './text-box.ts';
import type { LabelInfo, PieceInput, PieceText } from './types.ts';
import { wordLabel } from './word-label.ts';

/** Side of a cell of the grid in which the label and the grain line look for room, mm. */
const CELL = 2.5;
/** mm kept free between texts and sew lines, level lines, the grain line. */
const SEW_CLEARANCE = 1;
const CUT_CLEARANCE = 0.7;
const LEVEL_CLEARANCE = 0.7;
const GRAIN_CLEARANCE = 3;
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
}

/**
 * All lettering of a piece, and its grain line, which has to share the room with it. Notch names come first
 * (they have the least choice), then seam letters; then the grain place that leaves the largest label wins.
 * What finds no legible room is left out with a warning.
 */
export function letterPiece(drafted: DraftedLines): Lettering {
  const taken = takenByLines(drafted);
  const issues: Issue[] = [];
  const texts = letterAllEdges(drafted, taken, issues);
  const choice = chooseGrain(drafted, taken);
  reportChoice(drafted, choice, issues);
  return { grainLine: choice.grainLine, texts: [...texts, ...choice.texts], issues };
}

function takenByLines({ input, ring, cutLine, notches }: DraftedLines): Taken {
  return {
    ring,
    lines: [
      { points: ring, closed: true, clearance: SEW_CLEARANCE },
      { points: cutLine, closed: true, clearance: CUT_CLEARANCE },
      ...notches.flatMap(({ slits }) => slits.map(({ points }) => ({ points, closed: false, clearance: 1 }))),
      ...input.levelLines.map(({ points }) => ({ points, closed: false, clearance: LEVEL_CLEARANCE })),
    ],
    boxes: [],
  };
}

function letterAllEdges(drafted: DraftedLines, taken: Taken, issues: Issue[]): PieceText[] {
  const { input, allowances, notches } = drafted;
  const texts: PieceText[] = [];
  for (const notch of notches) {
    const text = nameNotch(notch, allowances[input.edges.indexOf(notch.edge)], taken);
    if (text) {
      texts.push(text);
      taken.boxes.push(boxOfPieceText(text));
    } else {
      issues.push(warning(input, 'mark-without-room', `No room for the name of notch ${notch.name} on`));
    }
  }
  for (const edge of input.edges) {
    const letters = letterEdge(edge, taken);
    texts.push(...letters);
    if (letters.length === 0) {
      const name = edge.letter || edge.id;
      issues.push(warning(input, 'letter-without-room', `No room for "${name}" along its edge on`));
    }
  }
  return texts;
}

function reportChoice({ input, cutLine }: DraftedLines, choice: GrainChoice, issues: Issue[]): void {
  const limit = heightOf(cutLine) * SHORTEST_GRAIN_SHARE;
  const measured = measurePolyline(choice.grainLine);
  if (measured < limit) {
    const text = `A grain line of ${limit.toFixed(0)} mm is wanted, only ${measured.toFixed(0)} mm fits on`;
    issues.push({ ...warning(input, 'grain-line-short', text), measured, limit });
  }
  for (const name of choice.unnamedLevels) {
    issues.push(warning(input, 'level-without-room', `No room for the name of level "${name}" on`));
  }
  if (!choice.label) issues.push(warning(input, 'label-without-room', 'No room for the label on'));
  else if (choice.label.isShort) issues.push(warning(input, 'label-shortened', 'Only a short label fits on'));
}

function warning(input: PieceInput, code: string, text: string): Issue {
  return { code, path: `pieces.${input.id}`, message: `${text} piece "${input.name}".`, severity: 'warning' };
}

interface GrainChoice {
  readonly grainLine: Float64Array;
  readonly texts: readonly PieceText[];
  readonly unnamedLevels: readonly string[];
  readonly label: (PlacedLabel & { readonly isShort: boolean }) | null;
}

function chooseGrain(drafted: DraftedLines, taken: Taken): GrainChoice {
  const { input, info, allowances, ring, cutLine } = drafted;
  const open = createCellGrid(ring, CELL, SEW_CLEARANCE + 1);
  for (const box of taken.boxes) takeBox(open, box, 1.5);
  const forGrain = createCellGrid(ring, CELL, 6);
  for (const box of taken.boxes) takeBox(forGrain, box, GRAIN_CLEARANCE);
  const wordings = wordLabel(input, info, allowances);

  let best: GrainChoice | null = null;
  for (const grainLine of findGrainPlaces(forGrain, heightOf(cutLine))) {
    const choice = letterAround(input, grainLine, open, wordings, taken);
    if (!best || rank(choice) > rank(best)) best = choice;
    if (choice.label && choice.label.size >= 6 && choice.unnamedLevels.length === 0) break;
  }
  return best ?? letterAround(input, new Float64Array(0), open, wordings, taken);
}

/** Larger is better: complete wording first, then named levels, then font size. */
function rank(choice: GrainChoice): number {
  const wording = choice.label === null ? 0 : choice.label.isShort ? 1 : 2;
  return wording * 1000 - choice.unnamedLevels.length * 100 + (choice.label?.size ?? 0);
}

/** Level names and label round one grain line. */
function letterAround(
  input: PieceInput,
  grainLine: Float64Array,
  open: CellGrid,
  wordings: readonly (readonly string[])[],
  taken: Taken,
): GrainChoice {
  const texts: PieceText[] = [];
  const grid = { ...open, taken: open.taken.slice() };
  const local: Taken = {
    ...taken,
    lines: [...taken.lines, { points: grainLine, closed: false, clearance: GRAIN_CLEARANCE }],
    boxes: [...taken.boxes],
  };
  const put = (text: PieceText): void => {
    texts.push(text);
    const box = boxOfPieceText(text);
    local.boxes.push(box);
    takeBox(grid, box, 1.5);
  };

  if (grainLine.length > 0) {
    takeLine(grid, grainLine, false, GRAIN_CLEARANCE);
    const word = grainWord(grainLine, local);
    if (word) put(word);
  }
  const unnamedLevels: string[] = [];
  for (const line of input.levelLines) {
    const text = nameLevel(line.name, line.points, local);
    if (text) put(text);
    else unnamedLevels.push(line.name);
    takeLine(grid, line.points, false, LEVEL_CLEARANCE + 0.8);
  }
  const x = grid.left + (grid.columns * grid.cell) / 2;
  const y = grid.bottom + (grid.rows * grid.cell) / 2;
  const label = placeLabel(grid, wordings, x, y);
  return {
    grainLine,
    texts: label ? [...texts, ...label.texts] : texts,
    unnamedLevels,
    label: label && { ...label, isShort: label.wording === wordings.length - 1 },
  };
}

/** The word "grain" along the line, on whichever side and height is free. */
function grainWord(grainLine: Float64Array, taken: Taken): PieceText | null {
  const [x, y0, , y1] = grainLine;
  for (const share of [0.5, 0.35, 0.65, 0.2, 0.8]) {
    for (const side of [-1, 1]) {
      const text = centreText(
        x + side * (GRAIN_CLEARANCE + 0.1 + GRAIN_WORD_SIZE / 2),
        y0 + share * (y1 - y0),
        'grain',
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
