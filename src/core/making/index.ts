export { makeWorkshop } from './make-workshop.ts';
export { wordOrderOfWork } from './word-order-of-work.ts';
