import { type KeyboardEvent, type PointerEvent, type RefObject, useEffect, useMemo, useRef } from 'react';
import type { Form } from '../../../core/form/index.ts';
import {
  markAtPlace,
  type Photo,
  type PhotoMark,
  placeOfMark,
  type Silhouette,
  silhouetteOfMesh,
} from '../../store/index.ts';
import { NearerTools } from '../parts/nearer-tools.tsx';
import { usePanZoom } from '../parts/use-pan-zoom.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** Room round the body, as a share of its height. */
const MARGIN = 0.12;
/** Share of the picture that a key moves the view by. */
const KEY_STEP = 0.06;
const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** The body straight from one side, without perspective, over a photo: drag moves the photo, or sets points to scale it. */
export function PhotoView({ form, photo }: { readonly form: Form; readonly photo: Photo }) {
  const { side } = photo;
  const marks = useApp((state) => state.photoMarks);
  const showsLevels = useApp((state) => state.layers.levels);
  const words = useWords().photo;
  const actions = useActions();
  const svg = useRef<SVGSVGElement>(null);
  const body = useMemo(() => silhouetteOfMesh(form.closedMesh, side), [form, side]);
  const { outline, box, levels } = useMemo(() => drawSilhouette(body, form), [body, form]);
  const { viewBox, zoom, move, showAll } = usePanZoom(svg, box);
  const dragging = usePhotoDrag(svg, photo, marks);
  const onKeyDown = (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    if (event.key === '+' || event.key === '=') move(0, 0, 1.25);
    else if (event.key === '-') move(0, 0, 0.8);
    else if (event.key === '0') showAll();
    if (!step || event.ctrlKey || event.metaKey) {
      if (step) move((KEY_STEP * step[0]) / zoom, (-KEY_STEP * step[1]) / zoom);
      if (step) event.preventDefault();
      return;
    }
    event.preventDefault();
    const mm = event.shiftKey ? 10 : 1;
    actions.changePhoto(side, { x: photo.x + mm * step[0], z: photo.z + mm * step[1] });
  };
  return (
    // biome-ignore-start lint/a11y/noNoninteractiveTabindex: arrow keys move the photo, as the label says
    // biome-ignore-start lint/a11y/useSemanticElements: a picture with keys, not a set of form fields
    <div className="photo-view" role="group" tabIndex={0} onKeyDown={onKeyDown} aria-label={words.label}>
      <svg ref={svg} viewBox={viewBox} data-marking={marks !== null || undefined} {...dragging}>
        <title>{words.over[side]}</title>
        <PhotoImage photo={photo} />
        <path className="photo-body-halo" d={outline} />
        <path className="photo-body" d={outline} />
        {showsLevels && <path className="photo-levels" d={levels} />}
        {marks && <Marks photo={photo} marks={marks} size={box[3] / zoom} />}
      </svg>
      <NearerTools legend={words.nearer} showAllName={words.showAll} move={move} showAll={showAll} />
    </div>
    // biome-ignore-end lint/a11y/useSemanticElements: see above
    // biome-ignore-end lint/a11y/noNoninteractiveTabindex: see above
  );
}

/** Drags the photo, or the points set on it: handlers for the picture. */
function usePhotoDrag(
  svg: RefObject<SVGSVGElement | null>,
  photo: Photo,
  marks: readonly PhotoMark[] | null,
) {
  const { side } = photo;
  const actions = useActions();
  const held = useRef<{ readonly x: number; readonly z: number; readonly mark: number | null } | null>(null);
  /** mm to the right and up. */
  const placeUnder = (event: PointerEvent): readonly [number, number] => {
    const toView = svg.current?.getScreenCTM()?.inverse();
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(toView);
    return [x, -y];
  };
  const onPointerDown = (event: PointerEvent) => {
    const [x, z] = placeUnder(event);
    event.currentTarget.setPointerCapture(event.pointerId);
    const onMark = (event.target as Element).closest<SVGElement>('[data-mark]')?.dataset.mark;
    if (!marks || onMark !== undefined || marks.length === 2) {
      held.current = { x, z, mark: onMark === undefined ? null : Number(onMark) };
      return;
    }
    actions.markPhoto([...marks, markAtPlace(photo, [x, z])]);
    held.current = { x, z, mark: marks.length };
  };
  const onPointerMove = (event: PointerEvent) => {
    const from = held.current;
    if (!from) return;
    const [x, z] = placeUnder(event);
    if (from.mark === null) {
      actions.changePhoto(side, { x: photo.x + x - from.x, z: photo.z + z - from.z });
      held.current = { ...from, x, z };
    } else if (marks) {
      actions.markPhoto(marks.map((mark, i) => (i === from.mark ? markAtPlace(photo, [x, z]) : mark)));
    }
  };
  const letGo = () => {
    held.current = null;
  };
  return { onPointerDown, onPointerMove, onPointerUp: letGo, onPointerCancel: letGo };
}

/** The photo where it was put, as large as it was scaled. */
function PhotoImage({ photo }: { readonly photo: Photo }) {
  const { file, width, height, mmPerPixel, x, z, opacity, isFlipped } = photo;
  const url = useMemo(() => URL.createObjectURL(file), [file]);
  useEffect(() => () => URL.revokeObjectURL(url), [url]);
  const [w, h] = [width * mmPerPixel, height * mmPerPixel];
  return (
    <image
      href={url}
      x={-w / 2}
      y={-h / 2}
      width={w}
      height={h}
      opacity={opacity}
      preserveAspectRatio="none"
      transform={`translate(${x} ${-z})${isFlipped ? ' scale(-1 1)' : ''}`}
    />
  );
}

interface MarksProps {
  readonly photo: Photo;
  readonly marks: readonly PhotoMark[];
  /** Height of what is seen, mm. */
  readonly size: number;
}

function Marks({ photo, marks, size }: MarksProps) {
  const places = marks.map((mark) => placeOfMark(photo, mark));
  const r = size / 60;
  return (
    <g className="photo-marks">
      {places.length === 2 && <path d={`M${places.map(([x, z]) => `${x} ${-z}`).join('L')}`} />}
      {places.map(([x, z], i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: marks have no other name than first and second
        <g key={i} data-mark={i} transform={`translate(${x} ${-z})`}>
          <circle r={1.8 * r} className="photo-mark-reach" />
          <circle r={0.7 * r} />
          <path d={`M${-r} 0H${r}M0 ${-r}V${r}`} />
        </g>
      ))}
    </g>
  );
}

function drawSilhouette({ heights, left, right }: Silhouette, form: Form) {
  const rows = Array.from(heights, (_, k) => k).filter((k) => left[k] <= right[k]);
  const edge = (xs: Float64Array) => rows.map((k) => `${xs[k].toFixed(1)} ${(-heights[k]).toFixed(1)}`);
  const [low, high] = [heights[0], heights[heights.length - 1]];
  const margin = MARGIN * (high - low);
  const [least, most] = [Math.min(...left), Math.max(...right)];
  const levels = form.body.levels
    .map(({ z }) => {
      const k = Math.round(((z - low) / (high - low)) * (heights.length - 1));
      return `M${left[k].toFixed(1)} ${(-z).toFixed(1)}H${right[k].toFixed(1)}`;
    })
    .join('');
  return {
    outline: `M${[...edge(left), ...edge(right).reverse()].join('L')}Z`,
    levels,
    box: [least - margin, -high - margin, most - least + 2 * margin, high - low + 2 * margin] as const,
  };
}
