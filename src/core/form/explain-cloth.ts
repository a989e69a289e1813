import type { Phrase } from '../base/index.ts';
import {
  type Cloth,
  type FlatDisk,
  findGrain,
  findOverLimit,
  measureClothStrain,
  measureGrain,
  type OverLimitZone,
} from '../flatten/index.ts';
import { distanceInSpace } from '../math/index.ts';
import { measureTriangleAreas } from '../mesh/index.ts';
import type { SeamedShell, SeamForm, ShellPanel } from '../seams/index.ts';
import { type PlaceMark, phrase } from './phrases.ts';
import type { ReportCloth, ReportZone } from './types.ts';

/** Zones told per panel; a panel full of small ones is told by its worst. */
const MOST_ZONES = 4;
/**
 * What shows once it is sewn and filled: a place of so many times what the cloth takes, as large as this, mm². Filled hard, cloth is
 * pulled longer by about as much again as it eases, and smaller puckers press out (ours; common practice, no source).
 */
const SEEN = { limit: 2, smallest: 1000 };
/** A landmark further away than this, mm, says nothing about a place. */
const LANDMARK_REACH = 130;
const UPWARDS = Math.PI / 2;

/** Offsets and gaps of less than this, mm, are not told. */
const HARDLY = 8;

const MARKS: readonly PlaceMark[] = [
  'bustPoint',
  'bladePoint',
  'armpit',
  'shoulderPoint',
  'neckSide',
  'neckFront',
  'neckBack',
];

/** A landmark that words can lean on, at the shell vertex nearest to it. */
export interface NamedPlace {
  readonly mark: PlaceMark;
  readonly vertex: number;
}

/** The landmarks of a shell that have names a maker knows. O(landmarks · #V), once for all panels. */
export function findNamedPlaces(shell: SeamedShell, form: SeamForm): readonly NamedPlace[] {
  return Object.entries(form.landmarks).flatMap(([id, { u, v }]) => {
    const mark = MARKS.find((known) => known === id.replace(/(Right|Left)$/, ''));
    return mark === undefined ? [] : [{ mark, vertex: nearestVertex(shell.chart, u, v) }];
  });
}

/**
 * What a panel laid with the warp upwards asks of its cloth: strain with sign along both threads and on the bias, the grain
 * that would ask least, and the places over the cloth's limits. `turn`: of the grain from upright on the
 * body, by which the flat panel was turned back; angles are told of the panel upright. O(#F).
 */
export function explainCloth(
  shell: SeamedShell,
  places: readonly NamedPlace[],
  index: number,
  flat: FlatDisk,
  cloth: Cloth,
  turn: number,
): ReportCloth {
  const panel = shell.panels[index];
  const strain = measureClothStrain(flat.strain, UPWARDS, cloth);
  const areas = measureTriangleAreas(panel.mesh);
  const best = findGrain(panel.mesh, flat.strain, cloth);
  const straight = measureGrain(panel.mesh, flat.strain, cloth, UPWARDS);
  const zones = findOverLimit(panel.mesh, strain);
  // Such a place lies within one over the plain limits.
  const mayBeSeen = zones.some(({ usage, area }) => usage > SEEN.limit && area >= SEEN.smallest);
  const seen = mayBeSeen ? findOverLimit(panel.mesh, strain, SEEN) : [];
  const over = zones.reduce((sum, zone) => sum + zone.area, 0);
  const whole = areas.reduce((sum, area) => sum + area, 0);
  return {
    grainAngle: UPWARDS + turn,
    warp: rangeOf(strain.warp),
    weft: rangeOf(strain.weft),
    bias: rangeOf(strain.bias),
    usage: straight.usage,
    bestGrain: { angle: withinHalfTurn(best.angle + turn), usage: best.usage },
    overShare: over / whole,
    zones: zones.slice(0, MOST_ZONES).map((zone) => describeZone(shell, places, panel, zone, cloth)),
    seen: seen.map((zone) => ({
      ...describeZone(shell, places, panel, zone, cloth),
      place: describePlace(shell, places, panel.sourceVertex[zone.vertex]),
    })),
  };
}

