import { type KeyboardEvent, type PointerEvent, type RefObject, useMemo, useRef, useState } from 'react';
import type { Form } from '../../../core/form/index.ts';
import { NearerTools } from '../parts/nearer-tools.tsx';
import { useElementSize } from '../parts/use-element-size.ts';
import { usePanZoom } from '../parts/use-pan-zoom.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { arrangePieces } from './arrange-pieces.ts';
import { FlatPiece } from './flat-piece.tsx';
import { type PieceSpot, StrainCross, StrainReadout } from './strain-probe.tsx';
import { useStrainImages } from './use-strain-images.ts';

/** mm; below there is room for the names. */
const MARGIN = 24;
const MARGIN_BELOW = 130;
const KEY_STEP = 0.06;

/** The pieces laid flat in the order they sit round the body. */
export function FlatView({ form }: { readonly form: Form }) {
  const svg = useRef<SVGSVGElement>(null);
  const showsStrain = useApp((state) => state.layers.strain);
  const actions = useActions();
  const words = useWords().flat;
  const images = useStrainImages(form, showsStrain);
  const isTall = useIsTall(svg);
  const { places, box } = useMemo(() => arrangePieces(form, isTall), [form, isTall]);
  const padded = useMemo(
    () => [box[0] - MARGIN, box[1] - MARGIN, box[2] + 2 * MARGIN, box[3] + MARGIN + MARGIN_BELOW] as const,
    [box],
  );
  const { viewBox, scale, zoom, move, showAll, handlers } = usePanZoom(svg, padded);

  const [spot, setSpot] = useState<PieceSpot | null>(null);
  const spotPlace = places.find(({ index }) => index === spot?.index);
  const probe = (event: PointerEvent<SVGSVGElement>) => {
    handlers.onPointerMove(event);
    if (event.buttons === 0) setSpot(spotUnder(event));
  };

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
    <div className="flat-view">
      {/* biome-ignore-start lint/a11y/noNoninteractiveTabindex: arrow keys move the picture, as the label says */}
      {/* biome-ignore-start lint/a11y/useSemanticElements: a picture with keys, not a set of form fields */}
      <div className="flat-keys" role="group" tabIndex={0} onKeyDown={onKeyDown} aria-label={words.label}>
        <svg
          ref={svg}
          viewBox={viewBox}
          className="flat-svg"
          style={{ touchAction: zoom > 1 ? 'none' : 'pan-y' }}
          {...handlers}
          onPointerMove={probe}
          onPointerLeave={() => {
            actions.pointAt(null);
            setSpot(null);
          }}
        >
          <title>{words.title}</title>
          {places.map(({ index, dx, dy }) => (
            <FlatPiece
              key={form.pieces[index].id}
              form={form}
              index={index}
              dx={dx}
              dy={dy}
              scale={scale}
              image={images[index]}
            />
          ))}
          {showsStrain && spot && spotPlace && (
            <StrainCross form={form} spot={spot} dx={spotPlace.dx} dy={spotPlace.dy} scale={scale} />
          )}
        </svg>
      </div>
      {/* biome-ignore-end lint/a11y/useSemanticElements: see above */}
      {/* biome-ignore-end lint/a11y/noNoninteractiveTabindex: see above */}
      <NearerTools legend={words.tools} showAllName={words.showAll} move={move} showAll={showAll} />
      {showsStrain && <StrainReadout form={form} spot={spot} />}
    </div>
  );
}

/** Which piece lies under the pointer, and where on it. */
function spotUnder(event: PointerEvent<SVGSVGElement>): PieceSpot | null {
  const group = (event.target as Element).closest<SVGGElement>('[data-piece]');
  const toPiece = group?.getScreenCTM()?.inverse();
  if (!group || !toPiece) return null;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(toPiece);
  return { index: Number(group.dataset.piece), x, y: -y };
}

function useIsTall(svg: RefObject<Element | null>): boolean {
  const size = useElementSize(svg);
  return size !== null && size.width < size.height * 1.1;
}
