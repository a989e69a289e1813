import { type Issue, type Phrase, type Result, success } from '../base/index.ts';
import type { Arm } from '../body/index.ts';
import {
  type FlatDisk,
  type FlattenOptions,
  type FlattenProblem,
  flattenTogether,
  type Join,
  type KeptPath,
} from '../flatten/index.ts';
import { type ArmPanel, cutArm } from './cut-arm.ts';
import { phrase } from './phrases.ts';

/** Both long seams of an arm. */
export const ARM_SEAMS = ['outer', 'inner'] as const;

export interface FlatArms {
  /** Back and front of each arm. */
  readonly panels: readonly ArmPanel[];
  /** Parallel to `panels`. */
  readonly flat: readonly FlatDisk[];
}

/** Points of a left arm further than this from the mirrored right one make it an arm of its own, mm. */
const SAME_ARM = 1e-7;

/**
 * Cuts every arm into front and back and unrolls them so that the long seams agree and girths and the lengths along the
 * outer line are kept. Where it cannot be done there are no arms, with a warning that says why; the trunk does
 * not depend on them. Empty without arms. Cost: as `flattenTogether`.
 */
export function flattenArms(arms: readonly Arm[], options: FlattenOptions = {}): Result<FlatArms> {
  const none: FlatArms = { panels: [], flat: [] };
  if (arms.length === 0) return success(none);
  const panels = arms.flatMap((arm) => cutArm(arm));
  const kept = nameArmPaths(panels);
  const problem: FlattenProblem = {
    disks: panels.map(({ mesh }) => mesh),
    mirrorOf: mirrorsOf(panels),
    joins: joinsOf(panels),
    keptPaths: kept.map(({ path }) => path),
  };
  const unrolled = flattenTogether(problem, options);
  const issues = unrolled.issues.map((issue) => nameIssue(issue, panels, kept));
  return unrolled.ok ? success({ panels, flat: unrolled.value }, issues) : success(none, issues);
}

function joinsOf(panels: readonly ArmPanel[]): Join[] {
  const joins: Join[] = [];
  for (let disk = 0; disk < panels.length; disk += 2) {
    for (const line of ARM_SEAMS) {
      joins.push({
        id: `arm-${line}-${panels[disk].side}`,
        a: { disk, vertices: panels[disk][line] },
        b: { disk: disk + 1, vertices: panels[disk + 1][line] },
        keepsLength: false,
      });
    }
  }
  return joins;
}

/** The paths that keep their length: girths on both halves; outer line, on the back alone as the front is joined to it. */
function nameArmPaths(panels: readonly ArmPanel[]): { readonly name: Phrase; readonly path: KeptPath }[] {
  return panels.flatMap((panel, disk) => {
    const girths = panel.girths.map(({ name, vertices }) => ({
      name: phrase('level.on-panel', { level: name, panel: panel.name }),
      path: { disk, vertices },
    }));
    if (panel.half === 'front') return girths;
    const elbow = panel.girths[1].row;
    const parts = [panel.outer.slice(0, elbow + 1), panel.outer.slice(elbow)];
    const lengths = parts.map((vertices) => ({
      name: phrase('arm.outer-line', { panel: panel.name }),
      path: { disk, vertices },
    }));
    return [...girths, ...lengths];
  });
}

/** The left arm's halves mirror the right one's when every point does. */
function mirrorsOf(panels: readonly ArmPanel[]): Int32Array {
  const indices = panels.map(({ side, half, mesh }) => {
    if (side === 'right') return -1;
    return panels.findIndex((other) => {
      return (
        other.side === 'right' && other.half === half && isMirrored(mesh.positions, other.mesh.positions)
      );
    });
  });
  // A front is copied only with its back, so that joins between copies stay copies.
  return Int32Array.from(indices, (own, i) => (indices[i ^ 1] < 0 ? -1 : own));
}

function isMirrored(a: Float64Array, b: Float64Array): boolean {
  if (a.length !== b.length) return false;
  return a.every((value, i) => Math.abs(value - (i % 3 === 0 ? -b[i] : b[i])) <= SAME_ARM);
}

/** A maker knows arms by their measures, and panels and seams by name. */
function nameIssue(issue: Issue, panels: readonly ArmPanel[], kept: ReturnType<typeof nameArmPaths>): Issue {
  if (issue.code === 'cancelled') return issue;
  const [kind, at] = issue.path.split('.');
  const index = Number(at);
  const of =
    (kind === 'disks' ? panels[index]?.name : undefined) ??
    (kind === 'keptPaths' ? kept[index]?.name : undefined) ??
    (kind === 'joins' ? nameJoin(panels, index) : undefined) ??
    phrase('arm.all');
  const message = phrase('fault.no-arms', { of, fault: issue.message });
  return { ...issue, path: 'measures.upperArmGirth', severity: 'warning', message };
}

/** By the join's place in `joinsOf`: the seams of one arm after those of the other. */
function nameJoin(panels: readonly ArmPanel[], index: number): Phrase | undefined {
  const panel = panels[2 * Math.floor(index / ARM_SEAMS.length)];
  return panel && phrase('arm.join', { line: ARM_SEAMS[index % ARM_SEAMS.length], side: panel.side });
}
