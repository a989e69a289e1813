import type { Seam, SeamedShell, ShellPanel } from '../seams/index.ts';
import { createGluing } from './glue-panels.ts';

/** Which part of the work a seam belongs to. */
export type SeamRole =
  | 'frontLevel'
  | 'front'
  | 'backLevel'
  | 'back'
  | 'shoulder'
  | 'neck'
  | 'side'
  | 'closing';

/** A seam in its place in the order of sewing. */
export interface OrderedSeam {
  readonly seam: Seam;
  readonly role: SeamRole;
  /** `right`, `left`, or `centre` for the middle of front and back. */
  readonly side: 'right' | 'left' | 'centre';
  /** Every part sewn so far is one flat piece without a ring, this seam included. */
  readonly isFlat: boolean;
  /** Sewing this seam closes a ring: neck, armhole or the shell itself. */
  readonly closesRing: boolean;
}

const ROLES: readonly SeamRole[] = [
  'frontLevel',
  'front',
  'backLevel',
  'back',
  'shoulder',
  'neck',
  'side',
  'closing',
];
/** Parts of the work: front and backs lying flat, then what rounds them, the sides, and what closes the shell. */
const GROUP: Readonly<Record<SeamRole, number>> = {
  frontLevel: 0,
  front: 0,
  backLevel: 0,
  back: 0,
  shoulder: 1,
  neck: 2,
  side: 3,
  closing: 4,
};
/** Seams nearer to the middle than this (cosine of the chart angle) lie in it. */
const CENTRE = 1e-3;
/** The neck's base dips in front by less than this from its landmark, mm of the chart. */
const BAND_SLACK = 15;

/**
 * An order in which every seam of the shell can be sewn: the front becomes one flat piece, and so does the back on either side
 * of the line that is to close the shell (level seams before the upright ones that cross them, from the centre outwards, from the
 * base up); then shoulders, neck and sides, and last that line, band and all (`closingLine`). A seam that ends on
 * another goes before it, so that no seam is sewn into a finished corner. `neckV`, chart height of the neck's base: panels
 * above it are bands. Works for any layout; sides are those lines that join front to back under the arm. O(S²) in the number
 * of seams.
 */
export function orderSeams(shell: SeamedShell, neckV: number): OrderedSeam[] {
  const panels = new Map(shell.panels.map((panel) => [panel.id, describePanel(panel, neckV)]));
  const closing = closingLine(shell, panels);
  const places = shell.seams.map((seam) => placeOfSeam(shell, seam, panels, closing));
  const before = shell.seams.map((_, i) => seamsBefore(shell, places, i));
  const gluing = createGluing(shell);
  const left = new Set(shell.seams.map((_, i) => i));
  const done: OrderedSeam[] = [];
  while (left.size > 0) {
    const free = [...left].filter((i) => before[i].every((j) => !left.has(j)));
    // Lines that end on each other in a ring have no such order: then the rank alone decides.
    const open = free.length > 0 ? free : [...left];
    // What was begun is finished first, as far as it can be.
    const begun = open.filter((i) => places[i].role === done[done.length - 1]?.role);
    const next = (begun.length > 0 ? begun : open).reduce((a, b) =>
      isBefore(places[b].rank, places[a].rank) ? b : a,
    );
    left.delete(next);
    const { role, side } = places[next];
    done.push({ seam: shell.seams[next], role, side, ...gluing.glue(shell.seams[next]) });
  }
  return done;
}

interface SeamPlace {
  readonly role: SeamRole;
  readonly side: OrderedSeam['side'];
  readonly rank: readonly number[];
  /** Shell vertices at its two ends that lie inside the shell, not on an opening. */
  readonly ends: readonly number[];
}

