import { type ThreeEvent, useThree } from '@react-three/fiber';
import { useLayoutEffect } from 'react';
import { type BufferAttribute, Color } from 'three';
import type { Form } from '../../core/form/index.ts';
import type { Highlight } from '../store/index.ts';
import { ClothMaterial } from './materials.tsx';
import { nearestThing, type Pointable } from './nearest-thing.ts';
import type { PanelBuffers } from './shell-buffers.ts';
import type { LaidPrint } from './use-laid-print.ts';

/** A print brings its own colours. */
const UNTINTED = new Color('#ffffff');
const CALICO = new Color('#e9dcc6');
/** Where a veil lies thick. */
const MIST = new Color('#5f7394');
/** More pointer travel than this between press and release is a turn of the body, not a click; pixels. */
const CLICK_TRAVEL = 5;

interface PanelSurfacesProps {
  readonly form: Form;
  readonly buffers: readonly PanelBuffers[];
  readonly showsStrain: boolean;
  /** How thick a veil lies at the vertices of each panel, 0 to 1; null = none is shown. */
  readonly mist: readonly Float64Array[] | null;
  /** The cloth's own print, as it is cut; null = none is shown. */
  readonly print: LaidPrint | null;
  /** Seen through, to show what is inside. */
  readonly isVeil: boolean;
  readonly highlight: Highlight | null;
  readonly pointable: Pointable;
  readonly onPoint: (highlight: Highlight | null) => void;
  /** Follows a pull: triangle corners of the panel and the point on it; absent while nothing is pulled. */
  readonly onDrag?: ((panelId: string, event: ThreeEvent<PointerEvent>) => void) | undefined;
  /** A click on the cloth; absent while clicks mean nothing. */
  readonly onPick?: ((panelId: string, event: ThreeEvent<MouseEvent>) => void) | undefined;
}

/** The cloth, panel by panel; pointing at it lights the panel, or the seam when one is near. */
export function PanelSurfaces({
  form,
  buffers,
  showsStrain,
  mist,
  print,
  isVeil,
  highlight,
  pointable,
  onPoint,
  onDrag,
  onPick,
}: PanelSurfacesProps) {
  const invalidate = useThree((state) => state.invalidate);
  useLayoutEffect(() => {
    const mixed = new Color();
    const plain = print ? UNTINTED : CALICO;
    for (const [panel, { geometry, weave, strainColours }] of buffers.entries()) {
      const colour = geometry.getAttribute('color') as BufferAttribute;
      const thickness = mist?.[panel];
      if (showsStrain) colour.array.set(strainColours);
      else if (thickness)
        thickness.forEach((share, i) => {
          mixed.lerpColors(CALICO, MIST, share).toArray(colour.array, 3 * i);
        });
      else for (let i = 0; i < colour.array.length; i += 3) plain.toArray(colour.array, i);
      colour.needsUpdate = true;
      const uv = geometry.getAttribute('uv') as BufferAttribute;
      uv.array.set(print?.places[panel] ?? weave);
      uv.needsUpdate = true;
    }
    invalidate();
  }, [buffers, showsStrain, mist, print, invalidate]);

  const pointAtPanel = (event: ThreeEvent<PointerEvent>, id: string) => {
    event.stopPropagation();
    if (onDrag) onDrag(id, event);
    if (event.buttons !== 0) return;
    onPoint(nearestThing(form, id, event.point.toArray(), pointable));
  };
  // What lies behind the cloth is not for grabbing.
  const hide = (event: ThreeEvent<PointerEvent>) => event.stopPropagation();
  const pick = (event: ThreeEvent<MouseEvent>, id: string) => {
    if (!onPick || event.delta > CLICK_TRAVEL) return;
    event.stopPropagation();
    onPick(id, event);
  };
  return (
    <group onPointerOut={() => onPoint(null)}>
      {buffers.map(({ id, geometry }) => (
        // biome-ignore lint/a11y/noStaticElementInteractions: not an element; the panels offer the same by keyboard
        <mesh
          key={id}
          geometry={geometry}
          onPointerMove={(event) => pointAtPanel(event, id)}
          onPointerDown={hide}
          onClick={(event) => pick(event, id)}
        >
          <ClothMaterial
            isVeil={isVeil}
            showsStrain={showsStrain || mist !== null}
            isLit={isLit(highlight, id)}
            print={print?.texture ?? null}
          />
        </mesh>
      ))}
    </group>
  );
}

function isLit(highlight: Highlight | null, panelId: string): boolean {
  return highlight?.kind === 'panel' && highlight.id === panelId;
}
