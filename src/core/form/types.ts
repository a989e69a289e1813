import type { Issue, Phrase } from '../base/index.ts';
import type { Body } from '../body/index.ts';
import type { Drawing } from '../drawing/index.ts';
import type { FilledMeasures, FilledPlace, FillingLoad, GarmentSag } from '../filled/index.ts';
import type { FlatDisk, StrainSummary } from '../flatten/index.ts';
import type {
  Caution,
  FillMass,
  FurtherPart,
  InsideShape,
  LevelSpread,
  MaterialLine,
  PlateRim,
  SectionPlace,
  SectionSize,
  StandFindings,
  StrapGain,
} from '../inside/index.ts';
import type { LayPlan } from '../laying/index.ts';
import type { Mesh } from '../mesh/index.ts';
import type { Piece } from '../pattern/index.ts';
import type { Project } from '../project/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import type { PredictedLevel } from '../simulate/index.ts';

import type { Verdict } from './verdict.ts';
import type { Making } from './work-step.ts';

export interface Report {
  readonly format: 'loftseam-report';
  readonly version: 1;
  readonly tapes: readonly ReportTape[];
  readonly issues: readonly Issue[];
  readonly body: {
    /** Of the sewn shell, without the plates that close it. */
    readonly vertices: number;
    readonly triangles: number;
    /** Litres inside shell and plates. */
    readonly volumeL: number;
    /** Of the sewn shell, mm². */
    readonly area: number;
  };
  readonly panels: readonly ReportPanel[];
  /** 95 % of all the cloth is strained less, whichever way, a fraction; absent while nothing is unrolled. */
  readonly strain?: number;
  /** Whether it can be sewn as it is; absent while nothing is unrolled. */
  readonly verdict?: Verdict;
  readonly seams: readonly ReportSeam[];
  /** Every level on the body and on the panels as cut, mm; filled, it is in `filled`. */
  readonly levels: readonly { readonly id: string; readonly length3d: number; readonly lengthFlat: number }[];
  /** What is inside, and each level by its section; absent from drafts. */
  readonly inside?: ReportInside;
  /** Whether the test tube was made before anything is printed; absent from drafts. */
  readonly tube?: TubeStanding;
  /** How the form comes out once filled; absent where its panels are cut as unrolled. */
  readonly filled?: ReportFilled;
  /** Of work for the whole form, breaks and drying left out, in all and by its steps: our estimate, no source. Absent from drafts. */
  readonly hours?: { readonly all: number; readonly steps: Readonly<Record<string, number>> };
  readonly timingsMs: Readonly<Record<string, number>>;
}

export interface ReportInside {
  readonly webPlaces: 'seams' | 'panels';
  readonly levels: readonly PredictedLevel[];
  /** Every brace's seams and length at each level, mm. */
  readonly braces: readonly {
    readonly id: string;
    readonly name: Phrase;
    readonly lengths: Readonly<Record<string, number>>;
  }[];
  /** What the straps added at a level buy. */
  readonly strapGains: readonly StrapGain[];
  /** What may be there or not beside webs, ties and sleeve: what it buys, and its hours. */
  readonly parts: readonly FurtherPart[];
  readonly pole: { readonly y: number; readonly sleeveFlatWidth: number; readonly insideForm: number };
  readonly stand: StandFindings;
  readonly materials: readonly MaterialLine[];
  readonly fill: FillMass;
  /** Strain of the arms' panels; empty without arms. */
  readonly arms: FormInside['arms'];
  /** Where the work can hurt; to be shown and printed. */
  readonly cautions: readonly Caution[];
}

/** Whether the test tube was made before anything is printed: its growth, a fraction, or what going without leaves open. */
export type TubeStanding =
  | { readonly kind: 'measured'; readonly growth: number }
  | { readonly kind: 'skipped'; readonly levels: readonly LevelSpread[] };

/** The form filled in space, over its cloth. mm, N. */
export interface ReportFilled {
  /** N/mm² of the filling and N/mm of the cloth it was foretold with: only their ratio counts. */
  readonly pressure: number;
  readonly stiffness: number;
  readonly levels: readonly {
    readonly id: string;
    readonly asked: SectionSize;
    readonly found: SectionSize;
    /** Girth at half and at double the pressure over stiffness, mm; where no test tube tells which it is. */
    readonly band?: readonly [soft: number, firm: number];
  }[];
  /** Of the distances to the body, and the share of the area nearer to it than 8 mm. */
  readonly rms: number;
  readonly within: number;
  readonly worst: ReportFilledPlace;
  readonly throat: ReportFilledPlace;
  readonly pulls: FilledMeasures['pulls'];
  readonly seams: FilledMeasures['seams'];
  readonly boards: FilledMeasures['boards'];
}

/** How far outside of the body a place lies, mm, and where: over which level, none below the lowest. */
export interface ReportFilledPlace {
  readonly distance: number;
  readonly over?: string;
  readonly where: SectionPlace;
}

export interface ReportTape {
  readonly id: string;
  readonly kind: 'girth' | 'length' | 'width' | 'depth' | 'distance';
  readonly target: number;
  readonly got: number;
  readonly status: 'met' | 'conflict' | 'estimated';
  readonly spread?: number;
}

