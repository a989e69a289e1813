import { useMemo } from 'react';
import type { Form } from '../../core/pipeline/index.ts';
import { threadColour } from '../store/index.ts';
import { useApp } from './workroom-context.tsx';

/** Front and back of the body as plain line drawings: its level lines, openings and seams, seen straight on. */
export function BodyOutline() {
  const form = useApp((state) => state.form);
  return form ? (
    <div className="body-outline">
      <OneSide form={form} side="front" />
      <OneSide form={form} side="back" />
    </div>
  ) : null;
}

interface OneSideProps {
  readonly form: Form;
  readonly side: 'front' | 'back';
}

export function OneSide({ form, side }: OneSideProps) {
  const drawing = useMemo(() => drawSide(form, side), [form, side]);
  return (
    <svg className="one-side" viewBox={drawing.viewBox} role="img" aria-label={`The body from the ${side}`}>
      {drawing.levels.map((d) => (
        <path key={d} d={d} className="outline-level" />
      ))}
      {drawing.seams.map(({ id, d, colour }) => (
        <path key={id} d={d} className="outline-seam" stroke={colour} />
      ))}
      {drawing.openings.map((d) => (
        <path key={d} d={d} className="outline-edge" />
      ))}
    </svg>
  );
}

/** Orthographic projection; a stretch is drawn when its points lie on the side looked at. */
function drawSide(form: Form, side: 'front' | 'back') {
  const { mesh, seams, levels, openings } = form.shell;
  const sign = side === 'front' ? -1 : 1;
  const facing = side === 'front' ? 1 : -1;
  const middleY = meanDepth(mesh.positions);
  const box = { left: Infinity, right: -Infinity, top: -Infinity, bottom: Infinity };
  for (let i = 0; i < mesh.positions.length; i += 3) {
    box.left = Math.min(box.left, mesh.positions[i]);
    box.right = Math.max(box.right, mesh.positions[i]);
    box.bottom = Math.min(box.bottom, mesh.positions[i + 2]);
    box.top = Math.max(box.top, mesh.positions[i + 2]);
  }
  const path = (vertices: Uint32Array, isClosed: boolean) => {
    let d = '';
    let isDown = false;
    for (let k = 0; k <= vertices.length - (isClosed ? 0 : 1); k++) {
      const v = vertices[k % vertices.length] * 3;
      const isSeen = (mesh.positions[v + 1] - middleY) * facing > -2;
      if (isSeen) {
        const x = (sign * mesh.positions[v]).toFixed(1);
        const y = (-mesh.positions[v + 2]).toFixed(1);
        d += `${isDown ? 'L' : 'M'}${x} ${y}`;
      }
      isDown = isSeen;
    }
    return d;
  };
  const half = Math.max(Math.abs(box.left), Math.abs(box.right)) + 12;
  return {
    viewBox: `${-half} ${-box.top - 12} ${2 * half} ${box.top - box.bottom + 24}`,
    seams: seams.map((seam, i) => ({ id: seam.id, d: path(seam.points, false), colour: threadColour(i) })),
    levels: levels.map((level) => path(level.vertices, true)),
    openings: openings.map((opening) => path(opening.vertices, true)),
  };
}

function meanDepth(positions: Float64Array): number {
  let sum = 0;
  for (let i = 1; i < positions.length; i += 3) sum += positions[i];
  return sum / (positions.length / 3);
}
