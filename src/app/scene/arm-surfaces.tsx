import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry } from 'three';
import { type Arm, meshOfArm } from '../../core/body/index.ts';
import { measureVertexNormals } from '../../core/mesh/index.ts';
import { ArmMaterial } from './materials.tsx';

/** The detachable arms. */
export function ArmSurfaces({ arms }: { readonly arms: readonly Arm[] }) {
  const geometries = useMemo(() => arms.map(geometryOfArm), [arms]);
  useEffect(
    () => () => {
      for (const geometry of geometries) geometry.dispose();
    },
    [geometries],
  );
  return geometries.map((geometry, index) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: one arm a side, always in the same order
    <mesh key={index} geometry={geometry} raycast={() => null}>
      <ArmMaterial />
    </mesh>
  ));
}

function geometryOfArm(arm: Arm): BufferGeometry {
  const mesh = meshOfArm(arm);
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(mesh.positions), 3));
  geometry.setAttribute('normal', new BufferAttribute(new Float32Array(measureVertexNormals(mesh)), 3));
  geometry.setIndex(new BufferAttribute(new Uint32Array(mesh.triangles), 1));
  return geometry;
}
