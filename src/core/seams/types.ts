import type { Phrase } from '../base/index.ts';
import type { Mesh } from '../mesh/index.ts';
import type { OpeningId } from './phrases.ts';

/** A place on the body: angle round it and chart height (see `ChartSurface`). */
export interface ChartPlace {
  readonly u: number;
  readonly v: number;
}

/** Where a seam line passes, so that it follows another body. */
export interface SeamAnchor {
  /** A landmark id of the body; u and v start from it. */
  readonly landmark?: string;
  /** A level id of the body; v starts from it. */
  readonly level?: string;
  /** Angle in radians, used when no landmark gives it, else added to it. */
  readonly u?: number;
  /** mm of chart height added. */
  readonly v?: number;
  /** Then moved this part of the way (0..1) to another landmark; a `level` keeps v, so that only u moves. */
  readonly toward?: { readonly landmark: string; readonly fraction: number };
  /** Then moved level by level onto this other line (onto a level one: up or down): a line that ends on another one says so. */
  readonly onLine?: string;
  /** Position round the armhole loop instead: 0 = armpit, 0.25 front break, 0.5 shoulder point, 0.75 back break. */
  readonly armhole?: number;
}

export interface SeamEase {
  /** 0.01 = 10 mm on a metre. */
  readonly fraction: number;
  /** Which side is longer: the one nearer to the centre front or centre back, or, of a level seam, above or below. */
  readonly longer: 'front' | 'back' | 'above' | 'below';
}

export interface SeamLine {
  readonly id: string;
  /** A key for lines of ours, for example `princess front`, else the maker's own words; `nameOfLine` makes a phrase of it. */
  readonly name: string;
  /** Fair curve through these, in order (from base up, or from centre front to centre back). */
  readonly through: readonly SeamAnchor[];
  /** Level seams run along a level line (v constant) from one upright seam or centre to another. */
  readonly alongLevel?: string;
  /** Level seams where no level line is: at the height of this anchor, for example round the base of the neck, or as a yoke. */
  readonly alongHeight?: SeamAnchor;
  /** One side is cut longer than the other by this fraction, which is eased in when sewing. */
  readonly ease?: SeamEase;
  /** Drawn on the right half; the left half gets the mirror image. Centre lines are on neither. */
  readonly side: 'centre' | 'right';
}

/** What seams need to know of a body, besides its surface; every `Body` is one. */
export interface SeamForm {
  /** Whose words levels have; default a bust. */
  readonly figure?: 'bust' | 'chest';
  /** Level lines, v constant. */
  readonly levels: readonly { readonly id: string; readonly name: Phrase; readonly v: number }[];
  readonly landmarks: Readonly<Record<string, { readonly u: number; readonly v: number }>>;
  /** Closed loops n × 2 (u, v), counter-clockwise. */
  readonly armholes: { readonly right: Float64Array; readonly left: Float64Array };
}

export interface SeamLayout {
  readonly id: string;
  readonly name: Phrase;
  readonly description: Phrase;
  readonly lines: readonly SeamLine[];
}

export type PanelSide = 'right' | 'left' | 'centre';

/** One stretch of a panel's boundary: along one seam or one opening. */
export interface PanelEdge {
  readonly kind: 'seam' | 'opening';
  /** Seam id, or opening id: `base`, `neck`, `armholeRight`, `armholeLeft`. */
  readonly id: string;
  /** Panel vertices along the boundary counter-clockwise, both ends included. */
  readonly vertices: Uint32Array;
  /** True when `vertices` run against the direction of the seam's `points`. */
  readonly reversed: boolean;
}

/** A stretch of a level line inside a panel: mesh vertices from edge to edge, rising u. */
export interface PanelLevel {
  readonly id: string;
  readonly vertices: Uint32Array;
}

/** A disk cut from the shell. */
export interface ShellPanel {
  readonly id: string;
  readonly name: Phrase;
  readonly side: PanelSide;
  /** The right panel this left one mirrors exactly (vertex by vertex, triangles flipped), on a symmetric body. */
  readonly mirrorOf?: string;
  readonly mesh: Mesh;
  /** #V: back-map into the shell's vertices. */
  readonly sourceVertex: Uint32Array;
  /** #V × 2 (u, v). */
  readonly chart: Float64Array;
  /** The whole boundary, counter-clockwise, starting at a corner. */
  readonly edges: readonly PanelEdge[];
  readonly levels: readonly PanelLevel[];
}

export interface SeamMark {
  readonly kind: 'end' | 'level' | 'balance';
  readonly levelId?: string;
  /** Index into the seam's `points`. */
  readonly index: number;
}

/** A maximal border shared by two panels. */
export interface Seam {
  readonly id: string;
  /** A, B, … AA: unique on the form. */
  readonly letter: string;
  readonly name: Phrase;
  readonly lineId: string;
  /** The panel on the left of `points` seen from outside, then the one on the right. */
  readonly panels: readonly [string, string];
  /** Shell vertices in order, upwards (upright seams) or rising u (level seams). */
  readonly points: Uint32Array;
  readonly marks: readonly SeamMark[];
  /** mm along the shell. */
  readonly length3d: number;
  /** Set when the seam runs along a level line: it keeps its 3D length. */
  readonly alongLevel?: string;
  /** Sewn-in ease: which of `panels` is cut longer, and by which fraction. */
  readonly ease?: { readonly panel: 0 | 1; readonly fraction: number };
  /** True when the seam runs level (v constant), along a level line or elsewhere. */
  readonly isLevel: boolean;
}

export interface ShellLevel {
  readonly id: string;
  readonly name: Phrase;
  /** Closed loop of shell vertices. */
  readonly vertices: Uint32Array;
  readonly length3d: number;
}

export interface ShellOpening {
  readonly id: OpeningId;
  /** Closed loop of shell vertices, counter-clockwise seen from outside the body. */
  readonly vertices: Uint32Array;
}

/** The whole sewn surface, open at base, neck and armholes, with its cuts. */
export interface SeamedShell {
  readonly mesh: Mesh;
  /** #V × 2 (u, v). */
  readonly chart: Float64Array;
  readonly panels: readonly ShellPanel[];
  readonly seams: readonly Seam[];
  readonly levels: readonly ShellLevel[];
  readonly openings: readonly ShellOpening[];
}
