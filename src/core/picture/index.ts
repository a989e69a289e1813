export { drawForm, type FormChoices } from './draw-form.ts';
export { makeScene, type SceneChoices, type SceneParts } from './make-scene.ts';
export { CAMERAS, projectCamera } from './project-camera.ts';
export type * from './types.ts';
