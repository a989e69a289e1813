export { makeWorkshop } from './make-workshop.ts';
export type { MakingPhrases } from './phrases.ts';
