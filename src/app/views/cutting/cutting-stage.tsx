import { useState } from 'react';
import { CAUTIONS, measuredGrowthOf } from '../../../core/inside/index.ts';
import { isFormBehind, reaches } from '../../store/index.ts';
import { StageTitle } from '../guide/stage-title.tsx';
import { BookletMaker } from '../making/booklet-maker.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { Download, DownloadList } from '../parts/download-list.tsx';
import { FillingAwaited } from '../parts/filling-awaited.tsx';
import { StageDoubts } from '../parts/stage-doubts.tsx';
import { useSay, useWords } from '../parts/use-words.ts';
import { useApp, useServices } from '../parts/workroom-context.tsx';
import { AllowanceChoices } from './allowance-choices.tsx';
import { GaugeChoices } from './gauge-choices.tsx';
import { MachineChoices } from './machine-choices.tsx';
import { PrintChoices } from './print-choices.tsx';
import { PrintPages } from './print-pages.tsx';
import { ProjectorChoices } from './projector-choices.tsx';
import { TubeFirst } from './tube-first.tsx';

/** Laser cutters are warned of what they must not burn under dust. */
const CARES = ['blades', 'iron', 'glue', 'dust'];

/** Told at length before all else. */
const SKIPPED = 'test-tube-skipped';

/** Ids of pieces that are not wanted this time. */
type LeftOut = ReadonlySet<string>;

/** Onto paper, cloth and card: the printed pattern, files for machines, and how to cut unhurt. */
export function CuttingStage() {
  const form = useApp((state) => state.form);
  const isBehind = useApp(isFormBehind);
  const words = useWords();
  const [leftOut, setLeftOut] = useState<LeftOut>(new Set());
  return (
    <div className="stage cutting-stage" data-behind={isBehind || undefined}>
      <header className="stage-head">
        <StageTitle stage="cutting" />
        <p>{words.cutting.about}</p>
      </header>
      <FillingAwaited />
      {form && reaches(form, 'cutting') ? (
        <>
          <TubeFirst form={form} />
          <StageDoubts stage="cutting" isTold={({ code }) => code === SKIPPED} />
          <PrintFiles leftOut={leftOut} />
          <TrialShellFiles />
          <GaugeChoices form={form} />
          <MachineFiles leftOut={leftOut} />
          <DownloadList />
          <PieceList leftOut={leftOut} onChange={setLeftOut} />
        </>
      ) : (
        <p className="quiet">{words.cutting.drafting}</p>
      )}
      <CautionList cautions={CAUTIONS.filter(({ id }) => CARES.includes(id))} />
    </div>
  );
}

function usePieces() {
  const form = useApp((state) => state.form);
  return [...(form?.pieces ?? []), ...(form?.inside?.pieces ?? [])];
}

/** Ids of the pieces wanted; null where all are. */
function useWanted(leftOut: LeftOut): readonly string[] | null {
  const pieces = usePieces();
  const wanted = pieces.map(({ id }) => id).filter((id) => !leftOut.has(id));
  return wanted.length < pieces.length ? wanted : null;
}

/** Makes files of the pieces wanted. */
function useDownload(leftOut: LeftOut) {
  const services = useServices();
  const pieces = useWanted(leftOut);
  return (format: string) => services.download({ formats: [format], ...(pieces && { pieces }) });
}

function PrintFiles({ leftOut }: { readonly leftOut: LeftOut }) {
  const words = useWords().cutting;
  const download = useDownload(leftOut);
  const wanted = useWanted(leftOut);
  const hasSteps = useApp((state) => state.form?.making !== undefined);
  // Until the tube is measured its own pages come first.
  const isNext = useApp(({ project }) => project && measuredGrowthOf(project.inside) !== undefined);
  return (
    <section className="print-files" aria-labelledby="print-title">
      <h3 id="print-title">{words.onPaper}</h3>
      <AllowanceChoices />
      <PrintChoices />
      <PrintPages wanted={wanted} />
      <ul className="downloads">
        <Download {...words.pattern} start={() => download('pdf')} isMain={isNext === true} />
        <Download {...words.labels} start={() => download('labels')} />
        <Download {...words.projector} start={() => download('projector')} />
      </ul>
      {hasSteps && <BookletMaker />}
      <ProjectorChoices />
    </section>
  );
}

/** To be sewn of cheap cloth and tried on before anything else is cut. */
function TrialShellFiles() {
  const words = useWords().cutting.trialShell;
  const services = useServices();
  const download = (format: string) => services.download({ formats: [format], isTrialShell: true });
  return (
    <details className="printer">
      <summary>{words.title}</summary>
      <p className="quiet">{words.about}</p>
      <ul className="downloads">
        <Download {...words.pattern} start={() => download('pdf')} />
        <Download {...words.drawing} start={() => download('svg')} />
      </ul>
    </details>
  );
}

const FILES = ['svg', 'cutter', 'dxf', 'stl', 'obj', 'csv', 'zip'] as const;

function MachineFiles({ leftOut }: { readonly leftOut: LeftOut }) {
  const words = useWords().cutting;
  const download = useDownload(leftOut);
  return (
    <section aria-labelledby="machines-title">
      <h3 id="machines-title">{words.machines}</h3>
      <MachineChoices />
      <ul className="downloads">
        {FILES.map((format) => (
          <Download key={format} {...words.files[format]} start={() => download(format)} />
        ))}
      </ul>
    </section>
  );
}

interface PieceListProps {
  readonly leftOut: LeftOut;
  readonly onChange: (leftOut: LeftOut) => void;
}

/** What to cut, by material; what is not ticked is left out of the files. */
function PieceList({ leftOut, onChange }: PieceListProps) {
  const pieces = usePieces();
  const { cutting: words } = useWords();
  const say = useSay();
  const names: Readonly<Record<string, string>> = words.materials;
  const materials = [...new Set(pieces.map(({ material }) => material))];
  const want = (ids: readonly string[], isWanted: boolean) => {
    const next = new Set(leftOut);
    for (const id of ids) {
      if (isWanted) next.delete(id);
      else next.add(id);
    }
    onChange(next);
  };
  const missing = pieces.filter(({ id }) => leftOut.has(id)).length;
  return (
    <section aria-labelledby="cut-list-title">
      <h3 id="cut-list-title">{words.list}</h3>
      <p className="quiet" role="status">
        {missing === 0 ? words.allPieces : words.leftOut(missing, pieces.length)}
      </p>
      {materials.map((material) => {
        const own = pieces.filter((piece) => piece.material === material);
        const ids = own.map(({ id }) => id);
        const name = names[material] ?? material;
        return (
          <details key={material} className="cut-list">
            <summary>
              {name} <span className="quiet">{own.length}</span>
            </summary>
            <label className="check-row">
              <input
                type="checkbox"
                checked={ids.every((id) => !leftOut.has(id))}
                onChange={(event) => want(ids, event.target.checked)}
              />
              {words.allOf(name)}
            </label>
            <ul>
              {own.map((piece) => (
                <li key={piece.id}>
                  <label className="check-row">
                    <input
                      type="checkbox"
                      checked={!leftOut.has(piece.id)}
                      onChange={(event) => want([piece.id], event.target.checked)}
                    />
                    {say(piece.name)}
                  </label>
                </li>
              ))}
            </ul>
          </details>
        );
      })}
    </section>
  );
}
