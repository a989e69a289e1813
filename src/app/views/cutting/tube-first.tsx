import type { Form, TubeStanding } from '../../../core/form/index.ts';
import { TestTubeFields } from '../inside/test-tube-fields.tsx';
import { Download } from '../parts/download-list.tsx';
import { ScrollableTable } from '../parts/scrollable-table.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp, useServices } from '../parts/workroom-context.tsx';

const TUBE = 'test-tube';

/** Before anything else is printed: the test tube, done or still to be made, and what going without it costs. */
export function TubeFirst({ form }: { readonly form: Form }) {
  const words = useWords().cutting.tubeFirst;
  const numbers = useNumbers();
  const standing = form.report.tube;
  if (!standing) return null;
  const isDone = standing.kind === 'measured';
  return (
    <section className="tube-first" aria-labelledby="tube-first-title">
      <h3 id="tube-first-title">{words.title}</h3>
      {isDone ? (
        <p className="tube-done">{words.done(numbers.percent(standing.growth, 2))}</p>
      ) : (
        <TubeToMake form={form} standing={standing} />
      )}
      <details className="printer">
        <summary>{isDone ? words.readings : words.type}</summary>
        <TestTubeFields />
      </details>
    </section>
  );
}

interface TubeToMakeProps {
  readonly form: Form;
  readonly standing: Extract<TubeStanding, { readonly kind: 'skipped' }>;
}

function TubeToMake({ form, standing: { levels } }: TubeToMakeProps) {
  const words = useWords().cutting.tubeFirst;
  const services = useServices();
  const say = useSay();
  const { signedLength } = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const pieces = (form.inside?.pieces ?? []).filter(({ material }) => material === TUBE).map(({ id }) => id);
  return (
    <>
      <p>{words.why}</p>
      <ul className="downloads">
        <Download {...words.alone} start={() => services.download({ formats: ['pdf'], pieces })} isMain />
      </ul>
      <p>{words.without}</p>
      <ScrollableTable label={words.costs}>
        <table className="table">
          <thead>
            <tr>
              <th scope="col">{words.level}</th>
              <th scope="col" className="number">
                {words.less}
              </th>
              <th scope="col" className="number">
                {words.more}
              </th>
            </tr>
          </thead>
          <tbody>
            {levels.map(({ id, level, less, more }) => (
              <tr key={id}>
                <th scope="row">{say(level)}</th>
                <td className="number">{signedLength(-less, unit)}</td>
                <td className="number">{signedLength(more, unit)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollableTable>
    </>
  );
}
