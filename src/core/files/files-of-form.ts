import type { Phrase, Say } from '../base/index.ts';
import { meshOfArm } from '../body/index.ts';
import { writeGlb, writeSvg } from '../export/index.ts';
import { type Form, reportOf } from '../form/index.ts';

/** A file as the maker gets it, whether from the command line or the app. */
export interface FormFile {
  readonly name: string;
  readonly type: string;
  readonly content: string | Uint8Array;
  /** Of a printed pattern: its pages, and the joints at which they are taped. */
  readonly printed?: {
    readonly paper: Phrase;
    readonly pages: number;
    readonly patternPages: number;
    readonly joints: number;
  };
}

/** `panels.svg`, one more per further material (`webs.svg`, `card.svg`, `covers.svg`, `foam.svg`), `report.json`, `body.glb`. Same form, same bytes. */
export async function filesOfForm(form: Form, say: Say): Promise<FormFile[]> {
  const arms = form.body.arms.map((arm) => ({ name: `arm-${arm.side}`, mesh: meshOfArm(arm) }));
  const meshes = [{ name: 'body', mesh: form.closedMesh }, ...arms];
  const body = await writeGlb({ meshes, generator: 'Loftseam' });
  return [
    ...form.drawings.map(({ material, drawing }) => ({
      name: material === 'shell' ? 'panels.svg' : `${material}.svg`,
      type: 'image/svg+xml',
      content: writeSvg(drawing, { say }),
    })),
    { name: 'report.json', type: 'application/json', content: reportOf(form, say) },
    { name: 'body.glb', type: 'model/gltf-binary', content: body },
  ];
}
