/** Cloths of the shell, by id. */
export const cloths: Readonly<Record<string, string>> = {
  plainCotton: 'einfache Baumwolle',
  fusedCotton: 'Baumwolle mit Bügeleinlage',
  plainWool: 'einfacher Wollstoff',
};
