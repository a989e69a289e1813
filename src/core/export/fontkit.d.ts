/** The part of the package that is called here and by the PDF library; it ships no types of its own. */
declare module 'fontkit' {
  import type { Fontkit } from '@cantoo/pdf-lib';
  export const create: (
    ...args: Parameters<Fontkit['create']>
  ) => ReturnType<Fontkit['create']> & { hasGlyphForCodePoint(codePoint: number): boolean };
}
