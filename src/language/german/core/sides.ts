/** Of the body, as they stand behind a name. */
export const SIDES = { right: 'rechts', left: 'links', both: 'rechts und links' } as const;
export const HALVES = { front: 'vorn', back: 'hinten' } as const;
