import type { Form } from '../../core/form/index.ts';
import { type LaidPiece, type LayPlan, placePiece } from '../../core/laying/index.ts';
import type { PrintTile } from '../store/index.ts';

/**
 * Where in the print each vertex of each panel lies, #V × 2 repeats, by its place on the cloth; a panel without one lies off it, in
 * the tile's corner.
 */
export function printOnPanels(
  form: Form,
  plan: LayPlan,
  { along, across, firstAlong, firstAcross }: PrintTile,
): Float32Array[] {
  return form.shell.panels.map(({ id }, panel) => {
    const flat = form.flat[panel]?.positions ?? new Float64Array();
    const above = plan.under?.find(({ twin }) => twin === id)?.piece;
    const place = plan.placed.find(({ piece }) => piece === (above ?? id));
    const places = new Float32Array(flat.length);
    if (!place) return places;
    const onCloth = above ? underFold(flat, place, plan.ground.width) : placePiece(flat, place);
    // The tile's middle is a motif's.
    for (let i = 0; i < onCloth.length; i += 2) {
      places[i] = (onCloth[i]! - firstAlong) / along + 0.5;
      places[i + 1] = (onCloth[i + 1]! - firstAcross) / across + 0.5;
    }
    return places;
  });
}

/** A twin cut from the lower layer, as it lies once the cloth is unfolded: it is the piece above it, mirrored, and the fold turns it over. */
function underFold(flat: Float64Array, above: LaidPiece, fold: number): Float64Array {
  const mirrored = placePiece(
    flat.map((value, i) => (i % 2 === 0 ? -value : value)),
    above,
  );
  return mirrored.map((value, i) => (i % 2 === 0 ? value : 2 * fold - value));
}
