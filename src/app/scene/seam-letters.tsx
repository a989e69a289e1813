import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { CanvasTexture, type PerspectiveCamera, SRGBColorSpace } from 'three';
import { clamp } from '../../core/math/index.ts';
import { fittingZoom } from './camera-rig.tsx';
import { TagMaterial } from './materials.tsx';

interface SeamLetterProps {
  readonly letter: string;
  readonly colour: string;
  readonly at: readonly [number, number, number];
  readonly isLit: boolean;
}

/** A small tag with the seam's letter, always facing the viewer, hidden behind the body like the seam itself. */
export function SeamLetter({ letter, colour, at, isLit }: SeamLetterProps) {
  const texture = useMemo(() => tagTexture(letter, colour, isLit), [letter, colour, isLit]);
  useEffect(() => () => texture.dispose(), [texture]);
  const size = useSizeOnScreen(isLit ? 1.35 : 1);
  return (
    <sprite position={[at[0], at[1], at[2]]} scale={[size, size, 1]} renderOrder={4} raycast={() => null}>
      <TagMaterial map={texture} />
    </sprite>
  );
}

/** Scale that gives a sprite without size attenuation `times` the usual size: 24 CSS pixels, fewer in a small picture. */
function useSizeOnScreen(times: number): number {
  const size = useThree((state) => state.size);
  const camera = useThree((state) => state.camera) as PerspectiveCamera;
  const pixels = times * clamp(size.height / 24, 15, 24);
  return (pixels * 2 * Math.tan((camera.fov * Math.PI) / 360)) / Math.max(1, size.height) / fittingZoom(size);
}

function tagTexture(letter: string, colour: string, isLit: boolean): CanvasTexture {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 96;
  const context = canvas.getContext('2d')!;
  context.beginPath();
  context.arc(48, 48, 42, 0, 2 * Math.PI);
  context.fillStyle = isLit ? colour : '#fffaf0';
  context.fill();
  context.lineWidth = 5;
  context.strokeStyle = colour;
  context.stroke();
  context.fillStyle = isLit ? '#fffaf0' : colour;
  context.font = `600 ${letter.length > 1 ? 42 : 54}px system-ui, sans-serif`;
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  context.fillText(letter, 48, 51);
  const texture = new CanvasTexture(canvas);
  texture.colorSpace = SRGBColorSpace;
  return texture;
}
