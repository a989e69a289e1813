export { createServices, type Services } from './create-services.ts';
export type { Demo } from './demos.ts';
export { isSite } from './hand-over-program.ts';
export { seekLay } from './lay-out.ts';
export type { WardrobeRoom } from './open-wardrobe.ts';
export { loadSpeech } from './speak-languages.ts';
