import { findEquilibrium, type ShellProblem } from '../../src/core/statics/index.ts';
import { makeTube } from '../statics/sample-shells.ts';

const TUBE = makeTube(100, 200, 8, 4);
const { cloths, ...MEMBRANE } = TUBE.membrane;
const link = (ends: number[], length: number, stiffness = 1) => ({
  ends: Uint32Array.from(ends),
  lengths: Float64Array.of(length),
  stiffness: Float64Array.of(stiffness),
});
/** Stiffness and ratio of one cloth instead of the usual. */
const withCloth = (change: object): Partial<ShellProblem> => ({
  membrane: { ...MEMBRANE, cloths: [{ ...cloths[0], ...change }] },
});

/** Shells without balance, or that hold badly. */
const CHANGES: readonly Partial<ShellProblem>[] = [
  { pressure: -0.003 },
  ...['warp', 'weft', 'shear'].map((name) => withCloth({ [name]: 0 })),
  withCloth({ poisson: 1.5 }),
  { strands: link([0, 33], 0, 0), strips: link([9, 17], -3, 1e9) },
  { strands: link([0, 1], 50) },
  { strands: link([9, 20], 9000) },
  { closing: new Uint32Array() },
  {
    bodies: TUBE.bodies!.map((body) => ({ ...body, motion: { kind: 'free' } })),
    start: TUBE.start.map((value, k) => (k % 3 === 0 ? -value : value)),
  },
  {
    membrane: { ...TUBE.membrane, restEdges: TUBE.membrane.restEdges.map((value, k) => (k < 4 ? 0 : value)) },
  },
  // Cut far too large, and not filled.
  {
    membrane: { ...TUBE.membrane, restEdges: TUBE.membrane.restEdges.map((value) => 1.2 * value) },
    pressure: 0,
  },
];

/** What is said of shells that find no balance. */
export function tellOfStatics(): unknown {
  return [
    CHANGES.map((change) => findEquilibrium({ ...TUBE, ...change })),
    findEquilibrium(TUBE, { maxSteps: 1 }),
    findEquilibrium(TUBE, { pushed: -1, tolerance: 2 }),
    findEquilibrium(TUBE, { shouldStop: () => true }),
  ];
}
