export { type ForetoldLevel, foretellLevels } from './foretell-levels.ts';
