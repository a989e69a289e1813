import { withUsual } from '../../../core/base/index.ts';
import { type ClothPrint, LAYING_OPTIONS, type UseId, wayOfMeeting } from '../../../core/laying/index.ts';
import type { LaySeen } from '../../store/index.ts';
import { LengthRow } from '../parts/length-row.tsx';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { ClothPhotoTools } from './cloth-photo-tools.tsx';

const PRINT = LAYING_OPTIONS.print;
/** A repeat to begin with, until the maker's own is typed, mm. */
const FIRST_REPEAT = 80;

interface PrintFieldsProps {
  readonly use: UseId;
  readonly seen: LaySeen;
}

/** How the cloth is printed or woven, where it goes on over the seams, and where a motif lies. */
export function PrintFields({ use, seen }: PrintFieldsProps) {
  const { print: words } = useWords().laying;
  const drag = useApp((state) => state.layWork.drag);
  const actions = useActions();
  const given = seen.of.stock.print ?? {};
  const print = withUsual(PRINT, given);
  const set = useSetPrint(use);
  const meets = wayOfMeeting(given);
  const choose = (kind: ClothPrint['kind']) =>
    set({
      kind,
      ...(kind !== 'stripesAlong' && print.along === 0 && { along: FIRST_REPEAT }),
      ...(kind !== 'stripesAcross' && print.across === 0 && { across: FIRST_REPEAT }),
    });
  return (
    <section className="lay-print-fields" aria-labelledby="print-cloth-title">
      <h3 id="print-cloth-title">{words.title}</h3>
      <Choice
        name={words.kind}
        id={`${use}-print`}
        value={print.kind}
        choices={PRINT.kind.choices}
        names={words.kinds}
        onValue={choose}
      />
      {print.kind === 'photo' && <ClothPhotoTools use={use} />}
      {print.kind !== 'plain' && (
        <>
          <Repeats use={use} given={given} />
          <Choice
            name={words.meets}
            id={`${use}-meets`}
            value={meets ?? 'no'}
            choices={PRINT.meets.choices}
            names={words.meet}
            onValue={(value) => set({ meets: value })}
          />
          {meets && (
            <>
              <Choice
                name={words.level}
                id={`${use}-level`}
                value={print.level}
                choices={PRINT.level.choices}
                names={words.levels}
                onValue={(level) => set({ level })}
              />
              <Choice
                name={words.middle}
                id={`${use}-middle`}
                value={print.middle}
                choices={PRINT.middle.choices}
                names={words.middles}
                onValue={(middle) => set({ middle })}
              />
            </>
          )}
          <Shifts use={use} given={given} isMet={meets !== undefined} />
          <button
            type="button"
            className="plain"
            aria-pressed={drag === 'print'}
            onClick={() => actions.dragWith(drag === 'print' ? 'pieces' : 'print')}
          >
            {words.shift}
          </button>
          {seen.rules.use.material === 'shell' && <p className="measure-how">{words.onBody}</p>}
        </>
      )}
    </section>
  );
}

function useSetPrint(use: UseId) {
  const actions = useActions();
  const { steps } = useWords().laying;
  return (change: Parameters<typeof actions.setClothPrint>[1]) =>
    actions.setClothPrint(use, change, steps.print);
}

interface GivenProps {
  readonly use: UseId;
  readonly given: ClothPrint;
}

function Repeats({ use, given }: GivenProps) {
  const { print: words } = useWords().laying;
  const set = useSetPrint(use);
  return (
    <>
      {given.kind !== 'stripesAlong' && (
        <LengthRow
          name={words.along}
          fieldId={`laying.${use}.print.along`}
          value={given.along}
          usual={PRINT.along.usual}
          limits={PRINT.along}
          onValue={(mm) => set({ along: mm })}
        />
      )}
      {given.kind !== 'stripesAcross' && (
        <LengthRow
          name={words.across}
          fieldId={`laying.${use}.print.across`}
          value={given.across}
          usual={PRINT.across.usual}
          limits={PRINT.across}
          onValue={(mm) => set({ across: mm })}
        />
      )}
    </>
  );
}

const SHIFTS = ['firstAlong', 'firstAcross', 'shiftUp', 'shiftAcross'] as const;

function Shifts({ use, given, isMet }: GivenProps & { readonly isMet: boolean }) {
  const { print: words } = useWords().laying;
  const set = useSetPrint(use);
  const isFor = (id: (typeof SHIFTS)[number]) => {
    if (id.startsWith('shift') && !isMet) return false;
    return given.kind === 'stripesAlong'
      ? id.endsWith('Across')
      : given.kind === 'stripesAcross'
        ? !id.endsWith('Across')
        : true;
  };
  return SHIFTS.filter(isFor).map((id) => (
    <LengthRow
      key={id}
      name={words[id]}
      fieldId={`laying.${use}.print.${id}`}
      value={given[id]}
      usual={PRINT[id].usual}
      limits={PRINT[id]}
      onValue={(mm) => set({ [id]: mm })}
    />
  ));
}

interface ChoiceProps<Id extends string> {
  readonly name: string;
  readonly id: string;
  readonly value: Id;
  readonly choices: readonly Id[];
  readonly names: Readonly<Record<Id, string>>;
  readonly onValue: (value: Id) => void;
}

function Choice<Id extends string>({ name, id, value, choices, names, onValue }: ChoiceProps<Id>) {
  return (
    <div className="field-row">
      <label className="measure-name" htmlFor={id}>
        {name}
      </label>
      <select
        id={id}
        value={value}
        onChange={(event) => onValue(choices.find((choice) => choice === event.target.value) ?? value)}
      >
        {choices.map((choice) => (
          <option key={choice} value={choice}>
            {names[choice]}
          </option>
        ))}
      </select>
    </div>
  );
}
