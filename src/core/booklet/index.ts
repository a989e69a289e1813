export { pictureStep, picturesOfSteps } from './picture-step.ts';
