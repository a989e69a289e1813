export { orderOfWork, type ProvenOrder, provenStep } from './order-of-work.ts';
export { type MakingPhrases, phrase as makingPhrase } from './phrases.ts';
export { planMaking } from './plan-making.ts';
export { numbersBefore, wordSeam, wordStepCheck } from './word-step.ts';
