export { findSelfCrossings } from './find-self-crossings.ts';
export { flattenFree } from './flatten-free.ts';
export { flattenTogether } from './flatten-together.ts';
export { measureStrain } from './measure-strain.ts';
export type * from './types.ts';
