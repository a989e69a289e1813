import { useRef, useState } from 'react';
import type { UseId } from '../../../core/laying/index.ts';
import { type ClothPhoto, cropRepeat, type PhotoMark, scaleClothPhoto } from '../../store/index.ts';
import { LengthInput } from '../parts/length-input.tsx';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';
import { ClothPhotoPicture, type PhotoWork } from './cloth-photo-picture.tsx';

/** A photo of the cloth as its print: chosen, scaled by two points, one repeat dragged out. */
export function ClothPhotoTools({ use }: { readonly use: UseId }) {
  const photo = useApp((state) => state.clothPhoto);
  const { photo: words } = useWords().laying;
  const services = useServices();
  const actions = useActions();
  const input = useRef<HTMLInputElement>(null);
  return (
    <div className="cloth-photo">
      <div className="drawn-tools">
        <button type="button" className="plain" onClick={() => input.current?.click()}>
          {photo ? words.another : words.choose}
        </button>
        <input
          ref={input}
          type="file"
          accept="image/*"
          hidden
          aria-label={words.choose}
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = '';
            if (file) void services.addClothPhoto(file, use);
          }}
        />
        {photo ? (
          <button type="button" onClick={() => actions.setClothPhoto(null)}>
            {words.takeAway}
          </button>
        ) : (
          <span className="measure-how">{words.drop}</span>
        )}
      </div>
      <p className="measure-how">{photo ? words.kept : words.missing}</p>
      {photo && <PhotoSetting key={photo.name} use={use} photo={photo} />}
    </div>
  );
}

function PhotoSetting({ use, photo }: { readonly use: UseId; readonly photo: ClothPhoto }) {
  const { photo: words } = useWords().laying;
  const services = useServices();
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const [work, setWork] = useState<PhotoWork | null>(null);
  const [marks, setMarks] = useState<readonly PhotoMark[]>([]);
  const scale = photo.mmPerPixel;
  const setRepeat = (a: PhotoMark, b: PhotoMark) => {
    const repeat = cropRepeat(photo, a, b);
    if (!repeat) return;
    services.changeClothPhoto({ ...photo, repeat }, use);
    setWork(null);
  };
  return (
    <>
      <ClothPhotoPicture photo={photo} work={work} marks={marks} onMarks={setMarks} onRepeat={setRepeat} />
      <p className="measure-how" role="status">
        {scale === null
          ? words.notScaled
          : words.scaled(
              numbers.length(photo.width * scale, unit),
              numbers.length(photo.height * scale, unit),
            )}
      </p>
      {work === 'scale' ? (
        <Scaling
          use={use}
          photo={photo}
          marks={marks}
          onMarks={setMarks}
          onEnd={() => {
            setWork(null);
            setMarks([]);
          }}
        />
      ) : (
        <div className="drawn-tools">
          <button type="button" className="plain" onClick={() => setWork('scale')}>
            {words.setScale}
          </button>
          <button
            type="button"
            className="plain"
            aria-pressed={work === 'repeat'}
            onClick={() => setWork(work === 'repeat' ? null : 'repeat')}
          >
            {words.setRepeat}
          </button>
          {photo.repeat && (
            <button
              type="button"
              className="plain"
              onClick={() => services.changeClothPhoto({ ...photo, repeat: null }, use)}
            >
              {words.whole}
            </button>
          )}
        </div>
      )}
      {work === 'repeat' && <p className="measure-how">{words.repeatHow}</p>}
    </>
  );
}

const LIMITS = { min: 10, max: 3000 };

interface ScalingProps {
  readonly use: UseId;
  readonly photo: ClothPhoto;
  readonly marks: readonly PhotoMark[];
  readonly onMarks: (marks: readonly PhotoMark[]) => void;
  readonly onEnd: () => void;
}

function Scaling({ use, photo, marks, onMarks, onEnd }: ScalingProps) {
  const { photo: words } = useWords().laying;
  const services = useServices();
  const [apart, setApart] = useState<number | null>(null);
  const [message, setMessage] = useState('');
  const [a, b] = marks;
  const apply = () => {
    if (!a || !b || apart === null) return;
    const scaled = scaleClothPhoto(photo, [a, b], apart);
    if (!scaled) return setMessage(words.tooNear);
    services.changeClothPhoto(scaled, use);
    onEnd();
  };
  return (
    <div className="photo-scaling">
      <p className="measure-how" id="cloth-marks-how">
        {words.scaleHow}
      </p>
      <div className="pull-points">
        {[0, 1].map((index) => (
          <MarkButton key={index} photo={photo} marks={marks} index={index} onMarks={onMarks} />
        ))}
      </div>
      <div className="field-row">
        <span className="measure-name">{words.distance}</span>
        <LengthInput
          fieldId="clothPhotoLength"
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
        <button type="button" onClick={onEnd}>
          {words.leave}
        </button>
      </div>
    </div>
  );
}

const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

interface MarkButtonProps extends Pick<ScalingProps, 'photo' | 'marks' | 'onMarks'> {
  readonly index: number;
}

/** Sets its point on the photo when there is none yet, so that it can be had without pointing. */
function MarkButton({ photo, marks, index, onMarks }: MarkButtonProps) {
  const { photo: words } = useWords().laying;
  const { width, height } = photo;
  const mark = marks[index] ?? ([width * (index === 0 ? 0.25 : 0.75), height / 2] as const);
  const put = (at: PhotoMark) =>
    onMarks(index < marks.length ? marks.map((old, i) => (i === index ? at : old)) : [...marks, at]);
  return (
    <button
      type="button"
      className="point-button"
      disabled={index > marks.length}
      aria-label={words.point(index + 1)}
      aria-describedby="cloth-marks-how"
      aria-pressed={index < marks.length}
      onClick={() => put(mark)}
      onKeyDown={(event) => {
        const step = STEPS[event.key];
        if (!step) return;
        event.preventDefault();
        const pixels = event.shiftKey ? 10 : 1;
        const at = [mark[0] + pixels * step[0], mark[1] + pixels * step[1]];
        put([Math.min(width, Math.max(0, at[0])), Math.min(height, Math.max(0, at[1]))]);
      }}
    >
      {index + 1}
    </button>
  );
}
