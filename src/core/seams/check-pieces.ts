import { type Issue, type Phrase, verbatim } from '../base/index.ts';
import { measureArea, measureCornerAngles, measurePath } from '../mesh/index.ts';
import { nameOfOpening } from './name-opening.ts';
import { type NamedById, phrase } from './phrases.ts';
import type { Seam, ShellLevel, ShellPanel } from './types.ts';

/** Corners sharper than this fray and cannot be turned, degrees (common practice, no source). */
export const SHARPEST_CORNER = 30;
/** Pieces narrower than this are all seam allowance, mm (common practice, no source). */
export const NARROWEST_PIECE = 25;

/**
 * Warnings of pieces that cut well but sew badly: corners under 30°, and pieces under 25 mm wide, at a level line or, by
 * 2 · area / outline, altogether. Angles are those on the body. Mirror images are not told again. O(#F).
 */
export function checkPieces(
  panels: readonly ShellPanel[],
  seams: readonly Seam[],
  levels: readonly ShellLevel[],
): Issue[] {
  const lineOf = new Map(seams.map(({ id, lineId, name }) => [id, { id: lineId, name }]));
  const levelOf = new Map(levels.map(({ id, name }) => [id, name]));
  return panels.flatMap((panel) =>
    panel.mirrorOf === undefined ? [...findSpikes(panel, lineOf), ...findNarrow(panel, lineOf, levelOf)] : [],
  );
}

/** The line of a seam, by the seam's id. */
type LineOf = ReadonlyMap<string, NamedById>;

function findSpikes(panel: ShellPanel, lineOf: LineOf): Issue[] {
  const angles = measureVertexAngles(panel);
  return panel.edges.flatMap((edge, i) => {
    const before = panel.edges[(i + panel.edges.length - 1) % panel.edges.length];
    const degrees = (angles[edge.vertices[0]] * 180) / Math.PI;
    if (!(degrees < SHARPEST_CORNER) || edge === before) return [];
    return [
      warn(
        'panel-spike',
        panel,
        lineOf,
        phrase('seams.panel-spike', {
          panel: panel.name,
          angle: angles[edge.vertices[0]],
          between: [nameOf(before.id), nameOf(edge.id)],
        }),
        degrees,
        SHARPEST_CORNER,
      ),
    ];
  });

  function nameOf(id: string): NamedById {
    return lineOf.get(id) ?? { id, name: nameOfOpening(id) };
  }
}

/** Sum of the triangles' angles at every vertex. */
function measureVertexAngles({ mesh }: ShellPanel): Float64Array {
  const angles = new Float64Array(mesh.positions.length / 3);
  measureCornerAngles(mesh).forEach((angle, e) => {
    angles[mesh.triangles[e]] += angle;
  });
  return angles;
}

function findNarrow(panel: ShellPanel, lineOf: LineOf, levelOf: ReadonlyMap<string, Phrase>): Issue[] {
  const { mesh } = panel;
  const outline = panel.edges.reduce((sum, edge) => sum + measurePath(mesh, edge.vertices), 0);
  const mean = (2 * measureArea(mesh)) / outline;
  const widths = panel.levels.map((level) => ({ id: level.id, width: measurePath(mesh, level.vertices) }));
  const least = widths.toSorted((a, b) => a.width - b.width)[0];
  const isNarrowAtLevel = least !== undefined && least.width < NARROWEST_PIECE;
  if (!isNarrowAtLevel && mean >= NARROWEST_PIECE) return [];
  const width = isNarrowAtLevel ? least.width : mean;
  const name = least && (levelOf.get(least.id) ?? verbatim(least.id));
  const level = isNarrowAtLevel ? { level: { id: least.id, name } } : {};
  return [
    warn(
      'panel-narrow',
      panel,
      lineOf,
      phrase('seams.panel-narrow', { panel: panel.name, width, ...level }),
      width,
      NARROWEST_PIECE,
    ),
  ];
}

function warn(
  code: string,
  panel: ShellPanel,
  lineOf: LineOf,
  message: Phrase,
  measured: number,
  limit: number,
): Issue {
  const line = panel.edges.map((edge) => lineOf.get(edge.id)).find((found) => found !== undefined);
  return {
    code,
    path: line === undefined ? 'lines' : `lines.${line.id}`,
    message,
    severity: 'warning',
    measured,
    limit,
  };
}
