import { guessIn } from '../../store/index.ts';
import { useNumbers } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** What the body takes a missing measure to be, with one standard deviation: `38.2 ± 1.5`. */
export function useEstimate(measureId: string): string | null {
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const numbers = useNumbers();
  const tape = useApp((state) =>
    state.form?.body.tapes.find((t) => t.id === measureId || t.id === `${measureId}.left`),
  );
  const guessed = useApp((state) => guessIn(state)?.estimates[measureId]);
  const say = (mm: number) => numbers.length(mm, unit, { bare: true });
  if (guessed) return `${say(guessed.mean)} ± ${say(guessed.spread)}`;
  if (tape?.status !== 'estimated') return null;
  return tape.spread ? `${say(tape.got)} ± ${say(tape.spread)}` : say(tape.got);
}
