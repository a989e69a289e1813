import { readCutting } from '../../core/assembly/index.ts';
import type { Result, Say } from '../../core/base/index.ts';
import { planPrint as planPages } from '../../core/files/index.ts';
import type { Form } from '../../core/form/index.ts';
import type { Project } from '../../core/project/index.ts';
import type { PrintPlan } from '../../core/sheet/index.ts';
import type { PrintWish } from '../calls/index.ts';

/** How the form comes out printed, as the project says or with something chosen otherwise. */
export function planPrint(
  form: Form,
  project: Project,
  { pieces, change = {} }: PrintWish,
  date: string,
  say: Say,
): Result<PrintPlan> {
  const saved = readCutting({ ...project.cutting, ...change });
  if (!saved.ok) return saved;
  const { papers, print } = saved.value;
  return planPages(form, {
    ...(papers && { papers }),
    ...(print && { print }),
    ...(pieces && { only: pieces }),
    date,
    say,
  });
}
