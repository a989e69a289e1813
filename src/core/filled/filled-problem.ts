import { assertInvariant } from '../base/index.ts';
import type { FlatDisk } from '../flatten/index.ts';
import { depthOfShell, outsideOfCloth } from '../inside/index.ts';
import { measureVertexNormals } from '../mesh/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import type { Membrane, RigidBody } from '../statics/index.ts';
import { loadOfFilling } from './load-of-filling.ts';
import { strandBraces } from './strand-braces.ts';
import type { FilledGiven, FilledShell, FillingLoad, StrandedBrace } from './types.ts';

/** What is filled otherwise than designed. */
export interface FilledChoices {
  /** Instead of what the options say. */
  readonly load?: FillingLoad;
  /** Instead of the designed ones. */
  readonly braces?: readonly StrandedBrace[];
}

/**
 * The problem of statics of a filled form. The panels' triangles as they are cut, welded where they are sewn, start on the
 * body; the filling presses on them and on the boards over the openings. The base stands still, the neck's board slides
 * on the pole without tilting, the armholes' are carried by the cloth alone. Every rung of every brace is a strand to its
 * place on the pole or across. Left out: bending, weight, friction, allowances, openings in webs, what the cloth leans on
 * inside. O(size).
 */
export function filledProblem(given: FilledGiven, choices: FilledChoices = {}): FilledShell {
  const { shell, flat, closedMesh, options } = given;
  const load = choices.load ?? loadOfFilling(options);
  const braces = choices.braces ?? designedBraces(given);
  const pointCount = shell.mesh.positions.length / 3;
  assertInvariant(
    closedMesh.positions.length === shell.mesh.positions.length,
    'filled',
    'the boards have the points of the shell',
    closedMesh.positions.length / 3,
  );
  const strands = strandBraces(shell.mesh, braces, load.web, pointCount);
  const start = new Float64Array(3 * pointCount + strands.onPole.length);
  start.set(drawnIn(shell, depthOfShell(options)));
  start.set(strands.onPole, 3 * pointCount);
  const { restEdges, triangles } = cutPanels(shell, flat);
  const membrane: Membrane = { triangles, restEdges, cloths: [load.shell] };
  return {
    problem: {
      start,
      membrane,
      closing: closedMesh.triangles.slice(shell.mesh.triangles.length),
      pressure: load.pressure,
      places: strands.places,
      strands: strands.links,
      bodies: [...boardsOf(shell), ...poleOf(pointCount, strands.onPole.length / 3)],
    },
    given,
    load,
    braces: strands.braces,
    outside: outsideOfCloth(options),
  };
}

/** The braces of the inside as threads. */
export function designedBraces({ inside }: FilledGiven): StrandedBrace[] {
  return inside.braces.map(({ id, rungs, to }) => ({ id, rungs, isAcross: to !== 'sleeve' }));
}

/** Triangles of all panels with the shell's points, and their edges as they are cut: warp upwards, weft to the left. */
function cutPanels({ panels }: SeamedShell, flat: readonly FlatDisk[]) {
  const count = panels.reduce((sum, { mesh }) => sum + mesh.triangles.length, 0);
  const triangles = new Uint32Array(count);
  const restEdges = new Float64Array((4 * count) / 3);
  let at = 0;
  panels.forEach(({ mesh, sourceVertex }, p) => {
    const { positions } = flat[p];
    for (let t = 0; t < mesh.triangles.length; t += 3) {
      const [a, b, c] = mesh.triangles.subarray(t, t + 3);
      triangles.set([sourceVertex[a], sourceVertex[b], sourceVertex[c]], at);
      [b, c].forEach((corner, k) => {
        restEdges[(4 * at) / 3 + 2 * k] = positions[2 * corner + 1] - positions[2 * a + 1];
        restEdges[(4 * at) / 3 + 2 * k + 1] = positions[2 * a] - positions[2 * corner];
      });
      at += 3;
    }
  });
  return { triangles, restEdges };
}

/** The shell as far inside the body as layers over it are thick. */
function drawnIn({ mesh }: SeamedShell, depth: number): Float64Array {
  if (depth === 0) return mesh.positions;
  const normals = measureVertexNormals(mesh);
  return mesh.positions.map((x, k) => x - depth * normals[k]);
}

function boardsOf({ openings }: SeamedShell): RigidBody[] {
  return openings.map(({ id, vertices }): RigidBody => {
    if (id === 'base') return { points: vertices, motion: { kind: 'fixed' } };
    if (id === 'neck') return { points: vertices, motion: { kind: 'slide', axis: [0, 0, 1] } };
    return { points: vertices, motion: { kind: 'free' } };
  });
}

function poleOf(first: number, count: number): RigidBody[] {
  if (count === 0) return [];
  const points = Uint32Array.from({ length: count }, (_, k) => first + k);
  return [{ points, motion: { kind: 'fixed' } }];
}
