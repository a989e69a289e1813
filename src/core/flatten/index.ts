export { findSelfCrossings } from './find-self-crossings.ts';
export { flattenFree } from './flatten-free.ts';
export { flattenTogether } from './flatten-together.ts';
export { measureStrain } from './measure-strain.ts';
export { pictureStrain } from './picture.ts';
export { greaterStrain, STRAIN_LIMIT, strainColour, strainCss } from './strain-colour.ts';
export type * from './types.ts';
