export { pictureStep } from './picture-step.ts';
