import { assertInvariant, failure, type Result, success } from '../base/index.ts';
import { measureVertexNormals } from '../mesh/index.ts';
import { type ClothStiffness, type Equilibrium, findEquilibrium } from '../statics/index.ts';
import { placeOf } from './measure-distances.ts';
import { measureFilled } from './measure-filled.ts';
import type { FilledMeasures, FilledPlace, FilledShell, FillingTrial } from './types.ts';

/** A filled form with something otherwise, in its own balance. */
export interface TriedFilling {
  /** What was tried, as `filledProblem` would have it. */
  readonly filled: FilledShell;
  readonly balance: Equilibrium;
  readonly measures: FilledMeasures;
  /** Where the cloth goes farthest out or in of where it was: `distance` is how far, inwards negative. */
  readonly change: FilledPlace;
}

/** So many times the usual pressure a zone is tried under at most: a maker hardly packs harder (ours). */
export const MOST_SHARE = 1.5;
/** Force left, as for a fit: places are right to a hundredth of a millimetre, and a trial is answered while it is waited for. */
const TOLERANCE = 1e-3;

/**
 * The filled form once more, found from its balance, with what `trial` says otherwise; with nothing said it is that balance. The
 * cut stays. A zone is pressed on unlike its neighbours without a wall between them: a filling of stiff fibres, packed unlike. A
 * brace that is not there is left out already.
 *
 * Fails as `findEquilibrium` does: share or stiffness below what it takes, no balance found. Cost: that of a balance from near.
 */
export function tryFilling(
  filled: FilledShell,
  { positions }: Equilibrium,
  trial: FillingTrial,
): Result<TriedFilling> {
  const changed = changeFilling(filled, trial);
  const found = findEquilibrium({ ...changed.problem, start: positions }, { tolerance: TOLERANCE });
  if (!found.ok) return failure(found.issues);
  const balance = found.value;
  const measures = measureFilled(changed, balance);
  const change = changeBetween(filled, positions, balance.positions);
  return success({ filled: changed, balance, measures, change }, found.issues);
}

/** Along the normals of the body. */
function changeBetween(
  { given: { shell } }: FilledShell,
  before: Float64Array,
  after: Float64Array,
): FilledPlace {
  const normals = measureVertexNormals(shell.mesh);
  const outwards = Float64Array.from({ length: normals.length / 3 }, (_, p) =>
    [0, 1, 2].reduce((sum, k) => sum + normals[3 * p + k] * (after[3 * p + k] - before[3 * p + k]), 0),
  );
  const farthest = outwards.reduce((most, x, p) => (Math.abs(x) > Math.abs(outwards[most]) ? p : most), 0);
  return placeOf(shell, farthest, outwards[farthest]);
}

function changeFilling(filled: FilledShell, { zone, stiffness = 1, without }: FillingTrial): FilledShell {
  const firmer = stiffness === 1 ? filled : stiffen(filled, stiffness);
  const held = without === undefined ? firmer : leaveOut(firmer, without);
  return zone ? { ...held, problem: { ...held.problem, pressure: pressureWith(held, zone) } } : held;
}

/** Shell and braces are of one cloth, as `loadOfFilling` takes them. */
function stiffen(filled: FilledShell, factor: number): FilledShell {
  const { problem, load } = filled;
  const { membrane, strands } = problem;
  const stiffer = ({ warp, weft, shear, poisson }: ClothStiffness): ClothStiffness => ({
    warp: factor * warp,
    weft: factor * weft,
    shear: factor * shear,
    poisson,
  });
  return {
    ...filled,
    problem: {
      ...problem,
      membrane: { ...membrane, cloths: membrane.cloths.map(stiffer) },
      ...(strands && { strands: { ...strands, stiffness: strands.stiffness.map((x) => factor * x) } }),
    },
    load: { ...load, shell: stiffer(load.shell), web: factor * load.web },
  };
}

/** Its strands go; points and places they ended at stay, so that all others keep their numbers. */
function leaveOut(filled: FilledShell, id: string): FilledShell {
  const { problem, braces } = filled;
  const { strands } = problem;
  if (!strands) return filled;
  const kept = braces.filter(({ brace }) => brace.id !== id);
  const rungs = kept.flatMap(({ first, heights }) => Array.from(heights, (_, k) => first + k));
  let first = 0;
  return {
    ...filled,
    problem: {
      ...problem,
      strands: {
        ends: Uint32Array.from(rungs.flatMap((k) => [strands.ends[2 * k], strands.ends[2 * k + 1]])),
        lengths: Float64Array.from(rungs, (k) => strands.lengths[k]),
        stiffness: Float64Array.from(rungs, (k) => strands.stiffness[k]),
      },
    },
    braces: kept.map((one) => {
      const moved = { ...one, first };
      first += one.heights.length;
      return moved;
    }),
  };
}

/** Pressure of every triangle of cloth and closing, by the height of its points on the shell's chart. */
function pressureWith(
  { given: { shell }, problem }: FilledShell,
  { upper, lower, share }: NonNullable<FillingTrial['zone']>,
): Float64Array {
  const { chart, levels } = shell;
  const heightOf = (id: string): number => {
    const level = levels.find((one) => one.id === id);
    assertInvariant(level !== undefined, 'filled', 'a zone lies between levels of the shell', id);
    return chart[2 * level.vertices[0] + 1];
  };
  const top = upper === undefined ? Number.POSITIVE_INFINITY : heightOf(upper);
  const bottom = lower === undefined ? Number.NEGATIVE_INFINITY : heightOf(lower);
  const { membrane, closing = new Uint32Array(), pressure } = problem;
  const faces = [membrane.triangles, closing].flatMap((corners) =>
    Array.from({ length: corners.length / 3 }, (_, t) => corners.subarray(3 * t, 3 * t + 3)),
  );
  return Float64Array.from(faces, (corners, t) => {
    // The middle of a board is none of the shell's points.
    const own = corners.filter((p) => 2 * p < chart.length);
    const height = own.reduce((sum, p) => sum + chart[2 * p + 1], 0) / own.length;
    const usual = typeof pressure === 'number' ? pressure : pressure[t];
    return height > bottom && height < top ? share * usual : usual;
  });
}
