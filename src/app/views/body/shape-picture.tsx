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
  const outlines = useApp((state) => state.shapePictures?.outlines);
  const now = outlines?.[categoryId];
  const own = outlines?.[`${categoryId}.${choiceId}`];
  const all = [now, ...choiceIds.map((id) => outlines?.[`${categoryId}.${id}`])].filter((line) => !!line);
  return (
    <svg className="shape-picture" viewBox={all.length > 0 ? boxRound(all) : '0 0 1 1'} aria-hidden="true">
      {own && <path d={closedPath(own)} className="outline-edge" />}
      {own && now && <path d={closedPath(now)} className="shape-now" />}
    </svg>
  );
}

function boxRound(outlines: readonly Float64Array[]): string {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const outline of outlines) {
    for (let i = 0; i < outline.length; i += 2) {
      left = Math.min(left, outline[i]);
      right = Math.max(right, outline[i]);
      top = Math.min(top, outline[i + 1]);
      bottom = Math.max(bottom, outline[i + 1]);
    }
  }
  const margin = MARGIN * Math.max(right - left, bottom - top);
  const numbers = [left - margin, top - margin, right - left + 2 * margin, bottom - top + 2 * margin];
  return numbers.map((number) => number.toFixed(1)).join(' ');
}

function closedPath(outline: Float64Array): string {
  let d = '';
  for (let i = 0; i < outline.length; i += 2) {
    d += `${i === 0 ? 'M' : 'L'}${outline[i].toFixed(1)} ${outline[i + 1].toFixed(1)}`;
  }
  return `${d}Z`;
}
