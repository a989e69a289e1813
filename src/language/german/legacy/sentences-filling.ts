import type { Phrase } from './translate.ts';

/** Zones of filling. */
export const sentencesFilling: readonly Phrase[] = [
  ['Shoulders and neck, down to {l:level}', 'Schultern und Hals, hinunter bis {l}'],
  ['Shoulders and neck, down to the base', 'Schultern und Hals, hinunter bis zur Unterkante'],
  ['{a:level} to {b:level}', '{a} bis {b}'],
];
