import type { PieceLine } from '../../../core/pattern/index.ts';
import { markId, type Seam } from '../../store/index.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { pathOf } from './piece-path.ts';

interface PieceNotchesProps {
  readonly notches: readonly PieceLine[];
  readonly seams: readonly Seam[];
}

/** The notches of a piece; pointing at one lights its mark on the body and on the partner. */
export function PieceNotches({ notches, seams }: PieceNotchesProps) {
  const lit = useApp((state) => (state.highlight?.kind === 'mark' ? state.highlight.id : null));
  const actions = useActions();
  return notches.map((notch) => {
    const id = markOfNotch(notch.name, seams);
    const d = pathOf(notch.points, false);
    return id === null ? (
      <path key={notch.id} className="piece-notch" d={d} />
    ) : (
      <g
        key={notch.id}
        className="notch"
        data-lit={lit === id || undefined}
        onPointerMove={() => actions.pointAt({ kind: 'mark', id })}
      >
        <path className="notch-reach" d={d} />
        <path className="piece-notch" d={d} />
      </g>
    );
  });
}

/** Notches are named by the letter of their seam and the number of the mark on it. */
function markOfNotch(name: string, seams: readonly Seam[]): string | null {
  const [, letter, number] = /^([A-Z]+)(\d+)$/.exec(name) ?? [];
  const seam = seams.find((one) => one.letter === letter);
  return seam && number ? markId(seam.id, Number(number)) : null;
}
