import { readFileSync } from 'node:fs';

/** One woman: columns as told in shared/survey/SOURCE.md, mm; NaN where a scan did not show the place. */
export type LandmarkRow = Readonly<Record<string, number>>;

export function readLandmarkRows(file: string): LandmarkRow[] {
  const [head, ...lines] = readFileSync(file, 'utf8').trim().split(/\r?\n/);
  const names = head.split(',');
  return lines.map((line) => {
    const cells = line.split(',').map((cell) => (cell === '' ? Number.NaN : Number(cell)));
    return Object.fromEntries(names.map((name, i) => [name, cells[i]]));
  });
}

type Point = readonly [x: number, y: number, z: number];

function pointOf(row: LandmarkRow, name: string): Point {
  return [row[`${name}X`], row[`${name}Y`], row[`${name}Z`]];
}

/** Mean of left and right, mirrored to the right. */
function pairOf(row: LandmarkRow, name: string): Point {
  const [right, left] = [pointOf(row, `${name}Right`), pointOf(row, `${name}Left`)];
  return [0.5 * (right[0] - left[0]), 0.5 * (right[1] + left[1]), 0.5 * (right[2] + left[2])];
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/**
 * The tapes a home measurer would take, read off the landmarks: girths as scanned; lengths over the points, a little
 * longer than the straights between them because skin is round. `fiveOnly`: the measures no project can do without.
 */
export function measuresOfLandmarks(row: LandmarkRow, fiveOnly = false): Record<string, number> {
  const [nape, blades, waistBack] = ['nape', 'bladesBack', 'waistBack'].map((id) => pointOf(row, id));
  const [side, bust] = [pairOf(row, 'neckSide'), pairOf(row, 'bustPoint')];
  const first = {
    bustGirth: row.bustGirth,
    waistGirth: row.waistGirth,
    hipGirth: row.hipGirth,
    backWaistLength: lengthOverBack(nape, blades, waistBack),
    neckBaseGirth: girthOfNeckBase(row),
  };
  if (fiveOnly) return first;
  const more = {
    bustPointSpan: 2 * bust[0],
    waistToHip: row.waistBackZ - row.hipFrontZ,
    napeHeight: row.napeHeight,
    waistHeight: row.waistBackZ,
    neckToBustPoint: 1.015 * distance(side, bust),
  };
  return Object.fromEntries(
    Object.entries({ ...first, ...more }).filter(([, value]) => Number.isFinite(value)),
  );
}

/**
 * What a home measurer would read off a wall behind her and up from the floor, with `error()` on each reading, mm. Where the wall
 * stands nobody knows: here a hand's breadth behind her blades.
 */
export function wallOfLandmarks(row: LandmarkRow, error: () => number): Record<string, number> {
  const wall = row.bladesBackY - 100;
  const away = {
    wallNape: row.napeY,
    wallBlades: row.bladesBackY,
    wallWaistBack: row.waistBackY,
    wallNeckFront: row.neckFrontY,
    wallBust: pairOf(row, 'bustPoint')[1],
    wallWaistFront: row.waistFrontY,
    wallBelly: row.bellyFrontY,
    wallNeckSide: pairOf(row, 'neckSide')[1],
  };
  return Object.fromEntries(
    Object.entries(away)
      .filter(([, y]) => Number.isFinite(y))
      .map(([id, y]) => [id, y - wall + error()]),
  );
}

/** A smooth curve in side view through nape, blades and waist: the parabola of y over z through the three, by its length. */
function lengthOverBack(nape: Point, blades: Point, waist: Point): number {
  const [z0, z1, z2] = [waist[2], blades[2], nape[2]];
  const [y0, y1, y2] = [waist[1], blades[1], nape[1]];
  const at = (z: number): number =>
    (y0 * (z - z1) * (z - z2)) / ((z0 - z1) * (z0 - z2)) +
    (y1 * (z - z0) * (z - z2)) / ((z1 - z0) * (z1 - z2)) +
    (y2 * (z - z0) * (z - z1)) / ((z2 - z0) * (z2 - z1));
  const steps = 60;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const [a, b] = [z0 + ((z2 - z0) * i) / steps, z0 + ((z2 - z0) * (i + 1)) / steps];
    sum += Math.hypot(b - a, at(b) - at(a));
  }
  return sum;
}

/** A smooth closed curve through nape, sides and front: quarter ellipses in the planes that the points span. */
function girthOfNeckBase(row: LandmarkRow): number {
  const [back, front, side] = [pointOf(row, 'neckBack'), pointOf(row, 'neckFront'), pairOf(row, 'neckSide')];
  const quarter = (end: Point): number => {
    // From the side (at right angles to x = 0) to the centre line: side half width along x, the rest along (y, z).
    const along = Math.hypot(end[1] - side[1], end[2] - side[2]);
    const steps = 40;
    let sum = 0;
    for (let i = 0; i < steps; i++) {
      const [a, b] = [(Math.PI / 2) * (i / steps), (Math.PI / 2) * ((i + 1) / steps)];
      sum += Math.hypot(side[0] * (Math.cos(b) - Math.cos(a)), along * (Math.sin(b) - Math.sin(a)));
    }
    return sum;
  };
  return 2 * (quarter(back) + quarter(front));
}

/** Where her landmarks lie, middle of the waist as origin; mm. Sides are means of left and right. */
export function placesOfLandmarks(row: LandmarkRow): Record<string, number> {
  const middleX = 0.5 * (row.waistLeftX + row.waistRightX);
  const middleY = 0.5 * (row.waistFrontY + row.waistBackY);
  const z = row.waistFrontZ;
  const from = (name: string): Point => {
    const p = pointOf(row, name);
    return [p[0] - middleX, p[1] - middleY, p[2] - z];
  };
  const both = (name: string): Point => {
    const p = pairOf(row, name);
    return [p[0], p[1] - middleY, p[2] - z];
  };
  const [waist, bust, neckSide] = [both('waist'), both('bustPoint'), both('neckSide')];
  const [nape, neckFront, blades, belly] = ['nape', 'neckFront', 'bladesBack', 'bellyFront'].map(from);
  const [armFront, armBack] = [both('armpitFront'), both('armpitBack')];
  return {
    waistSideX: waist[0],
    waistSideY: waist[1],
    waistHalfDepth: 0.5 * (row.waistFrontY - row.waistBackY),
    bustX: bust[0],
    bustY: bust[1],
    bustZ: bust[2],
    napeY: nape[1],
    napeZ: nape[2],
    neckSideX: neckSide[0],
    neckSideY: neckSide[1],
    neckSideZ: neckSide[2],
    neckFrontY: neckFront[1],
    neckFrontZ: neckFront[2],
    bladesY: blades[1],
    bellyY: belly[1],
    armpitFrontX: armFront[0],
    armpitFrontY: armFront[1],
    armpitBackX: armBack[0],
    armpitBackY: armBack[1],
    armpitZ: armFront[2],
    hipFrontY: from('hipFront')[1],
    midriffY: from('midriffFront')[1],
    bladesZ: blades[2],
    bellyZ: belly[2],
  };
}
