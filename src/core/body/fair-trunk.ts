import { heightOf } from './bump-reaches.ts';
import { evenArmholes } from './even-armholes.ts';
import { listDemands } from './fair-demands.ts';
import { assembleEnergy, type FairEnergies, holdPoint } from './fair-energy.ts';
import { type BumpUnknown, FairUnknowns, type Push } from './fair-unknowns.ts';
import { makeFairWeights } from './fair-weights.ts';
import { MET_WITHIN } from './fit-issues.ts';
import type { FittedShape, Target } from './fit-problem.ts';
import { KNOTS } from './rails.ts';
import { type SampledNet, sampleNet } from './sample-net.ts';
import { addSideBreasts, flattenBumps, listBreastHeights } from './side-breasts.ts';
import { type FairedShape, type Fairing, solveFairing } from './solve-fairing.ts';
import type { TapeContext } from './tape-rule.ts';
import { NET_COLUMNS, TrunkNetEvaluator, weightsRound } from './trunk-net.ts';
import type { TrunkNet } from './types.ts';

/** Hold of the armhole's rim: lighter, and the armhole shrinks and shoulders slump. */
const RIM_HOLD = 12;
/** Every how many of the rim's points is held. */
const RIM_STRIDE = 2;

/**
 * The rough shape with a fair trunk: a B-spline net takes the place of the rails, as near to them as fairness lets it and
 * under the tapes as hard demands. Breasts, blades, seat and collar bones ride on it as before.
 * Null when it does not get there: some demand is missed by more than 0.5 mm.
 */
export function fairTrunk(rough: FittedShape, targets: readonly Target[]): FairedShape | null {
  const sampled = sampleNet(rough.shape);
  if (!sampled) return null;
  const even = evenArmholes(rough);
  let start = { ...even, shape: addSideBreasts(even.shape) };
  let free = listBreastHeights(start.shape);
  let solved = solveFairing(stateFairing(start, sampled, targets, free));
  // No bump may become a dent: what wants to is left out, once.
  const dents = free.filter(({ bumps }) => bumps.some((bump) => heightOf(solved.shape, bump) < 0));
  if (dents.length > 0) {
    start = {
      ...start,
      shape: flattenBumps(
        start.shape,
        dents.flatMap(({ bumps }) => bumps),
      ),
    };
    free = free.filter((one) => !dents.includes(one));
    solved = solveFairing(stateFairing(start, sampled, targets, free));
  }
  return solved.residual <= MET_WITHIN ? solved : null;
}

function stateFairing(
  rough: FittedShape,
  sampled: SampledNet,
  targets: readonly Target[],
  free: readonly BumpUnknown[],
): Fairing {
  const { net, firstTilted } = sampled;
  const { shape, context } = rough;
  const energies = assembleEnergy(net.knots, makeFairWeights(shape, net));
  const pushes = holdRims(energies, net, context);
  const rows = net.knots.length - 4;
  const unknowns = new FairUnknowns(energies, rows, firstTilted, shape.isMirrorSymmetric, free);
  const rest = unknowns.findRest(net.controls, pushes);
  return { rough, net, unknowns, demands: listDemands(rough, targets), rest };
}

/** Holds the net to the rims of the armholes. */
function holdRims(energies: FairEnergies, net: TrunkNet, { evaluator, armholes }: TapeContext): Push[] {
  const chart = new TrunkNetEvaluator(net, KNOTS);
  const loop = armholes.right;
  const n = loop.length / 2;
  const goal = new Float64Array(3);
  const own = new Float64Array(3);
  /** From the net to the rim, less what rides on the net there. */
  const wayTo = (u: number, v: number): number[] => {
    evaluator.point(u, v, goal);
    chart.point(u, v, own, 0);
    const [x, y] = evaluator.bumpsAt(u, v);
    return [goal[0] - x - own[0], goal[1] - y - own[1], goal[2] - own[2]];
  };
  const pushes: Push[] = [];
  for (let i = 0; i < n; i += RIM_STRIDE) {
    const [u, v] = [loop[2 * i], loop[2 * i + 1]];
    const along = new Float64Array(4);
    const round = new Float64Array(4);
    const row = chart.weightsAlong(v, along);
    const column = weightsRound(u, round);
    // The right half begins at the centre back, a quarter of the columns before the side.
    const half = (column + NET_COLUMNS / 4) % NET_COLUMNS;
    const weight = (RIM_HOLD * RIM_STRIDE) / n;
    holdPoint(energies, row, along, half, round, weight);
    const right = wayTo(u, v);
    const left = wayTo(Math.PI - u, v);
    left[0] = -left[0];
    pushes.push({
      row,
      along,
      column,
      round,
      own: right.map((way, k) => 0.5 * weight * (way + left[k])),
      other: right.map((way, k) => 0.5 * weight * (way - left[k])),
    });
  }
  return pushes;
}
