export type {
  ChoiceOutlines,
  CutWish,
  DistancePicture,
  FileOptions,
  FlatCut,
  LayoutLines,
  LayoutSketch,
  MakeWish,
  OnDrawn,
  OnLaid,
  OnProgress,
  OnStepDrawn,
  PrintWish,
  Quality,
  RefitAnswer,
  SeamAdvice,
  Voice,
  Work,
} from './answers.ts';
export { askOfProject } from './ask-of-project.ts';
export {
  type AskedCalls,
  type CallName,
  callNames,
  type ImplementedCalls,
  type PageCalls,
  pageCallNames,
  rulesOf,
  type StopFlag,
  type StoppableCallName,
  type ViewCalls,
} from './call-types.ts';
export { issueOfDefect } from './issue-of-defect.ts';
