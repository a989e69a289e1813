import { withUsual } from '../../../core/base/index.ts';
import { LAYING_OPTIONS, type Stock, type UseId } from '../../../core/laying/index.ts';
import type { LaySeen } from '../../store/index.ts';
import { LengthInput } from '../parts/length-input.tsx';
import { LengthRow } from '../parts/length-row.tsx';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { ShapeList, squareAt } from './own-stock.tsx';

const DEGREE = Math.PI / 180;
/** Offered; what a file says otherwise is offered too. */
const TOLERANCES = [0, 1, 2, 3, 5, 10].map((degrees) => degrees * DEGREE);
const SHRINKAGES = [0, 0.01, 0.02, 0.03, 0.05, 0.07, 0.1];

const AS_USUAL = 'usual';

interface ClothFieldsProps {
  readonly use: UseId;
  readonly seen: LaySeen;
}

/** What the pieces are laid on: width, selvedges, which way up, how near to each other, and flaws. */
export function ClothFields({ use: id, seen }: ClothFieldsProps) {
  const { cloth: words } = useWords().laying;
  const { stock } = seen.of;
  const { use } = seen.rules;
  const set = useSetStock(id);
  const options = withUsual(LAYING_OPTIONS, stock);
  return (
    <section className="lay-cloth-fields" aria-labelledby="cloth-title">
      <h3 id="cloth-title">{use.isCloth ? words.title : words.board}</h3>
      {!stock.pieces && <SizeFields id={id} seen={seen} />}
      {use.isCloth && !stock.pieces && (
        <LengthRow
          name={words.selvedge}
          fieldId={`laying.${id}.selvedge`}
          value={stock.selvedge}
          usual={LAYING_OPTIONS.selvedge.usual}
          limits={LAYING_OPTIONS.selvedge}
          onValue={(mm) => set({ selvedge: mm })}
        />
      )}
      {use.isCloth && !stock.pieces && (
        <label className="check-row">
          <input
            type="checkbox"
            checked={options.isFolded}
            onChange={(event) => set({ isFolded: event.target.checked || undefined })}
          />
          {words.folded}
        </label>
      )}
      {use.isCloth && <Ways id={id} stock={stock} />}
      <LengthRow
        name={words.gap}
        fieldId={`laying.${id}.leastGap`}
        value={stock.leastGap}
        usual={use.gap}
        limits={LAYING_OPTIONS.leastGap}
        onValue={(mm) => set({ leastGap: mm })}
      />
      {use.isCloth && <ClothNumbers id={id} stock={stock} />}
      {!stock.pieces && <Flaws id={id} seen={seen} />}
    </section>
  );
}

/** How wide, and how long where that is given. */
function SizeFields({ id, seen }: { readonly id: UseId; readonly seen: LaySeen }) {
  const { cloth: words } = useWords().laying;
  const { stock } = seen.of;
  const { use } = seen.rules;
  const set = useSetStock(id);
  return (
    <>
      <LengthRow
        name={use.isCloth ? words.width : words.boardWidth}
        fieldId={`laying.${id}.stockWidth`}
        value={stock.stockWidth}
        usual={use.width}
        limits={LAYING_OPTIONS.stockWidth}
        onValue={(mm) => set({ stockWidth: mm })}
      />
      {use.length === undefined ? (
        <div className="field-row">
          <span className="measure-name">{words.clothLength}</span>
          <LengthInput
            fieldId={`laying.${id}.stockLength`}
            label={words.clothLength}
            value={stock.stockLength ?? null}
            limits={LAYING_OPTIONS.stockLength}
            isOptional
            onValue={(mm) => set({ stockLength: mm ?? undefined })}
          />
        </div>
      ) : (
        <LengthRow
          name={words.length}
          fieldId={`laying.${id}.stockLength`}
          value={stock.stockLength}
          usual={use.length}
          limits={LAYING_OPTIONS.stockLength}
          onValue={(mm) => set({ stockLength: mm })}
        />
      )}
    </>
  );
}

