import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry, Color, SRGBColorSpace } from 'three';
import type { Form, FormFilled } from '../../core/form/index.ts';
import { type Mesh, measureVertexNormals } from '../../core/mesh/index.ts';
import {
  distanceColour,
  type FilledView,
  type Highlight,
  looseness,
  loosenessColour,
  positionsInView,
  tensionColour,
} from '../store/index.ts';
import { LevelLines, SeamLines } from './body-lines.tsx';
import { DRAWN } from './colours.ts';
import { SectionLine } from './compare-lines.tsx';
import { BoardMaterial, ClothMaterial, GhostMaterial } from './materials.tsx';

/** The blue of another body over this one. */

interface FilledSurfaceProps {
  readonly form: Form;
  readonly filled: FormFilled;
  readonly view: FilledView;
  readonly sectionZ: number | null;
  readonly highlight: Highlight | null;
}

/** The filled form as its cloth comes to lie, coloured, with its seams and levels. */
export function FilledSurface({ form, filled, view, sectionZ, highlight }: FilledSurfaceProps) {
  const mesh = useMemo(
    () => ({ ...filled.shell.mesh, positions: positionsInView(filled, view) }),
    [filled, view],
  );
  const normals = useMemo(() => measureVertexNormals(mesh), [mesh]);
  const colours = useMemo(() => coloursOf(filled, view), [filled, view]);
  const geometry = useMemo(() => clothGeometry(mesh, normals, colours), [mesh, normals, colours]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  const shown = useMemo(() => ({ ...form, shell: { ...filled.shell, mesh } }), [form, filled, mesh]);
  return (
    <>
      <mesh geometry={geometry} raycast={() => null}>
        <ClothMaterial showsStrain />
      </mesh>
      <Boards filled={filled} positions={mesh.positions} />
      {view.hasBody && <BodyOver mesh={filled.shell.mesh} />}
      <SeamLines form={shown} normals={normals} highlight={highlight} />
      <LevelLines form={shown} normals={normals} highlight={highlight} />
      {sectionZ !== null && <SectionLine mesh={mesh} z={sectionZ} />}
    </>
  );
}

/** The body as a veil: where it shows, the filled form lies inside it. */
function BodyOver({ mesh }: { readonly mesh: Mesh }) {
  const geometry = useMemo(() => {
    const made = new BufferGeometry();
    made.setAttribute('position', new BufferAttribute(new Float32Array(mesh.positions), 3));
    made.setIndex(new BufferAttribute(new Uint32Array(mesh.triangles), 1));
    made.computeVertexNormals();
    return made;
  }, [mesh]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  return (
    <mesh geometry={geometry} raycast={() => null} renderOrder={1}>
      <GhostMaterial colour={DRAWN} />
    </mesh>
  );
}

/** Linear RGB of every point. */
function coloursOf(filled: FormFilled, { look, share }: FilledView): Float32Array {
  const { shell, states, tensions, measures } = filled;
  const { triangles } = shell.mesh;
  const colourAt = {
    webs: () => distanceColour(0),
    distance: (v: number) => distanceColour(share * measures.distance.ofPoints[v]!),
    tension: (v: number) => tensionColour(share * tension[v]!),
    wrinkles: (v: number) => loosenessColour(loose[v]!),
  }[look];
  const tension = spreadToPoints(triangles, (t) => tensions[2 * t]!);
  const loose = spreadToPoints(triangles, (t) => looseness(states[t]!));
  const colours = new Float32Array(shell.mesh.positions.length);
  const colour = new Color();
  for (let v = 0; v < colours.length / 3; v++)
    colour.setRGB(...colourAt(v), SRGBColorSpace).toArray(colours, 3 * v);
  return colours;
}

/** What triangles have, in the mean of those around a point, and once more of the means: single ones tell nothing. */
function spreadToPoints(triangles: Uint32Array, has: (triangle: number) => number): number[] {
  const once = meanAround(triangles, has);
  return meanAround(triangles, (t) => {
    const [a, b, c] = triangles.subarray(3 * t, 3 * t + 3);
    return (once[a!]! + once[b!]! + once[c!]!) / 3;
  });
}

function meanAround(triangles: Uint32Array, has: (triangle: number) => number): number[] {
  const sums: number[] = [];
  const counts: number[] = [];
  triangles.forEach((v, corner) => {
    sums[v] = (sums[v] ?? 0) + has(Math.floor(corner / 3));
    counts[v] = (counts[v] ?? 0) + 1;
  });
  return sums.map((sum, v) => sum / counts[v]!);
}

function clothGeometry(
  { positions, triangles }: Mesh,
  normals: Float64Array,
  colours: Float32Array,
): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
  geometry.setAttribute('normal', new BufferAttribute(new Float32Array(normals), 3));
  geometry.setAttribute('color', new BufferAttribute(colours, 3));
  geometry.setIndex(new BufferAttribute(new Uint32Array(triangles), 1));
  return geometry;
}

/** Boards in the openings, each spread from the middle of its rim. */
function Boards({ filled, positions }: { readonly filled: FormFilled; readonly positions: Float64Array }) {
  const geometry = useMemo(() => {
    const corners = filled.shell.openings.flatMap(({ vertices }) => {
      const rim = Array.from(vertices, (v) => [...positions.subarray(3 * v, 3 * v + 3)]);
      const middle = [0, 1, 2].map((k) => rim.reduce((sum, at) => sum + at[k]!, 0) / rim.length);
      return rim.flatMap((at, i) => [...middle, ...at, ...rim[(i + 1) % rim.length]!]);
    });
    const made = new BufferGeometry();
    made.setAttribute('position', new BufferAttribute(new Float32Array(corners), 3));
    made.computeVertexNormals();
    return made;
  }, [filled, positions]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  return (
    <mesh geometry={geometry} raycast={() => null}>
      <BoardMaterial />
    </mesh>
  );
}
