import type { MeshPhrases } from '../../../core/mesh/index.ts';
import type { Entries } from '../../catalogue.ts';

/** How a mesh is unfit. */
export const mesh: Entries<MeshPhrases> = {
  'mesh.array-length': 'Positions and triangles must hold three numbers each.',
  'mesh.not-a-number': 'A position is not a finite number.',
  'mesh.index-range': 'A triangle names a vertex that is not there.',
  'mesh.repeated-corner': 'A triangle names a vertex twice.',
  'mesh.degenerate': 'A triangle has no area.',
  'mesh.not-manifold': 'An edge has more than two triangles.',
  'mesh.orientation': 'Neighbouring triangles face opposite ways.',
  'mesh.open': 'The surface has an open border.',
  'mesh.pinched-vertex': 'Two sheets touch in one vertex.',
};
