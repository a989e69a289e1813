import { useMemo } from 'react';
import type { Form } from '../../../core/form/index.ts';
import { type BodyPlace, layThread, namedPlaces } from '../../store/index.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** A thread laid over the body between two places: how long it is, and how far they are apart. */
export function ThreadTool() {
  const form = useApp((state) => state.form);
  const thread = useApp((state) => state.thread);
  const actions = useActions();
  const words = useWords().thread;
  if (!form) return null;
  const { from, to, isPicking } = thread;
  return (
    <section className="thread-tool" aria-labelledby="thread-title">
      <h3 id="thread-title">{words.title}</h3>
      <p className="measure-how">{isPicking ? (from && !to ? words.pickTo : words.pickFrom) : words.about}</p>
      <div className="thread-ends">
        <EndChoice
          form={form}
          label={words.from}
          place={from}
          onPlace={(place) => actions.setThread({ from: place })}
        />
        <EndChoice
          form={form}
          label={words.to}
          place={to}
          onPlace={(place) => actions.setThread({ to: place })}
        />
      </div>
      <div className="thread-buttons">
        <button
          type="button"
          className="plain"
          aria-pressed={isPicking}
          onClick={() =>
            actions.setThread(isPicking ? { isPicking: false } : { from: null, to: null, isPicking: true })
          }
        >
          {words.point}
        </button>
        {(from || to) && (
          <button type="button" onClick={() => actions.setThread({ from: null, to: null, isPicking: false })}>
            {words.takeOff}
          </button>
        )}
      </div>
      {from && to && <ThreadLengths form={form} from={from} to={to} />}
    </section>
  );
}

interface EndChoiceProps {
  readonly form: Form;
  readonly label: string;
  readonly place: BodyPlace | null;
  readonly onPlace: (place: BodyPlace) => void;
}

function EndChoice({ form, label, place, onPlace }: EndChoiceProps) {
  const { thread: words, places: names } = useWords();
  const places = useMemo(() => namedPlaces(form), [form]);
  return (
    <label>
      <span>{label}</span>
      <select
        value={place === null ? '' : (place.id ?? 'pointed')}
        onChange={(event) => {
          const chosen = places.find(({ id }) => id === event.target.value);
          if (chosen) onPlace(chosen);
        }}
      >
        {place === null && (
          <option value="" disabled>
            {words.place}
          </option>
        )}
        {place?.id === null && <option value="pointed">{words.pointed}</option>}
        {places.map(({ id }) => (
          <option key={id} value={id ?? ''}>
            {id && names[id]}
          </option>
        ))}
      </select>
    </label>
  );
}

interface ThreadLengthsProps {
  readonly form: Form;
  readonly from: BodyPlace;
  readonly to: BodyPlace;
}

function ThreadLengths({ form, from, to }: ThreadLengthsProps) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const words = useWords().thread;
  const numbers = useNumbers();
  const laid = useMemo(() => layThread(form, from, to), [form, from, to]);
  if (!laid) return <p className="quiet">{words.noWay}</p>;
  return (
    <dl className="numbers" aria-live="polite">
      <div>
        <dt>{words.over}</dt>
        <dd>{numbers.length(laid.over, unit)}</dd>
      </div>
      <div>
        <dt>{words.straight}</dt>
        <dd>{numbers.length(laid.straight, unit)}</dd>
      </div>
    </dl>
  );
}
