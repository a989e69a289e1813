import { type NoValues, phrasesOf } from '../base/index.ts';
import type { ClothId } from './cloth-limits.ts';

/** Names of cloths, as they stand inside sentences. */
export type ClothPhrases = { readonly [Id in ClothId as `cloth.${Id}`]: NoValues };

/** Progress, and why panels cannot be unrolled or sewn together. mm. */
export interface UnrollingPhrases {
  readonly 'flatten.unrolling': NoValues;
  readonly 'flatten.unrolling-each': NoValues;
  readonly 'flatten.matching': NoValues;
  readonly 'flatten.stopped': NoValues;
  /** `decrement`: energy per mm². */
  readonly 'flatten.not-settled': {
    readonly steps: number;
    readonly decrement: number;
    readonly largestError: number;
  };
  readonly 'flatten.outline-crosses': { readonly places: number };
  readonly 'flatten.ease-conflict': { readonly seam: string };
  readonly 'flatten.kept-length': { readonly wanted: number; readonly got: number };
  readonly 'flatten.join-differs': { readonly seam: string; readonly gap: number; readonly limit: number };
  readonly 'flatten.join-length': { readonly seam: string; readonly change: number; readonly limit: number };
  readonly 'flatten.path-length': { readonly change: number; readonly limit: number };
}

/** What makes a mesh no disk. */
export interface DiskPhrases {
  readonly 'disk.no-triangles': NoValues;
  readonly 'disk.no-area': NoValues;
  readonly 'disk.loose-vertex': NoValues;
  readonly 'disk.edge-used-twice': NoValues;
  readonly 'disk.pinched': NoValues;
  readonly 'disk.no-boundary': NoValues;
  readonly 'disk.broken-boundary': NoValues;
  readonly 'disk.more-boundaries': NoValues;
  readonly 'disk.separate-parts': NoValues;
  readonly 'disk.handle': NoValues;
}

/** What this room says, and what is put in. */
export type FlattenPhrases = ClothPhrases & UnrollingPhrases & DiskPhrases;

export const phrase = phrasesOf<FlattenPhrases>();
