import { useMemo } from 'react';
import { formatLength } from '../../core/base/index.ts';
import type { Form } from '../../core/pipeline/index.ts';
import { type BodyPlace, layThread, namedPlaces } from '../store/index.ts';
import { useActions, useApp } from './workroom-context.tsx';

/** A thread laid over the body between two places: how long it is, and how far they are apart. */
export function ThreadTool() {
  const form = useApp((state) => state.form);
  const thread = useApp((state) => state.thread);
  const actions = useActions();
  if (!form) return null;
  const { from, to, isPicking } = thread;
  return (
    <section className="thread-tool" aria-labelledby="thread-title">
      <h3 id="thread-title">Lay a thread</h3>
      <p className="measure-how">
        {isPicking
          ? from && !to
            ? 'Now click where the thread ends.'
            : 'Click on the body where the thread begins.'
          : 'The shortest way over the surface between two places you choose.'}
      </p>
      <div className="thread-ends">
        <EndChoice
          form={form}
          label="From"
          place={from}
          onPlace={(place) => actions.setThread({ from: place })}
        />
        <EndChoice form={form} label="To" place={to} onPlace={(place) => actions.setThread({ to: place })} />
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
          Point on the body
        </button>
        {(from || to) && (
          <button type="button" onClick={() => actions.setThread({ from: null, to: null, isPicking: false })}>
            Take it off
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
  const places = useMemo(() => namedPlaces(form), [form]);
  return (
    <label>
      <span>{label}</span>
      <select
        value={place === null ? '' : place.name || 'pointed'}
        onChange={(event) => {
          const chosen = places.find(({ name }) => name === event.target.value);
          if (chosen) onPlace(chosen);
        }}
      >
        {place === null && (
          <option value="" disabled>
            a place…
          </option>
        )}
        {place?.name === '' && <option value="pointed">where you pointed</option>}
        {places.map(({ name }) => (
          <option key={name} value={name}>
            {name}
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
  const laid = useMemo(() => layThread(form, from, to), [form, from, to]);
  if (!laid) return <p className="quiet">No thread reaches from one to the other.</p>;
  return (
    <dl className="numbers" aria-live="polite">
      <div>
        <dt>Over the surface</dt>
        <dd>{formatLength(laid.over, unit)}</dd>
      </div>
      <div>
        <dt>Straight through</dt>
        <dd>{formatLength(laid.straight, unit)}</dd>
      </div>
    </dl>
  );
}
