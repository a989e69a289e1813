import { surfaceOfBody } from '../../core/body/index.ts';
import type { Form } from '../../core/form/index.ts';

/** The form with every vertex on the person’s own surface, where the cloth goes over hollows. Cost: one point a vertex. */
export function personOfForm(form: Form): Form {
  const { shell } = form;
  const positions = surfaceOfBody(form.body).evaluate(shell.chart);
  const panels = shell.panels.map((panel) => {
    const own = new Float64Array(panel.mesh.positions.length);
    panel.sourceVertex.forEach((source, v) => {
      own.set(positions.subarray(3 * source, 3 * source + 3), 3 * v);
    });
    return { ...panel, mesh: { ...panel.mesh, positions: own } };
  });
  return { ...form, shell: { ...shell, mesh: { ...shell.mesh, positions }, panels } };
}
