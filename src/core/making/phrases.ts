import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';
import type { ArmState } from '../body/index.ts';
import type { WorkPhase } from '../form/index.ts';
import type { PlateRim } from '../inside/index.ts';
import type { ReadingKind } from '../simulate/index.ts';

type Half = 'front' | 'back';

/** From what the form is for to the marked pieces. */
interface PrepareSteps {
  readonly 'step.use.title': NoValues;
  readonly 'step.use.settle': NoValues;
  readonly 'step.use.pole': NoValues;
  readonly 'step.use.load': NoValues;
  readonly 'step.use.height': NoValues;
  /** What the arrows in its picture mean; the push as the mass that weighs so much, kg. */
  readonly 'step.use.arrows': { readonly push: number };
  readonly 'step.measure.title': NoValues;
  readonly 'step.measure.how': NoValues;
  readonly 'step.measure.compare': NoValues;
  readonly 'step.cloth.title': NoValues;
  readonly 'step.cloth.wash': NoValues;
  readonly 'step.cloth.which': { readonly hasArms: boolean; readonly hasCovers: boolean };
  readonly 'step.cloth.fuse': NoValues;
  /** mm. */
  readonly 'step.cloth.square': { readonly side: number };
  readonly 'step.test-tube.title': NoValues;
  readonly 'step.test-tube.why': NoValues;
  /** What is assumed until then, g a litre. */
  readonly 'step.test-tube.weigh': {
    readonly isAssumed: boolean;
    readonly low: number;
    readonly high: number;
  };
  readonly 'step.test-tube.nothing-typed': NoValues;
  /** A fraction. */
  readonly 'step.test-tube.taken-off': { readonly growth: number };
  readonly 'step.test-tube.reckoned': { readonly growth: number };
  /** By how much girths may come out smaller or larger, mm. */
  readonly 'step.test-tube.usual-cloth': { readonly below: number; readonly above: number };
  readonly 'step.print.title': NoValues;
  readonly 'step.print.cover': { readonly paper: Phrase };
  readonly 'step.trial.title': NoValues;
  readonly 'step.trial.cut': NoValues;
  /** Round the finished neck, mm. */
  readonly 'step.trial.sew': { readonly neck: number };
  readonly 'step.trial.put-on': NoValues;
  /** An example: depth pinned off at one seam, the waist's girth and what it becomes, mm. */
  readonly 'step.trial.judge': { readonly pinned: number; readonly waist: number; readonly changed: number };
  readonly 'step.cut.title': NoValues;
  readonly 'step.cut.print': NoValues;
  readonly 'step.cut.lay': NoValues;
  readonly 'step.cut.cut': NoValues;
  readonly 'step.mark.title': NoValues;
  readonly 'step.mark.mark': NoValues;
  readonly 'step.mark.through': NoValues;
  readonly 'step.mark.hold': NoValues;
  readonly 'step.mark.compare': NoValues;
}

interface SewSteps {
  /** Stitch, second row and pressing, the same for every seam of the shell. */
  readonly 'step.sew.stitch': NoValues;
  readonly 'step.half.title': { readonly half: Half; readonly isApart: boolean };
  readonly 'step.half.apart': NoValues;
  readonly 'step.half.level-seams-first': NoValues;
  readonly 'step.half.outwards': NoValues;
  readonly 'step.half.pin': NoValues;
  readonly 'step.sleeve.title': NoValues;
  readonly 'step.sleeve.hem': { readonly hasStraps: boolean };
  /** `areOneLine`: a letter names the ends of several straps, one above the other. */
  readonly 'step.sleeve.stitch': { readonly hasStraps: boolean; readonly areOneLine: boolean };
  readonly 'step.sleeve.throat': NoValues;
  readonly 'step.sleeve.close': NoValues;
  readonly 'step.sleeve.tabs': { readonly count: number };
  readonly 'step.sleeve.try': NoValues;
  readonly 'step.inner.title': { readonly half: Half; readonly hasStraps: boolean };
  readonly 'step.inner.lay-front': NoValues;
  readonly 'step.inner.to-front': NoValues;
  readonly 'step.inner.throat': NoValues;
  readonly 'step.inner.straps': NoValues;
  /** From the web's line to the free edge, mm. */
  readonly 'step.inner.to-back': {
    readonly far: number;
    readonly isRolled: boolean;
    readonly hasStraps: boolean;
  };
  readonly 'step.inner.no-twist': NoValues;
  readonly 'step.shoulder.title': NoValues;
  readonly 'step.shoulder.outwards': NoValues;
  readonly 'step.neck.title': NoValues;
  readonly 'step.neck.pin': NoValues;
  readonly 'step.neck.open': { readonly isOpen: boolean };
  readonly 'step.side.title': NoValues;
  readonly 'step.side.adjust': NoValues;
  readonly 'step.side.sew': NoValues;
  readonly 'step.side.packed': NoValues;
  readonly 'step.side.ladder': NoValues;
}

