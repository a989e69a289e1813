import { useFrame } from '@react-three/fiber';
import { useMemo, useRef } from 'react';
import { CanvasTexture, type Group } from 'three';
import { ShadowMaterial } from './materials.tsx';

/** How much of each light there is by day and by night: in the dark the edge towards it carries the shape. */
const BY_DAY = { sky: 1.4, key: 2, fill: 0.56, rim: 0.75 };
const BY_NIGHT = { sky: 0.92, key: 1.9, fill: 0.36, rim: 1.5 };

/**
 * A key from the upper left that rakes over the front, so that what is hollow or undercut turns away from it; a soft cool
 * fill from the right, a rim from behind, and sky and floor. The room stays as it is and the body turns in it: so every
 * view is lit from its own upper left.
 */
export function StudioLight({ isDark }: { readonly isDark: boolean }) {
  const room = useRef<Group>(null);
  const { sky, key, fill, rim } = isDark ? BY_NIGHT : BY_DAY;
  useFrame(({ camera }) => {
    room.current?.rotation.set(0, 0, Math.atan2(-camera.position.x, camera.position.y));
  });
  return (
    <>
      <hemisphereLight args={['#fffaf2', '#9a8468', sky]} position={[0, 0, 1]} />
      <group ref={room}>
        <directionalLight position={[1120, 1120, 1350]} intensity={key} color="#fff6e8" />
        <directionalLight position={[-1600, 900, 250]} intensity={fill} color="#e8ebf0" />
        <directionalLight position={[-900, -1500, 900]} intensity={rim} color="#fff3e2" />
      </group>
    </>
  );
}

interface GroundShadowProps {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** Of what stands there, mm. */
  readonly width: number;
  readonly depth: number;
}

/** Where in the shadow's picture the edge of what casts it lies, as a share of its half. */
const EDGE = 0.5;

/** A soft shadow, darkest along the edge of what stands there, so that the body stands somewhere. */
export function GroundShadow({ x, y, z, width, depth }: GroundShadowProps) {
  const texture = useMemo(() => new CanvasTexture(shadowPicture()), []);
  return (
    <mesh position={[x, y, z]} scale={[width / EDGE, depth / EDGE, 1]} raycast={() => null}>
      <planeGeometry />
      <ShadowMaterial map={texture} />
    </mesh>
  );
}

function shadowPicture(): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 128;
  const context = canvas.getContext('2d')!;
  const fade = context.createRadialGradient(64, 64, 0, 64, 64, 64);
  for (const [at, strength] of [
    [0, 0.52],
    [EDGE - 0.04, 0.48],
    [EDGE + 0.06, 0.31],
    [EDGE + 0.2, 0.14],
    [EDGE + 0.35, 0.04],
    [1, 0],
  ] as const)
    fade.addColorStop(at, `rgba(24, 18, 12, ${strength})`);
  context.fillStyle = fade;
  context.fillRect(0, 0, 128, 128);
  return canvas;
}
