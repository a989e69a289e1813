import { useMemo } from 'react';
import { CanvasTexture } from 'three';
import { ShadowMaterial } from './materials.tsx';

/** Soft light of a north-facing workroom: a wide sky, a key from the upper front, a cool fill, a rim from behind. */
export function StudioLight({ isDark }: { readonly isDark: boolean }) {
  const strength = isDark ? 0.82 : 1;
  return (
    <>
      <hemisphereLight args={['#fffaf2', '#b3a48e', 1.85 * strength]} position={[0, 0, 1]} />
      <directionalLight position={[1100, 1500, 1500]} intensity={1.5 * strength} color="#fff7ea" />
      <directionalLight position={[-1700, 700, 500]} intensity={0.42 * strength} color="#dfe8f5" />
      <directionalLight position={[-700, -1500, 1000]} intensity={1.05 * strength} color="#fff3e2" />
      <directionalLight position={[1500, -800, 100]} intensity={0.3 * strength} color="#e6ecf7" />
    </>
  );
}

interface GroundShadowProps {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly radius: number;
}

/** A soft round shadow, so that the body stands somewhere. */
export function GroundShadow({ x, y, z, radius }: GroundShadowProps) {
  const texture = useMemo(() => {
    const canvas = document.createElement('canvas');
    canvas.width = canvas.height = 128;
    const context = canvas.getContext('2d')!;
    const fade = context.createRadialGradient(64, 64, 8, 64, 64, 64);
    fade.addColorStop(0, 'rgba(30, 24, 18, 0.42)');
    fade.addColorStop(0.45, 'rgba(30, 24, 18, 0.2)');
    fade.addColorStop(1, 'rgba(30, 24, 18, 0)');
    context.fillStyle = fade;
    context.fillRect(0, 0, 128, 128);
    return new CanvasTexture(canvas);
  }, []);
  return (
    <mesh position={[x, y, z]} raycast={() => null}>
      <planeGeometry args={[radius * 2, radius * 1.5]} />
      <ShadowMaterial map={texture} />
    </mesh>
  );
}
