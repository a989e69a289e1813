export { type Core, type CoreBody, type CoreTape, findCore } from './find-core.ts';
export { gapBetween } from './gap-between.ts';
export {
  isBetterAnew,
  judgeRefit,
  type RefitStep,
  type RefitZone,
  type SeamsAcross,
} from './judge-refit.ts';
export { type LaidPads, layPads, type Pad, type PaddedForm } from './lay-pads.ts';
export { offsetSurface } from './offset-surface.ts';
export { phrase as refitPhrase, type RefitPhrases } from './phrases.ts';
export { REFIT_LIMITS, type RefitOptions } from './refit-options.ts';
export { moveToFront, standOver } from './stand-over.ts';
export { tellStep } from './tell-step.ts';
