import { isFormBehind, reaches } from '../../store/index.ts';
import { StageTitle } from '../guide/stage-title.tsx';
import { FilesLink } from '../parts/download-list.tsx';
import { FillingAwaited } from '../parts/filling-awaited.tsx';
import { SeamAllowance } from '../parts/seam-allowance.tsx';
import { StageDoubts } from '../parts/stage-doubts.tsx';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { ClothChoice } from './cloth-choice.tsx';
import { FlatView } from './flat-view.tsx';
import { GrainTurn } from './grain-turn.tsx';
import { OwnPiece } from './own-piece.tsx';
import { PanelTable } from './panel-table.tsx';
import { SeamTable } from './seam-table.tsx';
import { SeamWalk } from './seam-walk.tsx';

/** The pieces unrolled: strain, seams that must match, and the files to cut from. */
export function PanelsStage() {
  const form = useApp((state) => state.form);
  const isBehind = useApp(isFormBehind);
  const hasFailed = useApp((state) => state.failure !== null);
  const { picture, panels: words } = useWords();
  return (
    <div className="stage panels-stage" data-behind={isBehind || undefined}>
      <header className="stage-head">
        <StageTitle stage="panels" />
        <p>{words.about}</p>
      </header>
      <FillingAwaited />
      <StageDoubts stage="panels" />
      {form && reaches(form, 'cutting') ? (
        <>
          <FlatView form={form} />
          <div className="panel-columns">
            <div>
              <FilesLink />
              <CuttingChoices />
            </div>
            <GrainTurn form={form} />
            <SeamWalk form={form} />
            <section aria-labelledby="seams-title">
              <h3 id="seams-title">{words.seams}</h3>
              <SeamTable />
            </section>
            <section aria-labelledby="pieces-title">
              <h3 id="pieces-title">{words.strainByPanel}</h3>
              <PanelTable />
            </section>
            <OwnPiece form={form} />
          </div>
        </>
      ) : (
        <p className="quiet">{hasFailed ? picture.none : words.unrolling}</p>
      )}
    </div>
  );
}

function CuttingChoices() {
  const blend = useApp((state) => state.project?.seams.lengthBlend ?? 0);
  const actions = useActions();
  const words = useWords().panels;
  return (
    <section className="cutting-choices" aria-labelledby="cutting-title">
      <h3 id="cutting-title">{words.beforeCutting}</h3>
      <ClothChoice />
      <SeamAllowance />
      <label className="blend">
        <span className="measure-name">{words.seamLengths}</span>
        <input
          type="range"
          min={0}
          max={1}
          step={0.1}
          value={blend}
          onPointerDown={actions.beginEdit}
          onPointerUp={actions.endEdit}
          onChange={(event) => actions.setLengthBlend(Number(event.target.value))}
        />
        <span className="blend-ends" aria-hidden="true">
          <span>{words.leastStrain}</span>
          <span>{words.asOnBody}</span>
        </span>
      </label>
    </section>
  );
}
