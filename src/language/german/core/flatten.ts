import type {
  ClothPhrases,
  DiskPhrases,
  FlattenPhrases,
  UnrollingPhrases,
} from '../../../core/flatten/index.ts';
import type { Entries } from '../../catalogue.ts';

const cloths: Entries<ClothPhrases> = {
  'cloth.plainCotton': 'einfache Baumwolle',
  'cloth.fusedCotton': 'Baumwolle mit Bügeleinlage',
  'cloth.plainWool': 'einfacher Wollstoff',
};

const unrolling: Entries<UnrollingPhrases> = {
  'flatten.unrolling': 'Die Schnittteile werden abgewickelt',
  'flatten.unrolling-each': 'Jedes Schnittteil wird abgewickelt',
  'flatten.matching': 'Die Nähte werden angeglichen',
  'flatten.stopped': 'Das Abwickeln wurde angehalten.',
  'flatten.not-settled': ({ steps, decrement, largestError }, { mark }) =>
    `Das Schnittteil kam in ${steps} Schritten nicht zur Ruhe: Die Energie fällt noch um ${mark(decrement.toExponential(1))} je mm², Längen weichen um bis zu ${mark(largestError.toPrecision(2))} mm ab.`,
  'flatten.outline-crosses': ({ places }) =>
    `Der flache Umriss kreuzt sich selbst an ${places === 1 ? '1 Stelle' : `${places} Stellen`}: Das Schnittteil lässt sich nicht am Stück zuschneiden.`,
  'flatten.ease-conflict': ({ seam }) =>
    `Naht ${seam} kann die verlangte Einhalteweite nicht aufnehmen: Ihre beiden Seiten sind dieselbe Kante, gespiegelt oder durch eine andere Naht gebunden.`,
  'flatten.kept-length': ({ wanted, got }, { small }) =>
    `Eine Linie, die ${small(wanted)} behalten soll, kommt auf ${small(got)}, weil ihre Nähte ihre eigenen Längen behalten müssen.`,
  'flatten.join-differs': ({ seam, gap, limit }, { small, exactLength }) =>
    `Die beiden Seiten von Naht ${seam} unterscheiden sich um ${small(gap)} (erlaubt sind höchstens ${exactLength(limit)}).`,
  'flatten.join-length': ({ seam, change, limit }, { small, exactLength }) =>
    `Naht ${seam} soll ihre Länge vom Körper behalten, weicht aber um ${small(change)} ab (erlaubt sind höchstens ${exactLength(limit)}).`,
  'flatten.path-length': ({ change, limit }, { small, exactLength }) =>
    `Eine Höhen-, Mittel- oder Schulterlinie ändert ihre Länge um ${small(change)} (erlaubt sind höchstens ${exactLength(limit)}).`,
};

const disks: Entries<DiskPhrases> = {
  'disk.no-triangles': 'Das Schnittteil hat keine Dreiecke.',
  'disk.no-area': 'Ein Dreieck hat (fast) keine Fläche.',
  'disk.loose-vertex': 'Das Schnittteil hat eine Ecke, die zu keinem Dreieck gehört.',
  'disk.edge-used-twice': 'Eine Kante des Schnittteils kommt zweimal in derselben Richtung vor.',
  'disk.pinched': 'Der Rand des Schnittteils berührt sich selbst in einem Punkt.',
  'disk.no-boundary':
    'Das Schnittteil hat keinen Rand: Eine geschlossene Oberfläche lässt sich nicht flach legen.',
  'disk.broken-boundary': 'Der Rand des Schnittteils ist unterbrochen.',
  'disk.more-boundaries': 'Das Schnittteil hat mehr als einen Rand und lässt sich darum nicht flach legen.',
  'disk.separate-parts': 'Das Schnittteil zerfällt in getrennte Teile.',
  'disk.handle': 'Das Schnittteil hat einen Henkel und lässt sich darum nicht flach legen.',
};

/** Cloths, and what is told of unrolling. */
export const flatten: Entries<FlattenPhrases> = { ...cloths, ...unrolling, ...disks };
