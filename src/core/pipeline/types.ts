import type { Issue, Result } from '../base/index.ts';
import type { Body } from '../body/index.ts';
import type { Drawing } from '../drawing/index.ts';
import type { FlatDisk } from '../flatten/index.ts';
import type { Mesh } from '../mesh/index.ts';
import type { Piece } from '../pattern/index.ts';
import type { Project } from '../project/index.ts';
import type { SeamedShell } from '../seams/index.ts';

export type StageId = 'tape' | 'body' | 'seams' | 'panels' | 'cutting';

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
  readonly seams: readonly ReportSeam[];
  readonly levels: readonly { readonly id: string; readonly length3d: number; readonly lengthFlat: number }[];
  readonly timingsMs: Readonly<Record<string, number>>;
}

export interface ReportTape {
  readonly id: string;
  readonly kind: 'girth' | 'length' | 'width' | 'depth';
  readonly target: number;
  readonly got: number;
  readonly status: 'met' | 'conflict' | 'estimated';
  readonly spread?: number;
}

export interface ReportPanel {
  readonly id: string;
  readonly name: string;
  readonly triangles: number;
  readonly flipped: number;
  readonly strain: {
    readonly rms: number;
    readonly p95: number;
    readonly p99: number;
    readonly min: number;
    readonly max: number;
  };
  readonly area3d: number;
  readonly areaFlat: number;
}

export interface ReportSeam {
  readonly id: string;
  readonly letter: string;
  readonly name: string;
  readonly panels: readonly [string, string];
  /** Measured on the two flat panels, mm. */
  readonly lengthsFlat: readonly [number, number];
  readonly length3d: number;
  /** Largest disagreement of the partners at a mark, from the seam's start or from the mark before, mm. */
  readonly maxMarkGap: number;
}

/** Everything made of one project; plain data, survives postMessage. */
export interface Form {
  readonly project: Project;
  readonly body: Body;
  readonly shell: SeamedShell;
  /** Shell closed with its plates, outside orientation. */
  readonly closedMesh: Mesh;
  /** Parallel to `shell.panels`. */
  readonly flat: readonly FlatDisk[];
  readonly pieces: readonly Piece[];
  /** One per material. */
  readonly drawings: readonly { readonly material: string; readonly drawing: Drawing }[];
  readonly report: Report;
}

export interface MakeOptions {
  /** Aim for the whole shell; default 20 000. */
  readonly targetTriangles?: number;
  /** While dragging: start the body fit from the last body. Quicker; ends within a hair of the fit from scratch. */
  readonly isDraft?: boolean;
  /** `fraction` of the whole work, 0 to 1, never falling; `what` in plain words. */
  readonly onProgress?: (fraction: number, stage: StageId, what: string) => void;
  /** Asked between stages and between solves; true ends with the issue `cancelled`. */
  readonly isCancelled?: () => boolean;
  /** Milliseconds clock, passed in because core has none. */
  readonly now?: () => number;
  /** Printed on pieces; passed in because core has no calendar. */
  readonly date?: string;
}

export type MakeForm = (project: Project, options?: MakeOptions) => Result<Form>;
