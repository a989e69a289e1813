import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';
import type { Actions, ControlPointName, SeamWork } from '../store/index.ts';
import { CHOSEN } from './colours.ts';
import { BeadMaterial, RimMaterial } from './materials.tsx';

interface ControlPointsProps {
  readonly seamWork: SeamWork;
  /** The left half mirrors the right one exactly. */
  readonly isSymmetric: boolean;
  readonly actions: Actions;
  readonly isPulling: boolean;
  readonly onGrab: (point: ControlPointName) => void;
}

const PAPER = '#fffaf0';
const RADIUS = 6.5;

/** A bead at every point of the lines that can be pulled, on both halves. */
export function ControlPoints({ seamWork, isSymmetric, actions, isPulling, onGrab }: ControlPointsProps) {
  const element = useThree((state) => state.gl.domElement);
  useEffect(() => {
    if (!isPulling) return;
    window.addEventListener('pointerup', actions.letControlPointGo);
    window.addEventListener('pointercancel', actions.letControlPointGo);
    return () => {
      window.removeEventListener('pointerup', actions.letControlPointGo);
      window.removeEventListener('pointercancel', actions.letControlPointGo);
    };
  }, [isPulling, actions]);
  useEffect(() => {
    element.style.cursor = isPulling ? 'grabbing' : '';
  }, [element, isPulling]);
  const { preview, chosen } = seamWork;
  if (!preview) return null;
  return preview.points.map(({ lineId, anchor, position: [x, y, z] }) => {
    const isChosen = chosen?.lineId === lineId && chosen.anchor === anchor;
    const signs = isSymmetric && Math.abs(x) > 1 ? [1, -1] : [1];
    return signs.map((sign) => (
      <group key={`${lineId} ${anchor} ${sign}`} position={[sign * x, y, z]}>
        {/* Larger than what is seen, for fingers. */}
        <mesh
          visible={false}
          onPointerDown={(event) => {
            event.stopPropagation();
            onGrab({ lineId, anchor });
          }}
          onPointerOver={() => {
            if (!isPulling) element.style.cursor = 'grab';
          }}
          onPointerOut={() => {
            if (!isPulling) element.style.cursor = '';
          }}
        >
          <sphereGeometry args={[RADIUS * 1.9, 12, 8]} />
        </mesh>
        <mesh raycast={() => null}>
          <sphereGeometry args={[isChosen ? RADIUS * 1.5 : RADIUS, 20, 14]} />
          <BeadMaterial colour={isChosen ? CHOSEN : PAPER} />
        </mesh>
        <mesh raycast={() => null} scale={1.22}>
          <sphereGeometry args={[isChosen ? RADIUS * 1.5 : RADIUS, 20, 14]} />
          <RimMaterial colour="#4a443b" />
        </mesh>
      </group>
    ));
  });
}
