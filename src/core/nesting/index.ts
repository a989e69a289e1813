export { checkPlan } from './check-plan.ts';
export { crossesItself } from './crosses-itself.ts';
export { nest } from './nest.ts';
export type { NestingPhrases } from './phrases.ts';
export type * from './types.ts';
