import { boundsOfPoints } from '../../../core/math/index.ts';
import { useApp } from '../parts/workroom-context.tsx';

interface ShapePictureProps {
  readonly categoryId: string;
  readonly choiceId: string;
  /** Every choice of the question, so that all its pictures have one scale. */
  readonly choiceIds: readonly string[];
}

const MARGIN = 0.04;

/** This body as the choice would make it, over a thread line of the body as it is now. */
export function ShapePicture({ categoryId, choiceId, choiceIds }: ShapePictureProps) {
  const outlines = useApp((state) => state.shapePictures?.outlines[categoryId]);
  const now = outlines?.now;
  const own = outlines?.choices[choiceId];
  const all = [now, ...choiceIds.map((id) => outlines?.choices[id])].filter((line) => !!line);
  return (
    <svg className="shape-picture" viewBox={boxRound(all)} aria-hidden="true">
      {own && <path d={closedPath(own)} className="outline-edge" />}
      {own && now && <path d={closedPath(now)} className="shape-now" />}
    </svg>
  );
}

function boxRound(outlines: readonly Float64Array[]): string {
  const bounds = boundsOfPoints(outlines);
  if (bounds === null) return '0 0 1 1';
  const { minX, minY, maxX, maxY } = bounds;
  const margin = MARGIN * Math.max(maxX - minX, maxY - minY);
  const numbers = [minX - margin, minY - margin, maxX - minX + 2 * margin, maxY - minY + 2 * margin];
  return numbers.map((number) => number.toFixed(1)).join(' ');
}

function closedPath(outline: Float64Array): string {
  let d = '';
  for (let i = 0; i < outline.length; i += 2) {
    d += `${i === 0 ? 'M' : 'L'}${outline[i].toFixed(1)} ${outline[i + 1].toFixed(1)}`;
  }
  return `${d}Z`;
}
