import { STRAIN_LIMIT, strainCss } from '../../store/index.ts';
import { LitRow } from '../parts/lit-row.tsx';
import { ScrollableTable } from '../parts/scrollable-table.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** Strain of every piece, and both extremes. */
export function PanelTable() {
  const panels = useApp((state) => state.form?.report.panels);
  const highlight = useApp((state) => state.highlight);
  const { panels: stageWords, panelTable: words } = useWords();
  const say = useSay();
  const { percent, area } = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  if (!panels) return null;
  return (
    <ScrollableTable label={stageWords.strainByPanel}>
      <table className="table stacked">
        <thead>
          <tr>
            <th scope="col">{words.panel}</th>
            <th scope="col" className="number" title={words.strainTitle}>
              {words.strain}
            </th>
            <th scope="col" className="number">
              {words.mostShrink}
            </th>
            <th scope="col" className="number">
              {words.mostStretch}
            </th>
            <th scope="col" className="number">
              {words.area}
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
              <th scope="row">{say(panel.name)}</th>
              <td className="number" data-name={words.strain}>
                {percent(panel.strain.p95)}
              </td>
              <StrainCell name={words.mostShrink} strain={panel.strain.min} />
              <StrainCell name={words.mostStretch} strain={panel.strain.max} />
              <td className="number" data-name={words.area}>
                {area(panel.areaFlat, unit)}
              </td>
            </LitRow>
          ))}
        </tbody>
      </table>
    </ScrollableTable>
  );
}

function StrainCell({ name, strain }: { readonly name: string; readonly strain: number }) {
  const { signedPercent } = useNumbers();
  return (
    <td className="number" data-name={name}>
      <span
        className="strain-chip"
        style={{ background: strainCss(strain, STRAIN_LIMIT) }}
        aria-hidden="true"
      />
      {signedPercent(strain)}
    </td>
  );
}
