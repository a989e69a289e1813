import { MEASURES } from '../../core/body/index.ts';
import { usePrinting } from './use-printing.ts';
import { useApp } from './workroom-context.tsx';

/** The empty list to take along when measuring; on the page only while it is being printed. */
export function PrintList() {
  const isPrinting = usePrinting();
  const figure = useApp((state) => state.project?.body.figure ?? 'bust');
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const isTape = useApp((state) => state.stage === 'tape');
  if (!isPrinting || !isTape) return null;
  return (
    <section className="print-list">
      <h2>Measures of ____________________ &nbsp; taken on ____________ &nbsp; by ____________</h2>
      <p>
        In {unit === 'cm' ? 'centimetres' : 'inches'}. Snug, not tight; in the underwear that will be worn.
        Take each twice; a third time when the two differ by more than 1 cm (3/8 in). The first five are
        needed, the rest help.
      </p>
      <table>
        <thead>
          <tr>
            <th>Measure</th>
            <th>Where the tape lies</th>
            <th className="write">1st</th>
            <th className="write">2nd</th>
          </tr>
        </thead>
        <tbody>
          {MEASURES.filter(({ figures }) => figures.includes(figure)).map(
            ({ id, name, how, sided, group }) => (
              <tr key={id} className={group === 'first' ? 'first' : undefined}>
                <th>{name}</th>
                <td>{how}</td>
                <td className="write">{sided ? 'L          R' : ''}</td>
                <td className="write">{sided ? 'L          R' : ''}</td>
              </tr>
            ),
          )}
        </tbody>
      </table>
      <p>Ask before you touch, and keep pins and scissors out of the way.</p>
    </section>
  );
}
