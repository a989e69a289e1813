import { useState } from 'react';
import { CAUTIONS } from '../../core/supports/index.ts';
import { isFormBehind } from '../store/index.ts';
import { AllowanceChoices } from './allowance-choices.tsx';
import { CautionList } from './caution-list.tsx';
import { Download } from './download-list.tsx';
import { MachineChoices } from './machine-choices.tsx';
import { PrintChoices } from './print-choices.tsx';
import { useApp, useServices } from './workroom-context.tsx';

const MATERIALS: Readonly<Record<string, string>> = {
  shell: 'outer cloth',
};

/** Ids of pieces that are not wanted this time. */
type LeftOut = ReadonlySet<string>;

/** Onto paper, cloth and card: the printed pattern, files for machines, and how to cut unhurt. */
export function CuttingStage() {
  const form = useApp((state) => state.form);
  const isBehind = useApp(isFormBehind);
  const [leftOut, setLeftOut] = useState<LeftOut>(new Set());
  return (
    <div className="stage cutting-stage" data-behind={isBehind || undefined}>
      <header className="stage-head">
        <h2>Cutting</h2>
        <p>Print at 100 %, measure the bars on the first page, then stick the pages together and cut.</p>
      </header>
      {form ? (
        <>
          <PrintFiles leftOut={leftOut} />
          <MachineFiles leftOut={leftOut} />
          <PieceList leftOut={leftOut} onChange={setLeftOut} />
        </>
      ) : (
        <p className="quiet">Drafting the pieces…</p>
      )}
      <CautionList cautions={CAUTIONS.filter(({ id }) => ['blades', 'iron', 'glue'].includes(id))} />
    </div>
  );
}

function usePieces() {
  const form = useApp((state) => state.form);
  return [...(form?.pieces ?? []), ...(form?.inside?.pieces ?? [])];
}

/** Makes files of the pieces wanted. */
function useDownload(leftOut: LeftOut) {
  const services = useServices();
  const pieces = usePieces();
  const wanted = pieces.map(({ id }) => id).filter((id) => !leftOut.has(id));
  return (format: string) =>
    services.download({
      formats: [format],
      ...(wanted.length < pieces.length ? { pieces: wanted } : {}),
    });
}

function PrintFiles({ leftOut }: { readonly leftOut: LeftOut }) {
  const download = useDownload(leftOut);
  return (
    <section className="print-files" aria-labelledby="print-title">
      <h3 id="print-title">On paper</h3>
      <AllowanceChoices />
      <PrintChoices />
      <ul className="downloads">
        <Download
          name="Pattern"
          what="PDF: cover with test bars, key, numbered pages"
          start={() => download('pdf')}
          isMain
        />
        <Download
          name="Labels"
          what="PDF: a label to sew in for every piece"
          start={() => download('labels')}
        />
      </ul>
    </section>
  );
}

const FILES = [
  { format: 'svg', name: 'Drawings', what: 'SVG at true size, a sheet for each material' },
  {
    format: 'cutter',
    name: 'Cutter sheets',
    what: 'SVG hairlines for a cutting machine, a colour for each layer',
  },
  { format: 'dxf', name: 'Outlines', what: 'DXF, with the layers used for clothing' },
  { format: 'stl', name: 'Solid', what: 'STL: the body, a model 1 : 5 solid and hollow, flat panels' },
  { format: 'obj', name: 'Surfaces', what: 'OBJ, body and panels with their flat shapes' },
  { format: 'csv', name: 'Tables', what: 'CSV, tapes and seams' },
  { format: 'zip', name: 'Everything', what: 'one archive of all files, with the pattern on your paper' },
] as const;

function MachineFiles({ leftOut }: { readonly leftOut: LeftOut }) {
  const download = useDownload(leftOut);
  return (
    <section aria-labelledby="machines-title">
      <h3 id="machines-title">For machines and other programs</h3>
      <MachineChoices />
      <ul className="downloads">
        {FILES.map(({ format, name, what }) => (
          <Download key={format} name={name} what={what} start={() => download(format)} />
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
      <h3 id="cut-list-title">To cut</h3>
      <p className="quiet" role="status">
        {missing === 0
          ? 'All pieces go into the files.'
          : `${missing} of ${pieces.length} pieces are left out.`}
      </p>
      {materials.map((material) => {
        const own = pieces.filter((piece) => piece.material === material);
        const ids = own.map(({ id }) => id);
        const name = MATERIALS[material] ?? material;
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
              all of {name}
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
                    {piece.name}
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
