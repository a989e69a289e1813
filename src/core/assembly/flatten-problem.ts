import { type Phrase, verbatim } from '../base/index.ts';
import type { FlattenProblem, Join, KeptPath } from '../flatten/index.ts';
import type { Seam, SeamedShell, ShellPanel } from '../seams/index.ts';
import { seamSides } from '../seams/index.ts';
import { phrase } from './phrases.ts';

/**
 * States the shell as disks with borders to be joined: every seam becomes a join, and every level line inside a panel
 * keeps its length, because free flattening would shrink the sewn girth.
 */
export function flattenProblemFromShell(shell: SeamedShell): FlattenProblem {
  const joins: Join[] = shell.seams.map((seam) => {
    const [a, b] = seamSides(shell, seam);
    return {
      id: seam.id,
      a: { disk: a.panel, vertices: a.vertices },
      b: { disk: b.panel, vertices: b.vertices },
      keepsLength: false,
      ...(seam.ease === undefined
        ? {}
        : { ease: { side: seam.ease.panel === 0 ? 'a' : 'b', fraction: seam.ease.fraction } as const }),
    };
  });
  return {
    disks: shell.panels.map((panel) => panel.mesh),
    mirrorOf: mirrorIndices(shell.panels),
    joins,
    keptPaths: nameKeptPaths(shell).map(({ path }) => path),
  };
}

/** The paths that keep their length, with what a maker calls them; parallel to the problem's `keptPaths`. */
export function nameKeptPaths(shell: SeamedShell): { readonly name: Phrase; readonly path: KeptPath }[] {
  return [...levelPaths(shell), ...seamPaths(shell)];
}

/** A seam by its letter and its line's name. */
export function nameWithLetter({ letter, name }: Seam): Phrase {
  return phrase('seam.lettered', { letter, seam: name });
}

function mirrorIndices(panels: readonly ShellPanel[]): Int32Array {
  const indexById = new Map(panels.map((panel, index) => [panel.id, index]));
  return Int32Array.from(panels, (panel) =>
    panel.mirrorOf === undefined ? -1 : (indexById.get(panel.mirrorOf) ?? -1),
  );
}

/** Level lines inside panels; those that are seams are among the seams. */
function levelPaths(shell: SeamedShell): { name: Phrase; path: KeptPath }[] {
  const seamLevels = new Map(shell.seams.map((seam) => [seam.id, seam.alongLevel]));
  const levelNames = new Map(shell.levels.map((level) => [level.id, level.name]));
  return shell.panels.flatMap((panel, disk) => {
    const sewn = new Set(
      panel.edges.map((edge) => (edge.kind === 'seam' ? seamLevels.get(edge.id) : undefined)),
    );
    return panel.levels
      .filter((level) => !sewn.has(level.id))
      .map((level) => ({
        name: phrase('level.on-panel', {
          level: levelNames.get(level.id) ?? verbatim(level.id),
          panel: panel.name,
        }),
        path: { disk, vertices: level.vertices },
      }));
  });
}

/**
 * Level seams and seams of one chart angle (centre front, centre back, side, shoulder) keep their whole length, not
 * that of each edge: a maker reads these lengths off the body with a tape. One side is enough, its partner is joined
 * to it. A line of several seams, as the neck's base, a shoulder or a level seam, keeps the sum, each half its own on
 * uprights: that is what a tape reads there.
 */
function seamPaths(shell: SeamedShell): { name: Phrase; path: KeptPath }[] {
  return shell.seams
    .filter((seam) => seam.isLevel || hasOneAngle(shell.chart, seam.points))
    .map((seam) => {
      const [a] = seamSides(shell, seam);
      const sum = seam.isLevel ? seam.lineId : `${seam.lineId}-${halfOf(shell, seam.points)}`;
      return {
        name: nameWithLetter(seam),
        path: { disk: a.panel, vertices: a.vertices, sum: `seam-${sum}` },
      };
    });
}

/** Which half of the body a seam's middle lies on. */
function halfOf(shell: SeamedShell, points: Uint32Array): string {
  const x = Math.cos(shell.chart[2 * points[points.length >> 1]]);
  return Math.abs(x) < 1e-9 ? 'centre' : x > 0 ? 'right' : 'left';
}

function hasOneAngle(chart: Float64Array, points: Uint32Array): boolean {
  const u0 = chart[2 * points[0]];
  // The half angle makes the difference periodic: u and u + 2π are one place.
  return points.every((vertex) => Math.abs(Math.sin((chart[2 * vertex] - u0) / 2)) < 1e-9);
}
