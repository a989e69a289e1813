/** The stages after the first, and the dialogs of bodies, in a chunk of their own that the first picture does not wait for. */
import '../styles/late.css';

export { DemoGallery } from '../bodies/demo-gallery.tsx';
export { Wardrobe } from '../bodies/wardrobe.tsx';
export { BodyStage as body } from '../body/body-stage.tsx';
export { CheckingStage as checking } from '../checking/checking-stage.tsx';
export { CuttingStage as cutting } from '../cutting/cutting-stage.tsx';
export { StageGuide } from '../guide/stage-guide.tsx';
export { InsideStage as inside } from '../inside/inside-stage.tsx';
export { LayingStage as laying } from '../laying/laying-stage.tsx';
export { MakingStage as making } from '../making/making-stage.tsx';
export { PanelsStage as panels } from '../panels/panels-stage.tsx';
export { SeamsStage as seams } from '../seams/seams-stage.tsx';
export { Afterwards } from './afterwards.tsx';
export { VerdictLine as verdict } from './verdict-line.tsx';
