import { type KeyboardEvent, type PointerEvent, useId, useMemo, useRef, useState } from 'react';
import { findFaults, type LaidPiece, type LayFault, type UseId } from '../../../core/laying/index.ts';
import type { LaySeen } from '../../store/index.ts';
import { NearerTools } from '../parts/nearer-tools.tsx';
import { usePanZoom } from '../parts/use-pan-zoom.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { DrawnOver } from './drawn-over.tsx';
import { LaidPieces } from './laid-pieces.tsx';
import { LayGroundShape } from './lay-ground-shape.tsx';
import { LayRuler } from './lay-ruler.tsx';
import { type SheetPlace, sheetsInSight } from './lay-sheets.ts';
import { PlanFills } from './plan-fills.tsx';
import { usePieceDrag } from './use-piece-drag.ts';
import { usePrintTile } from './use-print-tile.ts';

/** Room round the cloth, mm: on the left and below for the ruler. */
const MARGIN = 40;
const RULER = 90;
const KEY_STEP = 0.06;

interface LayViewProps {
  readonly use: UseId;
  readonly seen: LaySeen;
  readonly faults: readonly LayFault[];
  readonly onPut: (place: LaidPiece, step: string) => void;
}

/** The plan to scale. A drag on a piece moves it, elsewhere the picture; keys do the same. */
export function LayView({ use, seen, faults, onPut }: LayViewProps) {
  const svg = useRef<SVGSVGElement>(null);
  const { laying: words } = useWords();
  const { plan, rules } = seen;
  const drag = useApp((state) => state.layWork.drag);
  const actions = useActions();
  const tile = usePrintTile(seen.of.stock);
  const pattern = useId();
  // While the print is dragged it shows where it would lie.
  const [printShift, setPrintShift] = useState<readonly [number, number]>([0, 0]);
  const sheets = useMemo(() => sheetsInSight(rules, plan), [rules, plan]);
  const { length, bottom, box } = useMemo(() => frameOf(sheets), [sheets]);
  const { viewBox, scale, zoom, move, showAll, handlers } = usePanZoom(svg, box);
  const { held, startDrag, dragging } = usePieceDrag(svg, seen, onPut);
  const pointer = joinPointers(handlers, dragging, held !== null, () => actions.choosePiece(null));
  const faultsNow = useFaultsNow(seen, faults, held);
  const onKeyDown = usePictureKeys(move, showAll, zoom);
  return (
    <div className="flat-view lay-view" data-drag={drag}>
      {/* biome-ignore-start lint/a11y/noNoninteractiveTabindex: arrow keys move the picture, as the label says */}
      {/* biome-ignore-start lint/a11y/useSemanticElements: a picture with keys, not a set of form fields */}
      <div
        className="flat-keys"
        role="group"
        tabIndex={0}
        onKeyDown={onKeyDown}
        aria-label={words.plan.label}
      >
        <svg
          ref={svg}
          viewBox={viewBox}
          className="flat-svg lay-svg"
          style={{ touchAction: zoom > 1 || drag !== 'pieces' ? 'none' : 'pan-y' }}
          {...pointer}
        >
          <title>{words.plan.title}</title>
          <PlanFills id={pattern} tile={tile} sheets={sheets} shift={printShift} scale={scale} />
          {sheets.map((sheet) => (
            <LayGroundShape
              key={sheet.sheet}
              rules={rules}
              sheet={sheet}
              print={tile ? `url(#${pattern}-${sheet.sheet})` : null}
              end={plan && rules.ground.kind === 'roll' ? plan.length : null}
              scale={scale}
              isNumbered={sheets.length > 1}
            />
          ))}
          <LayRuler length={length} bottom={bottom} scale={scale} />
          <LaidPieces
            seen={seen}
            sheets={sheets}
            held={held}
            faults={faultsNow}
            fills={pattern}
            isPrinted={tile !== null}
            scale={scale}
            onDown={startDrag}
            onPut={onPut}
          />
          {drag !== 'pieces' && (
            <DrawnOver
              use={use}
              seen={seen}
              svg={svg}
              sheets={sheets}
              box={box}
              drag={drag}
              onShift={setPrintShift}
            />
          )}
        </svg>
      </div>
      {/* biome-ignore-end lint/a11y/useSemanticElements: see above */}
      {/* biome-ignore-end lint/a11y/noNoninteractiveTabindex: see above */}
      <NearerTools legend={words.plan.tools} showAllName={words.plan.showAll} move={move} showAll={showAll} />
      <Hint />
    </div>
  );
}

function frameOf(sheets: readonly SheetPlace[]) {
  const length = Math.max(...sheets.map((sheet) => sheet.length));
  const bottom = Math.max(...sheets.map((sheet) => sheet.bottom));
  const box = [-MARGIN, -MARGIN, length + 2 * MARGIN, bottom + MARGIN + RULER] as const;
  return { length, bottom, box };
}

type Handler = (event: PointerEvent) => void;
type Handlers = Readonly<Record<'onPointerMove' | 'onPointerUp' | 'onPointerCancel', Handler>>;

/** A piece that is held follows the pointer; else the picture does. Pressing beside all pieces lets go of the chosen one. */
function joinPointers(
  picture: Handlers & { readonly onPointerDown: Handler },
  piece: Handlers,
  isHeld: boolean,
  letGo: () => void,
): Handlers & { readonly onPointerDown: Handler } {
  return {
    onPointerDown(event) {
      letGo();
      picture.onPointerDown(event);
    },
    onPointerMove: isHeld ? piece.onPointerMove : picture.onPointerMove,
    onPointerUp(event) {
      piece.onPointerUp(event);
      picture.onPointerUp(event);
    },
    onPointerCancel(event) {
      piece.onPointerCancel(event);
      picture.onPointerCancel(event);
    },
  };
}

/** Faults of the plan, those of the piece being dragged as it lies now. */
function useFaultsNow(
  { plan, rules }: LaySeen,
  faults: readonly LayFault[],
  held: LaidPiece | null,
): readonly LayFault[] {
  return useMemo(() => {
    if (!held || !plan) return faults;
    const placed = plan.placed.map((place) => (place.piece === held.piece ? held : place));
    const others = faults.filter(({ pieces }) => !pieces.includes(held.piece));
    return [...others, ...findFaults(rules, placed, held.piece)];
  }, [held, plan, faults, rules]);
}

/** Arrows move the picture, plus and minus bring it nearer, 0 shows all. */
function usePictureKeys(
  move: (dx: number, dy: number, factor?: number) => void,
  showAll: () => void,
  zoom: number,
) {
  return (event: KeyboardEvent) => {
    const step = KEY_STEP / zoom;
    if (event.key === 'ArrowLeft') move(-step, 0);
    else if (event.key === 'ArrowRight') move(step, 0);
    else if (event.key === 'ArrowUp') move(0, -step);
    else if (event.key === 'ArrowDown') move(0, step);
    else if (event.key === '+' || event.key === '=') move(0, 0, 1.25);
    else if (event.key === '-') move(0, 0, 0.8);
    else if (event.key === '0') showAll();
    else return;
    event.preventDefault();
  };
}

/** What keys and drags do now. */
function Hint() {
  const { laying: words } = useWords();
  const chosen = useApp((state) => state.layWork.chosen);
  const drag = useApp((state) => state.layWork.drag);
  const hints = {
    pieces: chosen ? words.plan.keys : '',
    flaw: words.cloth.drawing,
    print: words.print.shifting,
  };
  return (
    <p className="lay-hint measure-how" role={drag === 'pieces' ? undefined : 'status'}>
      {hints[drag]}
    </p>
  );
}
