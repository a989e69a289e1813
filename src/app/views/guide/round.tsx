import { useEffect, useRef, useState } from 'react';
import type { Help } from '../../../language/english/help.ts';
import { STAGES } from '../../store/index.ts';
import { Icon } from '../parts/icon.tsx';
import { useActions, useApp, useWorkroom } from '../parts/workroom-context.tsx';
import { lightThing } from './light-thing.ts';
import { STOPS, type Stop } from './round-stops.ts';
import { useHelp } from './use-help.ts';

/** A round of the page, stop by stop. It only looks: the page stays as usable as ever, and nothing in the project changes. */
export function Round() {
  const at = useApp((state) => state.roundAt);
  const help = useHelp();
  return at !== null && help ? <StopSheet at={at} round={help.round} /> : null;
}

interface StopSheetProps {
  readonly at: number;
  readonly round: Help['round'];
}

function StopSheet({ at, round }: StopSheetProps) {
  const stop = STOPS[at];
  const isLast = at === STOPS.length - 1;
  const actions = useActions();
  const { store } = useWorkroom();
  const [begun] = useState(() => store.getState().stage);
  const next = useRef<HTMLButtonElement>(null);
  const { ring, sheet, isFound } = useLight(stop);
  const hasForm = useApp((state) => state.form !== null);
  const leave = () => {
    actions.showRound(null);
    document.getElementById('work')?.focus({ preventScroll: true });
  };
  const goOn = () => {
    if (!isLast) return actions.showRound(at + 1);
    actions.goTo(begun);
    leave();
  };
  const goBack = () => {
    if (at === 0) return;
    actions.showRound(at - 1);
    // Back at the first stop this button rests.
    if (at === 1) next.current?.focus();
  };
  useRoundKeys({ leave, goOn: () => !isLast && goOn(), goBack });
  useEffect(() => actions.goTo(stop.stage), [actions, stop]);
  useEffect(() => next.current?.focus({ preventScroll: true }), []);
  const text = isFound || hasForm ? round.stops[stop.id] : `${round.stops[stop.id]} ${round.notYet}`;
  return (
    <>
      <div ref={ring} className="round-ring" hidden />
      <section ref={sheet} className="round" aria-label={round.title}>
        <div className="round-head">
          <p className="quiet">{round.place(at + 1, STOPS.length)}</p>
          <button type="button" className="plain" onClick={leave}>
            {round.leave}
            <Icon name="close" />
          </button>
        </div>
        <Told text={text} />
        <div className="round-tools">
          <button type="button" className="plain" disabled={at === 0} onClick={goBack}>
            <Icon name="back" />
            {round.back}
          </button>
          <button ref={next} type="button" className="main" onClick={goOn}>
            {isLast ? round.finish : round.next}
            <Icon name={isLast ? 'tick' : 'next'} />
          </button>
        </div>
      </section>
    </>
  );
}

/** Comes a moment after its place on the page, so that the first text is read out as the others are. */
function Told({ text }: { readonly text: string }) {
  const [told, setTold] = useState('');
  useEffect(() => setTold(text), [text]);
  return (
    <p className="round-text" aria-live="polite">
      {told}
    </p>
  );
}

/** Lights the thing of a stop, or the name of its stage while the thing is not there. */
function useLight(stop: Stop) {
  const ring = useRef<HTMLDivElement>(null);
  const sheet = useRef<HTMLElement>(null);
  const [isFound, setIsFound] = useState(true);
  useEffect(() => {
    if (!ring.current || !sheet.current) return;
    const number = STAGES.findIndex(({ id }) => id === stop.stage) + 1;
    return lightThing({
      findThing: () => document.querySelector(`[data-stage='${stop.stage}'] ${stop.thing}`),
      findInstead: () => document.querySelector(`.stage-bar li:nth-child(${number}) button`),
      ring: ring.current,
      sheet: sheet.current,
      onFound: setIsFound,
    });
  }, [stop]);
  return { ring, sheet, isFound };
}

interface RoundKeys {
  readonly leave: () => void;
  readonly goOn: () => void;
  readonly goBack: () => void;
}

/** Escape leaves from anywhere but a dialog; arrows go on and back while the focus is in the sheet. */
function useRoundKeys({ leave, goOn, goBack }: RoundKeys): void {
  useEffect(() => {
    const onKey = ({ key, target, defaultPrevented }: KeyboardEvent) => {
      const isInSheet = target instanceof Element && target.closest('.round') !== null;
      if (key === 'Escape' && !defaultPrevented && !document.querySelector('dialog[open]')) leave();
      else if (isInSheet && key === 'ArrowRight') goOn();
      else if (isInSheet && key === 'ArrowLeft') goBack();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  });
}
