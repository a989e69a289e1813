import type { MeshPhrases } from '../../../core/mesh/index.ts';
import type { Entries } from '../../catalogue.ts';

/** How a mesh is unfit. */
export const mesh: Entries<MeshPhrases> = {
  'mesh.array-length': 'Punkte und Dreiecke müssen aus je drei Zahlen bestehen.',
  'mesh.not-a-number': 'Ein Punkt hat eine Koordinate, die keine endliche Zahl ist.',
  'mesh.index-range': 'Ein Dreieck nennt eine Ecke, die es nicht gibt.',
  'mesh.repeated-corner': 'Ein Dreieck nennt eine Ecke zweimal.',
  'mesh.degenerate': 'Ein Dreieck hat keine Fläche.',
  'mesh.not-manifold': 'An einer Kante liegen mehr als zwei Dreiecke.',
  'mesh.orientation': 'Benachbarte Dreiecke zeigen in entgegengesetzte Richtungen.',
  'mesh.open': 'Die Oberfläche hat einen offenen Rand.',
  'mesh.pinched-vertex': 'Zwei Flächen berühren sich in nur einem Punkt.',
};
