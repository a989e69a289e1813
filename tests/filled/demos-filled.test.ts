import { describe, expect, it } from 'vitest';
import {
  designedBraces,
  type FilledShell,
  filledProblem,
  loadOfFilling,
  measureFilled,
} from '../../src/core/filled/index.ts';
import type { Equilibrium } from '../../src/core/statics/index.ts';
import { solved } from '../statics/solved.ts';
import { demoToFill } from './filled-demo.ts';

/** All parts, as some of them are tried alone here. */
const demo = (id: string, triangles: number) => demoToFill(id, triangles, false, { parts: 'all' });

const { form, given } = demo('average', 3000);
const filled = filledProblem(given);
const balance = solved(filled.problem);
const measures = measureFilled(filled, balance);

const levelOf = (found: typeof measures, id: string) => {
  const level = found.levels.find((one) => one.id === id);
  if (!level) throw new Error(id);
  return level;
};
const unlike = (id: string, size: 'girth' | 'width' | 'depth', found = measures): number => {
  const level = levelOf(found, id);
  return level.found[size] - level.asked[size];
};

type Point = readonly [number, number, number];

const at = (x: Float64Array, p: number): Point => [x[3 * p], x[3 * p + 1], x[3 * p + 2]];
const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const times = (a: Point, k: number): Point => [a[0] * k, a[1] * k, a[2] * k];
const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const unit = (a: Point): Point => times(a, 1 / Math.hypot(...a));

/**
 * Work of pressure, of cloth and of strands on a small move of all points, N mm, from what the balance says of tensions and pulls;
 * `gross`: all of it without regard to sign.
 */
function worksOn({ problem }: FilledShell, found: Equilibrium, moves: Float64Array) {
  const x = found.positions;
  const { triangles, restEdges } = problem.membrane;
  const pressure = problem.pressure as number;
  let [ofPressure, ofCloth, ofStrands, gross] = [0, 0, 0, 0];
  for (const faces of [triangles, problem.closing!]) {
    for (let t = 0; t < faces.length; t += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => at(x, faces[t + k]));
      const area = times(cross(minus(b, a), minus(c, a)), 1 / 2);
      const push = times(area, pressure / 3);
      for (let k = 0; k < 3; k++) {
        ofPressure += dot(push, at(moves, faces[t + k]));
        gross += Math.abs(dot(push, at(moves, faces[t + k])));
      }
    }
  }
  for (let t = 0; t < triangles.length / 3; t++) {
    const [a, b, c] = [0, 1, 2].map((k) => at(x, triangles[3 * t + k]));
    const [da, db, dc] = [0, 1, 2].map((k) => at(moves, triangles[3 * t + k]));
    const [u, v] = [minus(b, a), minus(c, a)];
    const area = Math.hypot(...cross(u, v)) / 2;
    const normal = unit(cross(u, v));
    // Where the direction at rest has gone: by its shares of the two edges.
    const [x1, y1, x2, y2] = restEdges.subarray(4 * t, 4 * t + 4);
    const [warp, weft] = [Math.cos(found.directions[t]), Math.sin(found.directions[t])];
    const twice = x1 * y2 - x2 * y1;
    const first = unit(
      plus(times(u, (warp * y2 - weft * x2) / twice), times(v, (weft * x1 - warp * y1) / twice)),
    );
    const second = cross(normal, first);
    // How the moves stretch each of the two principal directions.
    [first, second].forEach((way, k) => {
      const [uu, uv, vv] = [dot(u, u), dot(u, v), dot(v, v)];
      const det = uu * vv - uv * uv;
      const alongU = (vv * dot(u, way) - uv * dot(v, way)) / det;
      const alongV = (uu * dot(v, way) - uv * dot(u, way)) / det;
      const change = plus(times(minus(db, da), alongU), times(minus(dc, da), alongV));
      const work = found.tensions[2 * t + k] * area * dot(change, way);
      ofCloth += work;
      gross += Math.abs(work);
    });
  }
  const { ends, lengths } = problem.strands!;
  const pointCount = problem.start.length / 3;
  const placeOf = (values: Float64Array, end: number): Point => {
    if (end < pointCount) return at(values, end);
    const { corners, weights } = problem.places!;
    return [0, 1, 2]
      .map((k) => {
        const i = 3 * (end - pointCount) + k;
        return times(at(values, corners[i]), weights[i]);
      })
      .reduce(plus);
  };
  for (let k = 0; k < lengths.length; k++) {
    const way = unit(minus(placeOf(x, ends[2 * k + 1]), placeOf(x, ends[2 * k])));
    const change = minus(placeOf(moves, ends[2 * k + 1]), placeOf(moves, ends[2 * k]));
    ofStrands += found.strandForces[k] * dot(way, change);
    gross += found.strandForces[k] * Math.abs(dot(way, change));
  }
  return { ofPressure, ofCloth, ofStrands, gross };
}

