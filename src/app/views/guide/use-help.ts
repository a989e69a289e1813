import { useEffect, useState } from 'react';
import type { Help } from '../../../language/english/help.ts';
import { loadHelp } from '../../../language/load-help.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** What the help says in the present language; null until it is there, and where it cannot be fetched. */
export function useHelp(): Help | null {
  const language = useApp((state) => state.language);
  const [help, setHelp] = useState<Help | null>(null);
  useEffect(() => {
    let isWanted = true;
    loadHelp(language)
      .then((loaded) => isWanted && setHelp(loaded))
      .catch(() => {});
    return () => {
      isWanted = false;
    };
  }, [language]);
  return help;
}
