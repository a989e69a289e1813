import { type PointerEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { ClothPhoto, PhotoMark } from '../../store/index.ts';
import { useWords } from '../parts/use-words.ts';
import { pointUnder } from './use-piece-drag.ts';

/** What the pointer sets on the photo. */
export type PhotoWork = 'scale' | 'repeat';

interface ClothPhotoPictureProps {
  readonly photo: ClothPhoto;
  readonly work: PhotoWork | null;
  readonly marks: readonly PhotoMark[];
  readonly onMarks: (marks: readonly PhotoMark[]) => void;
  readonly onRepeat: (a: PhotoMark, b: PhotoMark) => void;
}

/** The photo with its repeat; a pointer sets and drags the two points, or drags one repeat out. */
export function ClothPhotoPicture({ photo, work, marks, onMarks, onRepeat }: ClothPhotoPictureProps) {
  const { photo: words } = useWords().laying;
  const svg = useRef<SVGSVGElement>(null);
  const url = useMemo(() => URL.createObjectURL(photo.file), [photo.file]);
  useEffect(() => () => URL.revokeObjectURL(url), [url]);
  const held = useRef<number | null>(null);
  const [corners, setCorners] = useState<readonly [PhotoMark, PhotoMark] | null>(null);
  const { width, height } = photo;
  const at = (event: PointerEvent): PhotoMark => {
    const { x, y } = pointUnder(svg.current, event);
    return [Math.min(width, Math.max(0, x)), Math.min(height, Math.max(0, y))];
  };
  const onPointerDown = (event: PointerEvent) => {
    if (!work) return;
    svg.current?.setPointerCapture(event.pointerId);
    const mark = at(event);
    if (work === 'repeat') return setCorners([mark, mark]);
    const near = marks.findIndex(([x, y]) => Math.hypot(x - mark[0], y - mark[1]) < width / 15);
    if (near < 0 && marks.length < 2) onMarks([...marks, mark]);
    held.current = near < 0 ? Math.min(marks.length, 1) : near;
  };
  const onPointerMove = (event: PointerEvent) => {
    const mark = at(event);
    if (corners) setCorners([corners[0], mark]);
    else if (held.current !== null) onMarks(marks.map((old, i) => (i === held.current ? mark : old)));
  };
  const onPointerUp = () => {
    held.current = null;
    if (corners) onRepeat(...corners);
    setCorners(null);
  };
  const r = width / 60;
  const shown = corners
    ? {
        x: Math.min(corners[0][0], corners[1][0]),
        y: Math.min(corners[0][1], corners[1][1]),
        width: Math.abs(corners[0][0] - corners[1][0]),
        height: Math.abs(corners[0][1] - corners[1][1]),
      }
    : photo.repeat;
  return (
    <svg
      ref={svg}
      className="cloth-photo-picture"
      data-working={work ?? undefined}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={words.label}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={onPointerUp}
    >
      <image href={url} width={width} height={height} preserveAspectRatio="none" />
      {shown && <rect className="cloth-repeat" {...shown} />}
      {marks.length === 2 && (
        <path className="cloth-mark-line" d={`M${marks.map(([x, y]) => `${x} ${y}`).join('L')}`} />
      )}
      {marks.map(([x, y], i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: marks have no other name than first and second
        <g key={i} className="cloth-mark" transform={`translate(${x} ${y})`}>
          <circle r={r} />
          <path d={`M${-2 * r} 0H${2 * r}M0 ${-2 * r}V${2 * r}`} />
        </g>
      ))}
    </svg>
  );
}
