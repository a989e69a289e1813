import type { Say } from '../../core/base/index.ts';
import { surfaceOfBody } from '../../core/body/index.ts';
import type { Form } from '../../core/form/index.ts';
import type { ChartSurface } from '../../core/mesh/index.ts';
import {
  bridgeHollows,
  nameOfPlace,
  type SnapKind,
  snapPoint,
  USUAL_BRIDGING,
} from '../../core/seams/index.ts';
import type { Words } from '../../language/index.ts';
import type { AppState, DrawnKind, DrawnPoint } from './types.ts';

const KINDS: Readonly<Record<DrawnKind, readonly SnapKind[]>> = {
  // A region may touch no armhole.
  region: ['landmark', 'line', 'centre', 'level'],
  line: ['landmark', 'armhole', 'line', 'centre', 'level'],
};

/**
 * A place pointed at, caught on what is within `within` mm. Lines are drawn on the right half, the left follows; a region
 * stays on the side it is drawn on, and catches on the left only where the body's sides are alike.
 */
export function catchPlace(
  form: Form,
  kind: DrawnKind,
  place: { readonly u: number; readonly v: number },
  within: number,
  { words, say }: Pick<AppState, 'words' | 'say'>,
): DrawnPoint {
  const surface = surfaceOfBody(form.body);
  const caught = snapPoint(surface, form.body, place, { within, kinds: KINDS[kind], shell: form.shell });
  if (kind === 'region' && caught.isMirrored) {
    if (!surface.isMirrorSymmetric) return { ...place, caughtOn: '' };
    return {
      u: Math.PI - caught.u,
      v: caught.v,
      caughtOn: sayCaught(caught.kind, caught.id, words, say),
    };
  }
  return { u: caught.u, v: caught.v, caughtOn: sayCaught(caught.kind, caught.id, words, say) };
}

/** What a point caught on in words; empty for nothing. */
export function sayCaught(
  kind: SnapKind,
  id: string,
  { catches: words, core }: Pick<Words, 'catches' | 'core'>,
  say: Say,
): string {
  const name = say(nameOfPlace(id));
  if (kind === 'none') return '';
  if (kind === 'centre') return id === 'front' ? words.centre.front : words.centre.back;
  if (kind === 'armhole') return words.armhole;
  if (kind === 'level') return words.level(core.inSentence(name));
  return kind === 'line' ? words.line(name) : words.landmark(name);
}

/** The surface points are drawn on: the body with its hollows bridged as the project says. */
export function surfaceDrawnOn({ body, project }: Pick<Form, 'body' | 'project'>): ChartSurface {
  return bridgeHollows(surfaceOfBody(body), body, project.seams.bridging ?? USUAL_BRIDGING);
}
