import { CAUTIONS } from '../../core/supports/index.ts';
import { isFormBehind } from '../store/index.ts';
import { CautionList } from './caution-list.tsx';
import { Download } from './download-list.tsx';
import { PrintChoices, usePrintCorrection } from './print-choices.tsx';
import { SeamAllowance } from './seam-allowance.tsx';
import { useApp, useServices } from './workroom-context.tsx';

const MATERIALS: Readonly<Record<string, string>> = {
  shell: 'outer cloth',
};

/** Onto paper, cloth and card: the printed pattern, files for machines, and how to cut unhurt. */
export function CuttingStage() {
  const form = useApp((state) => state.form);
  const isBehind = useApp(isFormBehind);
  return (
    <div className="stage cutting-stage" data-behind={isBehind || undefined}>
      <header className="stage-head">
        <h2>Cutting</h2>
        <p>Print at 100 %, measure the bars on the first page, then stick the pages together and cut.</p>
      </header>
      {form ? (
        <>
          <PrintFiles />
          <MachineFiles />
          <PieceList />
        </>
      ) : (
        <p className="quiet">Drafting the pieces…</p>
      )}
      <CautionList cautions={CAUTIONS.filter(({ id }) => ['blades', 'iron', 'glue'].includes(id))} />
    </div>
  );
}

function PrintFiles() {
  const paper = useApp((state) => state.print.paper);
  const correction = usePrintCorrection();
  const services = useServices();
  return (
    <section className="print-files" aria-labelledby="print-title">
      <h3 id="print-title">On paper</h3>
      <SeamAllowance />
      <PrintChoices />
      <ul className="downloads">
        <Download
          name="Pattern"
          what="PDF: cover with test bars, key, numbered pages"
          start={() =>
            services.download({
              formats: ['pdf'],
              papers: [paper],
              ...(correction?.ok ? { correction: correction.value } : {}),
            })
          }
          isMain
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
  { format: 'stl', name: 'Solid', what: 'STL, the body in full size and a model 1 : 5' },
  { format: 'obj', name: 'Surfaces', what: 'OBJ, body and panels with their flat shapes' },
  { format: 'csv', name: 'Tables', what: 'CSV, tapes and seams' },
  { format: 'zip', name: 'Everything', what: 'one archive of all files, with the A4 pattern' },
] as const;

function MachineFiles() {
  const services = useServices();
  return (
    <section aria-labelledby="machines-title">
      <h3 id="machines-title">For machines and other programs</h3>
      <ul className="downloads">
        {FILES.map(({ format, name, what }) => (
          <Download
            key={format}
            name={name}
            what={what}
            start={() => services.download({ formats: [format] })}
          />
        ))}
      </ul>
    </section>
  );
}

/** What to cut, by material. */
function PieceList() {
  const form = useApp((state) => state.form);
  const pieces = [...(form?.pieces ?? []), ...(form?.inside?.pieces ?? [])];
  const materials = [...new Set(pieces.map(({ material }) => material))];
  return (
    <section aria-labelledby="cut-list-title">
      <h3 id="cut-list-title">To cut</h3>
      {materials.map((material) => {
        const own = pieces.filter((piece) => piece.material === material);
        return (
          <details key={material} className="cut-list">
            <summary>
              {MATERIALS[material] ?? material} <span className="quiet">{own.length}</span>
            </summary>
            <ul>
              {own.map(({ id, name }) => (
                <li key={id}>{name}</li>
              ))}
            </ul>
          </details>
        );
      })}
    </section>
  );
}
