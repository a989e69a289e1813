import { useId } from 'react';
import type { Issue } from '../../../core/base/index.ts';
import { issuesOf, type Stage, stageOfIssue } from '../../store/index.ts';
import { CoreText } from './core-text.tsx';
import { useSay, useWords } from './use-words.ts';
import { useApp } from './workroom-context.tsx';

interface StageDoubtsProps {
  readonly stage: Stage;
  /** Told elsewhere in the stage, or better known. */
  readonly isTold?: (issue: Issue) => boolean;
}

/** Warnings stand where they are mended. */
export function StageDoubts({ stage, isTold = () => false }: StageDoubtsProps) {
  const issues = useApp(issuesOf).filter((issue) => stageOfIssue(issue) === stage && !isTold(issue));
  const { toLookAt } = useWords().stages;
  const say = useSay();
  const id = useId();
  if (issues.length === 0) return null;
  return (
    <section aria-labelledby={id}>
      <h3 id={id}>{toLookAt}</h3>
      <ul className="doubts">
        {issues.map((issue) => (
          <li key={issue.code + issue.path + say(issue.message)} className={issue.severity}>
            <CoreText said={say(issue.message)} />
          </li>
        ))}
      </ul>
    </section>
  );
}
