import { useMemo } from 'react';
import type { Form } from '../../../core/form/index.ts';
import type { Words } from '../../../language/index.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { probeStrain } from './probe-strain.ts';

/** A place on a flat piece, in the piece's own plane, mm, y up. */
export interface PieceSpot {
  readonly index: number;
  readonly x: number;
  readonly y: number;
}

/** What the cloth must do under the pointer, in words; keeps its height while nothing is pointed at. */
export function StrainReadout({ form, spot }: { readonly form: Form; readonly spot: PieceSpot | null }) {
  const found = useMemo(() => spot && probeStrain(form, spot.index, spot.x, spot.y), [form, spot]);
  const { flat: words } = useWords();
  const say = useSay();
  if (!spot || !found) return <p className="strain-readout">{words.probe}</p>;
  const { major, minor, direction } = found;
  return (
    <p className="strain-readout">
      <span className="readout-piece">{form.pieces[spot.index] && say(form.pieces[spot.index].name)}</span>
      <StrainSay strain={major} angle={direction} />
      <StrainSay strain={minor} angle={direction + Math.PI / 2} />
    </p>
  );
}

function StrainSay({ strain, angle }: { readonly strain: number; readonly angle: number }) {
  const words = useWords().flat;
  const { signedPercent } = useNumbers();
  const turn = (-angle * 180) / Math.PI;
  return (
    <span className="readout-way">
      <svg viewBox="-8 -8 16 16" aria-hidden="true">
        <path
          d="M-7 0H7M-7 0l3-2.500M-7 0l3 2.500M7 0l-3-2.500M7 0l-3 2.500"
          transform={`rotate(${turn.toFixed(0)})`}
        />
      </svg>
      {signedPercent(strain)} {sayStrain(strain, words)}
    </span>
  );
}

function sayStrain(strain: number, words: Words['flat']): string {
  if (Math.abs(strain) < 0.0005) return words.asItIs;
  return strain < 0 ? words.mustShrink : words.mustStretch;
}

interface StrainCrossProps {
  readonly form: Form;
  readonly spot: PieceSpot;
  readonly dx: number;
  readonly dy: number;
  /** Pixels per mm. */
  readonly scale: number;
}

/** The two directions of strain at the pointer: longer arm, more strain. */
export function StrainCross({ form, spot, dx, dy, scale }: StrainCrossProps) {
  const found = useMemo(() => probeStrain(form, spot.index, spot.x, spot.y), [form, spot]);
  if (!found) return null;
  const arm = (strain: number) => (8 + Math.min(1, Math.abs(strain) / 0.05) * 18) / scale;
  const turn = (-found.direction * 180) / Math.PI;
  const [a, b] = [arm(found.major), arm(found.minor)];
  return (
    <g
      className="strain-cross"
      transform={`translate(${dx + spot.x} ${dy - spot.y}) rotate(${turn.toFixed(1)})`}
      style={{ strokeWidth: 1.6 / scale }}
    >
      <path d={`M${-a} 0H${a}`} />
      <path d={`M0 ${-b}V${b}`} />
    </g>
  );
}
