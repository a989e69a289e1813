import type { ReportSeam } from '../../../core/form/index.ts';
import { LAYOUTS, type SeamLayout } from '../../../core/seams/index.ts';
import { seamColour } from '../../store/index.ts';
import { StageTitle } from '../guide/stage-title.tsx';
import { StageDoubts } from '../parts/stage-doubts.tsx';
import { usePointing } from '../parts/use-pointing.ts';
import { useSeamName } from '../parts/use-seam-name.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { LayoutPicture } from './layout-picture.tsx';
import { OwnLines } from './own-lines.tsx';
import { PullLines } from './pull-lines.tsx';
import { SeamAdviceList } from './seam-advice-list.tsx';

/** Choosing how the body is cut into panels. */
export function SeamsStage() {
  const { seams: words } = useWords();
  return (
    <div className="stage seams-stage">
      <header className="stage-head">
        <StageTitle stage="seams" />
        <p>{words.about}</p>
      </header>
      <StageDoubts stage="seams" />
      <p className="measure-how" id="layouts-about">
        {words.aboutCards}
      </p>
      <fieldset className="layouts" aria-describedby="layouts-about">
        <legend className="visually-hidden">{words.layout}</legend>
        {LAYOUTS.map((layout) => (
          <LayoutCard key={layout.id} layout={layout} />
        ))}
      </fieldset>
      <ChosenLayout />
      <PullLines />
      <OwnLines />
      <SeamAdviceList />
      <SeamList />
    </div>
  );
}

function LayoutCard({ layout }: { readonly layout: SeamLayout }) {
  const chosen = useApp((state) => state.project?.seams.layout ?? LAYOUTS[0].id);
  const actions = useActions();
  const isChosen = chosen === layout.id;
  const { core } = useWords();
  const say = useSay();
  const name = say(layout.name);
  return (
    <label className="layout-card" data-chosen={isChosen || undefined}>
      <input
        type="radio"
        name="layout"
        checked={isChosen}
        onChange={() => actions.setLayout(layout.id, core.inSentence(name))}
      />
      <LayoutPicture layout={layout} />
      <span className="layout-name">{name}</span>
      <RoughFigures layoutId={layout.id} />
    </label>
  );
}

/** What a layout would come to on this body: about, by a rough body. */
function RoughFigures({ layoutId }: { readonly layoutId: string }) {
  const sketch = useApp(({ sketches, project }) =>
    sketches?.body === project?.body ? sketches?.layouts[layoutId] : undefined,
  );
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const { seams: words } = useWords();
  const { percent, length, fixed } = useNumbers();
  if (sketch === undefined) return <span className="layout-figures" />;
  if (sketch === null) return <span className="layout-figures">{words.doesNotFit}</span>;
  const { strain, cloth, hours } = sketch;
  return (
    <span className="layout-figures">
      <span>{words.aboutStrained(percent(strain))}</span>
      {Number.isFinite(cloth) && (
        <span>{words.aboutCloth(length(roundUp(cloth), unit, { decimals: 0 }))}</span>
      )}
      <span>{words.aboutHours(fixed(hours, 0))}</span>
    </span>
  );
}

/** Cloth is sold by the decimetre. */
function roundUp(mm: number): number {
  return 100 * Math.ceil(mm / 100);
}

/** What the chosen layout is, and what it comes to on this body. */
function ChosenLayout() {
  const chosen = useApp((state) => state.project?.seams.layout ?? LAYOUTS[0].id);
  const isBehind = useApp((state) => state.formOf?.seams.layout !== state.project?.seams.layout);
  const panels = useApp((state) => state.form?.report.panels);
  const strain = useApp((state) => state.form?.report.strain);
  const layout = LAYOUTS.find(({ id }) => id === chosen);
  const { seams: words } = useWords();
  const say = useSay();
  const { percent } = useNumbers();
  if (!layout) return null;
  const [name, description] = [say(layout.name), say(layout.description)];
  return (
    <section aria-labelledby="layout-title">
      <h3 id="layout-title">{name}</h3>
      <p className="layout-about">{description}</p>
      {panels && strain !== undefined && !isBehind && (
        <dl className="numbers">
          <div>
            <dt>{words.panels}</dt>
            <dd>{panels.length}</dd>
          </div>
          <div>
            <dt>{words.strain}</dt>
            <dd>{percent(strain, 2)}</dd>
          </div>
        </dl>
      )}
      <p className="measure-how">{words.aboutStrain}</p>
    </section>
  );
}

function SeamList() {
  const seams = useApp((state) => state.form?.report.seams);
  const { seams: words } = useWords();
  if (!seams || seams.length === 0) return null;
  return (
    <section aria-labelledby="seam-list-title">
      <h3 id="seam-list-title">{words.list}</h3>
      <ul className="seam-list">
        {seams.map((seam, index) => (
          <SeamItem key={seam.id} seam={seam} colour={seamColour(index)} />
        ))}
      </ul>
    </section>
  );
}

interface SeamItemProps {
  readonly seam: ReportSeam;
  readonly colour: string;
}

function SeamItem({ seam, colour }: SeamItemProps) {
  const isLit = useApp(({ highlight }) => highlight?.kind === 'seam' && highlight.id === seam.id);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const pointing = usePointing({ kind: 'seam', id: seam.id });
  const nameOfSeam = useSeamName();
  const numbers = useNumbers();
  return (
    <li data-lit={isLit || undefined} {...pointing}>
      <span className="seam-tag" style={{ color: colour }}>
        <span>{seam.letter}</span>
      </span>
      <span className="seam-name">{nameOfSeam(seam)}</span>
      <span className="number">{numbers.length(seam.length3d, unit)}</span>
    </li>
  );
}