function placeOfSeam(
  shell: SeamedShell,
  seam: Seam,
  panels: PanelFacts,
  closing: string | undefined,
): SeamPlace {
  const mean = meanOf(shell.chart, seam.points);
  const side = sideOf(mean.cos);
  const isClosing = keyOfLine(seam, side) === closing;
  const role = isClosing ? 'closing' : roleOfSeam(shell, seam, mean.sin, panels);
  const isLast = role === 'neck' && seam.panels.every((id) => panels.get(id)?.isBand);
  const sideRank = { centre: 0, right: 1, left: 2 }[side];
  // Front and back from the middle outwards, the parts of one line from the base up; round the neck from behind.
  const own = Math.round(awayFromMiddle(shell, seam));
  const lowest = Math.round(lowestOf(shell, seam.points));
  const line = shell.seams.filter(({ lineId, points }) => {
    return lineId === seam.lineId && sideOf(meanOf(shell.chart, points).cos) === side;
  });
  const nearest = Math.min(...line.map((part) => Math.round(awayFromMiddle(shell, part))));
  const rankOf: Record<SeamRole, number[]> = {
    frontLevel: [lowest, sideRank, own],
    front: [nearest, sideRank, lowest],
    backLevel: [lowest, sideRank, own],
    back: [nearest, sideRank, lowest],
    shoulder: [sideRank, own],
    neck: [isLast ? 1 : 0, roundFromBack(mean)],
    side: [sideRank, lowest],
    closing: [lowest],
  };
  const onOpening = new Set(shell.openings.flatMap(({ vertices }) => [...vertices]));
  const ends = [seam.points[0], seam.points[seam.points.length - 1]].filter((v) => !onOpening.has(v));
  return { role, side, rank: [ROLES.indexOf(role), ...rankOf[role]], ends };
}

/**
 * The line that is sewn last: the one of the back nearest to the middle that opens the shell from base to neck, else from base to
 * armhole, else the left side, wherever that ends. Then webs are sewn to the back near a free edge, and the last seam lies in the middle cell.
 */
function closingLine(shell: SeamedShell, panels: PanelFacts): string | undefined {
  const openingAt = new Map(shell.openings.flatMap(({ id, vertices }) => [...vertices].map((v) => [v, id])));
  const lines = new Map<string, { seams: Seam[]; side: OrderedSeam['side'] }>();
  for (const seam of shell.seams) {
    if (seam.isLevel) continue;
    const side = sideOf(meanOf(shell.chart, seam.points).cos);
    const key = keyOfLine(seam, side);
    lines.set(key, { side, seams: [...(lines.get(key)?.seams ?? []), seam] });
  }
  const ranked = [...lines].flatMap(([key, { seams, side }]) => {
    const ends = new Set(
      seams.flatMap(({ points }) => [openingAt.get(points[0]), openingAt.get(points[points.length - 1])]),
    );
    const top = ends.has('neck') ? 0 : ends.has('armholeRight') || ends.has('armholeLeft') ? 1 : undefined;
    const isInBack = seams.every(
      (seam) =>
        meanOf(shell.chart, seam.points).sin < 0 && seam.panels.every((id) => isBackOrBand(panels, id)),
    );
    const isSide = seams.some(
      (seam) => panels.get(seam.panels[0])?.isFront !== panels.get(seam.panels[1])?.isFront,
    );
    if (!ends.has('base') || !(isSide || (isInBack && top !== undefined))) return [];
    const away = Math.round(Math.min(...seams.map((seam) => awayFromMiddle(shell, seam))));
    const kind = isInBack && top !== undefined ? top : top === undefined ? 3 : 2;
    return [{ key, rank: [kind, isInBack ? away : 0, side === 'left' ? 0 : 1] }];
  });
  return ranked.sort((a, b) => (isBefore(a.rank, b.rank) ? -1 : 1))[0]?.key;
}

function isBackOrBand(panels: PanelFacts, id: string): boolean {
  const facts = panels.get(id);
  return facts !== undefined && (facts.isBand || !facts.isFront);
}

function keyOfLine({ lineId }: Seam, side: OrderedSeam['side']): string {
  return `${lineId}/${side}`;
}

function sideOf(cosine: number): OrderedSeam['side'] {
  return Math.abs(cosine) < CENTRE ? 'centre' : cosine > 0 ? 'right' : 'left';
}

/** Mean distance from the plane of symmetry, mm. */
function awayFromMiddle(shell: SeamedShell, { points }: Seam): number {
  return points.reduce((sum, p) => sum + Math.abs(shell.mesh.positions[3 * p]), 0) / points.length;
}

