import { type KeyboardEvent, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { phrasesOf } from '../../../core/base/index.ts';
import type { WorkStep } from '../../../core/form/index.ts';
import type { MakingPhrases } from '../../../core/making/index.ts';
import { Icon } from '../parts/icon.tsx';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';
import { BenchStep } from './bench-step.tsx';
import { useStepPictures } from './use-step-pictures.ts';
import { useSwipe } from './use-swipe.ts';

const NONE: readonly string[] = [];

const phrase = phrasesOf<MakingPhrases>();

interface BenchProps {
  readonly steps: readonly WorkStep[];
  readonly index: number;
}

/** One step fills the page, large, for hands that hold needle and tape: turned by buttons, by swiping, by arrow keys. */
export function BenchDialog({ steps, index }: BenchProps) {
  const actions = useActions();
  const words = useWords().bench;
  const say = useSay();
  const dialog = useRef<HTMLDialogElement>(null);
  const page = useRef<HTMLElement>(null);
  const step = steps[index];
  const pictures = useStepPictures(step.id);
  useEffect(() => {
    dialog.current?.showModal();
    page.current?.focus();
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another step begins at its top
  useLayoutEffect(() => {
    page.current?.scrollTo(0, 0);
  }, [step.id]);
  const turn = (by: 1 | -1): void => {
    const to = steps[index + by];
    if (to) actions.workAtStep(to.id);
  };
  return (
    <dialog
      ref={dialog}
      className="bench"
      aria-label={words.title}
      onClose={actions.leaveBench}
      onKeyDown={(event) => turnByKey(event, turn)}
    >
      {/* Closed by the browser, so that the focus goes back to the button it came from. */}
      <BenchHead steps={steps} index={index} onLeave={() => dialog.current?.close()} />
      <ScreenWord />
      {/* biome-ignore-start lint/a11y/noNoninteractiveTabindex: arrow keys scroll it */}
      <section
        className="bench-page"
        ref={page}
        tabIndex={0}
        aria-label={say(step.title)}
        {...useSwipe(turn)}
      >
        <BenchStep key={step.id} steps={steps} step={step} picture={pictures.get(step.id)} />
      </section>
      {/* biome-ignore-end lint/a11y/noNoninteractiveTabindex: see above */}
      <p className="visually-hidden" aria-live="polite">
        {words.said(index + 1, steps.length, say(step.title))}
      </p>
      <BenchFoot steps={steps} index={index} onTurn={turn} />
    </dialog>
  );
}

/** Arrows turn, but not in a field; there Escape leaves the field alone. */
function turnByKey(event: KeyboardEvent, turn: (by: 1 | -1) => void): void {
  const { target, key } = event;
  if (!(target instanceof HTMLElement)) return;
  const isField = target instanceof HTMLInputElement || target instanceof HTMLSelectElement;
  if (key === 'Escape' && target instanceof HTMLInputElement) {
    event.preventDefault();
    target.blur();
  } else if (!isField && key === 'ArrowRight') turn(1);
  else if (!isField && key === 'ArrowLeft') turn(-1);
}

function BenchHead({ steps, index, onLeave }: BenchProps & { readonly onLeave: () => void }) {
  const actions = useActions();
  const words = useWords().bench;
  const say = useSay();
  const done = useApp((state) => state.project?.making?.done ?? NONE);
  return (
    <header className="bench-head">
      <p className="bench-place">
        <span>{words.place(index + 1, steps.length)}</span>
        <span className="quiet">{say(phrase(`phase.${steps[index].phase}`))}</span>
      </p>
      <label className="bench-steps">
        <span>{words.steps}</span>
        <select
          aria-label={words.goTo}
          value={steps[index].id}
          onChange={(event) => actions.workAtStep(event.target.value)}
        >
          {steps.map(({ id, title }, i) => (
            <option key={id} value={id}>
              {words.choice(i + 1, say(title), done.includes(id))}
            </option>
          ))}
        </select>
      </label>
      <button type="button" className="bench-leave" onClick={onLeave}>
        <Icon name="close" />
        <span>{words.leave}</span>
      </button>
    </header>
  );
}

function BenchFoot({ steps, index, onTurn }: BenchProps & { readonly onTurn: (by: 1 | -1) => void }) {
  const actions = useActions();
  const { bench: words, core } = useWords();
  const say = useSay();
  const { id, title } = steps[index];
  const isDone = useApp((state) => state.project?.making?.done.includes(id) ?? false);
  return (
    <footer className="bench-foot">
      <button type="button" disabled={index === 0} onClick={() => onTurn(-1)}>
        <Icon name="back" />
        <span>{words.back}</span>
      </button>
      <button
        type="button"
        className="bench-done"
        aria-pressed={isDone}
        onClick={() => actions.setDone(id, !isDone, core.inSentence(say(title)))}
      >
        <Icon name="tick" />
        <span>{words.done}</span>
      </button>
      <button type="button" disabled={index === steps.length - 1} onClick={() => onTurn(1)}>
        <span>{words.next}</span>
        <Icon name="next" />
      </button>
    </footer>
  );
}

/** Where the screen cannot be kept on, how the maker can. */
function ScreenWord() {
  const { keepScreenOn } = useServices();
  const words = useWords().bench;
  const [isKept, setIsKept] = useState(true);
  useEffect(() => keepScreenOn(setIsKept), [keepScreenOn]);
  return isKept ? null : <p className="bench-screen quiet">{words.screenGoesOff}</p>;
}
