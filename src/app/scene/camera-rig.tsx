import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useMemo, useRef } from 'react';
import { type PerspectiveCamera, Spherical, Vector3 } from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import type { AppState, ViewName } from '../store/index.ts';

/** Direction the camera looks from; x is the wearer's right, y the front, z up. */
const DIRECTIONS: Readonly<Record<ViewName, readonly [number, number, number]>> = {
  front: [0, 1, 0.04],
  side: [1, 0, 0.04],
  back: [0, -1, 0.04],
  threeQuarter: [0.62, 1, 0.2],
};
const TURN_SECONDS = 0.45;
/** Room left round the body. */
const FITTING_MARGIN = 1.22;
/** Narrower than this, the body is made smaller to fit in width. */
const FITTING_ASPECT = 0.86;

/** Zoom that keeps the body inside a narrow picture. */
export function fittingZoom(size: { readonly width: number; readonly height: number }): number {
  return Math.min(1, size.width / Math.max(1, size.height) / FITTING_ASPECT);
}

export interface CameraSubject {
  readonly centre: Vector3;
  /** Half of the height, mm. */
  readonly radius: number;
}

interface CameraRigProps {
  readonly view: AppState['view'];
  readonly subject: CameraSubject;
  /** The pointer pulls something on the body and must not turn it. */
  readonly isHeld?: boolean;
}

/** Orbit, pan and zoom by pointer, and turning to a named view. Draws only when something moved. */
export function CameraRig({ view, subject, isHeld = false }: CameraRigProps) {
  const camera = useThree((state) => state.camera) as PerspectiveCamera;
  const element = useThree((state) => state.gl.domElement);
  const size = useThree((state) => state.size);
  const invalidate = useThree((state) => state.invalidate);
  const turn = useRef<{ from: Pose; to: Pose; seconds: number } | null>(null);

  const controls = useMemo(() => {
    camera.up.set(0, 0, 1);
    const made = new OrbitControls(camera, element);
    made.enableDamping = false;
    made.minPolarAngle = 0.15;
    made.maxPolarAngle = Math.PI - 0.15;
    return made;
  }, [camera, element]);

  useEffect(() => {
    const onChange = () => invalidate();
    controls.addEventListener('change', onChange);
    const disconnectKeys = connectKeys(element, controls, camera);
    return () => {
      controls.removeEventListener('change', onChange);
      disconnectKeys();
      controls.dispose();
    };
  }, [controls, element, camera, invalidate]);

  useEffect(() => {
    controls.enabled = !isHeld;
  }, [controls, isHeld]);

  useEffect(() => {
    camera.zoom = fittingZoom(size);
    camera.updateProjectionMatrix();
    invalidate();
  }, [camera, size, invalidate]);

  const lastNonce = useRef(-1);
  useEffect(() => {
    const isFirst = lastNonce.current < 0;
    lastNonce.current = view.nonce;
    const to = poseFor(view.name, subject, camera.fov);
    controls.minDistance = subject.radius * 0.6;
    controls.maxDistance = subject.radius * 14;
    if (isFirst || prefersStillness()) applyPose(to, camera, controls);
    else turn.current = { from: poseOf(camera, controls), to, seconds: 0 };
    invalidate();
  }, [view, subject, camera, controls, invalidate]);

  useFrame((_, delta) => {
    const now = turn.current;
    if (!now) return;
    now.seconds += Math.min(delta, 0.05);
    const t = Math.min(1, now.seconds / TURN_SECONDS);
    applyPose(mixPose(now.from, now.to, t * t * (3 - 2 * t)), camera, controls);
    if (t >= 1) turn.current = null;
    invalidate();
  });
  return null;
}

interface Pose {
  readonly target: Vector3;
  /** Round the vertical axis; `Spherical` measures phi from +y, so offsets are turned before use. */
  readonly offset: Spherical;
}

const turned = (v: Vector3) => new Vector3(v.x, v.z, -v.y);
const turnedBack = (v: Vector3) => new Vector3(v.x, -v.z, v.y);

function poseFor(name: ViewName, subject: CameraSubject, fovDeg: number): Pose {
  const distance = (subject.radius * FITTING_MARGIN) / Math.tan((fovDeg * Math.PI) / 360);
  const direction = new Vector3(...DIRECTIONS[name]).normalize().multiplyScalar(distance);
  return { target: subject.centre.clone(), offset: new Spherical().setFromVector3(turned(direction)) };
}

function poseOf(camera: PerspectiveCamera, controls: OrbitControls): Pose {
  const offset = camera.position.clone().sub(controls.target);
  return { target: controls.target.clone(), offset: new Spherical().setFromVector3(turned(offset)) };
}

function mixPose(from: Pose, to: Pose, t: number): Pose {
  let swing = to.offset.theta - from.offset.theta;
  swing -= Math.round(swing / (2 * Math.PI)) * 2 * Math.PI;
  const offset = new Spherical(
    from.offset.radius + (to.offset.radius - from.offset.radius) * t,
    from.offset.phi + (to.offset.phi - from.offset.phi) * t,
    from.offset.theta + swing * t,
  );
  return { target: from.target.clone().lerp(to.target, t), offset };
}

function applyPose(pose: Pose, camera: PerspectiveCamera, controls: OrbitControls): void {
  controls.target.copy(pose.target);
  camera.position.copy(turnedBack(new Vector3().setFromSpherical(pose.offset))).add(pose.target);
  camera.lookAt(pose.target);
  controls.update();
}

function prefersStillness(): boolean {
  return window.matchMedia('(prefers-reduced-motion: reduce)').matches;
}

const KEY_TURN = Math.PI / 24;

/** Arrow keys turn, plus and minus zoom, while the picture has the focus. */
function connectKeys(canvas: HTMLElement, controls: OrbitControls, camera: PerspectiveCamera): () => void {
  const host = canvas.closest<HTMLElement>('[data-body-keys]') ?? canvas;
  const onKey = (event: KeyboardEvent) => {
    const pose = poseOf(camera, controls);
    const { offset } = pose;
    if (event.key === 'ArrowLeft') offset.theta -= KEY_TURN;
    else if (event.key === 'ArrowRight') offset.theta += KEY_TURN;
    else if (event.key === 'ArrowUp') offset.phi = Math.max(0.15, offset.phi - KEY_TURN);
    else if (event.key === 'ArrowDown') offset.phi = Math.min(Math.PI - 0.15, offset.phi + KEY_TURN);
    else if (event.key === '+' || event.key === '=') offset.radius /= 1.12;
    else if (event.key === '-') offset.radius *= 1.12;
    else return;
    event.preventDefault();
    applyPose(pose, camera, controls);
  };
  host.addEventListener('keydown', onKey);
  return () => host.removeEventListener('keydown', onKey);
}
