/*
 * What a colour means in the scene, as on the page (`views/styles/tokens.css`, on cloth): red is left to errors, which the
 * scene does not show. tests/app/colours.test.ts holds both to one another.
 */

/** What is pointed at, or has the focus. */
export const LIT = '#6712a6';
/** What was chosen and may be moved. */
export const CHOSEN = '#06676b';
/** Drawn over the body: a level looked at, another body, a mirrored line. */
export const DRAWN = '#2f5482';
