import type { SampledStretch } from './sample-network.ts';

/** A stretch on the whole shell: upright ones upwards, rows with u rising, armholes counter-clockwise. */
export interface ShellStretch {
  readonly kind: SampledStretch['kind'];
  readonly curveId: string;
  readonly lineId?: string;
  readonly side: 'centre' | 'right' | 'left';
  /** Shell vertices, both ends included. */
  readonly vertices: Uint32Array;
}

/** The right half's stretches and their images, each curve's in order along it (rows: right half, then left). */
export function unfoldStretches(
  stretches: readonly SampledStretch[],
  mirrorVertex: Uint32Array,
): ShellStretch[] {
  const out: ShellStretch[] = [];
  const left: ShellStretch[] = [];
  for (const { kind, curveId, lineId, vertices } of stretches) {
    const shared = { kind, curveId, ...(lineId === undefined ? {} : { lineId }) };
    out.push({ ...shared, side: kind === 'centre' ? 'centre' : 'right', vertices });
    if (kind === 'centre') continue;
    const image = vertices.map((v) => mirrorVertex[v]);
    // The mirror turns rows and loops round.
    if (kind === 'line') left.push({ ...shared, side: 'left', vertices: image });
    else left.unshift({ ...shared, side: 'left', vertices: image.reverse() });
  }
  return [...out, ...left];
}

/** Vertices of stretches that follow one another, the joints once. */
export function chainStretches(stretches: readonly ShellStretch[]): Uint32Array {
  const out: number[] = [];
  for (const { vertices } of stretches) {
    for (let i = out.length === 0 ? 0 : 1; i < vertices.length; i++) out.push(vertices[i]);
  }
  return Uint32Array.from(out);
}
