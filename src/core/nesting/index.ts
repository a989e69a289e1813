export { checkPlan } from './check-plan.ts';
export { nest } from './nest.ts';
export type { NestingPhrases } from './phrases.ts';
export type * from './types.ts';
