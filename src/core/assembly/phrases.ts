import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';
import type { ArmState } from '../body/index.ts';

type Side = 'right' | 'left';

/** Names of the arms' parts. */
export interface ArmNamePhrases {
  readonly 'arm.half': { readonly half: 'front' | 'back'; readonly side: Side };
  readonly 'arm.upperArm': NoValues;
  readonly 'arm.elbow': NoValues;
  readonly 'arm.wrist': NoValues;
  readonly 'arm.outer-line': { readonly panel: Phrase };
  readonly 'arm.seam': { readonly line: 'outer' | 'inner'; readonly side: Side };
  /** The same before it has a letter. */
  readonly 'arm.join': { readonly line: 'outer' | 'inner'; readonly side: Side };
  readonly 'arm.all': NoValues;
  readonly 'arm.measured': { readonly state: ArmState };
}

/** What this room says, and what is put in. */
export interface AssemblyPhrases extends ArmNamePhrases {
  readonly 'layout.own': NoValues;
  readonly 'layout.unknown': { readonly layout: string; readonly known: readonly string[] };
  readonly 'layout.line-id-twice': { readonly line: string };
  /** A panel given a grain of its own that the form does not have. */
  readonly 'cloth.unknown-panel': { readonly panel: string; readonly known: readonly string[] };
  /** A level line where it runs on one panel. */
  readonly 'level.on-panel': { readonly level: Phrase; readonly panel: Phrase };
  readonly 'seam.lettered': { readonly letter: string; readonly seam: Phrase };
  readonly 'filled.size-off': {
    readonly level: Phrase;
    readonly size: 'girth' | 'width' | 'depth';
    readonly by: number;
    readonly isLess: boolean;
  };
  readonly 'filled.idle': { readonly braces: readonly Phrase[] };
  readonly 'filled.place-off': {
    readonly by: number;
    readonly isLess: boolean;
    readonly at: Phrase;
    /** The level under it; none below the lowest. */
    readonly over?: Phrase;
    /** Share of the area within 8 mm. */
    readonly within: number;
  };
  /** What of the form a fault is about. */
  readonly 'fault.of': { readonly of: Phrase; readonly fault: Phrase };
  readonly 'fault.no-arms': { readonly of: Phrase; readonly fault: Phrase };
}

export const phrase = phrasesOf<AssemblyPhrases>();
