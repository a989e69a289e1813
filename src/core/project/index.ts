export { checkOptions } from './check-options.ts';
export type {
  CheckingEntry,
  CheckingReading,
  ProjectChecking,
  ProjectMaking,
} from './making-and-checking.ts';
export { migrateProject } from './migrate-project.ts';
export { parseProject } from './parse-project.ts';
export type { FilePhrases, JsonPhrases, ProjectPhrases } from './phrases.ts';
export type {
  Project,
  ProjectCloth,
  ProjectCutting,
  ProjectInside,
  ProjectPerson,
  ProjectSeams,
} from './project.ts';
export { measureLimits, projectFormat, projectVersion } from './project.ts';
export { serializeProject } from './serialize-project.ts';
