import type { ThreeEvent } from '@react-three/fiber';
import { Triangle, Vector3 } from 'three';
import type { Form } from '../../core/form/index.ts';

/** Where in the chart a panel is hit: its corners' places with the weights of the point. u may be unwrapped past π. */
export function placeOnPanel(
  form: Form,
  panelId: string,
  event: ThreeEvent<PointerEvent> | ThreeEvent<MouseEvent>,
): { readonly u: number; readonly v: number } | null {
  const panel = form.shell.panels.find(({ id }) => id === panelId);
  if (!panel || !event.face) return null;
  const { a, b, c } = event.face;
  const corners = [a, b, c].map((vertex) => new Vector3().fromArray(panel.mesh.positions, 3 * vertex));
  const weights = Triangle.getBarycoord(event.point, corners[0]!, corners[1]!, corners[2]!, new Vector3());
  if (!weights) return null;
  const mix = (axis: 0 | 1) => {
    const first = panel.chart[2 * a + axis]!;
    // The seam of the chart may run through a triangle.
    const near = (value: number) =>
      axis === 1 ? value : value - 2 * Math.PI * Math.round((value - first) / (2 * Math.PI));
    return (
      weights.x * first +
      weights.y * near(panel.chart[2 * b + axis]!) +
      weights.z * near(panel.chart[2 * c + axis]!)
    );
  };
  return { u: mix(0), v: mix(1) };
}
