import type { PointerEvent } from 'react';
import type { LaidPiece, LayFault } from '../../../core/laying/index.ts';
import type { LaySeen } from '../../store/index.ts';
import { useApp } from '../parts/workroom-context.tsx';
import { LaidPieceShape } from './laid-piece-shape.tsx';
import type { SheetPlace } from './lay-sheets.ts';

interface LaidPiecesProps {
  readonly seen: LaySeen;
  readonly sheets: readonly SheetPlace[];
  /** The piece being dragged, where it is now. */
  readonly held: LaidPiece | null;
  readonly faults: readonly LayFault[];
  /** See `PlanFills`. */
  readonly fills: string;
  readonly isPrinted: boolean;
  readonly scale: number;
  readonly onDown: (event: PointerEvent, place: LaidPiece) => void;
  readonly onPut: (place: LaidPiece, step: string) => void;
}

/** Every piece of the plan where it lies. */
export function LaidPieces({ seen, sheets, held, faults, fills, isPrinted, ...rest }: LaidPiecesProps) {
  const chosen = useApp((state) => state.layWork.chosen);
  const { plan, rules } = seen;
  return plan?.placed.map((laid) => {
    const place = held?.piece === laid.piece ? held : laid;
    const sheet = sheets.find((one) => one.sheet === place.sheet);
    const piece = rules.pieces.find(({ id }) => id === place.piece);
    if (!sheet || !piece) return null;
    return (
      <LaidPieceShape
        key={place.piece}
        {...rest}
        seen={seen}
        piece={piece}
        place={place}
        bottom={sheet.bottom}
        print={isPrinted ? `url(#${fills}-${sheet.sheet})` : null}
        hatch={`url(#${fills}-fault)`}
        fault={faults.find(({ pieces }) => pieces.includes(place.piece)) ?? null}
        isChosen={chosen === place.piece}
      />
    );
  });
}
