export { BodyScene } from './body-scene.tsx';
