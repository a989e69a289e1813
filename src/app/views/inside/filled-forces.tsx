import type { Form, FormFilled } from '../../../core/form/index.ts';
import { seamColour } from '../../store/index.ts';
import { LitRow } from '../parts/lit-row.tsx';
import { ScrollableTable } from '../parts/scrollable-table.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** Where a lockstitched seam in cotton begins to slip, N per cm: common practice, no source. */
const SEAM_SLIPS = 40;
/** From this share of it on a seam is told to be near it. */
const NEAR = 0.75;

interface FilledForcesProps {
  readonly form: Form;
  readonly filled: FormFilled;
}

/** What the filling asks of stitches: the pull of every web, tie and strap, and across every seam. */
export function FilledForces({ form, filled: { measures } }: FilledForcesProps) {
  const { inside: words } = useWords();
  const numbers = useNumbers();
  const say = useSay();
  const braces = form.inside?.shape.braces ?? [];
  const pulled = measures.pulls.map((pull) => ({
    ...pull,
    name: braces.find(({ id }) => id === pull.id)?.name,
  }));
  const near = [
    ...pulled.flatMap(({ name, peak }) => (name ? [{ name: say(name), peak }] : [])),
    ...measures.seams.map(({ id, peak }) => ({ name: sayLetter(form, id, words.form.seam), peak })),
  ].filter(({ peak }) => peak > NEAR * SEAM_SLIPS);
  const perCm = (force: number) => numbers.fixed(force, force < 9.95 ? 1 : 0);
  return (
    <section aria-labelledby="forces-title">
      <h3 id="forces-title">{words.form.forces}</h3>
      {near.length === 0 ? (
        <p>{words.form.allHold(numbers.fixed(SEAM_SLIPS, 0))}</p>
      ) : (
        <ul className="doubts">
          {near.map(({ name, peak }) => (
            <li key={name}>{words.form.nearGiving(name, perCm(peak), numbers.fixed(SEAM_SLIPS, 0))}</li>
          ))}
        </ul>
      )}
      <ScrollableTable label={words.form.pulls}>
        <table className="table">
          <thead>
            <tr>
              <th scope="col">{words.braces}</th>
              <th scope="col" className="number">
                {words.form.pull}
              </th>
              <th scope="col" className="number">
                {words.form.most}
              </th>
            </tr>
          </thead>
          <tbody>
            {pulled.map(({ id, name, pull, peak }) => (
              <tr key={id}>
                <th scope="row">{name ? say(name) : id}</th>
                <td className="number">{numbers.fixed(pull, 0)}</td>
                <td className="number">{perCm(peak)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollableTable>
      <details>
        <summary>{words.form.acrossSeams}</summary>
        <SeamLoads form={form} seams={measures.seams} perCm={perCm} />
      </details>
      <p className="measure-how">{words.form.aboutForces}</p>
    </section>
  );
}

interface SeamLoadsProps {
  readonly form: Form;
  readonly seams: FormFilled['measures']['seams'];
  readonly perCm: (force: number) => string;
}

/** The most pulled first. */
function SeamLoads({ form, seams, perCm }: SeamLoadsProps) {
  const lit = useApp((state) => (state.highlight?.kind === 'seam' ? state.highlight.id : null));
  const { inside: words } = useWords();
  const say = useSay();
  const names = new Map(form.report.seams.map(({ id, name }) => [id, name]));
  const order = form.shell.seams.map(({ id }) => id);
  return (
    <ScrollableTable label={words.form.acrossSeams}>
      <table className="table">
        <thead>
          <tr>
            <th scope="col">{words.form.seamHead}</th>
            <th scope="col" className="number">
              {words.form.mean}
            </th>
            <th scope="col" className="number">
              {words.form.most}
            </th>
          </tr>
        </thead>
        <tbody>
          {seams
            .toSorted((a, b) => b.peak - a.peak)
            .map(({ id, mean, peak }) => {
              const index = order.indexOf(id);
              const name = names.get(id);
              return (
                <LitRow key={id} points={{ kind: 'seam', id }} isLit={lit === id}>
                  <th scope="row">
                    <span className="seam-tag" style={{ background: seamColour(Math.max(0, index)) }}>
                      {form.shell.seams[index]?.letter}
                    </span>{' '}
                    {name ? say(name) : id}
                  </th>
                  <td className="number">{perCm(mean)}</td>
                  <td className="number">{perCm(peak)}</td>
                </LitRow>
              );
            })}
        </tbody>
      </table>
    </ScrollableTable>
  );
}

function sayLetter(form: Form, id: string, word: (letter: string) => string): string {
  return word(form.shell.seams.find((seam) => seam.id === id)?.letter ?? id);
}
