import type { Form } from '../../core/form/index.ts';
import { type LayPlan, placePiece } from '../../core/laying/index.ts';
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
    const place = plan.placed.find(({ piece }) => piece === id);
    const places = new Float32Array(flat.length);
    if (!place) return places;
    const onCloth = placePiece(flat, place);
    // The tile's middle is a motif's.
    for (let i = 0; i < onCloth.length; i += 2) {
      places[i] = (onCloth[i]! - firstAlong) / along + 0.5;
      places[i + 1] = (onCloth[i + 1]! - firstAcross) / across + 0.5;
    }
    return places;
  });
}
