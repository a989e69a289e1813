import type { Form } from '../form/index.ts';
import { readAllowances } from '../pattern/index.ts';
import type { Joint } from '../sewing/index.ts';

/** Openings of the shell that are laced to a plate, by the joint. */
const OPENINGS: Readonly<Record<string, string>> = {
  'base-edge': 'base',
  'neck-edge': 'neck',
  'armhole-right-edge': 'armholeRight',
  'armhole-left-edge': 'armholeLeft',
};

/**
 * What is left beyond the line of a joint on every edge that it holds, mm: both panels of a seam, also where an inner part is sewn onto
 * that seam's allowances; all panels round an opening; else the edge of the inner part. Empty for pieces without a draft.
 */
export function allowancesOfJoint(form: Form, joint: Pick<Joint, 'id' | 'parts'>): number[] {
  const { edge, pieces } = edgesOfJoint(form, joint);
  return [...form.pieces, ...(form.inside?.pieces ?? [])].flatMap(({ id, draft }) => {
    if (!draft || !pieces.includes(id)) return [];
    const { allowances } = readAllowances(draft.input, draft.options);
    return draft.input.edges.flatMap((one, k) => (one.id === edge ? [allowances[k]] : []));
  });
}

function edgesOfJoint(
  { shell }: Form,
  { id, parts }: Pick<Joint, 'id' | 'parts'>,
): { readonly edge: string; readonly pieces: readonly string[] } {
  const panels = shell.panels.map((panel) => panel.id);
  if (OPENINGS[id] !== undefined) return { edge: OPENINGS[id], pieces: panels };
  // An arm is closed by its wrist plate and its cap.
  if (id.startsWith('wrist-')) return { edge: 'wrist', pieces: parts };
  if (id.startsWith('cap-')) return { edge: 'armhole', pieces: parts };
  const edge = id.slice(id.indexOf('/') + 1);
  const isOnSeam = shell.seams.some((seam) => seam.id === edge);
  return { edge, pieces: isOnSeam ? panels : parts };
}
