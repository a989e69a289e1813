import table from '../../../shared/paper.json' with { type: 'json' };
import type { Phrase } from '../base/index.ts';
import { type MatId, type PaperId, phrase } from './phrases.ts';

/** A sheet or roll that can be printed on, mm, upright. */
export interface Paper {
  readonly id: string;
  readonly name: Phrase;
  readonly width: number;
  /** `null` for a roll, which is as long as it needs to be. */
  readonly height: number | null;
  /** Key into the table's list of standards. */
  readonly source: string;
}

export const PAPERS: readonly Paper[] = table.papers.map(named);

/** Mats and beds of cutting machines. */
export const MATS: readonly Paper[] = table.mats.map(named);

function named<Entry extends { readonly id: string }>(entry: Entry): Entry & { readonly name: Phrase } {
  return { ...entry, name: phrase(`paper.${entry.id as PaperId | MatId}`) };
}

/** The paper of that id, or undefined. */
export function findPaper(id: string): Paper | undefined {
  return PAPERS.find((paper) => paper.id === id);
}