function roleOfSeam(shell: SeamedShell, seam: Seam, meanSine: number, panels: PanelFacts): SeamRole {
  if (seam.panels.some((id) => panels.get(id)?.isBand)) return 'neck';
  const [isFrontA, isFrontB] = seam.panels.map((id) => panels.get(id)?.isFront ?? false);
  if (seam.isLevel) return meanSine >= 0 ? 'frontLevel' : 'backLevel';
  if (isFrontA === isFrontB && seam.panels[0] !== seam.panels[1]) return isFrontA ? 'front' : 'back';
  return lowestOf(shell, seam.points) < armpitOf(shell) - 1 ? 'side' : 'shoulder';
}

/** Seams that must be sewn before seam i: those that end on its line, and level ones that cross an upright one. */
function seamsBefore(shell: SeamedShell, places: readonly SeamPlace[], i: number): number[] {
  const own = shell.seams[i];
  return shell.seams.flatMap((other, j) => {
    // The closing line comes last and the band goes on when front and backs are whole, whatever they end on or cross.
    if (other.lineId === own.lineId || GROUP[places[j].role] > GROUP[places[i].role]) return [];
    const shared = places[i].ends.filter((v) => places[j].ends.includes(v));
    const isHeld = shared.some((v) => {
      const goesThrough = countAt(shell, places, own.lineId, v) > 1;
      const otherEnds = countAt(shell, places, other.lineId, v) === 1;
      if (goesThrough && otherEnds) return true;
      return goesThrough && !otherEnds && other.isLevel && !own.isLevel;
    });
    return isHeld ? [j] : [];
  });
}

function countAt(shell: SeamedShell, places: readonly SeamPlace[], lineId: string, vertex: number): number {
  return shell.seams.filter((seam, k) => seam.lineId === lineId && places[k].ends.includes(vertex)).length;
}

function isBefore(a: readonly number[], b: readonly number[]): boolean {
  for (let k = 0; k < Math.min(a.length, b.length); k++) if (a[k] !== b[k]) return a[k] < b[k];
  return false;
}

type PanelFacts = ReadonlyMap<string, { readonly isFront: boolean; readonly isBand: boolean }>;

/** Whether a panel lies in front, and whether it is a band above the neck's base. */
function describePanel(panel: ShellPanel, neckV: number): { isFront: boolean; isBand: boolean } {
  let lowest = Number.POSITIVE_INFINITY;
  let sum = 0;
  for (let i = 0; i < panel.chart.length; i += 2) {
    sum += Math.sin(panel.chart[i]);
    lowest = Math.min(lowest, panel.chart[i + 1]);
  }
  const isAtNeck = panel.edges.some(({ kind, id }) => kind === 'opening' && id === 'neck');
  return { isFront: sum >= 0, isBand: isAtNeck && lowest > neckV - BAND_SLACK };
}

function armpitOf(shell: SeamedShell): number {
  const holes = shell.openings.filter(({ id }) => id === 'armholeRight' || id === 'armholeLeft');
  return Math.min(...holes.map(({ vertices }) => lowestOf(shell, vertices)));
}

function lowestOf(shell: SeamedShell, vertices: Uint32Array): number {
  return vertices.reduce((least, v) => Math.min(least, shell.chart[2 * v + 1]), Number.POSITIVE_INFINITY);
}

function meanOf(chart: Float64Array, points: Uint32Array): { sin: number; cos: number } {
  let [sin, cos] = [0, 0];
  for (const p of points) {
    sin += Math.sin(chart[2 * p]) / points.length;
    cos += Math.cos(chart[2 * p]) / points.length;
  }
  return { sin, cos };
}

/** 0 at the centre back, rising over the wearer's right and the front to 1. */
function roundFromBack({ sin, cos }: { sin: number; cos: number }): number {
  const angle = (Math.atan2(sin, cos) + Math.PI / 2 + 2 * Math.PI) % (2 * Math.PI);
  return angle / (2 * Math.PI);
}
