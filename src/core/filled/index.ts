export { designedBraces, type FilledChoices, filledProblem } from './filled-problem.ts';
export { loadOfFilling } from './load-of-filling.ts';
export { measureFilled } from './measure-filled.ts';
export type * from './types.ts';
