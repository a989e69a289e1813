import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry, DoubleSide } from 'three';
import { type Arm, meshOfArm } from '../../core/body/index.ts';

/** The detachable arms in a paler cloth than the trunk, so that they read as parts of their own. */
export function ArmSurfaces({ arms }: { readonly arms: readonly Arm[] }) {
  const geometries = useMemo(() => arms.map(geometryOfArm), [arms]);
  useEffect(
    () => () => {
      for (const geometry of geometries) geometry.dispose();
    },
    [geometries],
  );
  return geometries.map((geometry) => (
    <mesh key={geometry.uuid} geometry={geometry} raycast={() => null}>
      {/* Seen from inside too, where the wrist is open. */}
      <meshPhysicalMaterial
        color="#efe5d3"
        roughness={0.92}
        sheen={0.35}
        sheenRoughness={0.55}
        sheenColor="#fff4e0"
        side={DoubleSide}
        polygonOffset
        polygonOffsetFactor={1}
        polygonOffsetUnits={1}
      />
    </mesh>
  ));
}

function geometryOfArm(arm: Arm): BufferGeometry {
  const { positions, triangles } = meshOfArm(arm);
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
  geometry.setIndex(new BufferAttribute(new Uint32Array(triangles), 1));
  geometry.computeVertexNormals();
  return geometry;
}
