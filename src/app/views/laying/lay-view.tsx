import { type KeyboardEvent, useId, useMemo, useRef, useState } from 'react';
import { findFaults, type LaidPiece, type LayFault, type UseId } from '../../../core/laying/index.ts';
import type { LaySeen } from '../../store/index.ts';
import { NearerTools } from '../parts/nearer-tools.tsx';
import { usePanZoom } from '../parts/use-pan-zoom.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { DrawnOver } from './drawn-over.tsx';
import { LaidPieceShape } from './laid-piece-shape.tsx';
import { LayGroundShape } from './lay-ground-shape.tsx';
import { LayRuler } from './lay-ruler.tsx';
import { sheetsInSight } from './lay-sheets.ts';
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
  const chosen = useApp((state) => state.layWork.chosen);
  const drag = useApp((state) => state.layWork.drag);
  const actions = useActions();
  const tile = usePrintTile(seen.of.stock);
  const pattern = useId();
  // While the print is dragged it shows where it would lie.
  const [printShift, setPrintShift] = useState<readonly [number, number]>([0, 0]);
  const sheets = useMemo(() => sheetsInSight(rules, plan), [rules, plan]);
  const length = Math.max(...sheets.map((sheet) => sheet.length));
  const bottom = Math.max(...sheets.map((sheet) => sheet.bottom));
  const box = useMemo(
    () => [-MARGIN, -MARGIN, length + 2 * MARGIN, bottom + MARGIN + RULER] as const,
    [length, bottom],
  );
  const { viewBox, scale, zoom, move, showAll, handlers } = usePanZoom(svg, box);
  const { held, startDrag, dragging } = usePieceDrag(svg, seen, onPut);
  const faultsNow = useMemo(() => {
    if (!held || !plan) return faults;
    const placed = plan.placed.map((place) => (place.piece === held.piece ? held : place));
    const others = faults.filter(({ pieces }) => !pieces.includes(held.piece));
    return [...others, ...findFaults(rules, placed, held.piece)];
  }, [held, plan, faults, rules]);
  const onKeyDown = (event: KeyboardEvent) => {
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
          {...handlers}
          {...dragging}
          onPointerDown={(event) => {
            actions.choosePiece(null);
            handlers.onPointerDown(event);
          }}
          onPointerMove={(event) => {
            if (held) dragging.onPointerMove(event);
            else handlers.onPointerMove(event);
          }}
          onPointerUp={(event) => {
            dragging.onPointerUp(event);
            handlers.onPointerUp(event);
          }}
          onPointerCancel={(event) => {
            dragging.onPointerCancel();
            handlers.onPointerCancel(event);
          }}
        >
          <title>{words.plan.title}</title>
          <defs>
            {tile &&
              sheets.map((sheet) => (
                <pattern
                  key={sheet.sheet}
                  id={`${pattern}-${sheet.sheet}`}
                  patternUnits="userSpaceOnUse"
                  width={tile.along}
                  height={tile.across}
                  x={tile.firstAlong + printShift[0] - tile.along / 2}
                  y={sheet.bottom - tile.firstAcross - printShift[1] - tile.across / 2}
                >
                  <image href={tile.url} width={tile.along} height={tile.across} preserveAspectRatio="none" />
                </pattern>
              ))}
            <pattern
              id={`${pattern}-fault`}
              patternUnits="userSpaceOnUse"
              width={9 / scale}
              height={9 / scale}
              patternTransform="rotate(45)"
            >
              <rect className="lay-hatch" width={3 / scale} height={9 / scale} />
            </pattern>
          </defs>
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
          {plan?.placed.map((laid) => {
            const place = held?.piece === laid.piece ? held : laid;
            const sheet = sheets.find((one) => one.sheet === place.sheet);
            const piece = rules.pieces.find(({ id }) => id === place.piece);
            if (!sheet || !piece) return null;
            return (
              <LaidPieceShape
                key={place.piece}
                seen={seen}
                piece={piece}
                place={place}
                bottom={sheet.bottom}
                scale={scale}
                print={tile ? `url(#${pattern}-${sheet.sheet})` : null}
                hatch={`url(#${pattern}-fault)`}
                fault={faultsNow.find(({ pieces }) => pieces.includes(place.piece)) ?? null}
                isChosen={chosen === place.piece}
                onDown={startDrag}
                onPut={onPut}
              />
            );
          })}
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
      <p className="lay-hint measure-how" role={drag === 'pieces' ? undefined : 'status'}>
        {drag === 'flaw'
          ? words.cloth.drawing
          : drag === 'print'
            ? words.print.shifting
            : chosen
              ? words.plan.keys
              : ''}
      </p>
    </div>
  );
}