/** Round the cell that is turned, and round everything else rolled up, mm; how many times the one is the other. */
interface Packing {
  readonly mouth: number;
  readonly pack: number;
  readonly ratio: number;
}

/** The edge is sewn to the plate's cover, else through holes in its bound rim. */
interface OnPlate {
  readonly isCovered: boolean;
}

interface ClosingSteps {
  readonly 'step.closing.title': { readonly isBehind: boolean; readonly isLaddered: boolean };
  readonly 'step.closing.empty': NoValues;
  readonly 'step.closing.count': NoValues;
  readonly 'step.closing.roll': Packing & { readonly isBehind: boolean; readonly hasStraps: boolean };
  readonly 'step.closing.sew': NoValues;
  readonly 'step.closing.tie-to-one': NoValues;
  readonly 'step.closing.turn': { readonly isBehind: boolean };
  readonly 'step.closing.flat': NoValues;
  readonly 'step.turn-out.title': { readonly isBehind: boolean; readonly isLaddered: boolean };
  readonly 'step.turn-out.tie': NoValues;
  readonly 'step.turn-out.draw': Packing;
  readonly 'step.turn-out.ladder': NoValues;
  readonly 'step.turn-out.why-ladder': Packing;
  readonly 'step.turn-out.or-packed': Packing;
}

/** Names and notes of seams in the order of sewing. */
interface SeamWords {
  readonly 'seam.on-side': { readonly seam: Phrase; readonly side: 'right' | 'left' };
  readonly 'seam.between': { readonly seam: Phrase; readonly one: Phrase; readonly other: Phrase };
  readonly 'seam.with-letter': { readonly seam: Phrase; readonly letter: Phrase };
  readonly 'seam.within': { readonly seam: Phrase; readonly panel: Phrase };
  readonly 'seam.of-piece': { readonly piece: Phrase; readonly at: PlaceOfEdge };
  /** `onto`: letter of the shell's seam. */
  readonly 'seam.on-allowances': { readonly piece: Phrase; readonly onto: string };
  readonly 'seam.sleeve': { readonly hasTie: boolean };
  readonly 'seam.test-tube': { readonly at: 'closing' | 'bottom' | 'top' };
  readonly 'seam.arm': { readonly at: 'outer' | 'inner'; readonly side: 'right' | 'left' };
  readonly 'seam.to-open-edge': NoValues;
}

/** Where an edge of an inner part is sewn on. */
export type PlaceOfEdge = 'sleeve' | 'line' | 'front' | 'back';

/** How the shell leans behind plates that are alike in it: radians, and mm over the thickness of the board. */
export type LeaningRims = Pick<PlateRim, 'where' | 'angle' | 'depth'> & {
  readonly plates: readonly PlateRim['plate'][];
};

interface BoardSteps {
  readonly 'step.boards.title': NoValues;
  readonly 'step.boards.compare': NoValues;
  readonly 'step.boards.glue': NoValues;
  readonly 'step.boards.pole': NoValues;
  readonly 'step.boards.block': NoValues;
  readonly 'step.boards.shell-narrows': LeaningRims;
  readonly 'step.boards.shell-widens': LeaningRims;
  readonly 'step.magnets.title': NoValues;
  readonly 'step.magnets.mark': NoValues;
  readonly 'step.magnets.try': { readonly hasCushions: boolean };
  readonly 'step.magnets.seat': NoValues;
  readonly 'step.covers.title': NoValues;
  readonly 'step.covers.stretch': NoValues;
  readonly 'step.covers.holes': NoValues;
  readonly 'step.covers.slots': NoValues;
  readonly 'step.bind.title': NoValues;
  /** Of the tape, mm. */
  readonly 'step.bind.tape': { readonly width: number };
  /** From the rim, and from one to the next, mm. */
  readonly 'step.bind.holes': { readonly inside: number; readonly apart: number };
  readonly 'step.bind.slots': NoValues;
}

