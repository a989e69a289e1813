/** How far a curve in a file may be from the drawing's own points, mm; with the rounding of numbers it stays under 0.02. */
export const CURVE_TOLERANCE = 0.015;
