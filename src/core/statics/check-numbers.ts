import type { Issue } from '../base/index.ts';
import { phrase, type ShellNumber } from './phrases.ts';
import type { ClothStiffness, EquilibriumOptions, Links, ShellProblem } from './types.ts';

/** What each number may be: far beyond any cloth and filling, near enough to keep the sums sound. */
const RANGES: { readonly [Name in ShellNumber]: readonly [least: number, most: number] } = {
  pressure: [0, 1],
  warp: [1e-3, 1e6],
  weft: [1e-3, 1e6],
  shear: [1e-4, 1e6],
  poisson: [0, 0.95],
  pushed: [0, 1],
  'strand-stiffness': [1e-6, 1e7],
  'strip-stiffness': [1e-6, 1e7],
  'strand-length': [1e-3, 1e5],
  'strip-length': [1e-3, 1e5],
  tolerance: [1e-12, 0.1],
};

/** Numbers out of range, one issue for each name with the first place; and triangles without area at rest. */
export function checkNumbers(problem: ShellProblem, options: EquilibriumOptions): Issue[] {
  const { membrane, pressure } = problem;
  const issues: Issue[] = [];
  const check = (name: ShellNumber, path: string, values: ArrayLike<number>): void => {
    const [least, most] = RANGES[name];
    for (let place = 0; place < values.length; place++) {
      const value = values[place];
      if (value >= least && value <= most) continue;
      issues.push({
        code: 'statics-number',
        path,
        message: phrase('statics.number', { name, value, least, most, place }),
        severity: 'error',
        measured: value,
        limit: value > most ? most : least,
      });
      return;
    }
  };
  check('pressure', 'pressure', typeof pressure === 'number' ? [pressure] : pressure);
  for (const name of ['warp', 'weft', 'shear'] as const)
    check(
      name,
      'membrane.cloths',
      membrane.cloths.map((cloth) => cloth[name]),
    );
  // Where the weft is stiffer its own ratio is the larger: the product of both stays below 1.
  const ratioOf = ({ warp, weft, poisson }: ClothStiffness): number =>
    warp > 0 && weft > warp ? poisson * Math.sqrt(weft / warp) : poisson;
  check('poisson', 'membrane.cloths', membrane.cloths.map(ratioOf));
  const checkLinks = (name: 'strand' | 'strip', links: Links | undefined): void => {
    check(`${name}-length`, `${name}s.lengths`, links?.lengths ?? []);
    check(`${name}-stiffness`, `${name}s.stiffness`, links?.stiffness ?? []);
  };
  checkLinks('strand', problem.strands);
  checkLinks('strip', problem.strips);
  if (options.pushed !== undefined) check('pushed', 'pushed', [options.pushed]);
  if (options.tolerance !== undefined) check('tolerance', 'tolerance', [options.tolerance]);
  const flat = findFlat(membrane.restEdges);
  if (flat >= 0) {
    const message = phrase('statics.flat-rest', { triangle: flat });
    issues.push({ code: 'statics-flat-rest', path: 'membrane.restEdges', message, severity: 'error' });
  }
  return issues;
}

/** First triangle with no area at rest, or turned over; −1 without. Edges differ in length by less than a million. */
function findFlat(edges: Float64Array): number {
  for (let k = 0; k < edges.length; k += 4) {
    const [a, b, c, d] = edges.subarray(k, k + 4);
    if (!(a * d - b * c > 1e-6 * (a * a + b * b + c * c + d * d))) return k / 4;
  }
  return -1;
}
