import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry, LineBasicMaterial, LineSegments } from 'three';
import { type Body, surfaceOfBody } from '../../core/body/index.ts';
import type { Mesh } from '../../core/mesh/index.ts';
import { sectionOfMesh } from '../store/index.ts';
import { CHOSEN, DRAWN } from './colours.ts';
import { GhostMaterial } from './materials.tsx';

const MOSS = '#3d6b3a';
const ROUND = 96;
const ROWS = 120;

/** The level cut looked at, seen through the body. */
export function SectionLine({ mesh, z }: { readonly mesh: Mesh; readonly z: number }) {
  const geometry = useMemo(() => {
    const stretches = sectionOfMesh(mesh, z)?.stretches ?? new Float64Array(0);
    const points = new Float32Array((stretches.length / 2) * 3);
    for (let i = 0; i < stretches.length / 2; i++) {
      points.set([stretches[2 * i]!, stretches[2 * i + 1]!, z], 3 * i);
    }
    return new BufferGeometry().setAttribute('position', new BufferAttribute(points, 3));
  }, [mesh, z]);
  return <SectionStroke geometry={geometry} />;
}

/** Disposes of the geometry. */
export function SectionStroke({ geometry }: { readonly geometry: BufferGeometry }) {
  const line = useMemo(() => {
    const made = new LineSegments(undefined, new LineBasicMaterial({ color: CHOSEN, depthTest: false }));
    made.renderOrder = 4;
    made.frustumCulled = false;
    made.raycast = () => {};
    return made;
  }, []);
  useEffect(() => () => geometry.dispose(), [geometry]);
  useEffect(() => () => line.material.dispose(), [line]);
  return <primitive object={line} geometry={geometry} />;
}

interface GhostBodyProps {
  readonly body: Body;
  /** Left for right, and in another colour. */
  readonly isMirrored?: boolean;
  readonly colour?: string;
  /** Lines on its far side are not seen through it. */
  readonly hidesLines?: boolean;
}

/** A body as a veil over this one, another in blue or its own mirror image in green: where it shows, it is the larger. */
export function GhostBody({
  body,
  isMirrored = false,
  colour = isMirrored ? MOSS : DRAWN,
  hidesLines = false,
}: GhostBodyProps) {
  const geometry = useMemo(() => geometryOfBody(body, isMirrored), [body, isMirrored]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  return (
    <mesh geometry={geometry} raycast={() => null} renderOrder={1}>
      <GhostMaterial colour={colour} hidesLines={hidesLines} />
    </mesh>
  );
}

function geometryOfBody(body: Body, isMirrored: boolean): BufferGeometry {
  const surface = surfaceOfBody(body);
  const [low, high] = surface.vRange;
  const chart = new Float64Array(2 * ROUND * ROWS);
  for (let i = 0; i < ROUND * ROWS; i++) {
    chart[2 * i] = (2 * Math.PI * (i % ROUND)) / ROUND;
    chart[2 * i + 1] = low + ((high - low) * Math.floor(i / ROUND)) / (ROWS - 1);
  }
  const index = new Uint32Array(6 * ROUND * (ROWS - 1));
  for (let row = 0; row + 1 < ROWS; row++) {
    for (let k = 0; k < ROUND; k++) {
      const a = row * ROUND + k;
      const b = row * ROUND + ((k + 1) % ROUND);
      // Mirrored corners go round the other way.
      const [first, second] = isMirrored ? [b, a] : [a, b];
      index.set([first, second, second + ROUND, first, second + ROUND, first + ROUND], 6 * a);
    }
  }
  const positions = new Float32Array(surface.evaluate(chart));
  if (isMirrored) for (let i = 0; i < positions.length; i += 3) positions[i] *= -1;
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setIndex(new BufferAttribute(index, 1));
  geometry.computeVertexNormals();
  return geometry;
}
