import type { MeshPhrases } from '../../../core/mesh/index.ts';
import type { Entries } from '../../catalogue.ts';

/** How a mesh is unfit. */
export const mesh: Entries<MeshPhrases> = {
  'mesh.array-length': 'Positions et triangles doivent compter trois nombres chacun.',
  'mesh.not-a-number': 'Une position n’est pas un nombre fini.',
  'mesh.index-range': 'Un triangle nomme un sommet qui n’existe pas.',
  'mesh.repeated-corner': 'Un triangle nomme deux fois le même sommet.',
  'mesh.degenerate': 'Un triangle n’a pas de surface.',
  'mesh.not-manifold': 'Une arête a plus de deux triangles.',
  'mesh.orientation': 'Des triangles voisins sont tournés en sens contraire.',
  'mesh.open': 'La surface a un bord ouvert.',
  'mesh.pinched-vertex': 'Deux nappes se touchent en un seul sommet.',
};
