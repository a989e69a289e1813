import { failure, type Result, success } from '../base/index.ts';
import type { ProjectCutting } from '../project/index.ts';
import {
  type CutterOptions,
  correctionFromBars,
  PRINT_OPTIONS,
  type PrintOptions,
  type ProjectorOptions,
} from '../sheet/index.ts';

const FIELDS: Readonly<Record<string, string>> = {
  'measured-x': 'cutting.measuredBars.across',
  'measured-y': 'cutting.measuredBars.up',
};

/** How the pieces go to paper and to a cutting machine. */
export interface CuttingOptions {
  /** Ids of papers for the PDF; absent = the usual one. */
  readonly papers?: readonly string[];
  readonly print?: Omit<PrintOptions, 'paper'>;
  /** The page that is projected on cloth. */
  readonly projector?: Partial<Pick<ProjectorOptions, 'ground' | 'projectedSquare'>>;
  /** Sheets for a cutting machine; `colours` replace or add to the usual ones, by layer. */
  readonly cutter?: Omit<CutterOptions, 'title' | 'say' | 'laid'> & {
    readonly colours?: Readonly<Record<string, string>>;
  };
}

/** What a project says about paper, printer and cutting machine, Fails on bars that are far off. */
export function readCutting(cutting: ProjectCutting): Result<CuttingOptions> {
  const {
    paper,
    margin,
    joint,
    twins,
    plain,
    booklet,
    ground,
    projectedSquare,
    measuredBars,
    mat,
    kerf,
    bladeOffset,
    overcut,
    strokeText,
    divides,
    colours,
  } = cutting;
  const correction = measuredBars
    ? correctionFromBars({ x: measuredBars.across, y: measuredBars.up })
    : undefined;
  if (correction && !correction.ok)
    return failure(correction.issues.map((issue) => ({ ...issue, path: FIELDS[issue.path] ?? issue.path })));
  return success({
    papers: [paper ?? PRINT_OPTIONS.paper.usual],
    print: withoutAbsent({ margin, joint, twins, plain, booklet, correction: correction?.value }),
    projector: withoutAbsent({ ground, projectedSquare }),
    cutter: withoutAbsent({ mat, kerf, bladeOffset, overcut, strokeText, divides, colours }),
  });
}

type Present<T> = { [K in keyof T]?: Exclude<T[K], undefined> };

function withoutAbsent<T extends object>(object: T): Present<T> {
  return Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined)) as Present<T>;
}
