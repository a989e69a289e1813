import { useMemo } from 'react';
import { CanvasTexture } from 'three';

/** Soft light of a north-facing workroom: a wide sky, a key from the upper front, a cool fill, a rim from behind. */
export function StudioLight({ isDark }: { readonly isDark: boolean }) {
  const strength = isDark ? 0.86 : 1;
  return (
    <>
      <hemisphereLight args={['#fffaf0', '#8d8273', 1.25 * strength]} position={[0, 0, 1]} />
      <directionalLight position={[900, 1500, 1700]} intensity={1.55 * strength} color="#fff6e6" />
      <directionalLight position={[-1600, 500, 500]} intensity={0.5 * strength} color="#dfe8f5" />
      <directionalLight position={[-500, -1500, 900]} intensity={0.7 * strength} color="#fff1dd" />
      <directionalLight position={[1500, -700, 100]} intensity={0.3 * strength} color="#e6ecf7" />
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
      <meshBasicMaterial map={texture} transparent depthWrite={false} />
    </mesh>
  );
}
