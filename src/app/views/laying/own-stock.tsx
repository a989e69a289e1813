import type { StockPiece, UseId } from '../../../core/laying/index.ts';
import type { LaySeen } from '../../store/index.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions } from '../parts/workroom-context.tsx';
import { PointFields } from './point-fields.tsx';

type Points = readonly (readonly [number, number])[];

/** A new piece of what is at hand, and a new fold over it: to be changed at once, mm. */
const NEW_LENGTH = 600;

interface OwnStockProps {
  readonly use: UseId;
  readonly seen: LaySeen;
}

/** Off-cuts and boards at hand, used in this order instead of the roll or whole sheets. */
export function OwnStock({ use, seen }: OwnStockProps) {
  const { cloth: words, steps } = useWords().laying;
  const actions = useActions();
  const own = seen.of.stock.pieces ?? [];
  const { width } = seen.rules.use;
  const set = (pieces: readonly StockPiece[]) =>
    actions.setStock(use, { pieces: pieces.length > 0 ? pieces : undefined }, steps.own);
  const add = () => {
    const across = Math.min(width, NEW_LENGTH);
    const outline: Points = [
      [0, 0],
      [NEW_LENGTH, 0],
      [NEW_LENGTH, across],
      [0, across],
    ];
    set([...own, { outline }]);
  };
  return (
    <section className="lay-own" aria-labelledby="own-title">
      <h3 id="own-title">{words.own}</h3>
      <p className="measure-how">{words.aboutOwn}</p>
      {own.map((piece, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: pieces go by their number
        <details key={i} className="lay-own-piece">
          <summary>{words.ownPiece(i + 1)}</summary>
          <OnePiece
            piece={piece}
            fieldId={`laying.${use}.pieces.${i}`}
            isCloth={seen.rules.use.isCloth}
            onPiece={(next) => set(own.map((other, k) => (k === i ? next : other)))}
          />
          <button type="button" className="plain" onClick={() => set(own.filter((_, k) => k !== i))}>
            {words.removeOf(words.ownPiece(i + 1))}
          </button>
        </details>
      ))}
      <button type="button" className="plain" onClick={add}>
        {words.addOwn}
      </button>
    </section>
  );
}

interface OnePieceProps {
  readonly piece: StockPiece;
  readonly fieldId: string;
  readonly isCloth: boolean;
  readonly onPiece: (piece: StockPiece) => void;
}

function OnePiece({ piece, fieldId, isCloth, onPiece }: OnePieceProps) {
  const { cloth: words } = useWords().laying;
  const { outline, flaws = [], folds = [] } = piece;
  const length = Math.max(...outline.map(([x]) => x));
  const across = Math.max(...outline.map(([, y]) => y));
  const withList = (key: 'flaws' | 'folds', list: readonly Points[]): StockPiece => {
    const { [key]: _before, ...others } = piece;
    return list.length > 0 ? { ...others, [key]: list } : others;
  };
  return (
    <>
      <p className="measure-name">{words.outline}</p>
      <PointFields
        fieldId={`${fieldId}.outline`}
        points={outline}
        least={3}
        onPoints={(points) => onPiece({ ...piece, outline: points })}
      />
      <ShapeList
        shapes={flaws}
        fieldId={`${fieldId}.flaws`}
        least={3}
        nameOf={words.flaw}
        addName={words.addFlaw}
        first={squareAt(length / 4, across / 4)}
        onShapes={(list) => onPiece(withList('flaws', list))}
      />
      {!isCloth && (
        <>
          <p className="measure-how">{words.aboutFolds}</p>
          <ShapeList
            shapes={folds}
            fieldId={`${fieldId}.folds`}
            least={2}
            nameOf={words.fold}
            addName={words.addFold}
            first={[
              [length / 2, 0],
              [length / 2, across],
            ]}
            onShapes={(list) => onPiece(withList('folds', list))}
          />
        </>
      )}
    </>
  );
}

/** A new flaw, to be moved: as large as a hand, mm. */
const HAND = 80;

export function squareAt(x: number, y: number): Points {
  return [
    [x, y],
    [x + HAND, y],
    [x + HAND, y + HAND],
    [x, y + HAND],
  ];
}

interface ShapeListProps {
  readonly shapes: readonly Points[];
  readonly fieldId: string;
  readonly least: 2 | 3;
  readonly nameOf: (number: number) => string;
  readonly addName: string;
  /** A new one, to be changed. */
  readonly first: Points;
  readonly onShapes: (shapes: readonly Points[]) => void;
}

/** Flaws or folds: each by its corners, and one more. */
export function ShapeList({ shapes, fieldId, least, nameOf, addName, first, onShapes }: ShapeListProps) {
  const { cloth: words } = useWords().laying;
  return (
    <>
      {shapes.map((shape, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: flaws and folds go by their number
        <details key={i} className="lay-shape">
          <summary>{nameOf(i + 1)}</summary>
          <PointFields
            fieldId={`${fieldId}.${i}`}
            points={shape}
            least={least}
            onPoints={(points) => onShapes(shapes.map((other, k) => (k === i ? points : other)))}
          />
          <button type="button" className="plain" onClick={() => onShapes(shapes.filter((_, k) => k !== i))}>
            {words.removeOf(nameOf(i + 1))}
          </button>
        </details>
      ))}
      <button type="button" className="plain" onClick={() => onShapes([...shapes, first])}>
        {addName}
      </button>
    </>
  );
}
