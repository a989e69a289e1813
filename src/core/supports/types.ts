import type { ChartSurface } from '../mesh/index.ts';

/** An upright seam, as inner parts need it. All arrays are parallel, upwards. */
export interface InsideSeam {
  readonly id: string;
  readonly letter: string;
  /** Chart angle and height of its points. */
  readonly u: Float64Array;
  readonly v: Float64Array;
  /** Running length on the flat panels, mm from the seam's lower end. */
  readonly along: Float64Array;
  readonly marks: readonly {
    readonly kind: 'level' | 'balance';
    readonly levelId?: string;
    readonly number: number;
    /** Index into the arrays. */
    readonly index: number;
  }[];
}

/** An upright line of the shell, in one seam or in several above each other. */
export interface InsideLine {
  readonly id: string;
  readonly name: string;
  readonly side: 'right' | 'left' | 'centre';
  readonly half: 'front' | 'back' | 'side';
  /** From the base up. */
  readonly seams: readonly InsideSeam[];
}

/** The finished shell as the inner parts see it. mm. */
export interface InsideForm {
  readonly surface: ChartSurface;
  /** From the hip up. */
  readonly levels: readonly {
    readonly id: string;
    readonly name: string;
    readonly v: number;
    readonly z: number;
  }[];
  readonly lines: readonly InsideLine[];
  readonly openings: readonly {
    readonly id: 'base' | 'neck' | 'armholeRight' | 'armholeLeft';
    /** n × 3, closed. */
    readonly points: Float64Array;
  }[];
  /** Litres inside shell and plates, area of the shell in mm². */
  readonly volumeL: number;
  readonly area: number;
  /** Seam letters used so far; inner seams go on from there. */
  readonly letterCount: number;
}

/** What the maker chooses for the inside; all in mm, kg. Absent = the default beside it. */
export interface InsideOptions {
  /** Outside diameter of the pole, measured; default 25. */
  readonly tubeDiameter?: number;
  /** One plate, all its layers; default 8 (two layers of 4 mm corrugated card). */
  readonly boardThickness?: number;
  /** Shell and interfacing together; default 0.6. */
  readonly clothThickness?: number;
  /** Largest deviation from the body that is still wanted at waist and hip; default 3. */
  readonly wantedDeviation?: number;
  /** Pairs of front-to-back webs; default as many as bring the wanted deviation, as far as the seams allow. */
  readonly webPairs?: number;
  /** Pressure of the filling, kPa; default 3. */
  readonly pressure?: number;
  /** Stiffness of the fused cloth, N per mm width; default 40. */
  readonly clothStiffness?: number;
  /** Growth of the girth found on the maker's own test tube, as a fraction; replaces pressure over stiffness. */
  readonly measuredGrowth?: number;
  readonly garmentMass?: number;
  /** How far the garment's weight hangs off the pole; default 60. */
  readonly garmentOffset?: number;
  /** Floor to waist; default 1040. */
  readonly waistHeight?: number;
  readonly legs?: number;
  /** Pole to the ends of the legs; default 300. */
  readonly legRadius?: number;
  /** Mass of base and pole; default 6. */
  readonly standMass?: number;
  readonly poleMaterial?: 'steel' | 'aluminium' | 'beech' | 'pvc';
  /** Wall of the tube; default 1.5. Solid wood has none. */
  readonly tubeWall?: number;
}