describe('a filled demo body', () => {
  it('has every rung as a strand, its panels as they are cut, and no hole', () => {
    const rungs = given.inside.braces.reduce((sum, brace) => sum + brace.rungs.length, 0);
    expect(rungs).toBeGreaterThan(150);
    expect(filled.problem.strands!.lengths.length).toBe(rungs);
    // Area of the flat panels, by the shoelace formula over their triangles as the pieces are drawn from.
    const { restEdges } = filled.problem.membrane;
    let area = 0;
    for (let k = 0; k < restEdges.length; k += 4)
      area += (restEdges[k] * restEdges[k + 3] - restEdges[k + 1] * restEdges[k + 2]) / 2;
    const flat = form.report.panels.reduce((sum, { areaFlat }) => sum + areaFlat, 0);
    expect(area).toBeCloseTo(flat, 3);
  });

  // Virtual work: in balance, pressure does on any move of the free points what cloth and strands take up.
  it('does as much work on its cloth and ties as its pressure does', () => {
    const held = new Set(filled.problem.bodies!.flatMap(({ points }) => Array.from(points)));
    const fields: ((p: Point) => Point)[] = [
      ([x, y]) => [x, y, 0],
      ([, y]) => [0, y, 0],
      ([x, , z]) => [x * Math.sin(z / 60), 0, 0],
      ([x, y, z]) => [0, 0, Math.cos(x / 50 + y / 70 + z / 90)],
      ([x, y, z]) => [Math.sin(z / 40 + y / 30), Math.cos(x / 35), Math.sin(x / 45)],
    ];
    for (const field of fields) {
      const moves = balance.positions.slice();
      for (let p = 0; p < moves.length / 3; p++)
        moves.set(held.has(p) ? [0, 0, 0] : field(at(balance.positions, p)), 3 * p);
      const { ofPressure, ofCloth, ofStrands, gross } = worksOn(filled, balance, moves);
      // Tensions are told without the thousandth of stiffness that pushed cloth keeps.
      expect(Math.abs(ofPressure - ofCloth - ofStrands)).toBeLessThan(0.001 * gross);
    }
  });

  it('is as symmetric as its body', () => {
    const { positions } = given.shell.mesh;
    const keyOf = (x: number, y: number, z: number): string =>
      [x, y, z].map((value) => Math.round(value * 1e4) + 0).join(' ');
    const places = new Map<string, number>();
    for (let p = 0; p < positions.length / 3; p++) places.set(keyOf(...at(positions, p)), p);
    const unlikes: number[] = [];
    for (let p = 0; p < positions.length / 3; p++) {
      const [x, y, z] = at(positions, p);
      const other = places.get(keyOf(-x, y, z));
      if (other === undefined) continue;
      const [a, b] = [at(balance.positions, p), at(balance.positions, other)];
      unlikes.push(Math.hypot(a[0] + b[0], a[1] - b[1], a[2] - b[2]));
    }
    expect(unlikes.length).toBe(positions.length / 3);
    const squares = unlikes.reduce((sum, x) => sum + x * x, 0);
    expect(Math.sqrt(squares / unlikes.length)).toBeLessThan(0.02);
    // Halves of a panel that lies over the middle are unrolled alike to a thousandth; a point between the breasts is soft.
    expect(Math.max(...unlikes)).toBeLessThan(0.5);
  });
});

