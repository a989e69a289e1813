import type { MaterialLine } from '../../core/supports/index.ts';

export interface Named {
  readonly id: string;
  readonly name: string;
}

/** A line of the list to buy by, as it is told; `unit` may be a word. */
export type WordedMaterial = Pick<MaterialLine, 'id' | 'name' | 'note'> & { readonly unit: string };
