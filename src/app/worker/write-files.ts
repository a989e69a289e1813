import { readCutting } from '../../core/assembly/index.ts';
import { type Result, type Say, success } from '../../core/base/index.ts';
import { exportForm, type FormFile } from '../../core/files/index.ts';
import type { Form } from '../../core/form/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { FileOptions, OnDrawn } from '../calls/index.ts';

const NO_BYTES = new Uint8Array(0);
/** Formats with letters of printed pages. */
const LETTERED = ['pdf', 'labels', 'lay', 'booklet', 'projector', 'gauges', 'zip'];

interface Printing {
  /** As in 2024-05-31. */
  readonly date: string;
  readonly say: Say;
  /** Asked only when letters are needed. */
  readonly readFont: () => Promise<Uint8Array>;
  readonly onDrawn: OnDrawn;
}

/** The files of the form made of a project; several come with their archive last. */
export async function writeFiles(
  form: Form,
  project: Project,
  { formats, pieces, gauges }: FileOptions,
  { date, say, readFont, onDrawn }: Printing,
): Promise<Result<readonly FormFile[]>> {
  const saved = readCutting(project.cutting);
  if (!saved.ok) return saved;
  const needsFont = LETTERED.some((format) => formats.includes(format));
  const options = {
    ...saved.value,
    say,
    formats,
    ...(pieces ? { only: pieces } : {}),
    ...(gauges ? { gauges } : {}),
    date,
    goesOn: onDrawn,
    font: { name: 'DejaVuSans', bytes: needsFont ? await readFont() : NO_BYTES },
  };
  const files = await exportForm(form, options);
  if (!files.ok || files.value.length < 2) return files;
  const packed = await exportForm(form, { ...options, formats: [...formats, 'zip'] });
  return packed.ok ? success([...files.value, packed.value[packed.value.length - 1]], packed.issues) : packed;
}
