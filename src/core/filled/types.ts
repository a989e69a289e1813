import type { Phrase } from '../base/index.ts';
import type { FlatDisk } from '../flatten/index.ts';
import type { BraceRung, InsideOptions, InsideShape, SectionPlace, SectionSize } from '../inside/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import type { ClothStiffness, ShellProblem } from '../statics/index.ts';

/** What is filled: a shell with its panels as they are cut, and what was designed for its inside. mm. */
export interface FilledGiven {
  readonly shell: SeamedShell;
  /** Parallel to the panels, each laid with its warp along +y, smaller than the body by what is taken off. */
  readonly flat: readonly FlatDisk[];
  readonly inside: Pick<InsideShape, 'pole' | 'braces'>;
  readonly options: InsideOptions;
}

/** A filling and what it presses on. */
export interface FillingLoad {
  /** N/mm²; 0.003 is 3 kPa. */
  readonly pressure: number;
  readonly shell: ClothStiffness;
  /** Of webs, ties and straps along their threads, N/mm. */
  readonly web: number;
}

/** Cloth from the shell to the pole or across, as threads side by side. */
export interface StrandedBrace {
  readonly id: string;
  readonly isAcross: boolean;
  readonly rungs: readonly BraceRung[];
}

/** A problem of statics with what its parts mean. The shell's points are its first, in their own order, then the middles of the boards,
 * then places on the pole. */
export interface FilledShell {
  readonly problem: ShellProblem;
  readonly given: FilledGiven;
  readonly load: FillingLoad;
  /** Its strands are rung by rung those of the brace, from `first`; each stands for `heights` of its cloth, mm. */
  readonly braces: readonly {
    readonly brace: StrandedBrace;
    readonly first: number;
    readonly heights: Float64Array;
  }[];
  /** From the middle of the cloth to the outside of all that lies over it, mm. */
  readonly outside: number;
}

/** What of a filled form is otherwise than foretold. */
export interface FillingTrial {
  /** Filled less or harder between two levels; without them up to the top, or down to the base. */
  readonly zone?: {
    readonly upper?: string;
    readonly lower?: string;
    /** Of the pressure elsewhere; 0 to `MOST_SHARE`. */
    readonly share: number;
  };
  /** All cloth so many times as stiff. */
  readonly stiffness?: number;
  /** Id of a brace left out. */
  readonly without?: string;
}

/** Asked is what the body has, found what the filled form has over its cloth. mm. */
export interface FilledLevel {
  readonly id: string;
  readonly name: Phrase;
  readonly asked: SectionSize;
  readonly found: SectionSize;
  /** Where on its line the form lies farthest off. */
  readonly worst: FilledPlace;
}

/** A place of the shell. */
export interface FilledPlace {
  /** How far outside of the body the form's outside lies, mm; inside: negative. */
  readonly distance: number;
  /** The level under it, none below the lowest. */
  readonly over?: string;
  readonly where: SectionPlace;
  /** On the body, mm. */
  readonly at: readonly [number, number, number];
}

/** Names are those of the braces with the ids. */
export interface FilledPull {
  readonly id: string;
  /** Of all its threads, N. */
  readonly pull: number;
  /** Of its most pulled thread, and of all in the mean, N per cm of its height. */
  readonly peak: number;
  readonly mean: number;
}

export interface FilledSeam {
  readonly id: string;
  /** Tension of the cloth across it, N per cm. */
  readonly mean: number;
  readonly peak: number;
}

export interface FilledBoard {
  readonly id: string;
  /** How far its middle moved, mm, and by what angle it turned, radians. */
  readonly moved: number;
  readonly turned: number;
}

/** How near a filled form comes to what was asked, and what it takes. */
export interface FilledMeasures {
  readonly levels: readonly FilledLevel[];
  /** Distances between the outside and the body, by area. mm. */
  readonly distance: {
    readonly rms: number;
    readonly worst: FilledPlace;
    /** Share of the area nearer than 8 mm. */
    readonly within: number;
    /** #V of the shell. */
    readonly ofPoints: Float64Array;
  };
  /** The farthest out in front, over the uppermost level. */
  readonly throat: FilledPlace;
  readonly pulls: readonly FilledPull[];
  readonly seams: readonly FilledSeam[];
  readonly boards: readonly FilledBoard[];
}
