import type { Issue } from '../../core/base/index.ts';
import { issuesOf } from './selectors.ts';
import type { Stage } from './stages.ts';
import type { AppState } from './types.ts';

/** The stage in which a part of the project file is changed, by the beginning of its path; the first that fits. */
const BY_PATH: readonly (readonly [path: string, stage: Stage])[] = [
  ['body.measures.', 'tape'],
  ['body', 'body'],
  ['seams', 'seams'],
  ['cloth.kind', 'panels'],
  ['cloth.grain', 'panels'],
  ['cloth', 'cutting'],
  ['cutting', 'cutting'],
  ['inside.testTube', 'cutting'],
  ['inside', 'inside'],
  ['laying', 'laying'],
  ['checking', 'checking'],
];
/** What has no place in the file, by the beginning of its code. */
const BY_CODE: readonly (readonly [code: string, stage: Stage])[] = [
  ['filled-', 'inside'],
  ['not-fitted', 'inside'],
  ['order-of-work', 'making'],
  ['flatten-', 'seams'],
];

/** Where a warning is mended. */
export function stageOfIssue({ path, code }: Pick<Issue, 'path' | 'code'>): Stage {
  const found =
    BY_PATH.find(([start]) => path.startsWith(start)) ?? BY_CODE.find(([start]) => code.startsWith(start));
  return found?.[1] ?? 'panels';
}

/** What is to be mended in a stage. */
export function issuesOfStage(state: AppState, stage: Stage): readonly Issue[] {
  return issuesOf(state).filter((issue) => stageOfIssue(issue) === stage);
}
