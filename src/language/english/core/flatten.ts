import type {
  ClothPhrases,
  DiskPhrases,
  FlattenPhrases,
  UnrollingPhrases,
} from '../../../core/flatten/index.ts';
import type { Entries } from '../../catalogue.ts';

const cloths: Entries<ClothPhrases> = {
  'cloth.plainCotton': 'plain cotton',
  'cloth.fusedCotton': 'cotton with fused interfacing',
  'cloth.plainWool': 'plain wool',
};

const unrolling: Entries<UnrollingPhrases> = {
  'flatten.unrolling': 'Unrolling the panels',
  'flatten.unrolling-each': 'Unrolling each panel',
  'flatten.matching': 'Matching the seams',
  'flatten.stopped': 'Unrolling was stopped.',
  'flatten.not-settled': ({ steps, decrement, largestError }, { mark }) =>
    `The panel did not settle in ${steps} steps: energy still falls by ${mark(decrement.toExponential(1))} per mm², lengths are off by up to ${mark(largestError.toPrecision(2))} mm.`,
  'flatten.outline-crosses': ({ places }) =>
    `The flat outline crosses itself in ${places === 1 ? '1 place' : `${places} places`}: the panel cannot be cut in one piece.`,
  'flatten.ease-conflict': ({ seam }) =>
    `Seam ${seam} cannot take the ease asked for: both its sides are the same edge, mirrored, or tied by another seam.`,
  'flatten.kept-length': ({ wanted, got }, { small }) =>
    `A path that should keep ${small(wanted)} comes to ${small(got)}, because its seams must keep their own lengths.`,
  'flatten.join-differs': ({ seam, gap, limit }, { small, exactLength }) =>
    `The two sides of seam ${seam} differ by ${small(gap)} (at most ${exactLength(limit)} allowed).`,
  'flatten.join-length': ({ seam, change, limit }, { small, exactLength }) =>
    `Seam ${seam} should keep its length on the body but differs by ${small(change)} (at most ${exactLength(limit)} allowed).`,
  'flatten.path-length': ({ change, limit }, { small, exactLength }) =>
    `A level, centre or shoulder line changes length by ${small(change)} (at most ${exactLength(limit)} allowed).`,
};

const disks: Entries<DiskPhrases> = {
  'disk.no-triangles': 'The panel has no triangles.',
  'disk.no-area': 'A triangle has (almost) no area.',
  'disk.loose-vertex': 'The panel has a vertex outside all triangles.',
  'disk.edge-used-twice': 'An edge of the panel is used twice the same way.',
  'disk.pinched': 'The boundary of the panel touches itself in one vertex.',
  'disk.no-boundary': 'The panel has no boundary: a closed surface cannot be laid flat.',
  'disk.broken-boundary': 'The boundary of the panel is broken.',
  'disk.more-boundaries': 'The panel has more than one boundary loop: it is not a disk.',
  'disk.separate-parts': 'The panel falls into separate parts.',
  'disk.handle': 'The panel has a handle: it is not a disk.',
};

/** Cloths, and what is told of unrolling. */
export const flatten: Entries<FlattenPhrases> = { ...cloths, ...unrolling, ...disks };
