/** The stages after the first, in a chunk of their own that the first picture does not wait for. */
export { BodyStage as body } from './body-stage.tsx';
export { CheckingStage as checking } from './checking-stage.tsx';
export { CuttingStage as cutting } from './cutting-stage.tsx';
export { InsideStage as inside } from './inside-stage.tsx';
export { MakingStage as making } from './making-stage.tsx';
export { PanelsStage as panels } from './panels-stage.tsx';
export { SeamsStage as seams } from './seams-stage.tsx';
