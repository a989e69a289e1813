export {
  orderOfWork,
  type ProvenOrder,
  planSteps,
  provenStep,
  proveOrder,
  stepsOf,
} from './order-of-work.ts';
export type { MakingPhrases } from './phrases.ts';
export { planMaking } from './plan-making.ts';
export { type Work, workOfForm } from './work-of-form.ts';