describe('a filled demo body otherwise', () => {
  it('is narrower and deeper at the waist without its inside, towards the circle of its girth', () => {
    const bare = filledProblem(given, { braces: [] });
    const found = measureFilled(bare, solved(bare.problem));
    const circle = levelOf(measures, 'waist').asked.girth / Math.PI;
    const { asked } = levelOf(measures, 'waist');
    expect(unlike('waist', 'width', found)).toBeLessThan(unlike('waist', 'width') - 15);
    expect(unlike('waist', 'depth', found)).toBeGreaterThan(unlike('waist', 'depth') + 15);
    // Hip and bust beside it hold it from becoming quite round, or pull it further.
    expect(Math.abs(unlike('waist', 'width', found) - (circle - asked.width))).toBeLessThan(15);
    expect(Math.abs(unlike('waist', 'depth', found) - (circle - asked.depth))).toBeLessThan(20);
  });

  // Coarse triangles miss bends: told in `shared/filled/RESULTS.md`, and here with a half more.
  it('comes out alike of twice as many triangles', () => {
    const fine = filledProblem(demo('average', 6000).given);
    const found = measureFilled(fine, solved(fine.problem));
    for (const { id } of measures.levels)
      expect(Math.abs(unlike(id, 'girth', found) - unlike(id, 'girth'))).toBeLessThan(1.5);
    expect(Math.abs(found.distance.rms - measures.distance.rms)).toBeLessThan(0.5);
    expect(Math.abs(found.throat.distance - measures.throat.distance)).toBeLessThan(3);
  });

  it('grows with its pressure, everywhere', () => {
    const load = loadOfFilling(given.options);
    const at = (share: number) => {
      const other = filledProblem(given, { load: { ...load, pressure: share * load.pressure } });
      const found = solved({ ...other.problem, start: balance.positions });
      return { volume: found.volume, measures: measureFilled(other, found) };
    };
    const [half, twice] = [at(0.5), at(2)];
    expect(half.volume).toBeLessThan(balance.volume);
    expect(twice.volume).toBeGreaterThan(balance.volume);
    for (const { id } of measures.levels) {
      expect(unlike(id, 'girth', half.measures)).toBeLessThan(unlike(id, 'girth'));
      expect(unlike(id, 'girth', twice.measures)).toBeGreaterThan(unlike(id, 'girth'));
    }
  });

  // What the sections foretell of straps holds in space too: a third and 3 mm of the width at the least.
  it.each(['average', 'large-bust'])('%s is less wide under the bust with straps there', (id) => {
    const { given: own } = id === 'average' ? { given } : demo(id, 3000);
    const braces = designedBraces(own);
    const straps = braces.filter((brace) => brace.id.startsWith('strap-underbust'));
    expect(straps.length).toBe(2);
    const open = filledProblem(own, { braces: braces.filter((brace) => !straps.includes(brace)) });
    const wide = unlike('underbust', 'width', measureFilled(open, solved(open.problem)));
    const whole = filledProblem(own);
    const held = Math.abs(unlike('underbust', 'width', measureFilled(whole, solved(whole.problem))));
    expect(wide).toBeGreaterThan(5);
    expect(wide - held).toBeGreaterThan(3);
    expect(held).toBeLessThan((2 / 3) * wide);
  });

  // An independent simulation, of other bodies: ties carried on to the neck leave 18 of 39 mm, two more lines beside 13.
  it.each(['average', 'large-bust'])('%s swells less in the throat with webs there', (id) => {
    const { given: own } = id === 'average' ? { given } : demo(id, 3000);
    const braces = designedBraces(own);
    const throat = braces.filter((brace) => brace.id.startsWith('throat-'));
    expect(throat.map((brace) => brace.id)).toEqual(['throat-right', 'throat-left']);
    const open = filledProblem(own, { braces: braces.filter((brace) => !throat.includes(brace)) });
    const swollen = measureFilled(open, solved(open.problem));
    const holding = filledProblem(own);
    const found = id === 'average' ? balance : solved(holding.problem);
    const held = measureFilled(holding, found);
    expect(held.throat.distance).toBeLessThan(20);
    expect(held.throat.distance).toBeLessThan(swollen.throat.distance / 2);
    expect(held.throat.distance).toBeGreaterThan(0);
    expect(held.distance.rms).toBeLessThan(0.75 * swollen.distance.rms);
    // Each holds over its height: pulled in its lower, its middle and its upper third.
    for (const { brace, first, heights } of holding.braces.filter((one) => throat.includes(one.brace))) {
      const forces = found.strandForces.subarray(first, first + heights.length);
      for (const third of [0, 1, 2]) {
        const of = forces.filter((_, k) => Math.floor((3 * k) / forces.length) === third);
        expect(
          of.reduce((sum, force) => sum + force, 0),
          `${brace.id} ${third}`,
        ).toBeGreaterThan(1);
      }
    }
  });
});
