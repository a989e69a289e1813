import { useRef, useState } from 'react';
import {
  markAtPlace,
  PHOTO_SIDES,
  type Photo,
  type PhotoMark,
  type PhotoSide,
  placeOfMark,
  scaleByMarks,
} from '../../store/index.ts';
import { LengthInput } from '../parts/length-input.tsx';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';

/** A photo under the body from the front and from the side: chosen, scaled by two points, moved. */
export function PhotoTools() {
  const words = useWords().photo;
  return (
    <section className="photo-tools" aria-labelledby="photo-title">
      <h3 id="photo-title">{words.title}</h3>
      <p className="measure-how">{words.about}</p>
      {PHOTO_SIDES.map((side) => (
        <OneSide key={side} side={side} />
      ))}
    </section>
  );
}

function OneSide({ side }: { readonly side: PhotoSide }) {
  const photo = useApp((state) => state.photos[side]);
  const isSeen = useApp((state) => state.view.name === side && state.layers.photo);
  const services = useServices();
  const words = useWords().photo;
  const actions = useActions();
  const input = useRef<HTMLInputElement>(null);
  const look = () => {
    actions.showLayer('photo', true);
    actions.turnTo(side);
  };
  return (
    <fieldset className="photo-side">
      <legend className="measure-name">{words.sides[side]}</legend>
      <div className="drawn-tools">
        <button type="button" className="plain" onClick={() => input.current?.click()}>
          {photo ? words.another : words.choose}
        </button>
        <input
          ref={input}
          type="file"
          accept="image/*"
          hidden
          aria-label={words.from[side]}
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = '';
            if (file) void services.addPhoto(file, side);
          }}
        />
        {photo && !isSeen && (
          <button type="button" className="plain" onClick={look}>
            {words.look}
          </button>
        )}
        {photo && (
          <button type="button" onClick={() => actions.removePhoto(side)}>
            {words.takeAway}
          </button>
        )}
      </div>
      {photo && isSeen && <Settings photo={photo} />}
    </fieldset>
  );
}

function Settings({ photo }: { readonly photo: Photo }) {
  const marks = useApp((state) => state.photoMarks);
  const words = useWords().photo;
  const actions = useActions();
  return (
    <>
      <label className="blend">
        <span>{words.strength}</span>
        <input
          type="range"
          min={0.1}
          max={1}
          step={0.05}
          value={photo.opacity}
          onChange={(event) => actions.changePhoto(photo.side, { opacity: Number(event.target.value) })}
        />
      </label>
      <label className="grain-both">
        <input
          type="checkbox"
          checked={photo.isFlipped}
          onChange={(event) => actions.changePhoto(photo.side, { isFlipped: event.target.checked })}
        />
        {words.mirrored}
      </label>
      {marks ? (
        <Scaling photo={photo} marks={marks} />
      ) : (
        <div className="drawn-tools">
          <button type="button" className="plain" onClick={() => actions.markPhoto([])}>
            {words.setScale}
          </button>
          <span className="measure-how">{words.drag}</span>
        </div>
      )}
    </>
  );
}

const LIMITS = { min: 10, max: 3000 };

function Scaling({ photo, marks }: { readonly photo: Photo; readonly marks: readonly PhotoMark[] }) {
  const [apart, setApart] = useState<number | null>(null);
  const [message, setMessage] = useState('');
  const words = useWords().photo;
  const actions = useActions();
  const [a, b] = marks;
  const apply = () => {
    if (!a || !b || apart === null) return;
    const scaled = scaleByMarks(photo, [a, b], apart);
    if (!scaled) {
      setMessage(words.tooNear);
      return;
    }
    actions.changePhoto(photo.side, scaled);
    actions.markPhoto(null);
  };
  return (
    <div className="photo-scaling">
      <p className="measure-how" id="photo-marks-how">
        {words.marksHow}
      </p>
      <div className="pull-points">
        {[0, 1].map((index) => (
          <MarkButton key={index} photo={photo} marks={marks} index={index} />
        ))}
      </div>
      <div className="field-row">
        <span className="measure-name">{words.apart}</span>
        <LengthInput
          fieldId="photoLength"
          label={words.distance}
          value={apart}
          limits={LIMITS}
          isOptional
          onValue={setApart}
        />
      </div>
      {message && (
        <p className="field-message" role="alert">
          {message}
        </p>
      )}
      <div className="drawn-tools">
        <button type="button" className="main" disabled={!a || !b || apart === null} onClick={apply}>
          {words.scale}
        </button>
        <button type="button" onClick={() => actions.markPhoto(null)}>
          {words.leave}
        </button>
      </div>
    </div>
  );
}

const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

interface MarkButtonProps {
  readonly photo: Photo;
  readonly marks: readonly PhotoMark[];
  readonly index: number;
}

/** Sets its point in the photo's middle when there is none yet, so that it can be had without pointing. */
function MarkButton({ photo, marks, index }: MarkButtonProps) {
  const actions = useActions();
  const words = useWords().photo;
  const isNext = index <= marks.length;
  const mark = marks[index] ?? ([photo.width / 2, photo.height * (index === 0 ? 0.25 : 0.75)] as const);
  const put = (at: PhotoMark) =>
    actions.markPhoto(
      index < marks.length ? marks.map((old, i) => (i === index ? at : old)) : [...marks, at],
    );
  return (
    <button
      type="button"
      className="point-button"
      disabled={!isNext}
      aria-label={words.point(index + 1)}
      aria-describedby="photo-marks-how"
      aria-pressed={index < marks.length}
      onClick={() => put(mark)}
      onKeyDown={(event) => {
        const step = STEPS[event.key];
        if (!step) return;
        event.preventDefault();
        const mm = event.shiftKey ? 10 : 1;
        const [x, z] = placeOfMark(photo, mark);
        put(markAtPlace(photo, [x + mm * step[0], z + mm * step[1]]));
      }}
    >
      {index + 1}
    </button>
  );
}
