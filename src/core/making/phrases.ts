import { type NoValues, type Phrase, phrasesOf } from '../base/index.ts';
import type { ArmState } from '../body/index.ts';
import type { WorkPhase } from '../form/index.ts';
import type { PlateRim } from '../inside/index.ts';
import type { ReadingKind } from '../simulate/index.ts';

type Half = 'front' | 'back';

/** From the test of the cloth to the marked pieces. */
interface PrepareSteps {
  readonly 'step.test-tube.title': NoValues;
  readonly 'step.test-tube.why': NoValues;
  readonly 'step.test-tube.nothing-typed': NoValues;
  /** A fraction. */
  readonly 'step.test-tube.taken-off': { readonly growth: number };
  readonly 'step.test-tube.reckoned': { readonly growth: number };
  /** By how much girths may come out smaller or larger, mm. */
  readonly 'step.test-tube.usual-cloth': { readonly below: number; readonly above: number };
  readonly 'step.use.title': NoValues;
  readonly 'step.use.settle': NoValues;
  readonly 'step.use.pole': NoValues;
  readonly 'step.measure.title': NoValues;
  readonly 'step.measure.how': NoValues;
  readonly 'step.measure.compare': NoValues;
  readonly 'step.print.title': NoValues;
  readonly 'step.print.cover': { readonly paper: Phrase };
  readonly 'step.print.rest': NoValues;
  readonly 'step.trial.title': NoValues;
  readonly 'step.trial.sew': NoValues;
  readonly 'step.trial.judge': NoValues;
  readonly 'step.cloth.title': NoValues;
  readonly 'step.cloth.wash': NoValues;
  readonly 'step.cloth.fuse': NoValues;
  readonly 'step.cloth.square': NoValues;
  readonly 'step.cut.title': NoValues;
  readonly 'step.cut.lay': NoValues;
  readonly 'step.cut.cut': NoValues;
  readonly 'step.mark.title': NoValues;
  readonly 'step.mark.mark': NoValues;
  readonly 'step.mark.hold': NoValues;
  readonly 'step.mark.compare': NoValues;
}

/** How the shell leans behind a plate: radians, and mm over the thickness of the board. */
type Rim = Pick<PlateRim, 'plate' | 'where' | 'angle' | 'depth'>;

interface BoardSteps {
  readonly 'step.boards.title': NoValues;
  readonly 'step.boards.glue': NoValues;
  readonly 'step.boards.pole': NoValues;
  readonly 'step.boards.shell-narrows': Rim;
  readonly 'step.boards.shell-widens': Rim;
  readonly 'step.boards.cover': NoValues;
  readonly 'step.magnets.title': NoValues;
  readonly 'step.magnets.mark': NoValues;
  readonly 'step.magnets.try': NoValues;
}

interface SewSteps {
  /** Stitch, second row and pressing, the same for every seam of the shell. */
  readonly 'step.sew.stitch': NoValues;
  readonly 'step.half.title': { readonly half: Half };
  readonly 'step.half.level-seams-first': NoValues;
  readonly 'step.half.outwards': NoValues;
  readonly 'step.half.pin': NoValues;
  readonly 'step.sleeve.title': NoValues;
  readonly 'step.sleeve.hem': NoValues;
  readonly 'step.sleeve.stitch': NoValues;
  readonly 'step.sleeve.throat': NoValues;
  readonly 'step.sleeve.try': NoValues;
  readonly 'step.inner.title': { readonly half: Half };
  readonly 'step.inner.now': NoValues;
  readonly 'step.inner.to-front': NoValues;
  readonly 'step.inner.to-back': NoValues;
  readonly 'step.inner.throat': NoValues;
  readonly 'step.shoulder.title': NoValues;
  readonly 'step.shoulder.outwards': NoValues;
  readonly 'step.neck.title': NoValues;
  readonly 'step.neck.pin': NoValues;
  readonly 'step.neck.close': NoValues;
  readonly 'step.side.title': { readonly side: 'right' | 'left' | 'centre' };
  readonly 'step.side.order': NoValues;
  readonly 'step.closing.title': NoValues;
  readonly 'step.closing.sew': NoValues;
  readonly 'step.closing.turn': NoValues;
  readonly 'step.sew-arms.title': NoValues;
  readonly 'step.sew-arms.sew': NoValues;
}

