import { formatLength } from '../../core/base/index.ts';
import { issuesOf } from '../store/index.ts';
import { CompareView } from './compare-view.tsx';
import { LitRow } from './lit-row.tsx';
import { PhotoTools } from './photo-tools.tsx';
import { SectionView } from './section-view.tsx';
import { ShapeChoices } from './shape-choices.tsx';
import { TapeTable } from './tape-table.tsx';
import { ThreadTool } from './thread-tool.tsx';
import { useApp } from './workroom-context.tsx';

/** What the body came to: readings, what is doubtful, and what no tape can tell. */
export function BodyStage() {
  return (
    <div className="stage body-stage">
      <header className="stage-head">
        <h2>Body</h2>
        <p>
          The body that answers the tapes. Turn it and compare it with the person, from the side above all.
        </p>
      </header>
      <BodyNumbers />
      <Doubts />
      <SectionView />
      <ThreadTool />
      <PhotoTools />
      <section aria-labelledby="shape-title">
        <h3 id="shape-title">What a tape cannot tell</h3>
        <ShapeChoices />
      </section>
      <section aria-labelledby="readings-title">
        <h3 id="readings-title">Readings</h3>
        <TapeTable />
      </section>
      <Levels />
      <CompareView />
    </div>
  );
}

function BodyNumbers() {
  const body = useApp((state) => state.form?.report.body);
  if (!body) return null;
  return (
    <dl className="numbers">
      <div>
        <dt>Volume</dt>
        <dd>{body.volumeL.toFixed(1)} l</dd>
      </div>
      <div>
        <dt>Surface</dt>
        <dd>{(body.area / 1e6).toFixed(3)} m²</dd>
      </div>
      <div>
        <dt>Triangles</dt>
        <dd>{body.triangles.toLocaleString('en')}</dd>
      </div>
    </dl>
  );
}

function Doubts() {
  const issues = useApp(issuesOf);
  if (issues.length === 0) return null;
  return (
    <section aria-labelledby="doubts-title">
      <h3 id="doubts-title">Worth a second look</h3>
      <ul className="doubts">
        {issues.map((issue) => (
          <li key={issue.code + issue.path + issue.message} className={issue.severity}>
            {issue.message}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Levels() {
  const levels = useApp((state) => state.form?.shell.levels);
  const highlight = useApp((state) => state.highlight);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  if (!levels) return null;
  return (
    <section aria-labelledby="levels-title">
      <h3 id="levels-title">Level lines on the cloth</h3>
      <table className="table">
        <thead>
          <tr>
            <th scope="col">Level</th>
            <th scope="col" className="number">
              Along the cloth
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
              <th scope="row">{level.name}</th>
              <td className="number">{formatLength(level.length3d, unit)}</td>
            </LitRow>
          ))}
        </tbody>
      </table>
    </section>
  );
}
