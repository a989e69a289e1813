import { readCutting } from '../../core/assembly/index.ts';
import { type Result, type Speaker, success } from '../../core/base/index.ts';
import { exportForm } from '../../core/files/index.ts';
import { makeRefit } from '../../core/pipeline/index.ts';
import type { Project } from '../../core/project/index.ts';
import { refitPhrase, tellStep } from '../../core/refit/index.ts';
import type { RefitAnswer } from '../calls/index.ts';

interface Printing {
  /** As in 2024-05-31. */
  readonly date: string;
  readonly speaker: Speaker;
  readonly readFont: () => Promise<Uint8Array>;
}

/** What makes the form of one project serve the body of another, as phrases, with the files for that as one archive. */
export async function refitForm(
  before: Project,
  after: Project,
  wadding: number | undefined,
  { date, speaker, readFont }: Printing,
): Promise<Result<RefitAnswer>> {
  const refit = makeRefit(before, after, { speaker, date }, wadding === undefined ? {} : { wadding });
  const saved = readCutting(after.cutting);
  if (!refit.ok) return refit;
  if (!saved.ok) return saved;
  const { zones, pads, toFront, form } = refit.value;
  const answer = {
    zones: zones.map(({ id, level, steps }) => ({
      id,
      name: level ?? refitPhrase('refit.above'),
      steps: steps.length === 0 ? [refitPhrase('refit.nothing')] : steps.map(tellStep),
    })),
    verdict: refitPhrase('refit.verdict', { isAnew: !form }),
    toFront,
    pads: pads.map(({ number, input }) => ({ number, name: input.name, notes: input.notes ?? [] })),
  };
  if (!form) return success({ ...answer, pads: [], archive: null });
  const files = await exportForm(form, {
    ...saved.value,
    say: speaker.say,
    formats: ['svg', 'pdf', 'zip'],
    date,
    font: { name: 'DejaVuSans', bytes: await readFont() },
  });
  if (!files.ok) return files;
  const archive = files.value[files.value.length - 1];
  return success({ ...answer, archive });
}
