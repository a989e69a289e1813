export { type ForetoldLevel, foretellLevels } from './foretell-levels.ts';
export * from './stuffing-targets.ts';
export { divideFill, type FillZone } from './stuffing-zones.ts';
