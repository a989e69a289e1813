import { type PointerEvent, type RefObject, useCallback, useEffect, useRef, useState } from 'react';
import { clamp } from '../../../core/math/index.ts';
import { useElementSize } from './use-element-size.ts';

/** The part of the drawing shown: centre in drawing units, and magnification over the fitted size. */
export interface Window2d {
  readonly x: number;
  readonly y: number;
  readonly zoom: number;
}

const MAX_ZOOM = 24;
const MIN_ZOOM = 0.7;

/**
 * Drag pans; pinch, or the wheel with Ctrl or ⌘, zooms round the pointer; a plain wheel scrolls the page. Returns the
 * view box for the SVG and its scale in pixels per drawing unit.
 */
export function usePanZoom(
  svg: RefObject<SVGSVGElement | null>,
  box: readonly [number, number, number, number],
) {
  const [left, top, width, height] = box;
  const [view, setView] = useState<Window2d>({ x: 0.5, y: 0.5, zoom: 1 });
  const size = useElementSize(svg);
  const fitted = size && width > 0 ? Math.min(size.width / width, size.height / height) : 1;
  const scale = fitted * view.zoom;
  const centre = { x: left + view.x * width, y: top + view.y * height };
  const shownWidth = size ? size.width / scale : width;
  const shownHeight = size ? size.height / scale : height;

  const move = useCallback((dx: number, dy: number, factor = 1) => {
    setView((now) => ({
      x: clamp(now.x + dx, -0.1, 1.1),
      y: clamp(now.y + dy, -0.1, 1.1),
      zoom: clamp(now.zoom * factor, MIN_ZOOM, MAX_ZOOM),
    }));
  }, []);
  const showAll = useCallback(() => setView({ x: 0.5, y: 0.5, zoom: 1 }), []);
  const zoomAt = useCallback(
    (clientX: number, clientY: number, factor: number) => {
      const rect = svg.current?.getBoundingClientRect();
      if (!rect) return;
      const k = (1 - 1 / factor) / scale;
      move(
        ((clientX - rect.left - rect.width / 2) * k) / width,
        ((clientY - rect.top - rect.height / 2) * k) / height,
        factor,
      );
    },
    [svg, scale, width, height, move],
  );

  useWheelZoom(svg, zoomAt);
  const pointers = useRef(new Map<number, { x: number; y: number }>());
  const handlers = {
    onPointerDown(event: PointerEvent) {
      if (event.pointerType === 'touch' && view.zoom <= 1 && pointers.current.size === 0 && event.isPrimary) {
        pointers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
        return;
      }
      pointers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
      svg.current?.setPointerCapture(event.pointerId);
    },
    onPointerMove(event: PointerEvent) {
      const before = pointers.current.get(event.pointerId);
      if (!before) return;
      const now = { x: event.clientX, y: event.clientY };
      const others = [...pointers.current].filter(([id]) => id !== event.pointerId);
      pointers.current.set(event.pointerId, now);
      if (others.length === 0) {
        move((before.x - now.x) / scale / width, (before.y - now.y) / scale / height);
      } else {
        const other = others[0][1];
        const factor = distance(now, other) / Math.max(1, distance(before, other));
        zoomAt((now.x + other.x) / 2, (now.y + other.y) / 2, factor);
      }
    },
    onPointerUp: (event: PointerEvent) => void pointers.current.delete(event.pointerId),
    onPointerCancel: (event: PointerEvent) => void pointers.current.delete(event.pointerId),
  };
  return {
    viewBox: `${centre.x - shownWidth / 2} ${centre.y - shownHeight / 2} ${shownWidth} ${shownHeight}`,
    scale,
    zoom: view.zoom,
    move,
    showAll,
    handlers,
  };
}

function useWheelZoom(
  svg: RefObject<SVGSVGElement | null>,
  zoomAt: (x: number, y: number, factor: number) => void,
): void {
  useEffect(() => {
    const element = svg.current;
    if (!element) return;
    const onWheel = (event: WheelEvent) => {
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      zoomAt(event.clientX, event.clientY, Math.exp(-event.deltaY * 0.0025));
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, [svg, zoomAt]);
}

function distance(a: { x: number; y: number }, b: { x: number; y: number }): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