export interface ReportPanel {
  readonly id: string;
  readonly name: Phrase;
  readonly triangles: number;
  readonly flipped: number;
  readonly strain: {
    readonly rms: number;
    readonly p95: number;
    readonly p99: number;
    readonly min: number;
    readonly max: number;
    /** rms with no length held, the least there is; only when `compareFree` was asked for. */
    readonly freeRms?: number;
  };
  readonly area3d: number;
  readonly areaFlat: number;
  readonly cloth: ReportCloth;
}

/** Strain of one panel in the axes of its cloth, fractions with sign. */
export interface ReportCloth {
  /** Direction of the warp in the panel laid upright as on the body, radians from +x; π/2 is upwards. */
  readonly grainAngle: number;
  readonly warp: { readonly min: number; readonly max: number };
  readonly weft: { readonly min: number; readonly max: number };
  readonly bias: { readonly min: number; readonly max: number };
  /** Root of the mean square over the area of the share of the cloth's limits that is used. */
  readonly usage: number;
  /** The grain that asks least; angle as `grainAngle`, from 0 to π. */
  readonly bestGrain: { readonly angle: number; readonly usage: number };
  /** Part of the panel's area where the cloth is asked for more than it takes. */
  readonly overShare: number;
  /** The worst of these places. */
  readonly zones: readonly ReportZone[];
  /** Places that will be seen on the filled form: over twice what the cloth takes, and not small. */
  readonly seen: readonly (ReportZone & { readonly place: Phrase })[];
}

export interface ReportZone {
  readonly axis: 'warp' | 'weft' | 'bias';
  readonly strain: number;
  readonly limit: number;
  /** mm². */
  readonly area: number;
  readonly triangles: number;
  /** Panel vertex at the worst place. */
  readonly vertex: number;
  /** Where, what happens, and what may help, in plain words. */
  readonly message: Phrase;
}

export interface ReportSeam {
  readonly id: string;
  readonly letter: string;
  readonly name: Phrase;
  readonly panels: readonly [string, string];
  /** Measured on the two flat panels, mm. */
  readonly lengthsFlat: readonly [number, number];
  /** How much longer one side is cut than the other, to be eased in, mm. */
  readonly easeMm: number;
  readonly length3d: number;
  /** Largest disagreement of the partners at a mark, ease taken off, from the seam's start or from the mark before, mm. */
  readonly maxMarkGap: number;
}

/** Everything made of one project; plain data, survives postMessage. */
export interface Form {
  readonly project: Project;
  readonly body: Body;
  readonly shell: SeamedShell;
  /** Shell closed with its plates, outside orientation. */
  readonly closedMesh: Mesh;
  /** Parallel to `shell.panels`; each lies with its warp along +y, which is up on the body unless a grain is given. */
  readonly flat: readonly FlatDisk[];
  readonly pieces: readonly Piece[];
  /** One per material. */
  readonly drawings: readonly { readonly material: string; readonly drawing: Drawing }[];
  /** Webs, sleeve, plates, stand; absent from drafts. */
  readonly inside?: FormInside;
  /** Filled in space, with panels and braces cut for that; absent where they are cut as unrolled. */
  readonly filled?: FormFilled;
  /** The trial shell's pieces, where the project lays them. */
  readonly trial?: readonly Piece[];
  /** How the pieces lie on cloth and boards, a plan a use; absent where nobody asked. */
  readonly laid?: readonly LayPlan[];
  /** How to make it and what to check; absent from drafts. */
  readonly making?: Making;
  /** Ids of the stages that made it, in order: a draft may end early or leave some out. */
  readonly stages: readonly string[];
  readonly report: Report;
}

/** The form as its filling brings it out, on a mesh of its own. */
export interface FormFilled {
  /** As the body is, of few triangles. */
  readonly shell: SeamedShell;
  /** Its points as filled, the middle of the cloth: #V × 3 mm. */
  readonly positions: Float64Array;
  /** How taut each of its triangles is: larger and smaller tension, N/mm; `SLACK`, `WRINKLED` or `TAUT`. */
  readonly tensions: Float64Array;
  readonly states: Uint8Array;
  readonly load: FillingLoad;
  readonly measures: FilledMeasures;
  /** Girths of the levels at half and at double the pressure over stiffness, mm; without a test tube only. */
  readonly band?: readonly { readonly id: string; readonly soft: number; readonly firm: number }[];
}

/** A filled form with something otherwise than foretold. */
export interface TriedForm {
  readonly filled: FormFilled;
  /** Where its cloth goes farthest out or in of where it was foretold: `distance` is how far, mm, inwards negative. */
  readonly change: FilledPlace;
  /** How far shoulders and neck sink under the heaviest garment, at most, mm. */
  readonly garment: Pick<GarmentSag, 'shoulders' | 'top'> & {
    /** kg. */
    readonly mass: number;
  };
}

/** What holds the stuffed form and carries it. */
export interface FormInside {
  readonly shape: InsideShape;
  /** What each level will measure once filled. */
  readonly levels: readonly PredictedLevel[];
  readonly pieces: readonly Piece[];
  /** How the shell stands to the rims of the plates. */
  readonly rims: readonly PlateRim[];
  /** Panels of the detachable arms, when there are any. */
  readonly arms: readonly { readonly id: string; readonly name: Phrase; readonly strain: StrainSummary }[];
  readonly stand: StandFindings;
  readonly materials: readonly MaterialLine[];
  readonly fill: FillMass;
  /** What may be there or not beside webs, ties and sleeve. */
  readonly parts: readonly FurtherPart[];
}
