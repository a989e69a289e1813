import { Fragment } from 'react';
import type { Issue } from '../../../core/base/index.ts';
import { useNumbers, useWords } from './use-words.ts';
import { useApp } from './workroom-context.tsx';

interface CoreTextProps {
  readonly english: string;
  /** The same in the present language, or the English where it has none. */
  readonly said: string;
}

/** A sentence of the core; one that stayed English is marked as such, so that it is read out and hyphenated as English. */
export function CoreText({ english, said }: CoreTextProps) {
  const language = useApp((state) => state.language);
  const { mark } = useNumbers();
  return language !== 'en' && said === english ? <span lang="en">{said}</span> : mark(said);
}

/** What is wrong, one sentence after the other. */
export function Issues({ issues }: { readonly issues: readonly Issue[] }) {
  const { core } = useWords();
  return issues.map((issue, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: two issues may be worded alike
    <Fragment key={i}>
      {i > 0 && ' '}
      <CoreText english={issue.message} said={core.issue(issue)} />
    </Fragment>
  ));
}
