import { type NoValues, phrasesOf } from '../base/index.ts';

/** Layers that have names to switch them by. */
export type LayerId =
  | ('cut' | 'sew' | 'mark' | 'text' | 'fill' | 'join' | 'page')
  // Of pictures, by the width of their lines.
  | ('thin' | 'seam' | 'outline' | 'bold');

/** What this room says, and what is put in. */
export type ExportPhrases = {
  /** Size of a drawing, mm. */
  readonly 'drawing.size': { readonly width: number; readonly height: number };
} & { readonly [Id in LayerId as `layer.${Id}`]: NoValues };

export const phrase = phrasesOf<ExportPhrases>();
