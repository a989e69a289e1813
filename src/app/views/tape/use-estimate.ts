import { useNumbers } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** What the body takes a missing measure to be, with one standard deviation: `about 38.2 ± 1.5`. */
export function useEstimate(measureId: string): string | null {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const numbers = useNumbers();
  const tape = useApp((state) =>
    state.form?.body.tapes.find((t) => t.id === measureId || t.id === `${measureId}.left`),
  );
  if (tape?.status !== 'estimated') return null;
  const about = numbers.length(tape.got, unit, { bare: true });
  return tape.spread ? `${about} ± ${numbers.length(tape.spread, unit, { bare: true })}` : about;
}