interface ArmSteps {
  readonly 'step.sew-arms.title': NoValues;
  readonly 'step.sew-arms.sew': NoValues;
  readonly 'step.sew-arms.turn': NoValues;
  readonly 'step.sew-arms.wrist': NoValues;
  readonly 'step.fill-arms.title': NoValues;
  readonly 'step.fill-arms.roll': NoValues;
  readonly 'step.fill-arms.feel': NoValues;
  readonly 'step.fill-arms.cap': NoValues;
  readonly 'step.arms.measured': { readonly state: ArmState };
  readonly 'step.cushions.title': NoValues;
  readonly 'step.cushions.fill': NoValues;
  readonly 'step.cushions.try': NoValues;
  readonly 'step.arms.title': NoValues;
  readonly 'step.arms.hang': NoValues;
  readonly 'step.arms.peg': NoValues;
}

interface SetSteps {
  readonly 'step.supports.title': { readonly has: boolean };
  readonly 'step.supports.tack': NoValues;
  /** mm. */
  readonly 'step.supports.plates': OnPlate & { readonly gap: number };
  readonly 'step.supports.glue': NoValues;
  readonly 'step.supports.cord': NoValues;
  readonly 'step.supports.ways': NoValues;
  readonly 'step.pole.title': NoValues;
  /** From the pole's upper end to the outside of the base plate, mm. */
  readonly 'step.pole.push': { readonly inside: number };
  readonly 'step.pole.block': { readonly hasSupports: boolean };
  readonly 'step.pole.collar': NoValues;
  readonly 'step.pole.plate': OnPlate;
  readonly 'step.pole.plumb': NoValues;
}

interface FillSteps {
  readonly 'step.fill.turn': NoValues;
  /** What is assumed, g a litre. */
  readonly 'step.fill.scale': { readonly low: number; readonly high: number };
  /** How each zone is filled, from the top down. */
  readonly 'step.fill.shoulders': NoValues;
  readonly 'step.fill.throat': NoValues;
  readonly 'step.fill.upper-chest': NoValues;
  readonly 'step.fill.bust': NoValues;
  readonly 'step.fill.midriff': NoValues;
  readonly 'step.fill.waist': NoValues;
  readonly 'step.fill.belly': NoValues;
  readonly 'step.fill.to-base': NoValues;
  /** From the base to the far end, mm. */
  readonly 'step.fill.by-gaps': { readonly depth: number };
  readonly 'step.fill.in-turn': NoValues;
  readonly 'step.fill.ties': NoValues;
  readonly 'step.fill.stop': NoValues;
  readonly 'step.fill.measure': AtLevel & { readonly isFirst: boolean };
}

interface FinishSteps {
  readonly 'step.close.title': NoValues;
  readonly 'step.close.plate': OnPlate & { readonly hasTabs: boolean };
  readonly 'step.close.collar': NoValues;
  readonly 'step.close.lace': OnPlate;
  readonly 'step.rest.title': NoValues;
  readonly 'step.rest.stand': NoValues;
  /** mm. */
  readonly 'step.rest.measure': { readonly above: number };
  readonly 'step.rest.seams': NoValues;
  readonly 'step.lids.title': NoValues;
  readonly 'step.lids.top-up': NoValues;
  readonly 'step.lids.gaps': OnPlate;
  readonly 'step.lids.lids': NoValues;
  readonly 'step.lids.lace': OnPlate;
  readonly 'step.stand.title': { readonly hasBallast: boolean };
  readonly 'step.stand.pin': NoValues;
  readonly 'step.stand.tilt': { readonly hasBallast: boolean };
  readonly 'step.stand.castors': NoValues;
  readonly 'step.stand.write': NoValues;
  readonly 'step.tapes.title': NoValues;
  readonly 'step.tapes.height': NoValues;
  readonly 'step.tapes.assumed': NoValues;
  readonly 'step.tapes.mark': NoValues;
  readonly 'step.tapes.cover': NoValues;
  readonly 'step.care.title': NoValues;
  readonly 'step.care.measure': NoValues;
  readonly 'step.care.place': NoValues;
  readonly 'step.care.repair': NoValues;
  readonly 'step.care.apart': { readonly hasMagnets: boolean };
}

interface AtLevel {
  readonly level: Phrase;
}

