import { StageTitle } from '../guide/stage-title.tsx';
import { LitRow } from '../parts/lit-row.tsx';
import { StageDoubts } from '../parts/stage-doubts.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';
import { CompareView } from './compare-view.tsx';
import { PhotoTools } from './photo-tools.tsx';
import { SectionView } from './section-view.tsx';
import { ShapeChoices } from './shape-choices.tsx';
import { TapeTable } from './tape-table.tsx';
import { ThreadTool } from './thread-tool.tsx';

/** What the body came to: readings, what is doubtful, and what no tape can tell. */
export function BodyStage() {
  const words = useWords();
  return (
    <div className="stage body-stage">
      <header className="stage-head">
        <StageTitle stage="body" />
        <p>{words.body.about}</p>
      </header>
      <BodyNumbers />
      <StageDoubts stage="body" />
      <SectionView />
      <ThreadTool />
      <PhotoTools />
      <section aria-labelledby="shape-title">
        <h3 id="shape-title">{words.body.shape}</h3>
        <ShapeChoices />
      </section>
      <section aria-labelledby="readings-title">
        <h3 id="readings-title">{words.body.readings}</h3>
        <TapeTable />
      </section>
      <Levels />
      <CompareView />
    </div>
  );
}

function BodyNumbers() {
  const body = useApp((state) => state.form?.report.body);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const words = useWords().body;
  const numbers = useNumbers();
  if (!body) return null;
  return (
    <dl className="numbers">
      <div>
        <dt>{words.volume}</dt>
        <dd>{numbers.fixed(body.volumeL, 1)} l</dd>
      </div>
      <div>
        <dt>{words.surface}</dt>
        <dd>{numbers.clothArea(body.area / 1e6, unit, 3)}</dd>
      </div>
    </dl>
  );
}

function Levels() {
  const levels = useApp((state) => state.form?.shell.levels);
  const { body: words } = useWords();
  const say = useSay();
  const numbers = useNumbers();
  const highlight = useApp((state) => state.highlight);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  if (!levels) return null;
  return (
    <section aria-labelledby="levels-title">
      <h3 id="levels-title">{words.levels}</h3>
      <table className="table">
        <thead>
          <tr>
            <th scope="col">{words.level}</th>
            <th scope="col" className="number">
              {words.alongCloth}
            </th>
          </tr>
        </thead>
        <tbody>
          {levels.map((level) => (
            <LitRow
              key={level.id}
              points={{ kind: 'level', id: level.id }}
              isLit={highlight?.kind === 'level' && highlight.id === level.id}
            >
              <th scope="row">{say(level.name)}</th>
              <td className="number">{numbers.length(level.length3d, unit)}</td>
            </LitRow>
          ))}
        </tbody>
      </table>
    </section>
  );
}
