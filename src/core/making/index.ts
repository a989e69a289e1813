export type { MakingPhrases } from './phrases.ts';
export { planMaking } from './plan-making.ts';
