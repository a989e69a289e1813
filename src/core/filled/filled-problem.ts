import type { FlatDisk } from '../flatten/index.ts';
import { depthOfShell, outsideOfCloth } from '../inside/index.ts';
import { measureVertexNormals } from '../mesh/index.ts';
import type { OpeningId, SeamedShell } from '../seams/index.ts';
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
  /** Armhole boards are carried by the cloth alone, not by the neck's through the shoulder supports and by their cords. */
  readonly areArmholesFree?: boolean;
}

/**
 * The problem of statics of a filled form. The panels' triangles as they are cut, welded where they are sewn, start on the
 * body; the filling presses on them and on the boards over the openings. The base stands still; the neck's board slides
 * on the pole without tilting, and the armholes' go with it, as shoulder supports and cords hold them to it. Every rung of every brace is a strand to its
 * place on the pole or across. Left out: bending, weight, friction, allowances, openings in webs, what the cloth leans on
 * inside. O(size).
 */
export function filledProblem(given: FilledGiven, choices: FilledChoices = {}): FilledShell {
  const { shell, flat, options } = given;
  const load = choices.load ?? loadOfFilling(options);
  const cloth = drawnIn(shell, depthOfShell(options));
  const boards = boardsOver(shell, cloth, choices.areArmholesFree ?? false);
  const onCloth = cloth.length / 3;
  const beforePole = onCloth + boards.middles.length / 3;
  const strands = strandBraces(shell.mesh, choices.braces ?? designedBraces(given), load.web, beforePole);
  const membrane: Membrane = { ...cutPanels(shell, flat), cloths: [load.shell] };
  return {
    problem: {
      start: Float64Array.from([...cloth, ...boards.middles, ...strands.onPole]),
      membrane,
      closing: boards.closing,
      pressure: load.pressure,
      places: strands.places,
      strands: strands.links,
      bodies: [...boards.bodies, ...poleOf(beforePole, strands.onPole.length / 3)],
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

/** A board over every opening: fans about its middle, so that the right one is the left one's mirror image. */
function boardsOver({ openings }: SeamedShell, cloth: Float64Array, areArmholesFree: boolean) {
  const middles: number[] = [];
  const closing: number[] = [];
  const boards = openings.map(({ id, vertices }) => {
    const middle = (cloth.length + middles.length) / 3;
    for (let axis = 0; axis < 3; axis++)
      middles.push(vertices.reduce((sum, p) => sum + cloth[3 * p + axis], 0) / vertices.length);
    vertices.forEach((p, i) => {
      closing.push(middle, p, vertices[(i + 1) % vertices.length]);
    });
    return { id, points: [...vertices, middle] };
  });
  const isFree = (id: OpeningId): boolean => areArmholesFree && id.startsWith('armhole');
  const pointsOf = (isMeant: (id: OpeningId) => boolean): Uint32Array =>
    Uint32Array.from(boards.filter(({ id }) => isMeant(id)).flatMap(({ points }) => points));
  const bodies: RigidBody[] = [
    { points: pointsOf((id) => id === 'base'), motion: { kind: 'fixed' } },
    { points: pointsOf((id) => id !== 'base' && !isFree(id)), motion: { kind: 'slide', axis: [0, 0, 1] } },
    ...boards
      .filter(({ id }) => isFree(id))
      .map(({ points }): RigidBody => ({ points: Uint32Array.from(points), motion: { kind: 'free' } })),
  ];
  return { middles, closing: Uint32Array.from(closing), bodies };
}

function poleOf(first: number, count: number): RigidBody[] {
  if (count === 0) return [];
  const points = Uint32Array.from({ length: count }, (_, k) => first + k);
  return [{ points, motion: { kind: 'fixed' } }];
}