/** Names of what is measured or counted before going on. */
interface Checks {
  readonly 'check.test-tube': NoValues;
  readonly 'check.tube': NoValues;
  /** kg. */
  readonly 'check.loaded-tilt': { readonly mass: number };
  readonly 'check.conflicts': NoValues;
  readonly 'check.estimates': NoValues;
  readonly 'check.bar': { readonly way: 'across' | 'up' };
  readonly 'check.sides-of-square': NoValues;
  readonly 'check.fused-square': NoValues;
  readonly 'check.pieces': NoValues;
  readonly 'check.panels-marked': { readonly side: 'right' | 'left' };
  readonly 'check.round-plate': Pick<PlateRim, 'plate'>;
  readonly 'check.edge-of-opening': Pick<PlateRim, 'plate'>;
  readonly 'check.magnets': NoValues;
  readonly 'check.all-round': AtLevel;
  readonly 'check.across-half': AtLevel & { readonly half: Half; readonly isApart: boolean };
  readonly 'check.laid-out': AtLevel;
  readonly 'check.laid-flat': AtLevel;
  readonly 'check.brace': AtLevel & { readonly brace: Phrase };
  readonly 'check.brace-end': { readonly brace: Phrase; readonly end: 'lower' | 'upper' };
  readonly 'check.sleeve': NoValues;
  readonly 'check.armhole-cord': NoValues;
  readonly 'check.pole-inside': NoValues;
  readonly 'check.fill': NoValues;
  readonly 'check.arm-fill': { readonly count: number };
  readonly 'check.dome': NoValues;
  readonly 'check.size': AtLevel & { readonly kind: ReadingKind };
  readonly 'check.above-floor': AtLevel;
  readonly 'check.tilt': NoValues;
  readonly 'check.ballast': NoValues;
}

/** Parts of the form on their way, as a fault of the order names them. */
export const WORK_PARTS = [
  'arm',
  'armhole',
  'armhole-plate',
  'base',
  'base-plate',
  'cloth',
  'collars',
  'cover',
  'cushion',
  'foot',
  'gap',
  'lid',
  'magnets',
  'marks',
  'neck',
  'neck-block',
  'neck-plate',
  'pole',
  'shoulder-support',
  'sleeve',
  'stuffing',
  'tabs',
  'trial-shell',
  'wrist-plate',
] as const;
export type WorkPart = (typeof WORK_PARTS)[number];

/** What is found out on the way. */
export const WORK_FACTS = [
  'bars',
  'density',
  'flat-widths',
  'growth',
  'heights',
  'measures',
  'opening-edges',
  'pole-diameter',
  'polarity',
  'shrinkage',
  'sleeve-width',
  'trial',
] as const;
export type WorkFact = (typeof WORK_FACTS)[number];

/** Edges that are sewn to the cover or the rim of a plate. */
export type LacedEdge = 'base' | 'neck' | 'armhole' | 'wrist' | 'cap';

type FaultWords = { readonly [Part in WorkPart as `work.part.${Part}`]: NoValues } & {
  readonly [Fact in WorkFact as `work.fact.${Fact}`]: NoValues;
} & {
  readonly 'work.edge': { readonly of: LacedEdge };
};

/** What stands round the words of a step wherever the order of work is read. */
interface StepWords {
  readonly 'work.optional': NoValues;
  /** Of work for the whole form: our estimate. */
  readonly 'work.hours': { readonly hours: number };
  /** Numbers of the steps to be done before. */
  readonly 'work.after': { readonly steps: readonly number[] };
  readonly 'work.pieces': { readonly pieces: readonly Phrase[] };
  /** mm. */
  readonly 'work.seam': {
    readonly seam: Phrase;
    readonly lengths: readonly number[];
    readonly marks: number;
    readonly closesRing: boolean;
    readonly note?: Phrase;
  };
  readonly 'work.check': { readonly check: Phrase; readonly value: Phrase };
}

/** What this room says, and what is put in. */
export type MakingPhrases = PrepareSteps &
  StepWords &
  BoardSteps &
  SewSteps &
  ClosingSteps &
  ArmSteps &
  SetSteps &
  FillSteps &
  SeamWords &
  FinishSteps &
  Checks &
  FaultWords & {
    readonly [Phase in WorkPhase as `phase.${Phase}`]: NoValues;
  };

export const phrase = phrasesOf<MakingPhrases>();
