import type { Say } from '../../../core/base/index.ts';
import type { Numbers, Words } from '../../../language/index.ts';
import { useApp } from './workroom-context.tsx';

/** What the app says of itself, in the language chosen. */
export function useWords(): Words {
  return useApp((state) => state.words);
}

/** Says what comes from the core, in the language chosen. */
export function useSay(): Say {
  return useApp((state) => state.say);
}

/** The same, with numbers in the units chosen alone. */
export function useSayInUnits(): Say {
  return useApp(({ sayIn, project }) => sayIn[project?.displayUnits ?? 'cm']);
}

/** Numbers as they are written where the person is. */
export function useNumbers(): Numbers {
  return useApp((state) => state.numbers);
}