function withinHalfTurn(angle: number): number {
  return angle - Math.PI * Math.floor(angle / Math.PI);
}

function rangeOf(values: Float64Array): { min: number; max: number } {
  let [min, max] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    min = Math.min(min, value);
    max = Math.max(max, value);
  }
  return { min, max };
}

function describeZone(
  shell: SeamedShell,
  places: readonly NamedPlace[],
  panel: ShellPanel,
  zone: OverLimitZone,
  cloth: Cloth,
): ReportZone {
  const limits = cloth[zone.axis];
  const limit = zone.worst > 0 ? limits.stretch : limits.shrink;
  const source = panel.sourceVertex[zone.vertex];
  const told = {
    panel: panel.name,
    place: describePlace(shell, places, source),
    area: zone.area,
    axis: zone.axis,
    strain: Math.abs(zone.worst),
    limit,
    advice: adviseOn(nearestSeam(shell, panel, source)),
  };
  return {
    axis: zone.axis,
    strain: zone.worst,
    limit,
    area: zone.area,
    triangles: zone.triangles.length,
    vertex: zone.vertex,
    message: phrase(zone.worst > 0 ? 'zone.stretches' : 'zone.wrinkles', told),
  };
}

/** Which seam to move and how far is for `adviseZone` to try out, not to be guessed here. */
function adviseOn(nearest: NearSeam | undefined): Phrase {
  if (!nearest) return phrase('zone.no-seam');
  const { letter, name, distance: gap } = nearest;
  return gap < HARDLY
    ? phrase('zone.seam-ends-here', { letter, seam: name })
    : phrase('zone.seam-nearby', { letter, seam: name, distance: gap });
}

interface NearSeam {
  readonly letter: string;
  readonly name: Phrase;
  /** mm. */
  readonly distance: number;
}

function nearestSeam(shell: SeamedShell, panel: ShellPanel, vertex: number): NearSeam | undefined {
  let found: NearSeam | undefined;
  for (const seam of shell.seams) {
    if (!seam.panels.includes(panel.id)) continue;
    for (const point of seam.points) {
      const gap = distanceInSpace(shell.mesh.positions, point, vertex);
      if (!found || gap < found.distance) found = { letter: seam.letter, name: seam.name, distance: gap };
    }
  }
  return found;
}

/** Near a landmark: how far below or above and to which side of it; else the nearest level line. */
function describePlace(shell: SeamedShell, places: readonly NamedPlace[], vertex: number): Phrase {
  const { positions } = shell.mesh;
  let best: { gap: number; said?: Phrase } = { gap: LANDMARK_REACH };
  for (const { mark, vertex: near } of places) {
    const gap = distanceInSpace(positions, near, vertex);
    if (gap >= best.gap) continue;
    const rise = positions[3 * vertex + 2] - positions[3 * near + 2];
    const out = Math.abs(positions[3 * vertex]) - Math.abs(positions[3 * near]);
    const said = phrase('place.by-mark', {
      mark,
      ...(Math.abs(rise) < HARDLY ? {} : { rise }),
      ...(Math.abs(out) < HARDLY ? {} : { out }),
    });
    best = { gap, said };
  }
  if (best.said) return best.said;
  const z = positions[3 * vertex + 2];
  const heights = shell.levels.map((level) => ({ level, rise: z - positions[3 * level.vertices[0] + 2] }));
  const nearest = heights.toSorted((a, b) => Math.abs(a.rise) - Math.abs(b.rise))[0];
  if (!nearest) return phrase('place.on-body');
  return phrase('place.by-level', { level: nearest.level.name, rise: nearest.rise });
}

function nearestVertex(chart: Float64Array, u: number, v: number): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < chart.length / 2; i++) {
    const turn = Math.sin((chart[2 * i] - u) / 2);
    const square = (280 * turn) ** 2 + (chart[2 * i + 1] - v) ** 2;
    if (square < least) [best, least] = [i, square];
  }
  return best;
}
