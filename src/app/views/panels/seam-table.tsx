import { isMarkOf, seamColour } from '../../store/index.ts';
import { LitRow } from '../parts/lit-row.tsx';
import { ScrollableTable } from '../parts/scrollable-table.tsx';
import { useSeamName } from '../parts/use-seam-name.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** Both sides of every seam, and how far they and their marks differ. Pointing at a row lights the seam everywhere. */
export function SeamTable() {
  const seams = useApp((state) => state.form?.report.seams);
  const panels = useApp((state) => state.form?.report.panels);
  const highlight = useApp((state) => state.highlight);
  const { panels: stageWords, seamTable: words } = useWords();
  const say = useSay();
  const nameOfSeam = useSeamName();
  const { fineLength, small } = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  if (!seams) return null;
  const nameOf = new Map(panels?.map((panel) => [panel.id, say(panel.name)]));
  return (
    <ScrollableTable label={stageWords.seams}>
      <table className="table seam-table stacked">
        <thead>
          <tr>
            <th scope="col">{words.seam}</th>
            <th scope="col">{words.joins}</th>
            <th scope="col" className="number">
              {words.oneSide}
            </th>
            <th scope="col" className="number">
              {words.otherSide}
            </th>
            <th scope="col" className="number">
              {words.gap}
            </th>
            <th scope="col" className="number">
              {words.marksOff}
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
                <span className="seam-tag" style={{ color: seamColour(index) }}>
                  <span>{seam.letter}</span>
                </span>
                <span className="seam-name">{nameOfSeam(seam)}</span>
              </th>
              <td className="joins">{seam.panels.map((id) => nameOf.get(id) ?? id).join(' · ')}</td>
              <td className="number" data-name={words.oneSide}>
                {fineLength(seam.lengthsFlat[0], unit)}
              </td>
              <td className="number" data-name={words.otherSide}>
                {fineLength(seam.lengthsFlat[1], unit)}
              </td>
              <td className="number" data-name={words.gap}>
                {small(seam.lengthsFlat[0] - seam.lengthsFlat[1], unit)}
              </td>
              <td className="number" data-name={words.marksOff}>
                {small(seam.maxMarkGap, unit)}
              </td>
            </LitRow>
          ))}
        </tbody>
      </table>
    </ScrollableTable>
  );
}
