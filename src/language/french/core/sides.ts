/** Of the body, as they stand behind a name: masculine and feminine. */
export const SIDES = {
  right: { m: 'droit', f: 'droite' },
  left: { m: 'gauche', f: 'gauche' },
} as const;
export const HALVES = { front: 'devant', back: 'dos' } as const;
