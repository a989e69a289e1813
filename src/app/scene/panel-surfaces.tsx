import { type ThreeEvent, useThree } from '@react-three/fiber';
import { useLayoutEffect } from 'react';
import { type BufferAttribute, Color } from 'three';
import type { Form } from '../../core/pipeline/index.ts';
import type { Highlight } from '../store/index.ts';
import type { PanelBuffers } from './shell-buffers.ts';

const CALICO = new Color('#e9dcc6');
const LIT = new Color('#a8322a');
const UNLIT = new Color('#000000');
/** How near a seam must be to be meant, mm. */
const SEAM_REACH = 7;

interface PanelSurfacesProps {
  readonly form: Form;
  readonly buffers: readonly PanelBuffers[];
  readonly showsStrain: boolean;
  /** Seen through, to show what is inside. */
  readonly isVeil: boolean;
  readonly highlight: Highlight | null;
  readonly onPoint: (highlight: Highlight | null) => void;
}

/** The cloth, panel by panel; pointing at it lights the panel, or the seam when one is near. */
export function PanelSurfaces({
  form,
  buffers,
  showsStrain,
  isVeil,
  highlight,
  onPoint,
}: PanelSurfacesProps) {
  const invalidate = useThree((state) => state.invalidate);
  useLayoutEffect(() => {
    for (const { geometry, strainColours } of buffers) {
      const colour = geometry.getAttribute('color') as BufferAttribute;
      if (showsStrain) colour.array.set(strainColours);
      else for (let i = 0; i < colour.array.length; i += 3) CALICO.toArray(colour.array, i);
      colour.needsUpdate = true;
    }
    invalidate();
  }, [buffers, showsStrain, invalidate]);

  const pointAtPanel = (event: ThreeEvent<PointerEvent>, id: string) => {
    event.stopPropagation();
    if (event.buttons !== 0) return;
    const seam = nearestSeam(form, id, event.point.toArray());
    onPoint(seam ? { kind: 'seam', id: seam } : { kind: 'panel', id });
  };
  return (
    <group onPointerOut={() => onPoint(null)}>
      {buffers.map(({ id, geometry }) => (
        <mesh key={id} geometry={geometry} onPointerMove={(event) => pointAtPanel(event, id)}>
          <meshPhysicalMaterial
            vertexColors
            key={isVeil ? 'veil' : 'cloth'}
            transparent={isVeil}
            opacity={isVeil ? 0.22 : 1}
            depthWrite={!isVeil}
            roughness={0.92}
            metalness={0}
            sheen={showsStrain ? 0 : 0.35}
            sheenRoughness={0.55}
            sheenColor="#fff4e0"
            emissive={isLit(highlight, id) ? LIT : UNLIT}
            emissiveIntensity={0.16}
            polygonOffset
            polygonOffsetFactor={1}
            polygonOffsetUnits={1}
          />
        </mesh>
      ))}
    </group>
  );
}

function isLit(highlight: Highlight | null, panelId: string): boolean {
  return highlight?.kind === 'panel' && highlight.id === panelId;
}

function nearestSeam(form: Form, panelId: string, point: readonly number[]): string | null {
  const { positions } = form.shell.mesh;
  let best = SEAM_REACH ** 2;
  let found: string | null = null;
  for (const seam of form.shell.seams) {
    if (!seam.panels.includes(panelId)) continue;
    for (const vertex of seam.points) {
      const dx = positions[vertex * 3]! - point[0]!;
      const dy = positions[vertex * 3 + 1]! - point[1]!;
      const dz = positions[vertex * 3 + 2]! - point[2]!;
      const distance = dx * dx + dy * dy + dz * dz;
      if (distance < best) {
        best = distance;
        found = seam.id;
      }
    }
  }
  return found;
}
