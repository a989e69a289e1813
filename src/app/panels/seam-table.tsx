import { isMarkOf, threadColour } from '../store/index.ts';
import { LitRow } from './lit-row.tsx';
import { fineLength } from './say-numbers.ts';
import { ScrollableTable } from './scrollable-table.tsx';
import { useApp } from './workroom-context.tsx';

/** Both sides of every seam, and how far they and their marks differ. Pointing at a row lights the seam everywhere. */
export function SeamTable() {
  const seams = useApp((state) => state.form?.report.seams);
  const panels = useApp((state) => state.form?.report.panels);
  const highlight = useApp((state) => state.highlight);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  if (!seams) return null;
  const nameOf = new Map(panels?.map((panel) => [panel.id, panel.name]));
  return (
    <ScrollableTable label="Seams">
      <table className="table seam-table">
        <thead>
          <tr>
            <th scope="col">Seam</th>
            <th scope="col">Joins</th>
            <th scope="col" className="number">
              One side
            </th>
            <th scope="col" className="number">
              Other side
            </th>
            <th scope="col" className="number">
              Gap
            </th>
            <th scope="col" className="number">
              Marks off
            </th>
          </tr>
        </thead>
        <tbody>
          {seams.map((seam, index) => (
            <LitRow
              key={seam.id}
              points={{ kind: 'seam', id: seam.id }}
              isLit={(highlight?.kind === 'seam' && highlight.id === seam.id) || isMarkOf(highlight, seam.id)}
            >
              <th scope="row">
                <span className="seam-tag" style={{ color: threadColour(index) }}>
                  <span>{seam.letter}</span>
                </span>
                <span className="seam-name">{seam.name}</span>
              </th>
              <td className="joins">{seam.panels.map((id) => nameOf.get(id) ?? id).join(' · ')}</td>
              <td className="number">{fineLength(seam.lengthsFlat[0], unit)}</td>
              <td className="number">{fineLength(seam.lengthsFlat[1], unit)}</td>
              <td className="number">{Math.abs(seam.lengthsFlat[0] - seam.lengthsFlat[1]).toFixed(2)} mm</td>
              <td className="number">{seam.maxMarkGap.toFixed(2)} mm</td>
            </LitRow>
          ))}
        </tbody>
      </table>
    </ScrollableTable>
  );
}
