import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry } from 'three';
import type { FormInside } from '../../core/form/index.ts';
import { CrispLine } from './crisp-line.tsx';
import { BraceMaterial, SteelMaterial } from './materials.tsx';

type Brace = FormInside['shape']['braces'][number];

const COLOURS: Readonly<Record<Brace['kind'], string>> = {
  web: '#1f7a78',
  tie: '#2f5482',
  strap: '#8a6a12',
  throat: '#7a3f86',
};
const RING = '#5b544a';

/** Webs, ties and straps as cloth, the pole, and the outlines the filled form is foretold to have. */
export function InsideParts({ inside }: { readonly inside: FormInside }) {
  const { braces, pole, rings } = inside.shape;
  const strips = useMemo(
    () => braces.map((brace) => ({ brace, geometry: geometryOfBrace(brace) })),
    [braces],
  );
  const closed = useMemo(() => rings.map(closeRing), [rings]);
  useEffect(
    () => () => {
      for (const { geometry } of strips) geometry.dispose();
    },
    [strips],
  );
  return (
    <group>
      {strips.map(({ brace, geometry }) => (
        <mesh key={brace.id} geometry={geometry} raycast={() => null}>
          <BraceMaterial colour={COLOURS[brace.kind]} />
        </mesh>
      ))}
      {closed.map((points, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rings have no other name and never move
        <CrispLine key={index} points={points} colour={RING} width={1.2} opacity={0.7} isOnTop />
      ))}
      <mesh
        position={[0, pole.y, (pole.zBottom + pole.zTop) / 2]}
        rotation={[Math.PI / 2, 0, 0]}
        raycast={() => null}
      >
        <cylinderGeometry args={[pole.radius, pole.radius, pole.zTop - pole.zBottom, 32]} />
        <SteelMaterial />
      </mesh>
    </group>
  );
}

/** Straight from seam to seam, rung by rung. */
function geometryOfBrace({ rungs }: Brace): BufferGeometry {
  const corners: number[] = [];
  for (let i = 0; i + 1 < rungs.length; i++) {
    const [a, b] = [rungs[i]!, rungs[i + 1]!];
    corners.push(...a.from, ...a.to, ...b.to, ...a.from, ...b.to, ...b.from);
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(corners), 3));
  geometry.computeVertexNormals();
  return geometry;
}

function closeRing(ring: Float64Array): Float32Array {
  const points = new Float32Array(ring.length + 3);
  points.set(ring);
  points.set(ring.subarray(0, 3), ring.length);
  return points;
}
