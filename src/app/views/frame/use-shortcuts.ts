import { useEffect } from 'react';
import { STAGES } from '../../store/index.ts';
import { useActions, useServices } from '../parts/workroom-context.tsx';

/** Ctrl or ⌘ with Z, Shift+Z or Y, S; Alt with 1 to 8 for the stages. */
export function useShortcuts(): void {
  const actions = useActions();
  const services = useServices();
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const isCommand = event.ctrlKey || event.metaKey;
      const key = event.key.toLowerCase();
      if (isCommand && key === 'z') event.shiftKey ? actions.redo() : actions.undo();
      else if (isCommand && key === 'y') actions.redo();
      else if (isCommand && key === 's')
        void ((event.shiftKey && services.saveProjectAs) || services.saveProject)();
      else if (event.altKey && !isCommand && /^Digit[1-8]$/.test(event.code)) {
        actions.goTo(STAGES[Number(event.code.slice(-1)) - 1]);
      } else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [actions, services]);
}