function ClothNumbers({ id, stock }: { readonly id: UseId; readonly stock: Stock }) {
  const { cloth: words } = useWords().laying;
  const numbers = useNumbers();
  const set = useSetStock(id);
  const options = withUsual(LAYING_OPTIONS, stock);
  const degrees = (angle: number) =>
    angle === 0 ? words.none : words.degrees(numbers.plain(angle / DEGREE, 1));
  return (
    <>
      <NumberChoice
        name={words.tolerance}
        id={`${id}-tolerance`}
        value={options.grainTolerance}
        offered={TOLERANCES.filter((angle) => angle <= LAYING_OPTIONS.grainTolerance.max)}
        say={degrees}
        onValue={(grainTolerance) => set({ grainTolerance })}
      />
      <NumberChoice
        name={words.shrinkage}
        id={`${id}-shrinkage`}
        value={options.shrinkage}
        offered={SHRINKAGES.filter((share) => share <= LAYING_OPTIONS.shrinkage.max)}
        say={(share) => numbers.percent(share, 0)}
        onValue={(shrinkage) => set({ shrinkage })}
      />
    </>
  );
}

function useSetStock(id: UseId) {
  const actions = useActions();
  const { steps } = useWords().laying;
  return (change: Parameters<typeof actions.setStock>[1]) => actions.setStock(id, change, steps.cloth);
}

function Ways({ id, stock }: { readonly id: UseId; readonly stock: Stock }) {
  const { cloth: words } = useWords().laying;
  const set = useSetStock(id);
  // A print has a top, as a rule; plain cloth has none.
  const usual = (stock.print?.kind ?? LAYING_OPTIONS.print.kind.usual) === 'plain' ? 'both' : 'one';
  return (
    <div className="field-row">
      <label className="measure-name" htmlFor={`${id}-ways`}>
        {words.ways}
      </label>
      <select
        id={`${id}-ways`}
        value={stock.ways ?? AS_USUAL}
        onChange={(event) =>
          set({ ways: LAYING_OPTIONS.ways.choices.find((way) => way === event.target.value) })
        }
      >
        <option value={AS_USUAL}>{words.asUsual(words.way[usual])}</option>
        {LAYING_OPTIONS.ways.choices.map((way) => (
          <option key={way} value={way}>
            {words.way[way]}
          </option>
        ))}
      </select>
    </div>
  );
}

interface NumberChoiceProps {
  readonly name: string;
  readonly id: string;
  readonly value: number;
  readonly offered: readonly number[];
  readonly say: (value: number) => string;
  readonly onValue: (value: number) => void;
}

function NumberChoice({ name, id, value, offered, say, onValue }: NumberChoiceProps) {
  const isSame = (other: number) => Math.abs(other - value) < 1e-9;
  const all = offered.some(isSame) ? offered : [...offered, value].sort((a, b) => a - b);
  return (
    <div className="field-row">
      <label className="measure-name" htmlFor={id}>
        {name}
      </label>
      <select
        id={id}
        value={all.findIndex(isSame)}
        onChange={(event) => onValue(all[Number(event.target.value)])}
      >
        {all.map((one, i) => (
          <option key={one} value={i}>
            {say(one)}
          </option>
        ))}
      </select>
    </div>
  );
}

function Flaws({ id, seen }: { readonly id: UseId; readonly seen: LaySeen }) {
  const { cloth: words, steps } = useWords().laying;
  const drag = useApp((state) => state.layWork.drag);
  const actions = useActions();
  const { flaws = [] } = seen.of.stock;
  const { ground } = seen.rules;
  return (
    <details className="printer" open={flaws.length > 0}>
      <summary>{words.flaws}</summary>
      <p className="measure-how">{words.aboutFlaws}</p>
      <button
        type="button"
        className="plain"
        aria-pressed={drag === 'flaw'}
        onClick={() => actions.dragWith(drag === 'flaw' ? 'pieces' : 'flaw')}
      >
        {words.drawFlaw}
      </button>
      <ShapeList
        shapes={flaws}
        fieldId={`laying.${id}.flaws`}
        least={3}
        nameOf={words.flaw}
        addName={words.addFlaw}
        first={squareAt(0, Math.round(ground.usableFrom + ground.usableWidth / 2))}
        onShapes={(list) => actions.setStock(id, { flaws: list.length > 0 ? list : undefined }, steps.flaw)}
      />
    </details>
  );
}
