import type { MeshPhrases } from '../../../core/mesh/index.ts';
import type { Entries } from '../../catalogue.ts';

export const mesh: Entries<MeshPhrases> = {
  'mesh-array-length': 'Positionen und Dreiecke müssen aus je drei Zahlen bestehen.',
  'mesh-not-a-number': 'Eine Position ist keine endliche Zahl.',
  'mesh-index-range': 'Ein Dreieck nennt einen Eckpunkt, den es nicht gibt.',
  'mesh-repeated-corner': 'Ein Dreieck nennt einen Eckpunkt zweimal.',
  'mesh-degenerate': 'Ein Dreieck hat keine Fläche.',
  'mesh-not-manifold': 'An einer Kante liegen mehr als zwei Dreiecke.',
  'mesh-orientation': 'Benachbarte Dreiecke zeigen nach verschiedenen Seiten.',
  'mesh-open': 'Die Fläche hat einen offenen Rand.',
  'mesh-pinched-vertex': 'Zwei Flächen berühren sich in einem Punkt.',
};
