import table from '../../../shared/paper.json' with { type: 'json' };
import { type Phrase, plain } from '../base/index.ts';

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

export const PAPERS: readonly Paper[] = table.papers.map((paper) => ({ ...paper, name: plain(paper.name) }));

/** Mats and beds of cutting machines. */
export const MATS: readonly Paper[] = table.mats.map((mat) => ({ ...mat, name: plain(mat.name) }));

/** The paper of that id, or undefined. */
export function findPaper(id: string): Paper | undefined {
  return PAPERS.find((paper) => paper.id === id);
}
