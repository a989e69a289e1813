import { verbatim } from '../../../core/base/index.ts';
import { findMeasure } from '../../../core/body/index.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** So many are offered at once: more are more than one trip with the tape. */
const OFFERED = 3;

/** Further measures that would tell most about the shape, in this order; choosing one leads to its field. */
export function NextMeasures() {
  const next = useApp(({ uncertainty }) => uncertainty?.suggestions) ?? [];
  const isPresent = useApp(({ uncertainty, project }) => uncertainty?.body === project?.body);
  const words = useWords().tape.next;
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const say = useSay();
  if (next.length === 0 || !isPresent) return null;
  return (
    <div className="next-measures">
      <p id="measure-next">{words.measure}</p>
      <ol aria-labelledby="measure-next">
        {next.slice(0, OFFERED).map(({ id, after, before }) => (
          <li key={id}>
            <button type="button" className="plain" onClick={() => goToField(id)}>
              {say(findMeasure(id)?.name ?? verbatim(id))}
            </button>{' '}
            {words.gain(numbers.small(after, unit), numbers.small(before, unit))}
          </li>
        ))}
      </ol>
    </div>
  );
}

/** Opens the group the field lies in, if it is closed. */
function goToField(id: string): void {
  const field = document.querySelector<HTMLElement>(`[data-measure="${id}"]`);
  const group = field?.closest('details');
  if (group) group.open = true;
  field?.scrollIntoView({ block: 'nearest' });
  field?.querySelector('input')?.focus();
}
