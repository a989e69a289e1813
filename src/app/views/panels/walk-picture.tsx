import { useMemo } from 'react';
import { useSay, useWords } from '../parts/use-words.ts';
import { pathOf } from './piece-path.ts';
import { type Placement, rollAgainst, type SeamSide, stationAt } from './walk-seam.ts';

interface WalkPictureProps {
  readonly sides: readonly [SeamSide, SeamSide];
  readonly outlines: readonly [string, string];
  readonly fraction: number;
  readonly colour: string;
  readonly letter: string;
}

/** mm of cloth shown round the point of contact. */
const HALF_WIDTH = 190;
const HALF_HEIGHT = 110;

/** The fixed piece, and its partner lying against it at one place of the seam; what is sewn already is drawn bold. */
export function WalkPicture({ sides, outlines, fraction, colour, letter }: WalkPictureProps) {
  const [fixed, rolling] = sides;
  const { walk: words } = useWords();
  const say = useSay();
  const placement = rollAgainst(fixed, rolling, fraction);
  const contact = stationAt(fixed, fraction);
  const lines = useMemo(() => sides.map(({ line }) => pathOf(line, false)), [sides]);
  const length = fixed.along[fixed.along.length - 1];
  // The seam runs across the picture, so that both pieces have room above and below it.
  const turn = (Math.atan2(contact.uy, contact.ux) * 180) / Math.PI;
  return (
    <svg
      className="walk-picture"
      viewBox={`${-HALF_WIDTH} ${-HALF_HEIGHT} ${2 * HALF_WIDTH} ${2 * HALF_HEIGHT}`}
      role="img"
      aria-label={words.picture(letter, say(rolling.name), say(fixed.name))}
      style={{ color: colour }}
    >
      <g transform={`rotate(${turn.toFixed(3)}) translate(${-contact.x} ${contact.y})`}>
        <path d={outlines[0]} className="walk-cloth" />
        <path d={lines[0]} className="walk-line" />
        <g transform={matrixOf(placement)}>
          <path d={outlines[1]} className="walk-cloth rolling" />
          <path d={lines[1]} className="walk-line" />
          <MarkDots side={rolling} />
        </g>
        <path
          d={lines[0]}
          className="walk-sewn"
          pathLength={length}
          strokeDasharray={`${fraction * length} ${length}`}
        />
        <MarkDots side={fixed} />
        <circle cx={contact.x} cy={-contact.y} r={4} className="walk-contact" />
      </g>
    </svg>
  );
}

function MarkDots({ side }: { readonly side: SeamSide }) {
  const length = side.along[side.along.length - 1];
  return side.marks.map((mark, k) => {
    const { x, y, ux, uy } = stationAt(side, mark / length);
    return (
      <g key={mark} className="walk-mark">
        <path d={`M${x - 5 * uy} ${-(y + 5 * ux)}L${x + 5 * uy} ${-(y - 5 * ux)}`} />
        <text x={x - 11 * uy} y={-(y + 11 * ux)} dy="0.35em">
          {k + 1}
        </text>
      </g>
    );
  });
}

/** For drawings with y down. */
function matrixOf({ cos, sin, dx, dy }: Placement): string {
  return `matrix(${cos} ${-sin} ${sin} ${cos} ${dx} ${-dy})`;
}
