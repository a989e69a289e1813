export { sampleSection } from './sample-section.ts';
export {
  type SectionBalance,
  type SectionProblem,
  type SectionTie,
  solveSection,
} from './solve-section.ts';
export { radiusOfFreeSleeve, type SpanArc, solveSpanArc } from './span-arc.ts';
