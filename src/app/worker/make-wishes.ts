import type { MakeWish } from '../calls/index.ts';

export const QUICK_TRIANGLES = 2_500;
const FULL_TRIANGLES = 20_000;

/** All that is made of a project before it is filled: soon there, and near enough to what will be cut to look at. */
export const WHOLE: MakeWish = { targetTriangles: FULL_TRIANGLES };
/** The whole with its panels cut so that it comes out right once filled, as files need it: some seconds more. */
export const FILLED: MakeWish = { targetTriangles: FULL_TRIANGLES, fills: true };
/** What is there long before the pieces are. */
export const SHAPE: MakeWish = { targetTriangles: FULL_TRIANGLES, upTo: 'seams' };

/** A form coarser than the full one is a draft. */
export const isDraft = ({ targetTriangles }: MakeWish): boolean => targetTriangles < FULL_TRIANGLES;
