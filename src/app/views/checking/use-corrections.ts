import { useMemo } from 'react';
import { verbatim } from '../../../core/base/index.ts';
import type { CheckingEntry } from '../../../core/project/index.ts';
import {
  type Correction,
  type FillingContext,
  judgeFilling,
  wordCorrection,
} from '../../../core/simulate/index.ts';
import { useSayInUnits } from '../parts/use-words.ts';

/** What is to be mended, in words. */
export interface WordedCorrection {
  readonly correction: Correction;
  /** The level it is about; null = the whole form. */
  readonly levelId: string | null;
  readonly title: string;
  readonly text: string;
}

/** What one round of readings says, worked out anew with every reading. */
export function useCorrections(entry: CheckingEntry, stuffing: FillingContext): readonly WordedCorrection[] {
  const say = useSayInUnits();
  return useMemo(() => {
    const named = new Map([...stuffing.targets, ...stuffing.zones].map(({ id, name }) => [id, name]));
    return judgeFilling(entry.levels, entry.state, stuffing).map((correction) => {
      const { title, text } = wordCorrection(correction, (id) => named.get(id) ?? verbatim(id));
      const levelId = 'levelId' in correction ? correction.levelId : null;
      return { correction, levelId, title: say(title), text: say(text) };
    });
  }, [entry, stuffing, say]);
}

/** Id of the row of fields of a level. */
export function rowOfLevel(levelId: string): string {
  return `reading-${levelId}`;
}

/** Whether anything was read in a round, or its filling weighed. */
export function isRead({ levels, fillMass }: CheckingEntry): boolean {
  return fillMass !== undefined || Object.values(levels).some((reading) => Object.keys(reading).length > 0);
}
