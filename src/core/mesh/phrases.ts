import { type NoValues, phrasesOf } from '../base/index.ts';

/** What this room says: how a mesh is unfit. */
export interface MeshPhrases {
  readonly 'mesh.array-length': NoValues;
  readonly 'mesh.not-a-number': NoValues;
  readonly 'mesh.index-range': NoValues;
  readonly 'mesh.repeated-corner': NoValues;
  readonly 'mesh.degenerate': NoValues;
  readonly 'mesh.not-manifold': NoValues;
  readonly 'mesh.orientation': NoValues;
  readonly 'mesh.open': NoValues;
  readonly 'mesh.pinched-vertex': NoValues;
}

export const phrase = phrasesOf<MeshPhrases>();
