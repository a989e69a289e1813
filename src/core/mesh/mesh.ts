/** Triangle mesh, readonly by convention. mm. Triangles are counter-clockwise seen from outside. */
export interface Mesh {
  /** #V × 3: x towards the wearer's right, y to the front, z up. */
  readonly positions: Float64Array;
  /** #F × 3 vertex indices. */
  readonly triangles: Uint32Array;
}
