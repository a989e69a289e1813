import type { MakeWish } from '../calls/index.ts';

export const QUICK_TRIANGLES = 2_500;
const FULL_TRIANGLES = 20_000;

/** All that is made of a project, as files need it. */
export const WHOLE: MakeWish = { targetTriangles: FULL_TRIANGLES };
/** What is there long before the pieces are. */
export const SHAPE: MakeWish = { targetTriangles: FULL_TRIANGLES, upTo: 'seams' };

/** A form coarser than the full one is a draft. */
export const isDraft = ({ targetTriangles }: MakeWish): boolean => targetTriangles < FULL_TRIANGLES;
