import type { CuttingOptions } from '../assembly/index.ts';
import type { Result, Say } from '../base/index.ts';
import type { Form } from '../form/index.ts';
import type { GaugeOptions } from '../gauge/index.ts';
import type { Piece } from '../pattern/index.ts';
import type { FormFile } from './files-of-form.ts';

/** What files name as their maker. */
export const PROGRAM = 'Loftseam';

export interface ExportOptions extends CuttingOptions {
  /** Words of everything written but of pieces, which have their letters already. */
  readonly say: Say;
  readonly formats: readonly string[];
  /** The model for a 3D printer: one to `scale` (2 to 20, default 5), its hollow one with walls of `wall` mm (default 1.6). */
  readonly model?: { readonly scale?: number; readonly wall?: number };
  /** Ids of the pieces wanted, default all. */
  readonly only?: readonly string[];
  readonly date?: string;
  /** Told now and then how much of a long file is done, 0..1; answers whether to go on. What is stopped fails without an issue. */
  readonly goesOn?: (share: number) => boolean | Promise<boolean>;
  /** Which gauges, and how they are cut; all there are. */
  readonly gauges?: GaugeOptions;
  /** Letters of the PDF; passed in because the core reads no files. */
  readonly font: { readonly name: string; readonly bytes: Uint8Array };
}

/** The files of a form in one format, with the pieces asked for. */
export type FormatWriter = (
  form: Form,
  pieces: readonly Piece[],
  options: ExportOptions,
) => Result<FormFile[]> | Promise<Result<FormFile[]>>;
