export { createServices, type Services } from './create-services.ts';
export type { Demo } from './demos.ts';
export { loadSpeech } from './speak-languages.ts';