/** Names and notes of seams in the order of sewing. */
interface SeamWords {
  readonly 'seam.on-side': { readonly seam: Phrase; readonly side: 'right' | 'left' };
  /** Edges of several pieces under one letter. */
  readonly 'seam.joined': { readonly pieces: readonly Phrase[] };
  readonly 'seam.test-tube': { readonly at: 'closing' | 'bottom' | 'top' };
  readonly 'seam.to-open-edge': NoValues;
}

interface FinishSteps {
  readonly 'step.plates.title': NoValues;
  readonly 'step.plates.set': NoValues;
  readonly 'step.plates.shoulders': NoValues;
  readonly 'step.plates.hold': NoValues;
  readonly 'step.plates.try-arms': NoValues;
  readonly 'step.pole.title': NoValues;
  readonly 'step.pole.push': NoValues;
  readonly 'step.pole.plumb': NoValues;
  readonly 'step.pole.turn': NoValues;
  /** How each zone is filled, from the top down. */
  readonly 'step.fill.shoulders': NoValues;
  readonly 'step.fill.throat': NoValues;
  readonly 'step.fill.upper-chest': NoValues;
  readonly 'step.fill.bust': NoValues;
  readonly 'step.fill.midriff': NoValues;
  readonly 'step.fill.waist': NoValues;
  readonly 'step.fill.belly': NoValues;
  readonly 'step.fill.to-base': NoValues;
  readonly 'step.fill.in-turn': NoValues;
  readonly 'step.fill.stop': NoValues;
  readonly 'step.rest.title': NoValues;
  readonly 'step.rest.measure': NoValues;
  readonly 'step.rest.seams': NoValues;
  readonly 'step.close.title': NoValues;
  readonly 'step.close.lace': NoValues;
  readonly 'step.close.top-up': NoValues;
  readonly 'step.tapes.title': NoValues;
  readonly 'step.tapes.mark': NoValues;
  readonly 'step.tapes.cover': NoValues;
  readonly 'step.stand.title': NoValues;
  readonly 'step.stand.tilt': NoValues;
  readonly 'step.stand.write': NoValues;
  readonly 'step.arms.title': NoValues;
  readonly 'step.arms.fill': NoValues;
  readonly 'step.arms.peg': NoValues;
  readonly 'step.arms.measured': { readonly state: ArmState };
  readonly 'step.care.title': NoValues;
  readonly 'step.care.measure': NoValues;
  readonly 'step.care.place': NoValues;
}

interface AtLevel {
  readonly level: Phrase;
}

/** Names of what is measured or counted before going on. */
interface Checks {
  readonly 'check.test-tube': NoValues;
  readonly 'check.tube': NoValues;
  readonly 'check.loaded-tilt': NoValues;
  readonly 'check.conflicts': NoValues;
  readonly 'check.estimates': NoValues;
  readonly 'check.bar': { readonly way: 'across' | 'up' };
  readonly 'check.sides-of-square': NoValues;
  readonly 'check.fused-square': NoValues;
  readonly 'check.pieces': NoValues;
  readonly 'check.panels-marked': { readonly side: 'right' | 'left' };
  readonly 'check.round-plate': Pick<PlateRim, 'plate'>;
  readonly 'check.edge-of-opening': Pick<PlateRim, 'plate'>;
  readonly 'check.all-round': AtLevel;
  readonly 'check.across-half': AtLevel & { readonly half: Half };
  readonly 'check.laid-flat': AtLevel;
  readonly 'check.brace': AtLevel & { readonly brace: Phrase };
  readonly 'check.brace-end': { readonly brace: Phrase; readonly end: 'lower' | 'upper' };
  readonly 'check.sleeve': NoValues;
  readonly 'check.armhole-cord': NoValues;
  readonly 'check.pole-inside': NoValues;
  readonly 'check.bust-height': NoValues;
  readonly 'check.fill': NoValues;
  readonly 'check.size': AtLevel & { readonly kind: ReadingKind };
  readonly 'check.above-floor': AtLevel;
  readonly 'check.tilt': NoValues;
  readonly 'check.ballast': NoValues;
}

/** What this room says, and what is put in. */
export type MakingPhrases = PrepareSteps &
  BoardSteps &
  SewSteps &
  SeamWords &
  FinishSteps &
  Checks & {
    readonly [Phase in WorkPhase as `phase.${Phase}`]: NoValues;
  };

export const phrase = phrasesOf<MakingPhrases>();
