export { EXPORT_FORMATS, type ExportFormat, type ExportOptions, exportForm } from './export-form.ts';
export { type FormFile, filesOfForm } from './files-of-form.ts';
export type { FilesPhrases } from './phrases.ts';
