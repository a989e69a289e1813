import { events, extend, type ReconcilerRoot } from '@react-three/fiber';
import {
  Component,
  type ReactNode,
  useCallback,
  useInsertionEffect,
  useLayoutEffect,
  useRef,
  useState,
  useSyncExternalStore,
} from 'react';
import {
  CylinderGeometry,
  DirectionalLight,
  Group,
  HemisphereLight,
  Mesh,
  MeshBasicMaterial,
  MeshPhysicalMaterial,
  MeshStandardMaterial,
  PlaneGeometry,
  SphereGeometry,
  Sprite,
  SpriteMaterial,
} from 'three';
import { CompileAhead } from './compile-ahead.tsx';
import { makeRoot } from './make-root.ts';

// Only what is named in the scene: the whole of three.js would be twice as much to load.
extend({
  CylinderGeometry,
  DirectionalLight,
  Group,
  HemisphereLight,
  Mesh,
  MeshBasicMaterial,
  MeshPhysicalMaterial,
  MeshStandardMaterial,
  PlaneGeometry,
  SphereGeometry,
  Sprite,
  SpriteMaterial,
});

interface SceneCanvasProps {
  /** The lights there are for good: what is compiled ahead depends on how many. */
  readonly light: ReactNode;
  readonly children: ReactNode;
  readonly onPointerMissed: () => void;
}

/** A canvas as large as its place, in which the children are drawn in space, on demand only. Throws what they throw. */
export function SceneCanvas({ light, children, onPointerMissed }: SceneCanvasProps) {
  const holder = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const root = useRef<ReconcilerRoot<HTMLCanvasElement> | null>(null);
  const [isReady, setIsReady] = useState(false);
  const [trouble, setTrouble] = useState<unknown>(null);
  if (trouble) throw trouble;
  const [width, height] = useSizeOf(holder);
  const onReady = useCallback(() => setIsReady(true), []);
  // Unlike layout effects, not run twice while developing: the root must live as long as the canvas.
  useInsertionEffect(
    () => () => {
      root.current?.unmount();
      root.current = null;
    },
    [],
  );
  useLayoutEffect(() => {
    if (!canvas.current || width === 0 || height === 0) return;
    root.current ??= makeRoot(canvas.current);
    root.current
      .configure({
        events,
        frameloop: isReady ? 'demand' : 'never',
        flat: true,
        dpr: [1, 2],
        size: { width, height, top: 0, left: 0 },
        camera: { fov: 26, near: 50, far: 20_000, up: [0, 0, 1] },
        gl: { antialias: true, alpha: true, powerPreference: 'high-performance' },
        onPointerMissed,
        onCreated: (state) => state.events.connect?.(holder.current),
      })
      .catch(setTrouble);
    root.current.render(
      <Catcher onTrouble={setTrouble}>
        {light}
        <CompileAhead onReady={onReady} />
        {isReady && children}
      </Catcher>,
    );
  });
  return (
    <div ref={holder} className="scene-canvas">
      <canvas ref={canvas} />
    </div>
  );
}

/** CSS pixels; 0 until it is laid out. */
function useSizeOf(element: { readonly current: HTMLElement | null }): readonly [number, number] {
  const subscribe = (onChange: () => void) => {
    const observer = new ResizeObserver(onChange);
    if (element.current) observer.observe(element.current);
    return () => observer.disconnect();
  };
  const width = useSyncExternalStore(subscribe, () => element.current?.clientWidth ?? 0);
  const height = useSyncExternalStore(subscribe, () => element.current?.clientHeight ?? 0);
  return [width, height];
}

interface CatcherProps {
  readonly children: ReactNode;
  readonly onTrouble: (error: unknown) => void;
}

/** Hands faults inside the canvas over to the page around it, which knows what to show instead. */
class Catcher extends Component<CatcherProps, { readonly hasFailed: boolean }> {
  override state = { hasFailed: false };
  static getDerivedStateFromError() {
    return { hasFailed: true };
  }
  override componentDidCatch(error: unknown) {
    this.props.onTrouble(error);
  }
  override render() {
    return this.state.hasFailed ? null : this.props.children;
  }
}
