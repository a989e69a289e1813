import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { useStore } from 'zustand';
import type { Form } from '../../core/form/index.ts';
import type { ChartSurface } from '../../core/mesh/index.ts';
import {
  type Actions,
  type AppStore,
  type DrawnKind,
  type DrawnPoint,
  surfaceDrawnOn,
  traceDrawnLine,
} from '../store/index.ts';
import { CHOSEN, DRAWN } from './colours.ts';
import { CrispLine } from './crisp-line.tsx';
import { FlatMaterial, RimMaterial } from './materials.tsx';

interface DrawnPointsProps {
  readonly form: Form;
  readonly kind: DrawnKind;
  readonly store: AppStore;
  readonly actions: Actions;
}

const INK = '#1d2126';
const CHALK = '#fffaf0';
const RADIUS = 5.5;
/** mm, roughly, from sample to sample of a drawn line. */
const SAMPLE = 6;
const RADIUS_OF_BODY = 140;

/** Points drawn on the body as beads that can be dragged, and the line through them; a region is closed. */
export function DrawnPoints({ form, kind, store, actions }: DrawnPointsProps) {
  const kept = useStore(store, (state) => state.drawn[kind]);
  const { held, chosen, isDown } = useStore(store, (state) => state.pencil);
  const element = useThree((state) => state.gl.domElement);
  const isHeld = held !== null;
  useEffect(() => {
    if (!isHeld) return;
    const letGo = () => actions.letDrawnPointGo(kind);
    window.addEventListener('pointerup', letGo);
    window.addEventListener('pointercancel', letGo);
    return () => {
      window.removeEventListener('pointerup', letGo);
      window.removeEventListener('pointercancel', letGo);
    };
  }, [isHeld, actions, kind]);
  useEffect(() => {
    element.style.cursor = isHeld ? 'grabbing' : isDown ? 'crosshair' : '';
    return () => {
      element.style.cursor = '';
    };
  }, [element, isHeld, isDown]);
  const { body, project } = form;
  const isEmpty = kept.length === 0;
  const surface = useMemo(
    () => (isEmpty ? null : surfaceDrawnOn({ body, project })),
    [isEmpty, body, project],
  );
  const points = useMemo(
    () => (held ? kept.map((point, i) => (i === held.index ? held.point : point)) : kept),
    [kept, held],
  );
  const words = useStore(store, (state) => state.words.ownLines);
  const seam = useMemo(
    () => (kind === 'line' ? traceDrawnLine(form, points, words) : null),
    [form, points, kind, words],
  );
  const lines = useMemo(
    () => (surface ? placeLines(surface, seam ?? straightThrough(points, kind), kind) : []),
    [surface, seam, points, kind],
  );
  // What is not yet a seam is dashed.
  const dash = kind === 'line' && !seam ? { dash: 6 } : {};
  if (!surface) return null;
  const places = surface.evaluate(Float64Array.from(points.flatMap(({ u, v }) => [u, v])));
  return (
    <group>
      {lines.map((line, i) => (
        <group key={i === 0 ? 'drawn' : 'mirrored'}>
          <CrispLine points={line} colour={INK} width={2} opacity={0.3} isOnTop {...dash} />
          <CrispLine points={line} colour={i === 0 ? INK : DRAWN} width={i === 0 ? 3.5 : 2} {...dash} />
        </group>
      ))}
      {points.map((point, index) => (
        <DrawnBead
          // biome-ignore lint/suspicious/noArrayIndexKey: points have no other name than their place in the row
          key={index}
          at={[places[3 * index]!, places[3 * index + 1]!, places[3 * index + 2]!]}
          isChosen={index === chosen}
          onGrab={() => actions.holdDrawnPoint(index, point)}
          onOver={(isOver) => {
            if (!isHeld) element.style.cursor = isOver ? 'grab' : isDown ? 'crosshair' : '';
          }}
        />
      ))}
    </group>
  );
}

interface DrawnBeadProps {
  readonly at: readonly [number, number, number];
  readonly isChosen: boolean;
  readonly onGrab: () => void;
  readonly onOver: (isOver: boolean) => void;
}

function DrawnBead({ at: [x, y, z], isChosen, onGrab, onOver }: DrawnBeadProps) {
  const radius = isChosen ? RADIUS * 1.4 : RADIUS;
  return (
    <group position={[x, y, z]}>
      {/* Larger than what is seen, for fingers. */}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: not an element; the panels offer the same by keyboard */}
      <mesh
        visible={false}
        onPointerDown={(event) => {
          event.stopPropagation();
          onGrab();
        }}
        onClick={(event) => event.stopPropagation()}
        onPointerOver={() => onOver(true)}
        onPointerOut={() => onOver(false)}
      >
        <sphereGeometry args={[RADIUS * 1.9, 12, 8]} />
      </mesh>
      <mesh raycast={() => null}>
        <sphereGeometry args={[radius, 20, 14]} />
        <FlatMaterial colour={isChosen ? CHOSEN : CHALK} />
      </mesh>
      <mesh raycast={() => null} scale={1.25}>
        <sphereGeometry args={[radius, 20, 14]} />
        <RimMaterial colour={INK} />
      </mesh>
    </group>
  );
}

/** Chart points straight from point to point, as a region is cut. */
function straightThrough(points: readonly DrawnPoint[], kind: DrawnKind): Float64Array {
  if (points.length < 2) return new Float64Array(0);
  const round = kind === 'region' && points.length > 2 ? [...points, points[0]!] : points;
  const chart: number[] = [round[0]!.u, round[0]!.v];
  for (let i = 1; i < round.length; i++) {
    const [a, b] = [round[i - 1]!, round[i]!];
    const step = b.u - a.u;
    const du = step - 2 * Math.PI * Math.round(step / (2 * Math.PI));
    const steps = Math.max(4, Math.ceil(Math.hypot(RADIUS_OF_BODY * du, b.v - a.v) / SAMPLE));
    for (let k = 1; k <= steps; k++) chart.push(a.u + (du * k) / steps, a.v + ((b.v - a.v) * k) / steps);
  }
  return Float64Array.from(chart);
}

/** Chart points n × 2 on the body; a seam line on both halves. */
function placeLines(surface: ChartSurface, chart: Float64Array, kind: DrawnKind): readonly Float64Array[] {
  if (chart.length === 0) return [];
  const own = surface.evaluate(chart);
  if (kind === 'region') return [own];
  const mirrored = surface.evaluate(chart.map((x, i) => (i % 2 === 0 ? Math.PI - x : x)));
  return [own, mirrored];
}
