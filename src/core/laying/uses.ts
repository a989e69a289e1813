import type { Piece } from '../pattern/index.ts';

/** What a thing that pieces are cut from is used for. */
export const USE_IDS = [
  'shell',
  'interfacing',
  'lining',
  'trial',
  'webs',
  'covers',
  'arms',
  'test-tube',
  'card',
  'foam',
] as const;
export type UseId = (typeof USE_IDS)[number];

export interface Use {
  readonly id: UseId;
  /** Material of its pieces. */
  readonly material: string;
  readonly isCloth: boolean;
  /** Laid only when asked for. */
  readonly isExtra?: boolean;
  /** May follow the laid length of this one's cloth. */
  readonly follows?: UseId;
  /** mm; of cloth in common widths, of sheets as they are sold (common practice, no source). */
  readonly width: number;
  readonly length?: number;
  readonly gap: number;
}

/** 45 in cloth, and what is ironed or sewn on. */
const CLOTH = { isCloth: true, width: 1140, gap: 0 } as const;

export const USES: readonly Use[] = [
  { id: 'shell', material: 'shell', ...CLOTH },
  { id: 'interfacing', material: 'shell', ...CLOTH, width: 900, follows: 'shell' },
  { id: 'lining', material: 'shell', ...CLOTH, isExtra: true, follows: 'shell' },
  { id: 'trial', material: 'trial', ...CLOTH, isExtra: true },
  { id: 'webs', material: 'webs', ...CLOTH },
  { id: 'covers', material: 'covers', ...CLOTH },
  { id: 'arms', material: 'arms', ...CLOTH },
  { id: 'test-tube', material: 'test-tube', ...CLOTH },
  { id: 'card', material: 'card', isCloth: false, width: 700, length: 1000, gap: 3 },
  // The neck's block is bought as one; its templates lie on foam only for who builds it up of sheets.
  { id: 'foam', material: 'foam', isCloth: false, isExtra: true, width: 500, length: 500, gap: 3 },
];

export function findUse(id: UseId): Use {
  const found = USES.find((use) => use.id === id);
  if (!found) throw new RangeError(id);
  return found;
}

/** The pieces laid for a use, in their order. */
export function piecesOfUse(use: Use, pieces: readonly Piece[]): Piece[] {
  return pieces.filter(({ material }) => material === use.material);
}
