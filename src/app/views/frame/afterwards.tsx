import { useEffect } from 'react';
import { Round } from '../guide/round.tsx';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { HelpDialog } from './help-dialog.tsx';
import { MentionLine } from './mention-line.tsx';
import { useRetrace } from './use-retrace.ts';

/** What stands round the work and is not of the first screen: it comes with the later stages. */
export function Afterwards() {
  const isHelpOpen = useApp((state) => state.isHelpOpen);
  useRetrace();
  useHelpKey();
  return (
    <>
      <MentionLine />
      {isHelpOpen && <HelpDialog />}
      <Round />
    </>
  );
}

/** `?` where nothing is typed. */
function useHelpKey(): void {
  const actions = useActions();
  useEffect(() => {
    const onKey = ({ key, target }: KeyboardEvent) => {
      const isTyping = target instanceof Element && target.closest('input, textarea, select, dialog');
      if (key === '?' && !isTyping) actions.showHelp(true);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [actions]);
}
