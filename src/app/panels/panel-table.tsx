import { STRAIN_LIMIT, strainCss } from '../store/index.ts';
import { LitRow } from './lit-row.tsx';
import { percent, signedPercent } from './say-numbers.ts';
import { ScrollableTable } from './scrollable-table.tsx';
import { useApp } from './workroom-context.tsx';

/** Strain of every piece: the usual size, nearly the worst, and both extremes. */
export function PanelTable() {
  const panels = useApp((state) => state.form?.report.panels);
  const highlight = useApp((state) => state.highlight);
  if (!panels) return null;
  return (
    <ScrollableTable label="Strain by piece">
      <table className="table">
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col" className="number" title="Root mean square over the piece">
              Typical
            </th>
            <th scope="col" className="number" title="95 of 100 parts of the piece lie below this">
              95 of 100
            </th>
            <th scope="col" className="number">
              Most shrink
            </th>
            <th scope="col" className="number">
              Most stretch
            </th>
            <th scope="col" className="number">
              Cloth
            </th>
          </tr>
        </thead>
        <tbody>
          {panels.map((panel) => (
            <LitRow
              key={panel.id}
              points={{ kind: 'panel', id: panel.id }}
              isLit={highlight?.kind === 'panel' && highlight.id === panel.id}
            >
              <th scope="row">{panel.name}</th>
              <td className="number">{percent(panel.strain.rms)}</td>
              <td className="number">{percent(panel.strain.p95)}</td>
              <StrainCell strain={panel.strain.min} />
              <StrainCell strain={panel.strain.max} />
              <td className="number">{(panel.areaFlat / 100).toFixed(0)} cm²</td>
            </LitRow>
          ))}
        </tbody>
      </table>
    </ScrollableTable>
  );
}

function StrainCell({ strain }: { readonly strain: number }) {
  return (
    <td className="number">
      <span
        className="strain-chip"
        style={{ background: strainCss(strain, STRAIN_LIMIT) }}
        aria-hidden="true"
      />
      {signedPercent(strain)}
    </td>
  );
}
