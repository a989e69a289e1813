import { assertInvariant, seamLetterOf } from '../base/index.ts';
import { type Mesh, measureAlongPath } from '../mesh/index.ts';
import { nameOfLine } from './name-lines.ts';
import { placeMarks } from './place-marks.ts';
import type { PanelSplit } from './split-panels.ts';
import type { Seam, SeamLayout, SeamLine } from './types.ts';
import { chainStretches, type ShellStretch } from './unfold-stretches.ts';

/** Directed edge → halfedge that runs along it, or −1; knows the edges of stretches only. */
export type FindHalfedge = (from: number, to: number) => number;

/**
 * Every line of the layout on both sides, split where a panel next to it changes. Letters go by layout order, right
 * before left. `levelAt`: level id of shell vertices on level lines.
 */
export function gatherSeams(
  layout: SeamLayout,
  stretches: readonly ShellStretch[],
  mesh: Mesh,
  split: PanelSplit,
  panelIds: readonly string[],
  findHalfedge: FindHalfedge,
  levelAt: ReadonlyMap<number, string>,
): Seam[] {
  const seams: Seam[] = [];
  for (const line of layout.lines) {
    const runs = collectRuns(line, stretches, (stretch) => panelPair(stretch, split, findHalfedge));
    const counts = new Map<string, number>();
    for (const run of runs) {
      const base = line.id + sideSuffix(run.stretches);
      const siblings = runs.filter((other) => line.id + sideSuffix(other.stretches) === base).length;
      const number = (counts.get(base) ?? 0) + 1;
      counts.set(base, number);
      const points = chainStretches(run.stretches);
      const along = measureAlongPath(mesh, points);
      const levelIds = new Map<number, string>();
      points.forEach((v, i) => {
        const levelId = levelAt.get(v);
        // A seam along a level does not cross it.
        if (levelId !== undefined && levelId !== line.alongLevel) levelIds.set(i, levelId);
      });
      seams.push({
        id: siblings > 1 ? `${base}${number}` : base,
        letter: seamLetterOf(seams.length),
        name: nameOfLine(line.name),
        lineId: line.id,
        panels: [panelIds[run.panels[0]], panelIds[run.panels[1]]],
        points,
        marks: placeMarks(along, levelIds),
        length3d: along[along.length - 1],
        ...(line.alongLevel === undefined ? {} : { alongLevel: line.alongLevel }),
        ...easeOf(line, run.stretches),
        isLevel: line.alongLevel !== undefined || line.alongHeight !== undefined,
      });
    }
  }
  return seams;
}

/** Left of the points is smaller u and above; the mirror image turns front and back round. */
function easeOf(line: SeamLine, stretches: readonly ShellStretch[]): Pick<Seam, 'ease'> {
  if (!line.ease || line.ease.fraction === 0) return {};
  const { fraction, longer } = line.ease;
  const isLeft = stretches[0].side === 'left';
  const onLeftOfPoints = longer === 'above' || (longer === 'front' ? isLeft : longer === 'back' && !isLeft);
  return { ease: { panel: onLeftOfPoints ? 0 : 1, fraction } };
}

interface Run {
  readonly panels: readonly [number, number];
  readonly stretches: ShellStretch[];
}

/** Maximal chains of stretches with the same panels on both sides. */
function collectRuns(
  line: SeamLine,
  stretches: readonly ShellStretch[],
  pairOf: (stretch: ShellStretch) => readonly [number, number],
): Run[] {
  const runs: Run[] = [];
  let end = -1;
  for (const stretch of stretches) {
    if (stretch.lineId !== line.id) continue;
    const panels = pairOf(stretch);
    const last = runs[runs.length - 1];
    if (last && end === stretch.vertices[0] && last.panels[0] === panels[0] && last.panels[1] === panels[1]) {
      last.stretches.push(stretch);
    } else runs.push({ panels, stretches: [stretch] });
    end = stretch.vertices[stretch.vertices.length - 1];
  }
  return runs;
}

function panelPair(stretch: ShellStretch, split: PanelSplit, findHalfedge: FindHalfedge): [number, number] {
  const [a, b] = stretch.vertices;
  const left = findHalfedge(a, b);
  const right = findHalfedge(b, a);
  assertInvariant(left >= 0 && right >= 0, 'seams', 'a seam has a triangle on either side', `${a}–${b}`);
  return [split.panelOf[Math.floor(left / 3)], split.panelOf[Math.floor(right / 3)]];
}

function sideSuffix(stretches: readonly ShellStretch[]): string {
  const side = stretches.every((stretch) => stretch.side === stretches[0].side)
    ? stretches[0].side
    : 'centre';
  return side === 'right' ? 'Right' : side === 'left' ? 'Left' : '';
}
