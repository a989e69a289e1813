import { Fragment } from 'react';
import type { Issue } from '../../../core/base/index.ts';
import { useNumbers, useSay } from './use-words.ts';

/** A sentence of the core, with the decimal marks of the place. */
export function CoreText({ said }: { readonly said: string }) {
  return useNumbers().mark(said);
}

/** What is wrong, one sentence after the other. */
export function Issues({ issues }: { readonly issues: readonly Issue[] }) {
  const say = useSay();
  return issues.map((issue, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: two issues may be worded alike
    <Fragment key={i}>
      {i > 0 && ' '}
      <CoreText said={say(issue.message)} />
    </Fragment>
  ));
}
