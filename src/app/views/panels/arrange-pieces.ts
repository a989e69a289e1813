import type { Form } from '../../../core/form/index.ts';
import type { ShellPanel } from '../../../core/seams/index.ts';

/** Where a piece lies in the picture: add this to its own x, and to −y. mm. */
export interface PiecePlace {
  readonly index: number;
  readonly dx: number;
  readonly dy: number;
}

export interface Arrangement {
  readonly places: readonly PiecePlace[];
  /** x, y, width, height in mm, y down. */
  readonly box: readonly [number, number, number, number];
}

interface Entry {
  readonly index: number;
  readonly angle: number;
  readonly row: number;
  /** Extent of the cut line, y down, after lining up with the body's heights. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly rise: number;
}

/** Between neighbours, with room for names side by side. */
const GAP = 60;
/** Between rows, with room for a name of two lines. */
const ROW_GAP = 110;

/**
 * Lays the pieces out as they sit on the body seen from outside: from centre back round the right side to centre
 * front in the middle, on to the left side and back; pieces above a level seam in the row above. Heights line up.
 * For a tall picture the right half stands below the left half.
 */
export function arrangePieces(form: Form, isTall: boolean): Arrangement {
  const bands = rowsOfPanels(form);
  const entries = form.pieces.map((_, index) => {
    const entry = describePiece(form, index, bands[index]);
    return isTall ? { ...entry, row: 2 * entry.row + (entry.angle > Math.PI / 2 ? 1 : 0) } : entry;
  });
  const rowCount = Math.max(0, ...entries.map((entry) => entry.row)) + 1;
  const places: PiecePlace[] = [];
  let lift = 0;
  let box = { left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity };
  for (let row = 0; row < rowCount; row++) {
    const inRow = entries.filter((entry) => entry.row === row).sort((a, b) => a.angle - b.angle);
    if (inRow.length === 0) continue;
    if (row > 0) lift = Math.min(0, box.top - ROW_GAP - Math.max(...inRow.map((entry) => entry.bottom)));
    const width = inRow.reduce((sum, entry) => sum + entry.right - entry.left + GAP, -GAP);
    let x = -width / 2;
    for (const entry of inRow) {
      places.push({ index: entry.index, dx: x - entry.left, dy: entry.rise + lift });
      x += entry.right - entry.left + GAP;
      box = {
        left: Math.min(box.left, -width / 2),
        right: Math.max(box.right, width / 2),
        top: Math.min(box.top, entry.top + lift),
        bottom: Math.max(box.bottom, entry.bottom + lift),
      };
    }
  }
  return { places, box: [box.left, box.top, box.right - box.left, box.bottom - box.top] };
}

function describePiece(form: Form, index: number, row: number): Entry {
  const panel = form.shell.panels[index];
  const { cutLine } = form.pieces[index];
  const rise = meanHeightDifference(panel, form.flat[index].positions);
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < cutLine.length; i += 2) {
    left = Math.min(left, cutLine[i]);
    right = Math.max(right, cutLine[i]);
    top = Math.min(top, rise - cutLine[i + 1]);
    bottom = Math.max(bottom, rise - cutLine[i + 1]);
  }
  return { index, angle: angleOfPanel(panel), row, left, right, top, bottom, rise };
}

/** What to add to −y of the flat piece so that it lies at its height on the body. */
function meanHeightDifference(panel: ShellPanel, flat: Float64Array): number {
  const count = flat.length / 2;
  let sum = 0;
  for (let v = 0; v < count; v++) sum += flat[2 * v + 1] - panel.mesh.positions[3 * v + 2];
  return sum / count;
}

/** Mean direction in the chart, from centre back (−π/2) round to centre back again (3π/2). */
function angleOfPanel(panel: ShellPanel): number {
  let [sine, cosine] = [0, 0];
  for (let i = 0; i < panel.chart.length; i += 2) {
    sine += Math.sin(panel.chart[i]);
    cosine += Math.cos(panel.chart[i]);
  }
  const angle = Math.atan2(sine, cosine);
  return angle < -Math.PI / 2 ? angle + 2 * Math.PI : angle;
}

/** Number of level seams between each panel and the base. */
function rowsOfPanels(form: Form): number[] {
  const { panels, seams } = form.shell;
  const indexOf = new Map(panels.map((panel, i) => [panel.id, i]));
  const rows = panels.map((panel): number => (panel.edges.some((edge) => edge.id === 'base') ? 0 : -1));
  const levelSeams = seams.filter((seam) => seam.isLevel);
  for (let hasChanged = true; hasChanged; ) {
    hasChanged = false;
    for (const seam of levelSeams) {
      const [a, b] = seam.panels.map((id) => indexOf.get(id) ?? -1);
      for (const [from, to] of [
        [a, b],
        [b, a],
      ]) {
        if (rows[from] < 0 || rows[to] >= 0) continue;
        rows[to] = rows[from] + 1;
        hasChanged = true;
      }
    }
  }
  return rows.map((row) => Math.max(0, row));
}
