import { useEffect } from 'react';
import { STAGES } from '../../store/index.ts';
import { useActions, useServices } from '../parts/workroom-context.tsx';

/** Ctrl or ⌘ with Z, Shift+Z or Y, S; Alt with a digit for the stages. */
export function useShortcuts(): void {
  const actions = useActions();
  const services = useServices();
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const isCommand = event.ctrlKey || event.metaKey;
      const key = event.key.toLowerCase();
      const stage = event.altKey && !isCommand ? stageOfDigit(event.code) : undefined;
      if (isCommand && key === 'z') event.shiftKey ? actions.redo() : actions.undo();
      else if (isCommand && key === 'y') actions.redo();
      else if (isCommand && key === 's')
        void ((event.shiftKey && services.saveProjectAs) || services.saveProject)();
      else if (stage) actions.goTo(stage.id);
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [actions, services]);
}

/** `Digit1` is the first; undefined past the last, and for other keys. */
function stageOfDigit(code: string) {
  const digit = /^Digit([1-9])$/.exec(code)?.[1];
  return digit === undefined ? undefined : STAGES.at(Number(digit) - 1);
}
