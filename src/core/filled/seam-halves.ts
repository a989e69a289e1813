import { measureFlatPath } from '../mesh/index.ts';
import { type SeamedShell, type SeamSide, seamSides } from '../seams/index.ts';
import type { CutResiduals } from './cut-residuals.ts';

/** The sides of a seam are compared over stretches of about this length, mm. */
const STRETCH = 90;

/** The same stretch of a seam on the panels of its two sides; the first is `ease` times as long. */
interface SeamStretch {
  readonly sides: readonly [SeamSide, SeamSide];
  readonly ease: number;
}

/** By how much the first side of every stretch of every seam is too long for the second, mm, for flat panels and moves of theirs. */
export function residualsOfSeams(
  shell: SeamedShell,
): (flats: readonly Float64Array[]) => CutResiduals<readonly Float64Array[]> {
  const stretches = shell.seams.flatMap((seam) => stretchesOf(seamSides(shell, seam), seam));
  return (flats) => ({
    values: Float64Array.from(stretches, ({ sides: [a, b], ease }) => {
      return measureFlatPath(flats[a.panel], a.vertices) - ease * measureFlatPath(flats[b.panel], b.vertices);
    }),
    changeOf(moves, out) {
      stretches.forEach(({ sides, ease }, k) => {
        const [a, b] = sides.map(({ panel, vertices }) => changeOfPath(flats[panel], moves[panel], vertices));
        out[k] = a - ease * b;
      });
    },
  });
}

function stretchesOf(
  [a, b]: readonly [SeamSide, SeamSide],
  { length3d, ease }: SeamedShell['seams'][number],
): SeamStretch[] {
  const edges = a.vertices.length - 1;
  const count = Math.min(edges, Math.max(1, Math.round(length3d / STRETCH)));
  const longer = ease === undefined ? 1 : (1 + ease.fraction) ** (ease.panel === 0 ? 1 : -1);
  return Array.from({ length: count }, (_, k) => {
    const [from, to] = [k, k + 1].map((n) => Math.round((n * edges) / count));
    const part = ({ panel, vertices }: SeamSide) => ({ panel, vertices: vertices.subarray(from, to + 1) });
    return { sides: [part(a), part(b)], ease: longer };
  });
}

/** Of the length of a path over flat points, with moves of these, to the first order. */
function changeOfPath(flat: Float64Array, moves: Float64Array, vertices: Uint32Array): number {
  let sum = 0;
  for (let k = 1; k < vertices.length; k++) {
    const [p, q] = [2 * vertices[k - 1], 2 * vertices[k]];
    const [x, y] = [flat[q] - flat[p], flat[q + 1] - flat[p + 1]];
    sum += (x * (moves[q] - moves[p]) + y * (moves[q + 1] - moves[p + 1])) / Math.hypot(x, y);
  }
  return sum;
}
