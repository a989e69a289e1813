/** Names inside sentences of the app. */
export const core = {
  /** Without its capital, where the language writes it small. */
  inSentence: (name: string): string => name.toLowerCase(),
};
