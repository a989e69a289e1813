export { checkOrder } from './check-order.ts';
export { type SeamWay, wayOfSeam, wayOut, wayToFreeEdge } from './judge-seam.ts';
export { HEAD_GIRTH, LAP_FLAT, SEW_RATIO, TOOLS } from './limits-of-work.ts';
export { phrase as sewingPhrase, type SewingPhrases } from './phrases.ts';
export { type BraceWork, hoursOfBrace, hoursOfShell, MINUTES } from './time-of-work.ts';
export * from './types.ts';
