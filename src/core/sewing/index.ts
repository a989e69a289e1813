export { checkOrder } from './check-order.ts';
export { type SeamWay, wayOfSeam, wayOut, wayToFreeEdge } from './judge-seam.ts';
export { HEAD_GIRTH, LAP_FLAT, TOOLS } from './limits-of-work.ts';
export { phrase as sewingPhrase, type SewingPhrases } from './phrases.ts';
export * from './types.ts';
