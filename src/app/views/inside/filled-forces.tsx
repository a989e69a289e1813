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
  const nameOf = (wanted: string) => {
    const name = braces.find(({ id }) => id === wanted)?.name;
    return name ? say(name) : wanted;
  };
  const letterOf = (wanted: string) => form.shell.seams.find(({ id }) => id === wanted)?.letter ?? wanted;
  const perCm = (force: number) => numbers.fixed(force, force < 9.95 ? 1 : 0);
  return (
    <section className="filled-forces" aria-labelledby="forces-title">
      <h3 id="forces-title">{words.form.forces}</h3>
      <NearGiving
        places={[
          ...measures.pulls.map(({ id, peak }) => ({ name: nameOf(id), peak })),
          ...measures.seams.map(({ id, peak }) => ({ name: words.form.seam(letterOf(id)), peak })),
        ]}
        perCm={perCm}
      />
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
            {measures.pulls.map(({ id, pull, peak }) => (
              <tr key={id}>
                <th scope="row">{nameOf(id)}</th>
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

interface NearGivingProps {
  readonly places: readonly { readonly name: string; readonly peak: number }[];
  readonly perCm: (force: number) => string;
}

/** Where a seam would be near giving, or that it would nowhere. */
function NearGiving({ places, perCm }: NearGivingProps) {
  const words = useWords().inside.form;
  const slips = useNumbers().fixed(SEAM_SLIPS, 0);
  const near = places
    .filter(({ peak }) => peak > NEAR * SEAM_SLIPS)
    .map(({ name, peak }) => ({ name, force: perCm(peak) }));
  // Both sides of a body commonly carry the same: told once.
  const forces = [...new Set(near.map(({ force }) => force))];
  const namesAt = (wanted: string) => near.filter(({ force }) => force === wanted).map(({ name }) => name);
  if (near.length === 0) return <p>{words.allHold(slips)}</p>;
  return (
    <ul className="doubts">
      {forces.map((force) => (
        <li key={force}>{words.nearGiving(namesAt(force).join(', '), force, slips)}</li>
      ))}
    </ul>
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
                    <span className="seam-tag" style={{ color: seamColour(Math.max(0, index)) }}>
                      <span>{form.shell.seams[index]?.letter}</span>
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
