import type { Phrase } from '../base/index.ts';
import type { ChartPlace } from '../seams/index.ts';

/** Whether a form can be sewn as it is, in plain words; plain data. */
export interface Verdict {
  /** `wrinkles`: it can be sewn, and the cloth wrinkles or is pulled where it will be seen. */
  readonly kind: 'sound' | 'wrinkles' | 'cannot';
  readonly message: Phrase;
  /** The worst place, where it is one of the cloth. */
  readonly worst?: VerdictPlace;
  /** What it is about, as a path in the project file; empty where it is the form as a whole. */
  readonly path: string;
  /** Code of the issue that is the reason. */
  readonly code?: string;
}

export interface VerdictPlace {
  readonly panelId: string;
  /** Panel and place. */
  readonly name: Phrase;
  /** With the figures. */
  readonly message: Phrase;
  readonly place: ChartPlace;
}
