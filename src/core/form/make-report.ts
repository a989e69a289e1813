import { type Issue, isPhrase, type Say } from '../base/index.ts';
import type { Body } from '../body/index.ts';
import { type Cloth, type FlatDisk, measureFormStrain, type StrainSummary } from '../flatten/index.ts';
import { type Mesh, measureArea, measureVolume } from '../mesh/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import { explainCloth, findNamedPlaces } from './explain-cloth.ts';
import { measureLevels, measureSeams } from './measure-flat.ts';
import { reportFilled } from './report-filled.ts';
import { reportInside } from './report-inside.ts';
import type { Form, FormFilled, FormInside, Report } from './types.ts';

const mm3PerLitre = 1e6;

/** Puts together what was measured on one form. Lengths are read off the finished flat panels, never carried over. */
export function makeReport(made: {
  readonly body: Body;
  readonly shell: SeamedShell;
  readonly closedMesh: Mesh;
  /** Empty while nothing is unrolled: then nothing is told of it. */
  readonly flat: readonly FlatDisk[];
  readonly cloth: Cloth;
  /** Of `Project.cloth`. */
  readonly grain?: Readonly<Record<string, number>>;
  /** Strain of the panels with no length held, when asked for. */
  readonly free?: readonly StrainSummary[];
  readonly inside?: FormInside;
  readonly filled?: FormFilled;
  readonly issues: readonly Issue[];
  readonly timingsMs: Readonly<Record<string, number>>;
}): Report {
  const { body, shell, flat } = made;
  const isFlattened = flat.length > 0;
  const places = findNamedPlaces(shell, body);
  return {
    format: 'loftseam-report',
    version: 1,
    tapes: body.tapes,
    issues: made.issues,
    body: {
      vertices: shell.mesh.positions.length / 3,
      triangles: shell.mesh.triangles.length / 3,
      volumeL: measureVolume(made.closedMesh) / mm3PerLitre,
      area: measureArea(shell.mesh),
    },
    panels: flat.map((disk, index) => {
      const panel = shell.panels[index];
      const { flipped, area3d, areaFlat, rms, p95, p99, min, max } = disk.strain.summary;
      return {
        id: panel.id,
        name: panel.name,
        triangles: panel.mesh.triangles.length / 3,
        flipped,
        strain: {
          rms,
          p95,
          p99,
          min,
          max,
          ...(made.free === undefined ? {} : { freeRms: made.free[index].rms }),
        },
        area3d,
        areaFlat,
        cloth: explainCloth(shell, places, index, disk, made.cloth, made.grain?.[panel.id] ?? 0),
      };
    }),
    ...(isFlattened && {
      strain: measureFormStrain(
        shell.panels.map((panel) => panel.mesh),
        flat,
      ).p95,
    }),
    seams: isFlattened ? measureSeams(shell, flat) : [],
    levels: isFlattened ? measureLevels(shell, flat) : [],
    ...(made.inside === undefined ? {} : { inside: reportInside(made.inside) }),
    ...(made.filled === undefined ? {} : { filled: reportFilled(made.filled) }),
    timingsMs: made.timingsMs,
  };
}

/** The report as the text of `report.json`: whole phrases in words, ids and codes as they are. */
export function reportOf(form: Form, say: Say): string {
  const worded = (_key: string, value: unknown): unknown => (isPhrase(value) ? say(value) : value);
  return `${JSON.stringify(form.report, worded, 2)}\n`;
}
