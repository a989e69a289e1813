import type { DisplayUnit } from '../../core/base/index.ts';
import type { wordCheck } from '../../core/simulate/index.ts';
import type { MaterialLine } from '../../core/supports/index.ts';

export type { DisplayUnit };
export type Checkable = Parameters<typeof wordCheck>[0];
export type Named = { readonly id: string; readonly name: string };
/** A line of the list to buy by, as it is told; `unit` may be a word. */
export type WordedMaterial = Pick<MaterialLine, 'id' | 'name' | 'note'> & { readonly unit: string };
