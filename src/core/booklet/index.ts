export { type BookletWishes, drawBooklet } from './draw-booklet.ts';
export type { BookletPaper } from './flow-pages.ts';
export type { BookletColumn, BookletPart, BookletPhrases } from './phrases.ts';
export { pictureStep, picturesOfSteps } from './picture-step.ts';
