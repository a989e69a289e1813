/** The part of the package that the PDF library calls; it ships no types of its own. */
declare module 'fontkit' {
  import type { Fontkit } from '@cantoo/pdf-lib';
  export const create: Fontkit['create'];
}
