import { type NoValues, phrasesOf } from '../base/index.ts';

/** Numbers of a filled shell that have a range. */
export type ShellNumber =
  | 'pressure'
  | 'warp'
  | 'weft'
  | 'shear'
  | 'poisson'
  | 'pushed'
  | 'strand-stiffness'
  | 'strip-stiffness'
  | 'strand-length'
  | 'strip-length'
  | 'tolerance';

/** What this room says: why a filled shell finds no balance, and what hangs loose in it. */
export interface StaticsPhrases {
  /** `place`: which triangle, cloth, strand or strip, from 0. */
  readonly 'statics.number': {
    readonly name: ShellNumber;
    readonly value: number;
    readonly least: number;
    readonly most: number;
    readonly place: number;
  };
  readonly 'statics.flat-rest': { readonly triangle: number };
  readonly 'statics.not-closed': { readonly edges: number };
  readonly 'statics.no-volume': { readonly volume: number };
  /** A strand or strip, from 0, whose ends cannot move apart. */
  readonly 'statics.idle-link': { readonly link: number };
  readonly 'statics.slack-cloth': { readonly share: number; readonly most: number };
  readonly 'statics.slack-strands': { readonly loose: number; readonly of: number };
  /** Newtons left at the worst point. */
  readonly 'statics.stalled': { readonly steps: number; readonly force: number };
  readonly 'statics.everted': NoValues;
  readonly 'statics.stopped': NoValues;
}

export const phrase = phrasesOf<StaticsPhrases>();
