import type { Phrase, Say } from '../base/index.ts';
import type { DraftOptions } from './pattern-options.ts';
import type { AllowanceKind } from './usual-allowances.ts';

/** One boundary stretch of a flat panel on its way to becoming a piece. */
export interface PieceEdge {
  readonly kind: 'seam' | 'opening';
  readonly id: string;
  /** Seam letter, or '' for openings. */
  readonly letter: string;
  /** Polyline n × 2 mm, counter-clockwise round the piece, y UP, ends shared with the neighbours. */
  readonly points: Float64Array;
  /** Marks on this edge: distance is an index into `points`; number counts along the seam's own direction, the same on both partners. */
  readonly marks: readonly PieceMark[];
  /** Where on the body this edge is: front edges get single notches, back ones double, the centre back triple. */
  readonly bodyHalf: 'front' | 'back' | 'centre-back';
  /** Letter of the same edge on the piece's twin, on a piece drawn for both. */
  readonly twinLetter?: string;
  /** Place in the order of sewing, where there is one: where two seams meet, the later one crosses the pressed-open earlier one. */
  readonly sewn?: number;
  /** Why its allowance differs from the general one, where it does. */
  readonly allowanceKind?: AllowanceKind;
}

export interface PieceMark {
  readonly kind: 'level' | 'balance';
  readonly index: number;
  /** Shared by both partners: letter + number name the pair. */
  readonly number: number;
  readonly levelId?: string;
  /** Number of the same mark on the piece's twin, on a piece drawn for both. */
  readonly twinNumber?: number;
}

/**
 * How two pieces of one outline are cut from one drawing: a right and a left, the left one turned over; or two that lie alike.
 * `hasLetters`: their seams have different letters, the right one's written first.
 */
export interface Twins {
  readonly kind: 'mirrored' | 'alike';
  readonly hasLetters: boolean;
}

/** How a piece is had from another one without a drawing of its own. */
export interface Follows {
  /** Id of that piece. */
  readonly piece: string;
  /** The next layer of a board, drawn a quarter turned; or a cover, cut with its allowance round it. */
  readonly how: 'layer' | 'cover';
}

export interface PieceLine {
  readonly id: string;
  readonly name: string;
  /** n × 2, y up. */
  readonly points: Float64Array;
}

/** A line that is spoken of, such as a level; a tick across another one has no words. */
export interface NamedLine extends Omit<PieceLine, 'name'> {
  readonly name: Phrase;
}

/** What drafting needs of one flat panel. */
export interface PieceInput {
  readonly id: string;
  readonly name: Phrase;
  readonly side: 'right' | 'left' | 'centre';
  readonly edges: readonly PieceEdge[];
  readonly levelLines: readonly NamedLine[];
  readonly material: string;
  /** Closed outlines cut out of the piece. */
  readonly cutouts?: readonly PieceLine[];
  /** Stitching inside the piece, not along its edges. */
  readonly stitchLines?: readonly NamedLine[];
  /** Where cloth inside the piece is cut into to be turned, after its stitching. */
  readonly clipLines?: readonly PieceLine[];
  /** What the grain line shows, if not the grain: the flutes of board, for example. */
  readonly grainWord?: Phrase;
  /** What to do with the piece, printed on it where there is room: one paragraph each. */
  readonly notes?: readonly Phrase[];
  readonly follows?: Follows;
  /** Set on what is drawn for two pieces. */
  readonly twins?: Twins;
}

/** Whose piece it is, and in which words it is lettered. */
export interface LabelInfo {
  readonly say: Say;
  readonly project: string;
  readonly body: string;
  readonly date: string;
  /** Tells printouts of different states of the project apart. */
  readonly revision?: string;
}

/** A finished piece in its own coordinates, y up. */
export interface Piece {
  readonly id: string;
  readonly name: Phrase;
  readonly side: 'right' | 'left' | 'centre';
  readonly material: string;
  /** Closed cut outline n × 2. */
  readonly cutLine: Float64Array;
  readonly sewLines: readonly PieceLine[];
  /** Closed outlines to cut out, before the outline itself. */
  readonly cutouts?: readonly PieceLine[];
  readonly notches: readonly PieceLine[];
  /** Notches that stand out of the cut line, which runs round them: base, tip, base. For readers that want them apart. */
  readonly notchPoints?: readonly PieceLine[];
  /** Marks across the allowance where it is clipped after sewing, and where cloth round a hole is. */
  readonly clips?: readonly PieceLine[];
  readonly levelLines: readonly NamedLine[];
  /** Two points. */
  readonly grainLine: Float64Array;
  readonly texts: readonly PieceText[];
  readonly follows?: Follows;
  readonly twins?: Twins;
  /** What it was drafted from, so that it can be lettered anew. */
  readonly draft?: PieceDraft;
}

export interface PieceDraft {
  readonly input: PieceInput;
  readonly options: DraftOptions;
}

export interface PieceText {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Radians counter-clockwise. */
  readonly angle: number;
  /** Rows of `notes` stay together, apart from the label. */
  readonly isNote?: boolean;
}
