import { findMeasure } from '../../../core/body/index.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** The one further measure that would tell most about the shape; choosing it leads to its field. */
export function NextMeasure() {
  const next = useApp(({ uncertainty }) => uncertainty?.suggestions[0]);
  const isPresent = useApp(({ uncertainty, project }) => uncertainty?.body === project?.body);
  const words = useWords().tape.next;
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const say = useSay();
  const measure = next && findMeasure(next.id);
  if (!measure || !isPresent) return null;
  return (
    <p className="next-measure">
      {words.measure}{' '}
      <button type="button" className="plain" onClick={() => goToField(measure.id)}>
        {say(measure.name)}
      </button>{' '}
      {words.gain(numbers.small(next.after, unit), numbers.small(next.before, unit))}
    </p>
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
