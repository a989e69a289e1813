/** 2D display list in mm, x right, y DOWN (page convention), origin at the top left. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** Drawn in order. */
  readonly layers: readonly DrawingLayer[];
}

export interface DrawingLayer {
  /** Kebab-case; the well-known ones are `cut`, `sew`, `mark`, `text`, and `fill`. */
  readonly name: string;
  readonly items: readonly DrawingItem[];
  /** mm on the page: letters outside are not printed, where the format can cut letters at all. Paths are never cut. */
  readonly lettersWithin?: {
    readonly minX: number;
    readonly minY: number;
    readonly maxX: number;
    readonly maxY: number;
  };
}

export type DrawingItem = DrawingPath | DrawingText;

export interface DrawingPath {
  readonly kind: 'path';
  /** Polyline n × 2. */
  readonly points: Float64Array;
  readonly closed: boolean;
  /** Stable id for read-back and highlighting, for example `front-right/sew/A`. */
  readonly id?: string;
  readonly style?: DrawingStyle;
}

export interface DrawingText {
  readonly kind: 'text';
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** Cap height-ish font size in mm. */
  readonly size: number;
  /** Radians, clockwise on the page. */
  readonly angle?: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** `#rrggbb`; absent = the layer's own. */
  readonly colour?: string;
  readonly id?: string;
}

export interface DrawingStyle {
  /** mm. */
  readonly strokeWidth?: number;
  /** CSS colours; absent = the layer's own. */
  readonly stroke?: string;
  readonly fill?: string;
  /** mm pattern. */
  readonly dash?: readonly number[];
}
