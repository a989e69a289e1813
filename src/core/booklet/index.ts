export { type BookletWishes, drawBooklet, pictureRoomOn } from './draw-booklet.ts';
export type { BookletPaper } from './flow-pages.ts';
export { foldPages } from './fold-pages.ts';
export type { BookletColumn, BookletKind, BookletPart, BookletPhrases, PictureKey } from './phrases.ts';
export { eachPicture, pictureStep, picturesOfSteps, prepareStepPictures } from './picture-step.ts';
