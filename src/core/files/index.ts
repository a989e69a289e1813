export { EXPORT_FORMATS, type ExportFormat, exportForm } from './export-form.ts';
export { type FormFile, filesOfForm } from './files-of-form.ts';
export type { ExportOptions } from './format-writer.ts';
export type { FilesPhrases } from './phrases.ts';
export { planPrint } from './plan-print.ts';
