export { makeReport, reportOf } from './make-report.ts';
export { measureLevels } from './measure-flat.ts';
export { nameRevision } from './name-revision.ts';
export type { FormPhrases, PlaceMark } from './phrases.ts';
export { sectionOfLevel } from './section-of-level.ts';
export type * from './types.ts';
export type * from './work-step.ts';
export { type WorstZone, worstZones } from './worst-zones.ts';
