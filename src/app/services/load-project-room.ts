/** Reading and checking files is not needed for the first picture, so it is loaded when needed. */
export const loadProjectRoom = () => import('../../core/project/index.ts');
