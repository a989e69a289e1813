import { useEffect, useMemo, useState } from 'react';
import type { Form } from '../../../core/form/index.ts';
import { type Seam, seamColour } from '../../store/index.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { pathOf } from './piece-path.ts';
import { WalkPicture } from './walk-picture.tsx';
import { type SeamSide, sidesOfSeam } from './walk-seam.ts';

const SECONDS = 9;

/** One edge rolled along its partner, to see that both are as long and their marks meet. */
export function SeamWalk({ form }: { readonly form: Form }) {
  const pairs = useMemo(
    () =>
      form.shell.seams.flatMap((seam, index) => {
        const sides = sidesOfSeam(form, seam);
        return sides ? [{ seam, sides, colour: seamColour(index) }] : [];
      }),
    [form],
  );
  const [chosen, setChosen] = useState<string | null>(null);
  const pair = pairs.find(({ seam }) => seam.id === chosen) ?? pairs[0];
  const actions = useActions();
  const { walk: words } = useWords();
  const say = useSay();
  if (!pair) return null;
  return (
    <section className="seam-walk" aria-labelledby="walk-title">
      <h3 id="walk-title">{words.title}</h3>
      <label className="field-row">
        <span className="measure-name">{words.seam}</span>
        <select
          value={pair.seam.id}
          onChange={(event) => {
            setChosen(event.target.value);
            actions.pointAt({ kind: 'seam', id: event.target.value });
          }}
        >
          {pairs.map(({ seam, sides }) => (
            <option key={seam.id} value={seam.id}>
              {words.option(seam.letter, say(sides[0].name), say(sides[1].name))}
            </option>
          ))}
        </select>
      </label>
      <Walk key={pair.seam.id} seam={pair.seam} sides={pair.sides} colour={pair.colour} />
    </section>
  );
}

interface WalkProps {
  readonly seam: Seam;
  readonly sides: readonly [SeamSide, SeamSide];
  readonly colour: string;
}

function Walk({ seam, sides, colour }: WalkProps) {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const { fraction, isPlaying, setFraction, play, pause } = usePlayer(SECONDS);
  const [a, b] = sides;
  const { walk: words } = useWords();
  const say = useSay();
  const { fineLength, small } = useNumbers();
  const lengths = sides.map(({ along }) => along[along.length - 1]);
  const outlines = useMemo(() => [pathOf(a.cutLine, true), pathOf(b.cutLine, true)] as const, [a, b]);
  return (
    <>
      <WalkPicture
        sides={sides}
        outlines={outlines}
        fraction={fraction}
        colour={colour}
        letter={seam.letter}
      />
      <div className="walk-tools">
        <button type="button" className="plain" onClick={isPlaying ? pause : play}>
          {isPlaying ? words.pause : words.play}
        </button>
        <input
          type="range"
          min={0}
          max={1}
          step={0.001}
          value={fraction}
          aria-label={words.place}
          aria-valuetext={words.of(fineLength(fraction * lengths[0], unit), fineLength(lengths[0], unit))}
          onChange={(event) => {
            pause();
            setFraction(Number(event.target.value));
          }}
        />
      </div>
      <p className="measure-how" aria-live="off">
        {words.along(
          fineLength(fraction * lengths[0], unit),
          say(a.name),
          fineLength(fraction * lengths[1], unit),
          say(b.name),
        )}{' '}
        {a.marks.length === 0 ? words.noMarks : words.marks(a.marks.length, small(worstMark(a, b), unit))}
      </p>
    </>
  );
}

/** How far apart the marks of both sides lie at most, in hundredths of a millimetre rounded up to one. */
function worstMark(a: SeamSide, b: SeamSide): number {
  return Math.max(0.01, ...a.marks.map((mark, k) => Math.abs(mark - (b.marks[k] ?? Number.NaN))));
}

/** A place between 0 and 1 that can run by itself; where motion is not wanted, playing goes in ten still steps. */
function usePlayer(seconds: number) {
  const [fraction, setFraction] = useState(0);
  const [isPlaying, setIsPlaying] = useState(false);
  useEffect(() => {
    if (!isPlaying) return;
    const isStill = window.matchMedia('(prefers-reduced-motion: reduce)').matches;
    let last = performance.now();
    let frame = 0;
    const step = (now: number) => {
      const passed = (now - last) / 1000 / seconds;
      if (!isStill || passed >= 0.1) {
        last = now;
        setFraction((before) => Math.min(1, before + passed));
      }
      frame = requestAnimationFrame(step);
    };
    frame = requestAnimationFrame(step);
    return () => cancelAnimationFrame(frame);
  }, [isPlaying, seconds]);
  useEffect(() => {
    if (fraction >= 1) setIsPlaying(false);
  }, [fraction]);
  const play = () => {
    setFraction((before) => (before >= 1 ? 0 : before));
    setIsPlaying(true);
  };
  return { fraction, isPlaying, setFraction, play, pause: () => setIsPlaying(false) };
}
