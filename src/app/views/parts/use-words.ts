import type { Numbers, Words } from '../../language/index.ts';
import { useApp } from './workroom-context.tsx';

/** All that is said, in the language chosen. */
export function useWords(): Words {
  return useApp((state) => state.words);
}

/** Numbers as they are written where the person is. */
export function useNumbers(): Numbers {
  return useApp((state) => state.numbers);
}
