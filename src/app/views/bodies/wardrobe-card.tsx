import { type RefObject, useId, useRef, useState } from 'react';
import type { BodyCard, KeptBody, WardrobeCard, WholeBody } from '../../store/index.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useApp, useServices } from '../parts/workroom-context.tsx';
import { BodyShape } from './body-shape.tsx';
import type { Pair } from './chosen-pair.tsx';
import { NamesForm, VersionForm } from './naming-forms.tsx';
import { useWardrobe } from './wardrobe-context.tsx';

/** What every card can do. */
interface Handling {
  /** Names of the persons there are. */
  readonly persons: readonly string[];
  readonly pair: Pair;
  readonly onClose: () => void;
  readonly run: (work: () => Promise<void>) => Promise<void>;
  readonly onDeleted: (whole: WholeBody | null) => void;
}

/** A card for each person, with all bodies of that person on it. */
export function WardrobeCards({
  cards,
  ...handling
}: Handling & { readonly cards: readonly WardrobeCard[] }) {
  return (
    <ul className="wardrobe-cards">
      {cards.map(({ key, person, bodies }) => (
        <li key={key} className="wardrobe-card" data-several={bodies.length > 1 || undefined}>
          {bodies.length === 1 ? (
            <OneBody card={bodies[0]} name={bodies[0].body.name} {...handling} />
          ) : (
            <Versions person={person ?? ''} bodies={bodies} {...handling} />
          )}
        </li>
      ))}
    </ul>
  );
}

interface VersionsProps extends Handling {
  readonly person: string;
  readonly bodies: readonly BodyCard[];
}

function Versions({ person, bodies, ...handling }: VersionsProps) {
  const title = useId();
  return (
    <>
      <h4 id={title}>{person}</h4>
      <ul aria-labelledby={title}>
        {bodies.map((card) => (
          <li key={card.body.id}>
            <OneBody card={card} name={card.label || card.body.name} {...handling} />
          </li>
        ))}
      </ul>
    </>
  );
}

interface OneBodyProps extends Handling {
  readonly card: BodyCard;
  /** As it is called on its card. */
  readonly name: string;
}

function OneBody({ card, name, ...handling }: OneBodyProps) {
  const services = useServices();
  const { untitled } = useWords().top;
  const isOpen = useApp((state) => state.bodyId === card.body.id);
  const { body } = card;
  const full = body.name || untitled;
  return (
    <article className="one-body" data-open={isOpen || undefined} aria-label={full}>
      <button
        type="button"
        className="body-open"
        disabled={isOpen}
        onClick={() => {
          handling.onClose();
          void services.openText(body.text, full, body.id);
        }}
      >
        <BodyShape picture={card.picture} />
        <span className="card-name">{name || untitled}</span>
        <BodyState card={card} isOpen={isOpen} />
      </button>
      <BodyTools card={card} name={full} isOpen={isOpen} {...handling} />
    </article>
  );
}

/** When it was last changed, its size, and how far its making has got. */
function BodyState({ card, isOpen }: { readonly card: BodyCard; readonly isOpen: boolean }) {
  const { words } = useWardrobe();
  const numbers = useNumbers();
  const units = useApp((state) => state.project?.displayUnits ?? card.units);
  const isAtBench = useApp((state) => state.bench?.bodyId === card.body.id);
  const { figure, size, measured, steps, ticked, readings, isPrinted } = card;
  const lengths = size.map((mm) => (mm === null ? '–' : numbers.length(mm, units, { bare: true })));
  const making = [
    words.measured(measured),
    ...(isPrinted ? [words.printed] : []),
    ...(steps && ticked > 0 ? [words.steps(steps.done, steps.all)] : []),
    ...(!steps && ticked > 0 ? [words.ticked(ticked)] : []),
    ...(readings > 0 ? [words.readings(readings)] : []),
    ...(isAtBench ? [words.atBench] : []),
  ];
  return (
    <>
      <span className="card-numbers">
        {size.every((mm) => mm === null) ? (
          words.noSize
        ) : (
          <>
            {words.size[figure]}{' '}
            <span className="body-lengths">
              {lengths.join(' · ')} {units}
            </span>
          </>
        )}
      </span>
      <span className="card-numbers">{making.join(' · ')}</span>
      <span className="card-numbers">
        <time dateTime={dateTimeOf(card.body.at)}>{numbers.time(card.body.at)}</time>
        {isOpen && <strong> · {words.openNow}</strong>}
      </span>
    </>
  );
}

function dateTimeOf(at: number): string | undefined {
  const date = new Date(at);
  return Number.isNaN(date.getTime()) ? undefined : date.toISOString();
}

interface BodyToolsProps extends Handling {
  readonly card: BodyCard;
  readonly name: string;
  readonly isOpen: boolean;
}

function BodyTools({ card, name, isOpen, persons, pair, run, onDeleted }: BodyToolsProps) {
  const { bodies, words } = useWardrobe();
  const [form, setForm] = useState<'names' | 'version' | null>(null);
  const summary = useRef<HTMLElement>(null);
  const { body } = card;
  /** The focus goes back to where the form was asked for. */
  const leave = () => {
    setForm(null);
    summary.current?.focus();
  };
  const settle = (work: () => Promise<void>) => {
    leave();
    void run(work);
  };
  return (
    <>
      <div className="body-tools">
        <label className="body-compare">
          <input
            type="checkbox"
            checked={pair.isChosen(body.id)}
            aria-label={words.compareOne(name)}
            onChange={(event) => pair.choose(body.id, event.target.checked)}
          />
          <span>{words.compare}</span>
        </label>
        <MoreOfBody
          body={body}
          name={name}
          isOpen={isOpen}
          summary={summary}
          onForm={setForm}
          run={run}
          onDeleted={onDeleted}
        />
      </div>
      {form === 'names' && (
        <NamesForm
          card={card}
          shown={name}
          persons={persons}
          onCancel={leave}
          onKeep={(names) => settle(() => bodies.rename(body, names))}
        />
      )}
      {form === 'version' && (
        <VersionForm
          person={card.person ?? name}
          onCancel={leave}
          onKeep={(label) => settle(() => bodies.beginVersion(body, label))}
        />
      )}
    </>
  );
}

interface MoreOfBodyProps extends Pick<BodyToolsProps, 'name' | 'isOpen' | 'run' | 'onDeleted'> {
  readonly body: KeptBody;
  readonly summary: RefObject<HTMLElement | null>;
  readonly onForm: (form: 'names' | 'version') => void;
}

/** What is not needed every day. */
function MoreOfBody({ body, name, isOpen, summary, onForm, run, onDeleted }: MoreOfBodyProps) {
  const { bodies, words } = useWardrobe();
  return (
    <details>
      <summary ref={summary}>
        {words.more} <span className="visually-hidden">{words.moreOf(name)}</span>
      </summary>
      <div className="body-more">
        <button
          type="button"
          className="plain"
          aria-label={words.versionOne(name)}
          onClick={() => onForm('version')}
        >
          {words.version}
        </button>
        <button
          type="button"
          className="plain"
          aria-label={words.renameOne(name)}
          onClick={() => onForm('names')}
        >
          {words.rename}
        </button>
        <button
          type="button"
          className="plain"
          aria-label={words.duplicateOne(name)}
          onClick={() => void run(() => bodies.duplicate(body))}
        >
          {words.duplicate}
        </button>
        {!isOpen && (
          <button
            type="button"
            className="plain"
            aria-label={words.deleteOne(name)}
            onClick={() => void run(async () => onDeleted(await bodies.remove(body.id)))}
          >
            {words.delete}
          </button>
        )}
      </div>
    </details>
  );
}
