/** Colours after plant and mineral dyes; a seam wears the same one on the body, the pieces and the table. */
const COLOURS = ['#5b3a22', '#2f5482', '#8a6a12', '#4d6b3a', '#7a3f6d', '#1f7a78', '#a4561f', '#4a4a8c'];

/** Colour of the seam at `index` in the form's list of seams. Colours repeat after eight; letters do not. */
export function seamColour(index: number): string {
  return COLOURS[index % COLOURS.length]!;
}
