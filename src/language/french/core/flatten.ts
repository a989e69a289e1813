import type {
  ClothPhrases,
  DiskPhrases,
  FlattenPhrases,
  UnrollingPhrases,
} from '../../../core/flatten/index.ts';
import type { Entries } from '../../catalogue.ts';

const cloths: Entries<ClothPhrases> = {
  'cloth.plainCotton': 'coton uni',
  'cloth.fusedCotton': 'coton entoilé (thermocollé)',
  'cloth.plainWool': 'lainage uni',
};

const unrolling: Entries<UnrollingPhrases> = {
  'flatten.unrolling': 'Mise à plat des panneaux',
  'flatten.unrolling-each': 'Mise à plat de chaque panneau',
  'flatten.matching': 'Accord des coutures',
  'flatten.stopped': 'La mise à plat a été arrêtée.',
  'flatten.not-settled': ({ steps, decrement, largestError }, { mark }) =>
    `Le panneau ne s’est pas stabilisé en ${steps} ${steps < 2 ? 'étape' : 'étapes'} : l’énergie baisse encore de ${mark(decrement.toExponential(1))} par mm², les longueurs s’écartent de ${mark(largestError.toPrecision(2))} mm au plus.`,
  'flatten.outline-crosses': ({ places }) =>
    `Le contour à plat se croise lui-même en ${places === 1 ? '1 endroit' : `${places} endroits`} : le panneau ne peut pas être coupé d’un seul tenant.`,
  'flatten.ease-conflict': ({ seam }) =>
    `La couture ${seam} ne peut pas prendre l’aisance à soutenir demandée : ses deux côtés sont le même bord, en miroir, ou liés par une autre couture.`,
  'flatten.kept-length': ({ wanted, got }, { small }) =>
    `Une ligne qui devrait garder ${small(wanted)} arrive à ${small(got)}, car ses coutures doivent garder leurs propres longueurs.`,
  'flatten.join-differs': ({ seam, gap, limit }, { small, exactLength }) =>
    `Les deux côtés de la couture ${seam} diffèrent de ${small(gap)} (${exactLength(limit)} au plus).`,
  'flatten.join-length': ({ seam, change, limit }, { small, exactLength }) =>
    `La couture ${seam} devrait garder sa longueur sur le corps, mais s’en écarte de ${small(change)} (${exactLength(limit)} au plus).`,
  'flatten.path-length': ({ change, limit }, { small, exactLength }) =>
    `Une ligne de niveau, de milieu ou d’épaule change de longueur de ${small(change)} (${exactLength(limit)} au plus).`,
};

const disks: Entries<DiskPhrases> = {
  'disk.no-triangles': 'Le panneau n’a pas de triangles.',
  'disk.no-area': 'Un triangle n’a (presque) pas de surface.',
  'disk.loose-vertex': 'Le panneau a un sommet hors de tout triangle.',
  'disk.edge-used-twice': 'Une arête du panneau sert deux fois dans le même sens.',
  'disk.pinched': 'Le bord du panneau se touche lui-même en un point.',
  'disk.no-boundary': 'Le panneau n’a pas de bord : une surface fermée ne se met pas à plat.',
  'disk.broken-boundary': 'Le bord du panneau est interrompu.',
  'disk.more-boundaries': 'Le panneau a plus d’un bord et ne se met donc pas à plat.',
  'disk.separate-parts': 'Le panneau tombe en morceaux séparés.',
  'disk.handle': 'Le panneau a une anse et ne se met donc pas à plat.',
};

/** Cloths, and what is told of unrolling. */
export const flatten: Entries<FlattenPhrases> = { ...cloths, ...unrolling, ...disks };
