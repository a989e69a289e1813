import { failure, type Result, success } from '../base/index.ts';
import type { ProjectCutting } from '../project/index.ts';
import { correctionFromBars } from '../sheet/index.ts';
import type { ExportOptions } from './export-form.ts';

const FIELDS: Readonly<Record<string, string>> = {
  'measured-x': 'cutting.measuredBars.across',
  'measured-y': 'cutting.measuredBars.up',
};

/** What a project says about paper, printer and cutting machine, as options of `exportForm`. Fails on bars that are far off. */
export function readCutting(
  cutting: ProjectCutting,
): Result<Pick<ExportOptions, 'papers' | 'print' | 'cutter'>> {
  const { paper, margin, joint, measuredBars, mat, kerf, bladeOffset, overcut, strokeText, colours } =
    cutting;
  const correction = measuredBars
    ? correctionFromBars({ x: measuredBars.across, y: measuredBars.up })
    : undefined;
  if (correction && !correction.ok)
    return failure(correction.issues.map((issue) => ({ ...issue, path: FIELDS[issue.path] ?? issue.path })));
  return success({
    papers: [paper ?? 'a4'],
    print: withoutAbsent({ margin, joint, correction: correction?.value }),
    cutter: withoutAbsent({ mat, kerf, bladeOffset, overcut, strokeText, colours }),
  });
}

type Present<T> = { [K in keyof T]?: Exclude<T[K], undefined> };

function withoutAbsent<T extends object>(object: T): Present<T> {
  return Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined)) as Present<T>;
}
