import type { Phrase, Say } from './phrase.ts';

/** TRANSITIONAL: English words not yet turned into a phrase. */
export function plain(text: string): Phrase {
  return { id: 'plain', values: { text } };
}

const speaker: { say: Say | undefined } = { say: undefined };

/** TRANSITIONAL: the English of a phrase, where the core still puts names into sentences. */
export function wordsOf(phrase: Phrase): string {
  if (phrase.id === 'plain') return phrase.values.text as string;
  if (!speaker.say) throw new Error(`no words for ${phrase.id}`);
  return speaker.say(phrase);
}

/** TRANSITIONAL. */
export function speakInCore(say: Say): void {
  speaker.say = say;
}
