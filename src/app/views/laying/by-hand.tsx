import { verbatim } from '../../../core/base/index.ts';
import {
  LAYING_OPTIONS,
  type LaidPiece,
  type LayPlan,
  type LayRules,
  type UseId,
} from '../../../core/laying/index.ts';
import { boxOf, keptPlaces, type LaySeen, moveBy, turnOn, turnsByHand, turnTo } from '../../store/index.ts';
import { LengthInput } from '../parts/length-input.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

interface ByHandProps {
  readonly use: UseId;
  readonly seen: LaySeen;
  readonly plan: LayPlan;
  readonly onPut: (place: LaidPiece, step: string) => void;
}

/** One piece chosen, moved, turned and locked without a pointer; all of them locked at once. */
export function ByHand({ use, seen, plan, onPut }: ByHandProps) {
  const { chosen: words, steps } = useWords().laying;
  const chosen = useApp((state) => state.layWork.chosen);
  const actions = useActions();
  const say = useSay();
  const place = plan.placed.find(({ piece }) => piece === chosen);
  const lockAll = (isHeld: boolean) =>
    actions.placePieces(
      use,
      keptPlaces(plan.placed.map((laid) => ({ ...laid, isHeld }))),
      isHeld ? steps.lockAll : steps.unlockAll,
    );
  return (
    <section className="lay-by-hand" aria-labelledby="by-hand-title">
      <h3 id="by-hand-title">{words.title}</h3>
      <div className="field-row">
        <label className="measure-name" htmlFor="laid-piece">
          {words.piece}
        </label>
        <select
          id="laid-piece"
          value={place?.piece ?? ''}
          onChange={(event) => actions.choosePiece(event.target.value || null)}
        >
          <option value="">{words.none}</option>
          {plan.placed.map(({ piece }) => (
            <option key={piece} value={piece}>
              {say(seen.rules.pieces.find(({ id }) => id === piece)?.name ?? verbatim(piece))}
            </option>
          ))}
        </select>
      </div>
      {place && <OnePiece seen={seen} place={place} onPut={onPut} />}
      <div className="drawn-tools">
        <button type="button" className="plain" onClick={() => lockAll(true)}>
          {words.lockAll}
        </button>
        {plan.placed.some(({ isHeld }) => isHeld) && (
          <button type="button" className="plain" onClick={() => lockAll(false)}>
            {words.unlockAll}
          </button>
        )}
      </div>
    </section>
  );
}

/** mm. */
const ON_CLOTH = {
  along: { ...LAYING_OPTIONS.stockLength, min: 0 },
  across: { ...LAYING_OPTIONS.stockWidth, min: 0 },
};

interface OnePieceProps {
  readonly seen: LaySeen;
  readonly place: LaidPiece;
  readonly onPut: (place: LaidPiece, step: string) => void;
}

function OnePiece({ seen: { rules, of }, place, onPut }: OnePieceProps) {
  const { chosen: words, steps } = useWords().laying;
  const say = useSay();
  const piece = rules.pieces.find(({ id }) => id === place.piece);
  if (!piece) return null;
  const name = say(piece.name);
  const { minX, minY } = boxOf(rules, place);
  const { straight, most } = turnsByHand(rules, place);
  const way = rules.ways.get(place.piece)?.[0];
  return (
    <>
      <div className="field-row">
        <span className="measure-name">{words.along}</span>
        <LengthInput
          fieldId={`laying.${rules.use.id}.along`}
          label={words.along}
          value={minX}
          limits={ON_CLOTH.along}
          isOptional={false}
          onValue={(mm) => mm !== null && onPut(moveBy(rules, place, mm - minX, 0), steps.move(name))}
        />
      </div>
      <div className="field-row">
        <span className="measure-name">{words.across}</span>
        <LengthInput
          fieldId={`laying.${rules.use.id}.across`}
          label={words.across}
          value={minY}
          limits={ON_CLOTH.across}
          isOptional={false}
          onValue={(mm) => mm !== null && onPut(moveBy(rules, place, 0, mm - minY), steps.move(name))}
        />
      </div>
      <SheetChoice count={of.stock.pieces?.length ?? 1} place={place} name={name} onPut={onPut} />
      {most > 0 && <TurnSlider rules={rules} place={place} name={name} onPut={onPut} />}
      <div className="drawn-tools">
        {straight.length > 1 && (
          <button
            type="button"
            className="plain"
            onClick={() => onPut(turnOn(rules, place), steps.turn(name))}
          >
            {words.halfTurn}
          </button>
        )}
        <label className="check-row">
          <input
            type="checkbox"
            checked={place.isHeld}
            onChange={(event) =>
              onPut(
                { ...place, isHeld: event.target.checked },
                event.target.checked ? steps.lock(name) : steps.unlock(name),
              )
            }
          />
          {words.lock}
        </label>
      </div>
      {(way?.latticeX || way?.latticeY) && <p className="measure-how">{words.snaps}</p>}
    </>
  );
}

interface PartProps extends Pick<OnePieceProps, 'place' | 'onPut'> {
  readonly name: string;
}

function SheetChoice({ count, place, name, onPut }: PartProps & { readonly count: number }) {
  const { chosen: words, steps } = useWords().laying;
  if (count < 2) return null;
  return (
    <div className="field-row">
      <label className="measure-name" htmlFor="laid-sheet">
        {words.sheet}
      </label>
      <select
        id="laid-sheet"
        value={place.sheet}
        onChange={(event) => onPut({ ...place, sheet: Number(event.target.value) }, steps.move(name))}
      >
        {Array.from({ length: count }, (_, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: pieces of cloth go by their number
          <option key={i} value={i}>
            {i + 1}
          </option>
        ))}
      </select>
    </div>
  );
}

/** Off the grain, as far as is allowed; near the middle it is straight. */
function TurnSlider({ rules, place, name, onPut }: PartProps & { readonly rules: LayRules }) {
  const { chosen: words, steps, cloth } = useWords().laying;
  const numbers = useNumbers();
  const { most, now, off } = turnsByHand(rules, place);
  const degrees = (angle: number) => cloth.degrees(numbers.plain((180 * Math.abs(angle)) / Math.PI, 1));
  return (
    <label className="blend">
      <span className="measure-name">
        {words.turn}:{' '}
        {Math.abs(off) < 1e-4
          ? words.straight
          : off > 0
            ? words.toLeft(degrees(off))
            : words.toRight(degrees(off))}
      </span>
      <input
        type="range"
        min={-most}
        max={most}
        step={most / 10}
        value={off}
        onChange={(event) => {
          const turn = Number(event.target.value);
          onPut(turnTo(rules, place, now + (Math.abs(turn) < most / 20 ? 0 : turn)), steps.turn(name));
        }}
      />
    </label>
  );
}
