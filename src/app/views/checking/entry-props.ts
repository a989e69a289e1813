import type { CheckingEntry } from '../../../core/project/index.ts';
import type { StuffingContext } from '../../../core/simulate/index.ts';

/** One round of measuring, and what to do when it is edited. */
export interface EntryProps {
  readonly entry: CheckingEntry;
  readonly stuffing: StuffingContext;
  readonly onChange: (entry: CheckingEntry, label: string) => void;
}
