import type { CheckingEntry } from '../../../core/project/index.ts';
import type { FillingContext } from '../../../core/simulate/index.ts';

/** One round of measuring, and what to do when it is edited. */
export interface EntryProps {
  readonly entry: CheckingEntry;
  readonly stuffing: FillingContext;
  readonly onChange: (entry: CheckingEntry, label: string) => void;
}
