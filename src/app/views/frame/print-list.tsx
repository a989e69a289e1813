import { MEASURES } from '../../../core/body/index.ts';
import { usePrinting } from '../parts/use-printing.ts';
import { useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** The empty list to take along when measuring; on the page only while it is being printed. */
export function PrintList() {
  const isPrinting = usePrinting();
  const { printList: words, length } = useWords();
  const say = useSay();
  const figure = useApp((state) => state.project?.body.figure ?? 'bust');
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const isTape = useApp((state) => state.stage === 'tape');
  if (!isPrinting || !isTape) return null;
  return (
    <section className="print-list">
      <h2>{words.title}</h2>
      <p>{words.how(length.units[unit])}</p>
      <table>
        <thead>
          <tr>
            <th>{words.measure}</th>
            <th>{words.where}</th>
            <th className="write">{words.first}</th>
            <th className="write">{words.second}</th>
          </tr>
        </thead>
        <tbody>
          {MEASURES.filter(({ figures }) => figures.includes(figure)).map((measure) => {
            const [name, how] = [say(measure.name), say(measure.how)];
            return (
              <tr key={measure.id} className={measure.group === 'first' ? 'first' : undefined}>
                <th>{name}</th>
                <td>{how}</td>
                <td className="write">{measure.sided ? words.sides : ''}</td>
                <td className="write">{measure.sided ? words.sides : ''}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p>{words.ask}</p>
    </section>
  );
}
