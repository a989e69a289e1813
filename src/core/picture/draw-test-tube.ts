import type { Say } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import { drawForm } from './draw-form.ts';
import { CAMERAS } from './project-camera.ts';
import { makeSurface } from './solid-surfaces.ts';
import type { Scene, SceneLine } from './types.ts';

/** mm; what the pattern's tube is, sewn and filled. */
export interface TestTube {
  readonly girth: number;
  readonly height: number;
  /** Where it is measured, from the bottom up. */
  readonly lines: readonly number[];
}

const COLUMNS = 64;
/** The filled ends stand out by so much of the tube's radius, in rings. */
const BULGE = 0.3;
const RINGS = 6;
const SEAM_ANGLE = 1.1;

/** The test tube filled, with its lines numbered from the bottom and its closing seam. An eighth of true size, mm of paper. */
export function drawTestTube(tube: TestTube, closing: string, title: string, say: Say): Drawing {
  const camera = { ...CAMERAS.front, scale: 1 / 8 };
  const scene = sceneOfTube(tube, closing);
  const lettered = scene.lines.map(({ id }) => id);
  const bold = lettered.filter((id) => id !== 'closing');
  return drawForm(scene, camera, { title, say, bold, lettered });
}

function sceneOfTube({ girth, height, lines }: TestTube, closing: string): Scene {
  const radius = girth / (2 * Math.PI);
  const rows = profileOf(radius, height);
  const positions = rows.flatMap(([r, z]) => ringOf(r, z));
  const triangles: number[] = [];
  for (let row = 0; row + 1 < rows.length; row++) {
    for (let k = 0; k < COLUMNS; k++) {
      const [a, b] = [row * COLUMNS + k, row * COLUMNS + ((k + 1) % COLUMNS)];
      triangles.push(a, b, b + COLUMNS, a, b + COLUMNS, a + COLUMNS);
    }
  }
  const at = (points: number[], what: Pick<SceneLine, 'id' | 'letter'>): SceneLine => {
    const normals = points.map((value, i) => (i % 3 === 2 ? 0 : value / radius));
    // A seam of two sheets, of which there is one: drawn as one between two.
    return {
      ...what,
      kind: 'seam',
      points: Float64Array.from(points),
      normals: Float64Array.from(normals),
      sheets: [0, 0],
    };
  };
  const seam = [0, height].flatMap((z) => [radius * Math.cos(SEAM_ANGLE), radius * Math.sin(SEAM_ANGLE), z]);
  const rings = lines.map((z, k) => {
    const ring = ringOf(radius, z);
    return at([...ring, ...ring.slice(0, 3)], { id: `line-${k + 1}`, letter: String(k + 1) });
  });
  return {
    sheets: [{ id: 'test-tube', kind: 'panel', half: 'front', side: 'centre' }],
    surfaces: [makeSurface(Float64Array.from(positions), triangles, 0)],
    lines: [...rings, at(seam, { id: 'closing', letter: closing })],
  };
}

/** Radius and height of every ring: bulging end, wall, bulging end. The wall has rings so close to its ends that they stay edges. */
function profileOf(radius: number, height: number): [number, number][] {
  const end = Array.from({ length: RINGS }, (_, k): [number, number] => {
    const angle = (Math.PI / 2) * ((k + 0.02) / RINGS);
    return [radius * Math.sin(angle), BULGE * radius * Math.cos(angle)];
  });
  return [
    ...end.map(([r, out]): [number, number] => [r, -out]),
    [radius, 0],
    [radius, 2],
    [radius, height - 2],
    [radius, height],
    ...end.toReversed().map(([r, out]): [number, number] => [r, height + out]),
  ];
}

function ringOf(radius: number, z: number): number[] {
  return Array.from({ length: COLUMNS }, (_, k) => {
    const angle = (2 * Math.PI * k) / COLUMNS;
    return [radius * Math.cos(angle), radius * Math.sin(angle), z];
  }).flat();
}
