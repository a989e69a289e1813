import type { Phrase } from '../base/index.ts';
import type { ChartSurface } from '../mesh/index.ts';
import type { WebPlaces } from './inside-options.ts';

export type { InsideOptions, TestTubeReadings, WebPlaces } from './inside-options.ts';

export type Side = 'right' | 'left';

/** Where on a level section a place lies, seen by the wearer. */
export type SectionPlace =
  | 'centre front'
  | 'centre back'
  | 'right side'
  | 'left side'
  | 'right front'
  | 'left front'
  | 'right back'
  | 'left back';

/** Dangers that makers are warned of. */
export type CautionId =
  | 'blades'
  | 'iron'
  | 'glue'
  | 'dust'
  | 'magnets'
  | 'tipping'
  | 'lifting'
  | 'fire'
  | 'rigging';

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
  readonly name: Phrase;
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
    readonly name: Phrase;
    readonly v: number;
    readonly z: number;
  }[];
  readonly lines: readonly InsideLine[];
  readonly openings: readonly {
    readonly id: 'base' | 'neck' | 'armholeRight' | 'armholeLeft';
    /** n × 3, closed. */
    readonly points: Float64Array;
    /** By how much the shell's edge, sewn of its panels, is longer than it is on the body, mm (shorter: negative). */
    readonly excess: number;
    /** n × 3, at every point the way into the shell along its wall, square to the edge; any length. */
    readonly into: Float64Array;
  }[];
  /** Arms that are put on and taken off: the wrist's edge (n × 3, closed), litres to fill, edges when sewn, mm. */
  readonly arms: readonly {
    readonly side: 'right' | 'left';
    readonly wrist: Float64Array;
    readonly volumeL: number;
    readonly armholeLength: number;
    readonly wristLength: number;
  }[];
  /** The waist level of the form on its stand over the floor, mm. */
  readonly waistHeight: number;
  /** Nobody measured it: an adult's usual one. */
  readonly isWaistHeightAssumed?: boolean;
  /** Chart heights of the neck base and the shoulder point. */
  readonly neckBaseV: number;
  readonly shoulderPointV: number;
  /** Litres inside shell and plates, area of the shell in mm². */
  readonly volumeL: number;
  readonly area: number;
  /** Seam letters used so far; inner seams go on from there. */
  readonly letterCount: number;
  /** Names any number of seams: 0 = A. */
  readonly letterOf: (index: number) => string;
  /** The stretches of a line over the panels, by its chart points (n × 2); null where it leaves them. */
  readonly measureOnPanels: (chart: Float64Array) => StretchesOnPanels | null;
}

/** Of every stretch its flat length, mm, and the number of its panel. */
export interface StretchesOnPanels {
  readonly lengths: Float64Array;
  readonly panels: readonly number[];
}

/** What a row of the finished form measures. mm. */
export interface SectionSize {
  readonly width: number;
  readonly depth: number;
  /** As a tape takes it. */
  readonly girth: number;
}

export interface LevelFinding {
  readonly id: string;
  readonly name: Phrase;
  readonly z: number;
  readonly body: SectionSize;
  /** Stuffed with nothing inside. */
  readonly free: SectionSize & { readonly deviation: number };
  /** Stuffed with webs, ties and straps. */
  readonly held: SectionSize & {
    /** The largest one, positive outside the body. */
    readonly deviation: number;
    readonly where: SectionPlace;
    readonly x: number;
    readonly y: number;
  };
  /** Braces that hang slack at this level. */
  readonly slack: readonly Phrase[];
}

export interface PoleFit {
  /** Where the pole stands; x is 0. */
  readonly y: number;
  readonly radius: number;
  /** How far from the pole's middle the sleeve's cloth reaches when ties pull at it. */
  readonly reach: number;
  readonly sleeveGirth: number;
  /** Top of the base plate and underside of the neck plate at the pole. */
  readonly zBottom: number;
  readonly zTop: number;
}

/** One rung of a brace: a row, with its two ends on the body and its finished length. */
export interface BraceRung {
  readonly v: number;
  readonly z: number;
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
  readonly length: number;
  readonly levelId?: string;
  /** Of a mark on its line that is none of a level, to be pinned on the sleeve too. */
  readonly mark?: number;
}

export interface DesignedBrace {
  readonly id: string;
  readonly name: Phrase;
  /** Beside its letter, on the sleeve. */
  readonly nameOnSleeve: Phrase;
  readonly kind: 'tie' | 'web' | 'strap' | 'throat';
  readonly side: 'right' | 'left' | 'centre';
  readonly from: InsideLine;
  readonly to: InsideLine | 'sleeve';
  /** Where on the sleeve's girth it is sewn, from the closing seam behind towards the wearer's right. */
  readonly sleeveShare?: number;
  readonly rungs: readonly BraceRung[];
}

/** What the straps added at a level buy, as the sections foretell: how far off the body it is without and with them, mm. */
export interface StrapGain {
  readonly levelId: string;
  readonly of: 'width' | 'depth' | 'place';
  readonly before: number;
  readonly after: number;
  /** The same in words. */
  readonly text: Phrase;
}

export interface InsideShape {
  readonly pole: PoleFit;
  readonly webPlaces: WebPlaces;
  readonly levels: readonly LevelFinding[];
  /** At levels where straps were added. */
  readonly strapGains: readonly StrapGain[];
  /** Levels that have straps though the fewest parts were wanted: without them this body would not come out as asked. */
  readonly strapsNeeded: readonly string[];
  readonly braces: readonly DesignedBrace[];
  /** Lines to draw on the panels, where braces are sewn on inside them. */
  readonly panelLines: readonly {
    readonly id: string;
    readonly letter: string;
    readonly name: Phrase;
    readonly chart: Float64Array;
    /** Points of it that are marked, where no level line crosses it. */
    readonly marks?: readonly { readonly index: number; readonly number: number }[];
  }[];
  /** Predicted outlines, closed, n × 3. */
  readonly rings: readonly Float64Array[];
}
