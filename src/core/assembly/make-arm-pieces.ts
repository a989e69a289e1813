import type { Phrase } from '../base/index.ts';
import type { ArmState } from '../body/index.ts';
import { measureAlongPath } from '../mesh/index.ts';
import type { PieceEdge, PieceInput, PieceMark } from '../pattern/index.ts';
import type { ArmPanel } from './cut-arm.ts';
import { ARM_SEAMS, type FlatArms } from './flatten-arms.ts';
import { phrase } from './phrases.ts';

/** Between two marks of a long seam, mm (common practice). */
const LONGEST_UNMARKED = 120;

export interface ArmSeam {
  readonly id: string;
  readonly letter: string;
  readonly name: Phrase;
  readonly side: 'right' | 'left';
  readonly line: 'outer' | 'inner';
  /** `index` counts rows from the armhole. */
  readonly marks: readonly PieceMark[];
}

/** The long seams of the arms, lettered in order by `nextLetter`, marked at the girths and evenly between. */
export function nameArmSeams(panels: readonly ArmPanel[], nextLetter: (index: number) => string): ArmSeam[] {
  return panels
    .filter(({ half }) => half === 'back')
    .flatMap((panel) => ARM_SEAMS.map((line) => ({ panel, line })))
    .map(({ panel, line }, k) => ({
      id: `arm-${line}-${panel.side}`,
      letter: nextLetter(k),
      name: phrase('arm.seam', { line, side: panel.side }),
      side: panel.side,
      line,
      marks: placeMarks(panel, panel[line]),
    }));
}

/** Marks at every girth row, and balance marks where more than `LONGEST_UNMARKED` of the body's length would have none. */
function placeMarks(panel: ArmPanel, vertices: Uint32Array): PieceMark[] {
  const along = measureAlongPath(panel.mesh, vertices);
  const last = vertices.length - 1;
  const levels = panel.girths.filter(({ row }) => row > 0 && row < last);
  const stops = [0, ...levels.map(({ row }) => row), last];
  const marks: Omit<PieceMark, 'number'>[] = [];
  for (let s = 1; s < stops.length; s++) {
    const [from, to] = [along[stops[s - 1]], along[stops[s]]];
    const parts = Math.ceil((to - from) / LONGEST_UNMARKED);
    for (let part = 1; part < parts; part++) {
      marks.push({ kind: 'balance', index: nearest(along, from + ((to - from) * part) / parts) });
    }
    const level = levels.find(({ row }) => row === stops[s]);
    if (level) marks.push({ kind: 'level', index: stops[s], levelId: level.id });
  }
  return marks.map((mark, k) => ({ ...mark, number: k + 1 }));
}

function nearest(along: Float64Array, wanted: number): number {
  let best = 0;
  along.forEach((x, i) => {
    if (Math.abs(x - wanted) < Math.abs(along[best] - wanted)) best = i;
  });
  return best;
}

/**
 * What drafting needs of the arms: a back and a front of material `arms` each. Parallel to the panels. How the arms were
 * held when measured is written on them, where it was said.
 */
export function makeArmPieces(
  { panels, flat }: FlatArms,
  seams: readonly ArmSeam[],
  state?: ArmState,
): PieceInput[] {
  const notes = state && [phrase('arm.measured', { state })];
  return panels.map((panel, i) => ({
    ...armInput(panel, flat[i].positions, seams),
    ...(notes && { notes }),
  }));
}

function armInput(panel: ArmPanel, flat: Float64Array, seams: readonly ArmSeam[]): PieceInput {
  const seamEdge = (line: 'outer' | 'inner', isUpward: boolean): PieceEdge => {
    const seam = seams.find((s) => s.side === panel.side && s.line === line)!;
    const vertices = isUpward ? panel[line].toReversed() : panel[line];
    const last = vertices.length - 1;
    return {
      kind: 'seam',
      id: seam.id,
      letter: seam.letter,
      points: pointsOf(flat, vertices),
      marks: seam.marks.map((mark) => ({ ...mark, index: isUpward ? last - mark.index : mark.index })),
      // One slit along the outer seam, two along the inner, so that the two are not mistaken for each other.
      bodyHalf: line === 'outer' ? 'front' : 'back',
    };
  };
  const openEdge = (id: 'armhole' | 'wrist', isInwards: boolean): PieceEdge => {
    const vertices = isInwards ? panel[id] : panel[id].toReversed();
    // Midway lies the armhole's front or back break, as on the plate it is laced to.
    const marks: PieceMark[] =
      id === 'armhole' ? [{ kind: 'balance', index: (vertices.length - 1) >> 1, number: 1 }] : [];
    const points = pointsOf(flat, vertices);
    return { kind: 'opening', id, letter: '', points, marks, bodyHalf: panel.half, allowanceKind: id };
  };
  // Counter-clockwise, seen from outside: over the armhole from the outer line on the right back and left front.
  const startsOutside = (panel.side === 'right') === (panel.half === 'back');
  const [down, up] = startsOutside ? (['inner', 'outer'] as const) : (['outer', 'inner'] as const);
  return {
    id: panel.id,
    name: panel.name,
    side: panel.side,
    edges: [
      openEdge('armhole', startsOutside),
      seamEdge(down, false),
      openEdge('wrist', !startsOutside),
      seamEdge(up, true),
    ],
    // The wrist is an edge already.
    levelLines: panel.girths
      .filter(({ id }) => id !== 'wrist')
      .map(({ id, name, vertices }) => ({ id, name, points: pointsOf(flat, vertices) })),
    material: 'arms',
  };
}

function pointsOf(flat: Float64Array, vertices: Uint32Array): Float64Array {
  const points = new Float64Array(2 * vertices.length);
  vertices.forEach((vertex, i) => {
    points.set([flat[2 * vertex], flat[2 * vertex + 1]], 2 * i);
  });
  return points;
}
